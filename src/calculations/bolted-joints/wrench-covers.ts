import type {Quantity} from '../../quantities/quantity.ts'
import {quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'

/** Whether a torque wrench may be used for a torque. */
export interface WrenchCovers {
  readonly covers: boolean
  readonly reason: 'within the range' | 'below the range' | 'above the range'
  /** Least torque for which the wrench is used: 20 % of its most, or the begin of its scale where that is higher. */
  readonly leastUsed: Quantity<'torque'>
  readonly shareOfMost: Quantity<'ratio'>
}

export const wrenchCoversNote: CalculationNote = {
  name: 'wrench-covers',
  words:
    'a torque wrench serves for torques from 20 % to 100 % of its most, and not below the begin of its scale',
  formula: ['T least used = max(0.2·T most, T begin)', 'covers when T least used ≤ T ≤ T most'],
  symbols: [
    {symbol: 'T', meaning: 'required torque'},
    {symbol: 'T least used', meaning: 'least torque that the wrench is used for'},
    {symbol: 'T begin', meaning: 'lower end of the scale'},
    {symbol: 'T most', meaning: 'upper end of the scale'},
  ],
  sources: [
    {
      title: 'ISO 6789, range in which the accuracy of a torque wrench is stated',
      edition: 'unknown',
      howKnown: 'memory',
      status: 'unknown',
    },
  ],
  validFor: 'torque wrenches whose accuracy is stated from 20 % of the most',
}

/**
 * Whether a torque wrench covers a torque.
 *
 * Source: ISO 6789, measuring range from 20 % to 100 % of the most; from memory.
 * Valid for: torque wrenches with a scale that begins below its end.
 *
 * @throws {RangeError}
 *   When the torque is not above zero or the scale does not rise.
 */
export function wrenchCovers(input: {
  readonly torque: Quantity<'torque'>
  readonly begin: Quantity<'torque'>
  readonly most: Quantity<'torque'>
}): WrenchCovers {
  const {torque, begin, most} = input
  if (torque.si <= 0) throw new RangeError(`Unexpected torque of ${torque.si} N·m, expected one above zero`)
  if (begin.si < 0 || begin.si >= most.si)
    throw new RangeError(
      `Unexpected scale from ${begin.si} to ${most.si} N·m, expected one that begins below its end`,
    )
  const leastUsed = Math.max(0.2 * most.si, begin.si)
  const reason = reasonOf(torque.si, leastUsed, most.si)
  return {
    covers: reason === 'within the range',
    reason,
    leastUsed: quantityOf('torque', leastUsed),
    shareOfMost: quantityOf('ratio', torque.si / most.si),
  }
}

/** Ends of the range count as inside; a billionth is the noise of a value that was converted. */
function reasonOf(torque: number, least: number, most: number): WrenchCovers['reason'] {
  if (torque < least * (1 - 1e-9)) return 'below the range'
  return torque > most * (1 + 1e-9) ? 'above the range' : 'within the range'
}
