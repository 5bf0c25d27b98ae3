import type {ComputedValue} from '../handbook-model/computed.ts'
import type {Content} from '../handbook-model/content.ts'
import type {Datum} from '../handbook-model/datum.ts'
import type {Design, NamedValue, Position, Tank, Vessel} from '../handbook-model/vessel-content.ts'
import type {QuantityKind} from '../quantities/quantity.ts'
import {statedValue} from './value-builder.ts'

/** Values that a design states and procedures print as they stand. */
export function designStatedValues(design: Design): readonly ComputedValue[] {
  return [
    ...named('mass', design.masses),
    ...named('setting', design.settings),
    ...named('rating', design.ratings),
    ...named('geometry', design.geometry),
    ...(
      [
        ['relief-setting', 'setting of the cofferdam relief valve', design.cofferdam.reliefValveSetting],
        ['outer-pipe-bore', 'bore of the outer pipe', design.cofferdam.outerPipeBore],
        ['inner-pipe-outside', 'outside diameter of the inner pipe', design.cofferdam.innerPipeOutside],
        ['head-volume', 'cofferdam volume in the pump head', design.cofferdam.headVolume],
        ['rating', 'rating of the cofferdam', design.cofferdam.rating],
        [
          'lip-reverse-limit',
          'pressure that the seal lip holds from behind',
          design.cofferdam.lipReverseLimit,
        ],
        ['allowed-leak', 'allowed leak of the cofferdam', design.cofferdam.allowedLeak],
      ] as const
    ).map(([name, title, datum]) => stated(`cofferdam.${name}`, title, datum, true)),
  ]
}

/** Values that the vessel, the tank, the position and the house state. */
export function positionStatedValues(
  vessel: Vessel,
  position: Position,
  tank: Tank,
  content: Content,
): readonly ComputedValue[] {
  const {house} = content.office
  const list: readonly (readonly [string, string, Datum<QuantityKind>])[] = [
    ['cofferdam.stack-length', 'stack length', position.stackLength],
    ['hydraulics.system-pressure', 'hydraulic system pressure', vessel.hydraulics.systemPressure],
    ['hydraulics.return-pressure', 'hydraulic return pressure', vessel.hydraulics.returnPressure],
    [
      'hydraulics.purge-regulator-maximum',
      'maximum of the purge regulator',
      vessel.hydraulics.purgeRegulatorMaximum,
    ],
    ['tank.vacuum-valve', 'setting of the vacuum valve', tank.vacuumValveSetting],
    ['tank.pressure-valve', 'setting of the pressure valve', tank.pressureValveSetting],
    ['tank.volume', 'tank volume', tank.volume],
    ['tank.height', 'tank height at the sump', tank.height],
    ['house.stabilise', 'stabilising time of the tightness test', house.tightnessStabilise],
    ['house.hold-least', 'shortest hold time of the tightness test', house.tightnessHoldLeast],
    ['house.isolation-proof', 'time that zero is watched', house.isolationProof],
    ['house.isolation-recheck', 'interval between checks of zero', house.isolationRecheck],
  ]
  return list.map(([id, title, datum]) => stated(id, title, datum, false, position.tag))
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
