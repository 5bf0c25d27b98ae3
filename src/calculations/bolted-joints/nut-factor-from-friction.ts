import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'
import {type MetricThread, threadGeometry} from './thread-geometry.ts'

/** Nut factor with the mean diameter of the bearing face behind it. */
export interface NutFactorFromFriction {
  readonly nutFactor: Quantity<'ratio'>
  readonly bearingFrictionDiameter: Quantity<'length'>
}

export const nutFactorFromFrictionNote: CalculationNote = {
  name: 'nut-factor-from-friction',
  words: 'nut factor of a joint from the friction of thread and bearing face, each taken for itself',
  formula: ['K = (P/π + µs·d2·sec α′ + µw·Dw)/(2·d)', 'Dw = 2/3·(Do³ − Di³)/(Do² − Di²)'],
  symbols: [
    {symbol: 'K', meaning: 'nut factor'},
    {symbol: 'd', meaning: 'nominal diameter'},
    {symbol: 'P', meaning: 'pitch'},
    {symbol: 'd2', meaning: 'pitch diameter'},
    {symbol: 'α′', meaning: 'half flank angle, 30°'},
    {symbol: 'µs', meaning: 'thread friction'},
    {symbol: 'µw', meaning: 'friction of the bearing face'},
    {symbol: 'Dw', meaning: 'diameter at which the bearing face rubs'},
    {symbol: 'Do', meaning: 'outside of the bearing face'},
    {symbol: 'Di', meaning: 'hole'},
  ],
  sources: [{title: 'JIS B 1083, equations', edition: 'unknown', howKnown: 'reprint', status: 'unknown'}],
  validFor: '60° metric threads, friction from 0.02 to 0.60, bearing face wider than the hole',
}

/**
 * Nut factor from thread and bearing friction.
 *
 * The bearing face rubs with even pressure, so its mean diameter lies a little
 * outside the middle between hole and edge.
 *
 * Source: JIS B 1083, equations; read in a reprint.
 * Valid for: 60° metric threads; friction from 0.02 to 0.60.
 *
 * @throws {RangeError}
 *   When friction is out of range, the hole is not smaller than the bearing face, or the pitch leaves no core.
 */
export function nutFactorFromFriction(input: {
  readonly thread: MetricThread
  readonly bearingDiameter: Quantity<'length'>
  readonly holeDiameter: Quantity<'length'>
  readonly threadFriction: Quantity<'ratio'>
  readonly headFriction: Quantity<'ratio'>
}): NutFactorFromFriction {
  for (const {si} of [input.threadFriction, input.headFriction])
    if (si < 0.02 || si > 0.6) throw new RangeError(`Unexpected friction ${si}, expected 0.02 to 0.60`)
  const outer = input.bearingDiameter.si
  const inner = input.holeDiameter.si
  if (inner >= outer || inner < 0)
    throw new RangeError('Unexpected hole as large as the bearing face, expected a smaller hole')
  const pitchDiameter = threadGeometry(input.thread).pitchDiameter.si
  const faceDiameter = ((2 / 3) * (outer ** 3 - inner ** 3)) / (outer ** 2 - inner ** 2)
  const flank = 1 / Math.cos(Math.PI / 6)
  const sum =
    input.thread.pitch.si / Math.PI +
    input.threadFriction.si * pitchDiameter * flank +
    input.headFriction.si * faceDiameter
  return {
    nutFactor: quantityOf('ratio', sum / (2 * input.thread.nominalDiameter.si)),
    bearingFrictionDiameter: quantityOf('length', faceDiameter),
  }
}
