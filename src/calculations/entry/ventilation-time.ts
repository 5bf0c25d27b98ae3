import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'
import {commonPractice, wellMixedBalance} from '../gas/gas-sources.ts'

/** A space and the air that is blown into it. */
export interface Ventilation {
  readonly volume: Quantity<'volume'>
  readonly flow: Quantity<'volume-flow'>
  /** How much of the air takes part in the mixing: 1 for perfect mixing, less for a space with corners. */
  readonly mixing: Quantity<'ratio'>
}

/** Every litre of air mixes. */
export const perfectMixing: Quantity<'ratio'> = quantityOf('ratio', 1)

export const ventilationTimeNote: CalculationNote = {
  name: 'ventilation-time',
  words:
    'time in which the fan brings a count of air changes, and in which the content falls to half; then it is tested, the permit decides',
  formula: ['t = N·V/(k·Q)', 't half = ln 2·V/(k·Q)'],
  symbols: [
    {symbol: 't', meaning: 'time'},
    {symbol: 't half', meaning: 'time in which the content halves'},
    {symbol: 'N', meaning: 'air changes'},
    {symbol: 'V', meaning: 'volume of the space'},
    {symbol: 'Q', meaning: 'air flow'},
    {symbol: 'k', meaning: 'mixing, 1 when perfect'},
  ],
  sources: [wellMixedBalance, commonPractice],
  validFor: 'spaces without a source of gas; the count of changes is a house rule',
}

/**
 * Time in which the fan brings a count of air changes.
 *
 * Source: balance of one gas in a well mixed space; the count of changes is common practice, no source.
 * Valid for: a steady air flow.
 *
 * @throws {RangeError}
 *   When volume or flow is not above zero, the mixing is not above zero and at most 1, or the changes are below none.
 */
export function ventilationTime(ventilation: Ventilation, changes: Quantity<'count'>): Quantity<'time'> {
  if (changes.si < 0)
    throw new RangeError(`Unexpected count of ${changes.si} air changes, expected none or more`)
  return quantityOf('time', changes.si / changesPerSecond(ventilation))
}

/**
 * Time in which the content of a ventilated space falls to half of what it was.
 *
 * Source: balance of one gas in a well mixed space.
 * Valid for: a steady flow of clean air and no source of gas.
 *
 * @throws {RangeError}
 *   When volume or flow is not above zero, or the mixing is not above zero and at most 1.
 */
export function halfLife(ventilation: Ventilation): Quantity<'time'> {
  return ventilationTime(ventilation, quantityOf('count', Math.LN2))
}

/**
 * Air changes that the fan brings in a time.
 *
 * Source: balance of one gas in a well mixed space.
 * Valid for: a steady air flow.
 *
 * @throws {RangeError}
 *   When volume or flow is not above zero, the mixing is not above zero and at most 1, or the time is below none.
 */
export function airChangesWithin(ventilation: Ventilation, time: Quantity<'time'>): Quantity<'count'> {
  if (time.si < 0) throw new RangeError('Unexpected time below zero, expected none or more')
  return quantityOf('count', time.si * changesPerSecond(ventilation))
}

function changesPerSecond({volume, flow, mixing}: Ventilation): number {
  if (volume.si <= 0 || flow.si <= 0)
    throw new RangeError('Unexpected volume or air flow of nothing, expected values above zero')
  if (mixing.si <= 0 || mixing.si > 1)
    throw new RangeError(`Unexpected mixing of ${mixing.si}, expected one above 0 and at most 1`)
  return (mixing.si * flow.si) / volume.si
}
