import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'
import {entryRecommendations} from './entry-sources.ts'

export const entryLimitNote: CalculationNote = {
  name: 'entry-limit',
  words:
    'what an instrument shows when a gas stands at a stated share of its exposure limit or lower flammable limit; for information: the permit decides',
  formula: ['c = share·limit'],
  symbols: [
    {symbol: 'c', meaning: 'content by volume that counts as the limit'},
    {symbol: 'limit', meaning: 'exposure limit or lower flammable limit of the gas'},
    {symbol: 'share', meaning: 'stated by the house rules of the office'},
  ],
  sources: entryRecommendations,
  validFor: 'one gas by itself; limit and share are data of flag, port and office',
}

/**
 * Content of a gas that is a stated share of its exposure limit or lower flammable limit.
 *
 * Gives no judgement of a reading: the permit decides.
 *
 * Source: IMO resolution A.1050(27), 7.2.2 and 7.2.3, read, superseded; figures of MSC.581(110) not read.
 * Valid for: one gas by itself.
 *
 * @throws {RangeError}
 *   When the limit is not above zero, or the share is not above zero and at most the whole.
 */
export function entryLimit(input: {
  readonly limit: Quantity<'ratio' | 'concentration'>
  readonly share: Quantity<'ratio'>
}): Quantity<'concentration'> {
  const {limit, share} = input
  if (limit.si <= 0 || limit.si > 1)
    throw new RangeError('Unexpected limit of nothing or above 100 %, expected a content by volume')
  if (share.si <= 0 || share.si > 1)
    throw new RangeError('Unexpected share of nothing or above 100 %, expected a share of the limit')
  return quantityOf('concentration', share.si * limit.si)
}
