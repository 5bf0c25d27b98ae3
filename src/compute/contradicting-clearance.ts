import type {Content} from '../handbook-model/content.ts'
import {addMessage, type ContentFiles} from '../messages/add-message.ts'
import {printedText, printQuantity} from '../quantities/print-quantity.ts'

/**
 * The least new clearance of a ring is not below the one that the table of running clearances prints for its diameter.
 *
 * Accepted: 0.52 mm diametral at 210 mm, where the table prints 0.51 mm.
 * Rejected: 0.30 mm diametral there.
 */
export function tellContradictingClearances(content: Content, files: ContentFiles): void {
  for (const design of content.designs.values())
    for (const ring of design.rings) {
      const {runningDiameter, minimumNew} = ring
      if (runningDiameter.kind === 'not-known' || minimumNew.kind === 'not-known') continue
      const diameter = runningDiameter.quantity.si
      const row = content.tables.runningClearances.rows.find(
        (one) => diameter >= one.fromDiameter.si && diameter < one.belowDiameter.si,
      )
      const diametral = minimumNew.quantity.si * (minimumNew.quantity.kind === 'radial-clearance' ? 2 : 1)
      if (!row || diametral >= row.clearance.si - 1e-12) continue
      addMessage(
        files,
        minimumNew.place,
        'no-implausible-value',
        `Unexpected least new clearance of \`${minimumNew.figure} ${minimumNew.unit}\` of \`${ring.id}\` at a running diameter of \`${runningDiameter.figure} ${runningDiameter.unit}\`, expected at least the \`${printedText(printQuantity(row.clearance, 'mm diametral', 2))}\` of the table of running clearances`,
        {note: 'Read drawing and table again: one of the two is wrong; the build goes on', cause: row.place},
      )
    }
}
