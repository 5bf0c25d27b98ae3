import {printedText, printQuantity} from '../../quantities/print-quantity.ts'
import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import {decimalsFor} from '../../quantities/round-decimal.ts'

/** Share of one gas in a space: by volume, or of a limit such as the lower flammable limit. */
export type GasContent = Quantity<'ratio' | 'concentration'>

/** Content of one gas at the start, aimed at, and in the gas that is let in. */
export interface ContentChange {
  readonly from: GasContent
  readonly to: GasContent
  readonly supply: GasContent
}

/** No gas of the kind in what is let in. */
export const nothingInSupply: GasContent = quantityOf('ratio', 0)

/**
 * Volume changes that bring the content of a well mixed space from one figure to another.
 *
 * Source: balance of one gas in a well mixed space.
 * Valid for: spaces mixed at every moment; what is let in pushes out as much.
 *
 * @throws {RangeError}
 *   When a content is below nothing, or the aim does not lie between the start and the supply, which is never reached.
 */
export function changesToReach({from, to, supply}: ContentChange): Quantity<'count'> {
  for (const one of [from, to, supply]) refuseBelowNothing(one)
  const [start, rest] = [from.si - supply.si, to.si - supply.si]
  if (start * rest <= 0 || Math.abs(rest) > Math.abs(start)) {
    const between = `${contentText(from)} at the start and ${contentText(supply)} of the supply`
    throw new RangeError(
      `Unexpected aim of ${contentText(to)}, expected one between ${between}, which is never quite reached`,
    )
  }
  return quantityOf('count', Math.log(start / rest))
}

/**
 * Content of a well mixed space after a count of volume changes.
 *
 * Source: balance of one gas in a well mixed space.
 * Valid for: spaces mixed at every moment; what is let in pushes out as much.
 *
 * @throws {RangeError}
 *   When a content or the count of changes is below nothing.
 */
export function contentAfterChanges(input: {
  readonly from: GasContent
  readonly supply: GasContent
  readonly changes: Quantity<'count'>
}): Quantity<'ratio'> {
  const {from, supply, changes} = input
  for (const one of [from, supply]) refuseBelowNothing(one)
  if (changes.si < 0) throw new RangeError(`Unexpected count of ${changes.si} changes, expected none or more`)
  return quantityOf('ratio', supply.si + (from.si - supply.si) * Math.exp(-changes.si))
}

function refuseBelowNothing(content: GasContent): void {
  if (content.si < 0)
    throw new RangeError(`Unexpected content of ${contentText(content)}, expected none or more`)
}

/** A content in the unit of its kind. */
function contentText(content: GasContent): string {
  const unit = content.kind === 'ratio' ? '%' : 'ppm'
  const value = content.si / (unit === '%' ? 1e-2 : 1e-6)
  return printedText(printQuantity(content, unit, decimalsFor(value, 3)))
}
