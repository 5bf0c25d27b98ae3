import {printedText, valueIn} from '../quantities/print-quantity.ts'
import type {AnyQuantity, Quantity} from '../quantities/quantity.ts'
import {roundSignificant} from '../quantities/round-decimal.ts'

/**
 * Refuses an input that is not above zero, by its name in words, in the unit in which people know it.
 *
 * Source: none; a check of inputs.
 * Valid for: every kind of quantity.
 *
 * @throws {RangeError}
 *   When the input is zero or below.
 */
export function refuseUnlessAboveZero(name: string, quantity: AnyQuantity, unit: string): void {
  if (quantity.si <= 0)
    throw new RangeError(`Unexpected ${name} of ${written(quantity, unit)}, expected one above zero`)
}

/**
 * Refuses an input below zero, by its name in words, in the unit in which people know it.
 *
 * Source: none; a check of inputs.
 * Valid for: every kind of quantity.
 *
 * @throws {RangeError}
 *   When the input is below zero.
 */
export function refuseBelowZero(name: string, quantity: AnyQuantity, unit: string): void {
  if (quantity.si < 0)
    throw new RangeError(`Unexpected ${name} of ${written(quantity, unit)}, expected zero or more`)
}

/**
 * Refuses a share, such as an efficiency, that is not above 0 % and at most 100 %.
 *
 * Source: none; a check of inputs.
 * Valid for: shares of a whole.
 *
 * @throws {RangeError}
 *   When the share is out of its range.
 */
export function refuseUnlessShare(name: string, share: Quantity<'ratio'>): void {
  if (share.si <= 0 || share.si > 1)
    throw new RangeError(`Unexpected ${name} of ${written(share, '%')}, expected above 0 % and at most 100 %`)
}

/** The quantity as a message shows it. */
function written(quantity: AnyQuantity, unit: string): string {
  const figure = roundSignificant(valueIn(quantity, unit), 6).replace('-', '−')
  return printedText({figure: figure.includes('.') ? figure.replace(/\.?0+$/u, '') : figure, unit})
}
