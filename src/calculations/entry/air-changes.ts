import type {Quantity} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'
import {wellMixedBalance} from '../gas/gas-sources.ts'
import {type ContentChange, changesToReach} from '../gas/well-mixed.ts'

export const airChangesNote: CalculationNote = {
  name: 'air-changes',
  words:
    'air changes that bring a ventilated space from one content to another; then it is tested, the permit decides',
  formula: ['N = ln[(C0 − Cs)/(C − Cs)]'],
  symbols: [
    {symbol: 'N', meaning: 'air changes'},
    {symbol: 'C0', meaning: 'content at the start'},
    {symbol: 'C', meaning: 'content aimed at'},
    {symbol: 'Cs', meaning: 'content of the same gas in the air that is blown in'},
  ],
  sources: [wellMixedBalance],
  validFor: 'spaces that the air mixes, without a source of gas; pockets, sludge and scale give gas again',
}

/**
 * Air changes that a ventilated space needs, by the law of perfect mixing.
 *
 * Source: balance of one gas in a well mixed space.
 * Valid for: a space without a source of gas and without pockets.
 *
 * @throws {RangeError}
 *   When the aim does not lie between the content at the start and that of the air.
 */
export function airChanges(change: ContentChange): Quantity<'count'> {
  return changesToReach(change)
}
