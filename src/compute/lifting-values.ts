import {threadGeometry} from '../calculations/bolted-joints/thread-geometry.ts'
import {gearLimitNote, requiredGearLimit} from '../calculations/lifting/gear-limit.ts'
import {type LoweringBolts, loweringBolts, loweringBoltsNote} from '../calculations/lifting/lowering-bolts.ts'
import {slingTension, slingTensionNote} from '../calculations/lifting/sling-tension.ts'
import type {ComputedValue} from '../handbook-model/computed.ts'
import type {Content} from '../handbook-model/content.ts'
import type {Datum, Reference} from '../handbook-model/datum.ts'
import type {Design, Lift, Lowering} from '../handbook-model/design-content.ts'
import type {ContentFiles} from '../messages/add-message.ts'
import {quantityOf} from '../quantities/quantity.ts'
import {calculationSources} from './calculation-sources.ts'
import {type Computed, computedValue} from './computed-value.ts'
import {statedValue, tracedConstant, tracedOrigin, tracedStep} from './value-builder.ts'

/** Loads of the lifts of a design and of its lowering bolts; every pump of the design shares them. */
export function liftingValues(
  design: Design,
  content: Content,
  files: ContentFiles,
): readonly ComputedValue[] {
  return [
    ...design.lifts.flatMap((lift) => liftValues(lift, design, content, files)),
    ...(design.lowering ? loweringValues(design.lowering, design, content, files) : []),
  ]
}

function massOf(reference: Reference, design: Design): Datum<'mass'> {
  const mass = design.masses.find((one) => one.id === reference.id)
  if (!mass) throw new Error(`Unexpected mass \`${reference.id}\`, expected one that the check has proved`)
  return mass.value
}

function liftValues(
  lift: Lift,
  design: Design,
  content: Content,
  files: ContentFiles,
): readonly ComputedValue[] {
  const mass = massOf(lift.mass, design)
  const where = design.title.en
  const legLoad = computedValue(
    {
      id: `${lift.id}.leg-load`,
      title: `load of one leg, ${lift.title.en}`,
      ofDesign: true,
      place: lift.place,
      where,
      note: slingTensionNote,
      formula: ['W = m·g', ...slingTensionNote.formula],
      sources: calculationSources['sling-tension'],
      inputs: {
        mass: {symbol: 'm', title: `mass, ${lift.title.en}`, datum: mass},
        angle: {symbol: 'β', title: 'angle of a leg from the vertical', datum: lift.angle},
      },
      constants: [
        tracedConstant('legs', 'legs of the sling', String(lift.legs), 'design'),
        tracedConstant('g', 'standard gravity', '9.80665 m/s²', 'definition'),
      ],
      compute: (known) => {
        const sling = slingTension({
          mass: known.mass,
          legs: lift.legs,
          angleFromVertical: known.angle,
          share: 'two-legs',
        })
        return {
          quantity: sling.carried,
          unit: 'kg',
          decimals: 0,
          condition: `${lift.legs === 1 ? 'one leg' : `${sling.counted} of ${lift.legs} legs count`}, as a mass`,
          steps: [
            tracedConstant('n', 'legs that count', String(sling.counted), 'intermediate result'),
            tracedStep('T', 'tension of one leg', sling.tension, 'kN'),
          ],
        }
      },
    },
    files,
  )
  return [
    statedValue(
      mass,
      {id: `${lift.id}.mass`, title: `mass, ${lift.title.en}`, ofDesign: true},
      `mass, ${lift.title.en}`,
    ),
    legLoad,
    ratedLoad(lift, mass, legLoad, where, content, files),
  ]
}

/** What each item must be marked with: the hoist carries the mass, a leg its load; the larger serves all. */
function ratedLoad(
  lift: Lift,
  mass: Datum<'mass'>,
  legLoad: ComputedValue,
  where: string,
  content: Content,
  files: ContentFiles,
): ComputedValue {
  return computedValue(
    {
      id: `${lift.id}.rated-load`,
      title: `least rated load of each item of gear, ${lift.title.en}`,
      ofDesign: true,
      place: lift.place,
      where,
      note: gearLimitNote,
      formula: ['SWL required = r·max(m, m leg)', ...gearLimitNote.formula.slice(1)],
      sources: calculationSources['gear-limit'],
      inputs: {
        mass: {symbol: 'm', title: `mass, ${lift.title.en}`, datum: mass},
        leg: {symbol: 'm leg', title: 'load of one leg', kind: 'mass', unit: 'kg', value: legLoad},
        reserve: {symbol: 'r', title: 'reserve by house rule', datum: content.office.house.liftingReserve},
      },
      compute: ({mass: whole, leg, reserve}) => {
        const carried = quantityOf('mass', Math.max(whole.si, leg.si))
        return {
          quantity: quantityOf('mass', Math.ceil(requiredGearLimit(carried, reserve).si - 1e-9)),
          unit: 'kg',
          decimals: 0,
          condition: 'hoist, shackles, each leg and each lifting eye',
          rounding: 'up to a whole kg, never lower',
        }
      },
    },
    files,
  )
}

/** Load and diameters that the torque of a lowering bolt needs. */
const screwLines = ['F = m·g', 'H = P·√3/2', 'd2 = dn − 3/4·H', 'dc = (D + d)/2']

function lineOf(symbol: string): readonly string[] {
  return loweringBoltsNote.formula.filter((line) => line.startsWith(`${symbol} = `))
}

function loweringValues(
  lowering: Lowering,
  design: Design,
  content: Content,
  files: ContentFiles,
): readonly ComputedValue[] {
  const thread = content.tables.threads.rows.find((row) => row.size === lowering.thread.id)
  const friction = content.tables.friction.rows.find((row) => row.id === lowering.lubrication.id)
  if (!thread || !friction)
    throw new Error(
      `Unexpected gap for thread \`${lowering.thread.id}\`, expected rows that the check has proved`,
    )
  const value = (
    name: string,
    title: string,
    formula: readonly string[],
    print: (bolts: LoweringBolts) => Pick<Computed, 'quantity' | 'unit' | 'decimals' | 'condition'>,
  ): ComputedValue =>
    computedValue(
      {
        id: `lowering.${name}`,
        title,
        ofDesign: true,
        place: lowering.place,
        where: design.title.en,
        note: loweringBoltsNote,
        formula,
        symbols: [{symbol: 'H', meaning: 'height of the thread triangle'}],
        sources: [...calculationSources['lowering-bolts'], friction.source],
        inputs: {
          mass: {symbol: 'm', title: 'mass of the pump unit', datum: massOf(lowering.mass, design)},
          travel: {symbol: 's', title: 'travel of the lowering bolts', datum: lowering.travel},
          outside: {symbol: 'D', title: 'outside of the thrust washer', datum: lowering.washerOutside},
          inside: {symbol: 'd', title: 'inside of the thrust washer', datum: lowering.washerInside},
        },
        constants: [
          {
            ...tracedStep('dn', `nominal diameter of ${thread.size}`, thread.diameter, 'mm', 3),
            ...tracedOrigin(content.tables.threads.origin),
            place: lowering.thread.place,
          },
          {
            ...tracedStep('P', `pitch of ${thread.size}`, thread.pitch, 'mm', 3),
            ...tracedOrigin(content.tables.threads.origin),
          },
          {
            ...tracedStep('µ', `thread friction, ${friction.title}`, friction.threadFriction, '1', 2),
            ...tracedOrigin({...content.tables.friction.origin, source: friction.source}),
          },
          {
            ...tracedStep('µc', `washer friction, ${friction.title}`, friction.headFriction, '1', 2),
            ...tracedOrigin({...content.tables.friction.origin, source: friction.source}),
          },
          tracedConstant('g', 'standard gravity', '9.80665 m/s²', 'definition'),
        ],
        compute: ({mass, travel, outside, inside}) => {
          const meanDiameter = quantityOf('length', (outside.si + inside.si) / 2)
          const screw = {nominalDiameter: thread.diameter, pitch: thread.pitch}
          const {pitchDiameter} = threadGeometry(screw)
          const bolts = loweringBolts({
            mass,
            thread: screw,
            travel,
            threadFriction: friction.threadFriction,
            collar: {meanDiameter, friction: friction.headFriction},
          })
          return {
            ...print(bolts),
            steps: [
              tracedStep('d2', 'pitch diameter', pitchDiameter, 'mm', 6),
              tracedStep('dc', 'mean diameter of the washer', meanDiameter, 'mm'),
              tracedStep('F', 'load of each bolt', bolts.load, 'kN'),
            ],
          }
        },
      },
      files,
    )
  return [
    value('bolt-load', 'load of one lowering bolt', ['F = m·g'], (bolts) => ({
      quantity: bolts.load,
      unit: 'kN',
      decimals: 2,
      condition: 'each lowering bolt alone carries the whole mass',
    })),
    value('turns', 'turns of each lowering nut', ['z = s/P'], (bolts) => ({
      quantity: quantityOf('count', bolts.turns.si),
      unit: '',
      decimals: 0,
    })),
    value(
      'raising-torque',
      'torque that raises the pump unit',
      [...screwLines, ...lineOf('TR')],
      (bolts) => ({
        quantity: bolts.raising,
        unit: 'N·m',
        decimals: 0,
        condition: `${friction.title}; one nut with the whole mass`,
      }),
    ),
    value(
      'lowering-torque',
      'torque that lowers the pump unit',
      [...screwLines, ...lineOf('TL')],
      (bolts) => ({
        quantity: bolts.lowering,
        unit: 'N·m',
        decimals: 0,
        condition: `${friction.title}; one nut with the whole mass`,
      }),
    ),
  ]
}
