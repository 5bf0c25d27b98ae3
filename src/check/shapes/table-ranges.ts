import type {PropertyClassRow, RunningClearanceRow, TableOf} from '../../handbook-model/content.ts'
import {addMessage, type ContentFiles} from '../../messages/add-message.ts'
import type {Place} from '../../messages/place.ts'
import {printedText, printQuantity} from '../../quantities/print-quantity.ts'
import type {Quantity} from '../../quantities/quantity.ts'

/** Diameters that a row serves, among the rows of the same thing. */
interface Range {
  readonly of: string
  readonly from: Quantity<'length'>
  readonly to: Quantity<'length'>
  /** What the row gives for its diameters, ready to print. */
  readonly gives: string
}

/** Diameters of a strength. */
export function rangeOfClass(row: PropertyClassRow): Range {
  const gives = printedText(printQuantity(row.yieldStress, 'N/mm²', 0))
  return {of: row.id, from: row.aboveDiameter, to: row.upToDiameter, gives}
}

/** Diameters of a running clearance. */
export function rangeOfClearance(row: RunningClearanceRow): Range {
  const gives = printedText(printQuantity(row.clearance, 'mm diametral', 2))
  return {of: '', from: row.fromDiameter, to: row.belowDiameter, gives}
}

/** A table in which a diameter is found in two rows gives a figure by chance: it is a message, and so is a range of nothing. */
export function refuseOverlaps<Row extends {readonly place: Place}>(
  table: TableOf<Row>,
  rangeOf: (row: Row) => Range,
  files: ContentFiles,
): TableOf<Row> {
  const note = 'Read the source of the table again'
  for (const [index, row] of table.rows.entries()) {
    const {of, from, to, gives} = rangeOf(row)
    const words = `Unexpected range from ${wordsOf(from, to)}`
    if (from.si >= to.si) {
      addMessage(
        files,
        row.place,
        'no-impossible-value',
        `${words}, expected one that ends above its beginning`,
        {note},
      )
      continue
    }
    const other = table.rows.slice(0, index).find((one) => {
      const range = rangeOf(one)
      return range.of === of && range.from.si < to.si && from.si < range.to.si
    })
    if (!other) continue
    const first = rangeOf(other)
    addMessage(
      files,
      row.place,
      'no-impossible-value',
      `${words} with \`${gives}\` that overlaps the one from ${wordsOf(first.from, first.to)} with \`${first.gives}\`, expected each diameter in one row`,
      {note, cause: other.place},
    )
  }
  return table
}

function wordsOf(from: Quantity<'length'>, to: Quantity<'length'>): string {
  return `\`${millimetresOf(from)}\` to \`${millimetresOf(to)}\``
}

function millimetresOf(length: Quantity<'length'>): string {
  return printedText(printQuantity(length, 'mm', 2)).replace(/\.?0+ mm$/u, ' mm')
}
