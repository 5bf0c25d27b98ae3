import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import {type MetricThread, threadGeometry} from '../bolted-joints/thread-geometry.ts'
import type {CalculationNote} from '../calculation-note.ts'
import {type ScrewCollar, type ScrewTorque, screwTorque} from './screw-torque.ts'
import {weightOf} from './weight.ts'

/** What the lowering bolts of a unit are computed from. */
export interface LoweringBoltsInput {
  readonly mass: Quantity<'mass'>
  readonly thread: MetricThread
  readonly travel: Quantity<'length'>
  readonly threadFriction: Quantity<'ratio'>
  readonly collar?: ScrewCollar
}

/** Load, turns and torque of one lowering bolt. */
export interface LoweringBolts extends ScrewTorque {
  readonly load: Quantity<'force'>
  readonly turns: Quantity<'ratio'>
  /** Load over the stress area of the bolt. */
  readonly tensileStress: Quantity<'stress'>
}

export const loweringBoltsNote: CalculationNote = {
  name: 'lowering-bolts',
  words:
    'each lowering bolt is taken to carry the whole mass by itself, because turning two in parallel never shares the load evenly; turns for the travel and torque to lower and raise',
  formula: [
    'F = m·g',
    'z = s/P',
    'σ = F/As',
    'TR = F·d2/2·(P + π·µ·d2/cos 30°)/(π·d2 − µ·P/cos 30°) + F·µc·dc/2',
    'TL = F·d2/2·(π·µ·d2/cos 30° − P)/(π·d2 + µ·P/cos 30°) + F·µc·dc/2',
    'holds by itself when π·µ·d2/cos 30° > P',
  ],
  symbols: [
    {symbol: 'F', meaning: 'load of each bolt'},
    {symbol: 'm', meaning: 'mass that each bolt carries'},
    {symbol: 'g', meaning: 'standard gravity, 9.80665 m/s²'},
    {symbol: 'z', meaning: 'turns'},
    {symbol: 's', meaning: 'travel'},
    {symbol: 'P', meaning: 'pitch'},
    {symbol: 'σ', meaning: 'tensile stress'},
    {symbol: 'As', meaning: 'stress area'},
    {symbol: 'TR', meaning: 'raising torque'},
    {symbol: 'TL', meaning: 'lowering torque'},
    {symbol: 'd2', meaning: 'pitch diameter'},
    {symbol: 'µ', meaning: 'thread friction'},
    {symbol: 'µc', meaning: 'friction below the head or nut'},
    {symbol: 'dc', meaning: 'mean diameter of that face'},
  ],
  sources: [
    {
      title: 'each lowering bolt carries the whole mass',
      edition: 'none',
      howKnown: 'common-practice',
      status: 'unknown',
    },
    {
      title: 'Mechanical Engineering Design, power screws',
      edition: 'unknown',
      howKnown: 'memory',
      status: 'unknown',
    },
  ],
  validFor: 'metric threads with one start, turned slowly and in parallel',
}

/**
 * Load, turns and torque of a bolt on which a unit is lowered.
 *
 * Source: common practice, no source (each bolt alone carries the whole mass); Mechanical Engineering Design, power screws, from memory.
 * Valid for: metric threads with one start; friction from 0 to 0.60.
 *
 * @throws {RangeError}
 *   When mass or travel is not above zero, or thread or friction is outside the range.
 */
export function loweringBolts(input: LoweringBoltsInput): LoweringBolts {
  if (input.travel.si <= 0) throw new RangeError('Unexpected travel of nothing, expected a travel above zero')
  const geometry = threadGeometry(input.thread)
  const load = weightOf(input.mass)
  const torque = screwTorque({
    load,
    pitchDiameter: geometry.pitchDiameter,
    lead: input.thread.pitch,
    flankAngle: quantityOf('angle', Math.PI / 6),
    threadFriction: input.threadFriction,
    ...(input.collar ? {collar: input.collar} : {}),
  })
  return {
    ...torque,
    load,
    turns: quantityOf('ratio', input.travel.si / input.thread.pitch.si),
    tensileStress: quantityOf('stress', load.si / geometry.stressArea.si),
  }
}
