import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'
import {refuseBelowZero, refuseUnlessAboveZero} from '../refuse-inputs.ts'

export const oilDeviationNote: CalculationNote = {
  name: 'oil-deviation',
  words:
    'how far a drained or filled volume lies from the computed content; much more drained than computed means that an isolating valve leaks, much less that oil is left',
  formula: ['deviation = V measured/V expected − 1'],
  symbols: [
    {symbol: 'V measured', meaning: 'volume drained or filled'},
    {symbol: 'V expected', meaning: 'computed content'},
  ],
  sources: [
    {title: 'common practice, no source', edition: 'none', howKnown: 'common-practice', status: 'unknown'},
  ],
  validFor: 'oil measured at the temperature at which the content is meant, within a few per cent',
}

/**
 * How far a measured volume of oil lies from the expected one, as a share of the expected one.
 *
 * Source: definition of a relative deviation; which deviation is allowed is common practice, no source.
 * Valid for: an expected volume above zero.
 *
 * @throws {RangeError}
 *   When the expected volume is not above zero or the measured one is below zero.
 */
export function oilDeviation(input: {
  readonly expected: Quantity<'volume'>
  readonly measured: Quantity<'volume'>
}): Quantity<'ratio'> {
  refuseUnlessAboveZero('expected volume', input.expected, 'l')
  refuseBelowZero('measured volume', input.measured, 'l')
  return quantityOf('ratio', input.measured.si / input.expected.si - 1)
}
