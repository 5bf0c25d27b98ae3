import type {ComputedValue} from '../handbook-model/computed.ts'
import type {Content} from '../handbook-model/content.ts'
import type {Datum} from '../handbook-model/datum.ts'
import type {Cofferdam, Design, Lift, NamedValue, Seal} from '../handbook-model/design-content.ts'
import type {HungPosition, Position, Tank, Vessel} from '../handbook-model/vessel-content.ts'
import type {QuantityKind} from '../quantities/quantity.ts'
import {sourceUse, statedValue, textValue} from './value-builder.ts'

/** Values that a design states and procedures print as they stand. */
export function designStatedValues(design: Design): readonly ComputedValue[] {
  return [
    ...named('mass', design.masses),
    ...named('setting', design.settings),
    ...named('rating', design.ratings),
    ...named('geometry', design.geometry),
    ...design.seals.flatMap(sealStatedValues),
    ...design.lifts.flatMap(liftStatedValues),
    ...oilStatedValues(design),
    ...pumpStatedValues(design),
    ...(design.cofferdam ? cofferdamStatedValues(design.cofferdam) : []),
  ]
}

function cofferdamStatedValues(cofferdam: Cofferdam): readonly ComputedValue[] {
  const list = [
    ['relief-setting', 'setting of the cofferdam relief valve', cofferdam.reliefValveSetting],
    ['outer-pipe-bore', 'bore of the outer pipe', cofferdam.outerPipeBore],
    ['inner-pipe-outside', 'outside diameter of the inner pipe', cofferdam.innerPipeOutside],
    ['head-volume', 'cofferdam volume in the pump head', cofferdam.headVolume],
    ['rating', 'rating of the cofferdam', cofferdam.rating],
    ['lip-reverse-limit', 'pressure that the seal lip holds from behind', cofferdam.lipReverseLimit],
    ['allowed-leak', 'allowed leak of the cofferdam', cofferdam.allowedLeak],
  ] as const
  return list.map(([name, title, datum]) => stated(`cofferdam.${name}`, title, datum, true))
}

/** Values that the tank of a pump and its stack state. */
export function hungStatedValues({tag, stackLength}: HungPosition, tank: Tank): readonly ComputedValue[] {
  const list: readonly (readonly [string, string, Datum<QuantityKind>])[] = [
    ['cofferdam.stack-length', 'stack length', stackLength],
    ['tank.vacuum-valve', 'setting of the vacuum valve', tank.vacuumValveSetting],
    ['tank.pressure-valve', 'setting of the pressure valve', tank.pressureValveSetting],
    ['tank.volume', 'tank volume', tank.volume],
    ['tank.height', 'tank height at the sump', tank.height],
  ]
  return list.map(([id, title, datum]) => stated(id, title, datum, false, tag))
}

/** Values that the vessel and the house state. */
export function positionStatedValues(
  vessel: Vessel,
  position: Position,
  content: Content,
): readonly ComputedValue[] {
  const {house} = content.office
  const {systemPressure, oil} = vessel.hydraulics
  const list: readonly (readonly [string, string, Datum<QuantityKind>])[] = [
    ['hydraulics.system-pressure', 'hydraulic system pressure', systemPressure],
    ['hydraulics.return-pressure', 'hydraulic return pressure', vessel.hydraulics.returnPressure],
    [
      'hydraulics.purge-regulator-maximum',
      'maximum of the purge regulator',
      vessel.hydraulics.purgeRegulatorMaximum,
    ],
    ['supply.purge-gas-flow', 'free gas at the purge supply', vessel.supplies.purgeGasFlow],
    ['supply.bottle-volume', 'volume of a gas bottle', vessel.supplies.bottleVolume],
    ['supply.bottle-pressure', 'pressure of a full gas bottle', vessel.supplies.bottlePressure],
    ['supply.flush-flow', 'oil flow while the pump is flushed', vessel.supplies.flushFlow],
    ['supply.drum-volume', 'volume of an oil drum', vessel.supplies.drumVolume],
    ['supply.ventilator-flow', 'air flow of the ventilator', vessel.supplies.ventilatorFlow],
    ['house.stabilise', 'stabilising time of the tightness test', house.tightnessStabilise],
    ['house.hold-least', 'shortest hold time of the tightness test', house.tightnessHoldLeast],
    ['house.isolation-proof', 'time that zero is watched', house.isolationProof],
    ['house.isolation-recheck', 'interval between checks of zero', house.isolationRecheck],
    ['house.purge-changes', 'gas changes of one purge', house.purgeChanges],
    ['house.purge-least', 'shortest purge with gas flow at the outlet', house.purgeLeast],
    ['house.entry-air-changes', 'air changes before the first reading', house.entryAirChanges],
    ['house.entry-retest', 'interval between readings of the air', house.entryRetest],
    ['house.lifting-reserve', 'rated load of gear over the load it carries', house.liftingReserve],
    ['house.test-run-watch', 'share of the curve below which a head is watched', house.testRunWatch],
    ['house.test-run-act', 'share of the curve below which the pump is opened', house.testRunAct],
    ['house.oil-tolerance', 'how far an oil volume may lie from the computed one', house.oilTolerance],
    ['house.flush-changes', 'oil changes of one flush', house.flushChanges],
    ['house.portable-rig-time', 'longest time of the drill of the portable pump', house.portableRigTime],
    ['house.rubber-life', 'longest time from the cure date of rubber to its fitting', house.rubberLife],
    ['house.store-warmest', 'highest temperature of a store of rubber', house.storeWarmest],
  ]
  return [
    ...list.map(([id, title, datum]) => stated(id, title, datum, false, position.tag)),
    textValue(oil.en, {
      id: 'hydraulics.oil',
      title: 'hydraulic oil',
      ofDesign: false,
      place: vessel.place,
      sources: systemPressure.kind === 'known' ? [sourceUse(systemPressure.origin)] : [],
    }),
  ]
}

function sealStatedValues(seal: Seal): readonly ComputedValue[] {
  const of = (name: string): string => `${name} of the ${seal.title.en}`
  return [
    stated(`${seal.id}.running-diameter`, of('running diameter'), seal.runningDiameter, true),
    stated(`${seal.id}.seat-depth`, of('seat depth'), seal.seatDepth, true),
    textValue(seal.lips.map((lip) => `${lip.title.en} faces the ${lip.faces}`).join('; '), {
      id: `${seal.id}.lips`,
      title: of('lips'),
      ofDesign: true,
      place: seal.place,
      sources: seal.seatDepth.kind === 'known' ? [sourceUse(seal.seatDepth.origin)] : [],
    }),
  ]
}

function liftStatedValues(lift: Lift): readonly ComputedValue[] {
  const sources = lift.angle.kind === 'known' ? [sourceUse(lift.angle.origin)] : []
  return [
    stated(`${lift.id}.angle`, `angle of a leg from the vertical, ${lift.title.en}`, lift.angle, true),
    textValue(String(lift.legs), {
      id: `${lift.id}.legs`,
      title: `legs of the sling, ${lift.title.en}`,
      ofDesign: true,
      place: lift.place,
      sources,
    }),
  ]
}

function oilStatedValues({oil, lowering, stripping}: Design): readonly ComputedValue[] {
  return [
    ...(oil
      ? [
          stated('oil.pressure-pipe-bore', 'bore of the pressure pipe', oil.pressurePipeBore, true),
          stated('oil.pressure-pipe-outside', 'outside of the pressure pipe', oil.pressurePipeOutside, true),
          stated('oil.return-pipe-bore', 'bore of the return pipe', oil.returnPipeBore, true),
          stated('oil.motor-casing', 'oil in the motor casing', oil.motorCasing, true),
          stated('oil.control-valve', 'oil in the local control valve', oil.controlValve, true),
        ]
      : []),
    ...(stripping
      ? [
          stated(
            'stripping.foot-below-stack',
            'foot of the stripping pipe below the stack',
            stripping.footBelowStack,
            true,
          ),
          stated(
            'stripping.top-above-deck',
            'highest place of the stripping pipe above deck',
            stripping.topAboveDeck,
            true,
          ),
          stated('stripping.back-pressure', 'back pressure at the manifold', stripping.backPressure, true),
        ]
      : []),
    ...(lowering ? [stated('lowering.travel', 'travel of the lowering bolts', lowering.travel, true)] : []),
  ]
}

function pumpStatedValues({curve, motor}: Design): readonly ComputedValue[] {
  return [
    ...(curve
      ? [
          stated('curve.speed', 'speed of the curve', curve.speed, true),
          stated(
            'curve.shut-off-head',
            'head of the curve with the discharge valve closed',
            curve.shutOffHead,
            true,
          ),
          stated('curve.flow', 'flow of the duty point', curve.flow, true),
          stated('curve.head', 'head of the duty point', curve.head, true),
          stated('curve.efficiency', 'efficiency of the pump at the duty point', curve.efficiency, true),
        ]
      : []),
    ...(motor
      ? [
          stated('motor.displacement', 'oil for one turn of the motor', motor.displacement, true),
          stated(
            'motor.volumetric-efficiency',
            'volumetric efficiency of the motor',
            motor.volumetricEfficiency,
            true,
          ),
          stated(
            'motor.mechanical-efficiency',
            'mechanical efficiency of the motor',
            motor.mechanicalEfficiency,
            true,
          ),
        ]
      : []),
  ]
}

function named(group: string, values: readonly NamedValue[]): readonly ComputedValue[] {
  return values.map(({id, title, value, condition}) => {
    const made = stated(`${group}.${id}`, title.en, value, true)
    return condition ? {...made, condition: condition.en} : made
  })
}

function stated(
  id: string,
  title: string,
  datum: Datum<QuantityKind>,
  ofDesign: boolean,
  where?: string,
): ComputedValue {
  return statedValue(datum, {id, title, ofDesign}, where === undefined ? title : `${title} of ${where}`)
}
