import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'
import {type MetricThread, threadGeometry} from './thread-geometry.ts'

/** Clamp force at which a bolt begins to yield while it is turned. */
export interface YieldClampForce {
  readonly clampForce: Quantity<'force'>
  /** By how much torsion lowers it: the yield force of the stress area is divided by this. */
  readonly divisor: Quantity<'ratio'>
}

export const yieldClampForceNote: CalculationNote = {
  name: 'yield-clamp-force',
  words:
    'clamp force at which tension and elastic torsion of tightening together reach the yield stress; the divisor has a square root, which one published page leaves out',
  formula: ['Ffy = σy·As/√{1 + 3·[(2/dA)·(P/π + µs·d2·sec α′)]²}'],
  symbols: [
    {symbol: 'Ffy', meaning: 'clamp force at which the bolt yields'},
    {symbol: 'σy', meaning: 'yield stress'},
    {symbol: 'As', meaning: 'stress area'},
    {symbol: 'dA', meaning: 'diameter of the stress area'},
    {symbol: 'P', meaning: 'pitch'},
    {symbol: 'µs', meaning: 'thread friction'},
    {symbol: 'd2', meaning: 'pitch diameter'},
    {symbol: 'α′', meaning: 'half flank angle, 30°'},
  ],
  sources: [
    {
      title: 'JIS B 1083, yield clamp force, square root set right by the von Mises stress',
      edition: 'unknown',
      howKnown: 'reprint',
      status: 'unknown',
    },
  ],
  validFor: '60° metric threads tightened by torque, friction from 0.02 to 0.60',
}

/**
 * Clamp force at which a bolt begins to yield while it is turned.
 *
 * Tension σ and elastic torsion τ combine as √(σ² + 3·τ²), so the divisor is a
 * square root; without it, as one published page prints it, the force of an M16
 * at friction 0.12 comes out 16 % too low.
 *
 * Source: JIS B 1083, equations; read in a reprint whose square root is missing.
 * Valid for: 60° metric threads; friction from 0.02 to 0.60.
 *
 * @throws {RangeError}
 *   When friction is out of range, the yield stress is not above zero, or the pitch leaves no core.
 */
export function yieldClampForce(input: {
  readonly thread: MetricThread
  readonly yieldStress: Quantity<'stress'>
  readonly threadFriction: Quantity<'ratio'>
}): YieldClampForce {
  const {thread, yieldStress, threadFriction} = input
  if (threadFriction.si < 0.02 || threadFriction.si > 0.6)
    throw new RangeError(`Unexpected friction ${threadFriction.si}, expected 0.02 to 0.60`)
  if (yieldStress.si <= 0)
    throw new RangeError(`Unexpected yield stress of ${yieldStress.si} Pa, expected one above zero`)
  const {pitchDiameter, stressDiameter, stressArea} = threadGeometry(thread)
  const torsion =
    (2 / stressDiameter.si) *
    (thread.pitch.si / Math.PI + (threadFriction.si * pitchDiameter.si) / Math.cos(Math.PI / 6))
  const divisor = Math.sqrt(1 + 3 * torsion ** 2)
  return {
    clampForce: quantityOf('force', (yieldStress.si * stressArea.si) / divisor),
    divisor: quantityOf('ratio', divisor),
  }
}
