import type {Quantity} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'
import {wellMixedBalance} from './gas-sources.ts'
import {type ContentChange, changesToReach} from './well-mixed.ts'

export const purgeSweepNote: CalculationNote = {
  name: 'purge-sweep',
  words: 'volumes of purge gas that sweep a well mixed space from one content to another',
  formula: ['N = ln[(C0 − Cs)/(C − Cs)]'],
  symbols: [
    {symbol: 'N', meaning: 'volumes of the space'},
    {symbol: 'C0', meaning: 'content at the start'},
    {symbol: 'C', meaning: 'content aimed at'},
    {symbol: 'Cs', meaning: 'content of the same gas in the purge gas'},
  ],
  sources: [wellMixedBalance],
  validFor:
    'spaces that the purge gas mixes; a dead end is not swept, and a long pipe swept without mixing needs less',
}

/**
 * Volumes of purge gas that a sweep takes, counted at the pressure in the space.
 *
 * Source: balance of one gas in a well mixed space.
 * Valid for: a steady sweep of a well mixed space without dead ends.
 *
 * @throws {RangeError}
 *   When the aim does not lie between the content at the start and that of the purge gas.
 */
export function purgeSweep(change: ContentChange): Quantity<'count'> {
  return changesToReach(change)
}
