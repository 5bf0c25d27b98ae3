import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'

export const tighteningPassesNote: CalculationNote = {
  name: 'tightening-passes',
  words:
    'the torque is reached in passes, each a share of the full torque, in the tightening order; then once around at full torque',
  formula: ['M of a pass = share · MA'],
  symbols: [
    {symbol: 'M', meaning: 'torque of a pass'},
    {symbol: 'MA', meaning: 'full tightening torque'},
    {
      symbol: 'share',
      meaning: 'share of the pass; the shares rise and end at 100 %, commonly 30, 60 and 100 %',
    },
  ],
  sources: [
    {
      title: 'bolting guides, three rounds of 30, 60 and 100 % crosswise, then around',
      edition: 'unknown',
      howKnown: 'reprint',
      status: 'unknown',
    },
  ],
  validFor: 'joints of three or more bolts',
}

/**
 * Torque of each pass.
 *
 * Source: bolting guides (30, 60 and 100 %); read in reprints.
 * Valid for: shares that rise and end at the full torque.
 *
 * @throws {RangeError}
 *   When the shares do not rise or the last one is not the whole.
 */
export function tighteningPasses(
  torque: Quantity<'torque'>,
  shares: readonly Quantity<'ratio'>[],
): readonly Quantity<'torque'>[] {
  let before = 0
  for (const share of shares) {
    if (share.si <= before) throw new RangeError('Unexpected passes that do not rise, expected rising shares')
    before = share.si
  }
  if (Math.abs(before - 1) > 1e-9) throw new RangeError(`Unexpected last pass of ${before}, expected 1`)
  return shares.map((share) => quantityOf('torque', torque.si * share.si))
}
