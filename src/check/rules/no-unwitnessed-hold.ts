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
    if (hold.signedBy.trim() === '' || hold.secondBy.trim() === '') {
      addMessage(
        files,
        hold.place,
        'no-unwitnessed-hold',
        `Unexpected hold point \`${hold.id}\` without ${hold.signedBy.trim() === '' ? '`signed-by`' : '`second-by`'}, expected two signatures`,
        {note: 'Name the role that signs and the role that signs second'},
      )
    } else if (hold.signedBy.trim().toLowerCase() === hold.secondBy.trim().toLowerCase()) {
      addMessage(
        files,
        hold.place,
        'no-unwitnessed-hold',
        `Unexpected hold point \`${hold.id}\` signed twice by \`${hold.signedBy}\`, expected two roles`,
        {note: 'Let another role sign second'},
      )
    }
  }
  if (procedure.scope === 'position') refuseOtherStart(procedure, files)
}

/** The nameplate comes first on every pump, so that no condition stands on it or on its section. */
function refuseOtherStart(procedure: Procedure, files: ContentFiles): void {
  const [section] = procedure.sections
  const first = section?.items[0]
  const named = first?.kind === 'hold-point' && first.id === 'nameplate'
  if (named && !first.when && !section?.when) return
  if (named) {
    addMessage(
      files,
      first.place,
      'no-unwitnessed-hold',
      `Unexpected condition on the nameplate hold point of procedure \`${procedure.id}\`, expected it to stand on every pump`,
      {note: 'Take `when` off the hold point and off its section'},
    )
    return
  }
  addMessage(
    files,
    first?.place ?? procedure.place,
    'no-unwitnessed-hold',
    `Unexpected first item of procedure \`${procedure.id}\`, expected \`::hold-point{#nameplate …}\``,
    {note: 'Begin the first section with the nameplate hold point'},
  )
}
