import type {Quantity} from '../../quantities/quantity.ts'
import {wholeDown, wholeUp} from './whole-count.ts'

/** How far bottles of gas reach. */
export interface BottleCount {
  /** Whole purges that one bottle gives; none when it gives less than one. */
  readonly purgesPerBottle: Quantity<'count'>
  /** Whole bottles for all the purges, one drawn after the other. */
  readonly bottles: Quantity<'count'>
}

/**
 * How many purges or fillings a bottle gives, and how many bottles a number of them takes.
 *
 * Source: arithmetic.
 * Valid for: bottles that are drawn down one after the other, so that the rest of one begins the next purge.
 *
 * @throws {RangeError}
 *   When free gas or content of a bottle is not above zero, or the count of purges is not whole.
 */
export function bottleCount(input: {
  readonly freeGas: Quantity<'volume'>
  readonly purges: Quantity<'count'>
  readonly bottleContent: Quantity<'volume'>
}): BottleCount {
  const {freeGas, purges, bottleContent} = input
  if (freeGas.si <= 0 || bottleContent.si <= 0)
    throw new RangeError('Unexpected free gas or content of a bottle of nothing, expected values above zero')
  if (!Number.isInteger(purges.si) || purges.si < 1)
    throw new RangeError(`Unexpected count of ${purges.si} purges, expected a whole number from 1 up`)
  return {
    purgesPerBottle: wholeDown(bottleContent.si / freeGas.si),
    bottles: wholeUp((purges.si * freeGas.si) / bottleContent.si),
  }
}
