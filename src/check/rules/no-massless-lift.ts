import type {Procedure, Section, Step} from '../../handbook-model/procedure.ts'
import {addMessage, type ContentFiles} from '../../messages/add-message.ts'

/**
 * Before anything is lifted in a section, its mass stands on the page.
 *
 * Gear is chosen by the mass; the reader shall not turn back for it with the load in the air.
 *
 * Accepted: `::value{ref=mass.pump-unit}` or `::value{ref=unit-lift.mass}` at the first step with `action=lift`.
 * Rejected: a section whose first lift shows no mass.
 */
export function noMasslessLift(procedure: Procedure, files: ContentFiles): void {
  for (const section of procedure.sections) {
    const first = stepsOf(section).findIndex((step) => step.actions.includes('lift'))
    const lift = stepsOf(section)[first]
    if (
      !lift ||
      stepsOf(section)
        .slice(0, first + 1)
        .some(showsMass)
    )
      continue
    addMessage(
      files,
      lift.place,
      'no-massless-lift',
      `Unexpected lift in step \`${lift.id}\` without a mass, expected \`::value{ref=mass.…}\` or \`::value{ref=….mass}\` at it or before it in its section`,
      {note: 'Show the mass of what hangs'},
    )
  }
}

function stepsOf(section: Section): readonly Step[] {
  return section.items.flatMap((item) => (item.kind === 'step' ? [item] : []))
}

function showsMass(step: Step): boolean {
  return step.parts.some(
    (part) =>
      part.kind === 'value' && /^mass\.|\.(?:mass|leg-load|rated-load|bolt-load)$/u.test(part.value.id),
  )
}
