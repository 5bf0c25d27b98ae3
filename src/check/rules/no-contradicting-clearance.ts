import type {RunningClearanceRow, TableOf} from '../../handbook-model/content.ts'
import type {WearRing} from '../../handbook-model/design-content.ts'
import {addMessage, type ContentFiles} from '../../messages/add-message.ts'
import {printedText, printQuantity} from '../../quantities/print-quantity.ts'

/**
 * A ring is not new with less clearance than the table of running clearances prints for its diameter, or says why.
 *
 * Drawing and table cannot both be right, and a ring that is too tight seizes. With a reason the message stays as
 * information; a reason beside a clearance that fits the table would hide the next contradiction.
 *
 * Accepted: `minimum-new: 0.52 mm diametral` at 210 mm, where the table prints 0.51 mm.
 * Rejected: 0.50 mm there, or a `below-table:` beside the 0.52 mm.
 */
export function noContradictingClearance(
  ring: WearRing,
  table: TableOf<RunningClearanceRow>,
  files: ContentFiles,
): void {
  const {runningDiameter, minimumNew, newClearance, belowTable} = ring
  if (runningDiameter.kind === 'not-known') return
  const diameter = runningDiameter.quantity.si
  const row = table.rows.find((one) => diameter >= one.fromDiameter.si && diameter < one.belowDiameter.si)
  if (!row) return
  const stated = [
    {what: 'least new clearance', datum: minimumNew},
    {what: 'new clearance', datum: newClearance},
  ].flatMap(({what, datum}) => (datum.kind === 'known' ? [{what, datum}] : []))
  const below = stated.find(({datum}) => {
    const diametral = datum.quantity.si * (datum.quantity.kind === 'radial-clearance' ? 2 : 1)
    return diametral < row.clearance.si - 1e-12
  })
  if (below) {
    const {what, datum} = below
    const message = addMessage(
      files,
      datum.place,
      'no-contradicting-clearance',
      `Unexpected ${what} of \`${datum.figure} ${datum.unit}\` of \`${ring.id}\` at a running diameter of \`${runningDiameter.figure} ${runningDiameter.unit}\` by \`${datum.origin.source}\`, expected at least the \`${printedText(printQuantity(row.clearance, 'mm diametral', 2))}\` of tables/running-clearances.csv by \`${table.origin.source}\``,
      {
        note: 'Read drawing and table again: one of the two is wrong; or write `below-table:` with the reason',
        cause: row.place,
      },
    )
    if (belowTable === undefined) return
    message.fatal = undefined
    message.note = `Accepted: ${belowTable.en}`
  } else if (belowTable !== undefined && stated.length > 0) {
    addMessage(
      files,
      ring.place,
      'no-contradicting-clearance',
      `Unexpected \`below-table\` of \`${ring.id}\`, expected it on a ring whose new clearance lies below the table`,
      {note: 'Take the reason out: it would hide the next contradiction', cause: row.place},
    )
  }
}
