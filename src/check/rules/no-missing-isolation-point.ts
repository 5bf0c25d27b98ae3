import type {Procedure} from '../../handbook-model/procedure.ts'
import type {Position} from '../../handbook-model/vessel-content.ts'
import {addMessage, type ContentFiles} from '../../messages/add-message.ts'

/**
 * Every role that a procedure isolates has a point on every pump that it is for, or a written reason why there is none.
 *
 * Accepted: `heating: {none: no heating coils in the slop tanks}`.
 * Rejected: a position whose isolation says nothing of `heating`, which a procedure isolates.
 */
export function noMissingIsolationPoint(
  procedure: Procedure,
  positions: readonly Position[],
  files: ContentFiles,
): void {
  const roles = new Set(
    procedure.sections.flatMap((section) =>
      section.items.flatMap((item) =>
        item.kind === 'step'
          ? item.parts.flatMap((part) =>
              part.kind === 'isolate' || part.kind === 'restore' ? [part.role] : [],
            )
          : [],
      ),
    ),
  )
  for (const position of positions) {
    for (const role of roles) {
      const found = position.isolation.find((one) => one.role === role)
      if (found && (found.points.length > 0 || found.noneBecause)) continue
      addMessage(
        files,
        position.place,
        'no-missing-isolation-point',
        `Unexpected position \`${position.id}\` without isolation point for \`${role}\`, expected a point or \`{none: reason}\` as procedure \`${procedure.id}\` isolates it`,
        {note: `Add \`${role}:\` under \`isolation:\` or in the vessel's \`isolation-pattern:\``},
      )
    }
  }
}
