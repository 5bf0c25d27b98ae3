import type {Procedure, Step} from '../../handbook-model/procedure.ts'
import {addMessage, type ContentFiles} from '../../messages/add-message.ts'

/**
 * What is drained goes somewhere: a step with `action=drain` has one with `action=dispose` at it or behind it.
 *
 * Oil and cargo that stand in a tray at the end of the job go over the side.
 *
 * Accepted: `action=drain`, later "Empty the tray into the waste drum" with `action=dispose`.
 * Rejected: a drain with no disposal in the procedure.
 */
export function noUndisposedDrain(procedure: Procedure, files: ContentFiles): void {
  const steps = procedure.sections.flatMap((section) =>
    section.items.flatMap((item): readonly Step[] => (item.kind === 'step' ? [item] : [])),
  )
  const last = steps.findLastIndex((step) => step.actions.includes('drain'))
  const drain = steps[last]
  if (!drain || steps.slice(last).some((step) => step.actions.includes('dispose'))) return
  addMessage(
    files,
    drain.place,
    'no-undisposed-drain',
    `Unexpected drain in step \`${drain.id}\` without a disposal, expected a step with \`action=dispose\` at it or behind it`,
    {note: 'Say where the liquid goes: a closed and labelled drum to shore'},
  )
}
