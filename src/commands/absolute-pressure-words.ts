import {absoluteFromGauge, standardAtmosphere} from '../calculations/gas/standard-air.ts'
import {parseQuantity} from '../quantities/parse-quantity.ts'
import {type Quantity, quantityOf} from '../quantities/quantity.ts'
import type {CalculationWords} from './calculate-words.ts'

/** Pressure of the air: as given, or the standard atmosphere. */
export function barometerOf(words: CalculationWords): Quantity<'absolute-pressure'> {
  return words.optional('barometer', 'absolute-pressure') ?? standardAtmosphere
}

/** Pressure at which free gas is counted: as given, or the standard atmosphere. */
export function referenceOf(words: CalculationWords): Quantity<'absolute-pressure'> {
  return words.optional('reference', 'absolute-pressure') ?? standardAtmosphere
}

/**
 * An absolute pressure; one written as gauge pressure is brought to it by the barometer.
 *
 * @throws {RangeError}
 *   When the word is missing, does not read, or lies below a vacuum.
 */
export function absoluteWord(
  words: CalculationWords,
  key: string,
  barometer: Quantity<'absolute-pressure'>,
): Quantity<'absolute-pressure'> {
  const parsed = parseQuantity(words.text(key), ['gauge-pressure', 'absolute-pressure'])
  if (!parsed.ok) throw new RangeError(`${parsed.reason} for \`${key}\``)
  const {kind, si} = parsed.written.quantity
  return kind === 'gauge-pressure'
    ? absoluteFromGauge(quantityOf(kind, si), barometer)
    : quantityOf('absolute-pressure', si)
}
