import type {Procedure} from '../../handbook-model/procedure.ts'
import {addMessage, type ContentFiles} from '../../messages/add-message.ts'

/**
 * A hold point is signed by two people, and every procedure on a pump begins with the nameplate hold point.
 *
 * The same work on the wrong pump is the costliest mistake aboard; a hold with one signature holds nobody.
 *
 * Accepted: `::hold-point{#nameplate title="Nameplate" signed-by="second engineer" second-by="pumpman"}`.
 * Rejected: a hold point with `signed-by` alone, or with the same role twice.
 */
export function noUnwitnessedHold(procedure: Procedure, files: ContentFiles): void {
  const items = procedure.sections.flatMap((section) => section.items)
  for (const hold of items) {
    if (hold.kind !== 'hold-point') continue
    if (hold.signedBy === '' || hold.secondBy === '') {
      addMessage(
        files,
        hold.place,
        'no-unwitnessed-hold',
        `Unexpected hold point \`${hold.id}\` without ${hold.signedBy === '' ? '`signed-by`' : '`second-by`'}, expected two signatures`,
        {note: 'Name the role that signs and the role that signs second'},
      )
    } else if (hold.signedBy === hold.secondBy) {
      addMessage(
        files,
        hold.place,
        'no-unwitnessed-hold',
        `Unexpected hold point \`${hold.id}\` signed twice by \`${hold.signedBy}\`, expected two roles`,
        {note: 'Let another role sign second'},
      )
    }
  }
  const [first] = items
  if (procedure.scope !== 'position' || (first?.kind === 'hold-point' && first.id === 'nameplate')) return
  addMessage(
    files,
    first?.place ?? procedure.place,
    'no-unwitnessed-hold',
    `Unexpected first item of procedure \`${procedure.id}\`, expected \`::hold-point{#nameplate …}\``,
    {note: 'Begin the first section with the nameplate hold point'},
  )
}
