import type {Quantity} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'
import {wellMixedBalance} from '../gas/gas-sources.ts'
import {contentAfterChanges, type GasContent} from '../gas/well-mixed.ts'
import {airChangesWithin, type Ventilation} from './ventilation-time.ts'

/** A space after ventilation. */
export interface Dilution {
  readonly changes: Quantity<'count'>
  readonly content: Quantity<'ratio'>
}

export const dilutionNote: CalculationNote = {
  name: 'dilution',
  words: 'content of a space after ventilation for a time; then it is tested, the permit decides',
  formula: ['N = k·Q·t/V', 'C = Cs + (C0 − Cs)·e^(−N)'],
  symbols: [
    {symbol: 'N', meaning: 'air changes'},
    {symbol: 'k', meaning: 'mixing, 1 when perfect'},
    {symbol: 'Q', meaning: 'air flow'},
    {symbol: 't', meaning: 'time'},
    {symbol: 'V', meaning: 'volume of the space'},
    {symbol: 'C', meaning: 'content'},
    {symbol: 'C0', meaning: 'content at the start'},
    {symbol: 'Cs', meaning: 'content of the same gas in the air that is blown in'},
  ],
  sources: [wellMixedBalance],
  validFor: 'spaces without a source of gas; pockets, sludge and scale give gas again',
}

/**
 * Content of a space after ventilation for a time.
 *
 * Source: balance of one gas in a well mixed space.
 * Valid for: a steady air flow and no source of gas.
 *
 * @throws {RangeError}
 *   When volume or flow is not above zero, the mixing is not above zero and at most 1, or content or time is below none.
 */
export function dilution(
  input: Ventilation & {
    readonly from: GasContent
    readonly supply: GasContent
    readonly time: Quantity<'time'>
  },
): Dilution {
  const changes = airChangesWithin(input, input.time)
  return {changes, content: contentAfterChanges({from: input.from, supply: input.supply, changes})}
}
