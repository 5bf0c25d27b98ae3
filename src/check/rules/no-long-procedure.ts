import type {Procedure, Step} from '../../handbook-model/procedure.ts'
import {addMessage, type ContentFiles} from '../../messages/add-message.ts'

/** Source: usual limit of a task that is kept in view; common practice, no source. */
const mostSteps = 30

/**
 * A procedure has at most thirty steps.
 *
 * A longer one is two jobs: nobody finds the line again after a meal.
 *
 * Steps of which a pump has one or the other count once: those of `backstop = fitted` beside those of `backstop = none`.
 *
 * Accepted: thirty steps. Rejected: thirty-one.
 */
export function noLongProcedure(procedure: Procedure, files: ContentFiles): void {
  const steps = procedure.sections.flatMap((section) =>
    section.items.flatMap((item): readonly Step[] => (item.kind === 'step' ? [item] : [])),
  )
  const last = steps.at(-1)
  const count = countOnOnePump(steps)
  if (!last || count <= mostSteps) return
  addMessage(
    files,
    last.place,
    'no-long-procedure',
    `Unexpected ${count} steps in procedure \`${procedure.id}\`, expected at most ${mostSteps}`,
    {note: 'Split it into procedures that a job joins'},
  )
}

/** Most steps that one pump can have: of the values of a fact only one stands. */
function countOnOnePump(steps: readonly Step[]): number {
  const ofFacts = new Map<string, Map<string, number>>()
  let others = 0
  for (const {when} of steps) {
    if (when?.condition.kind !== 'equals') others += 1
    else {
      const {fact, value} = when.condition
      const values = ofFacts.get(fact) ?? new Map<string, number>()
      ofFacts.set(fact, values.set(value, (values.get(value) ?? 0) + 1))
    }
  }
  return [...ofFacts.values()].reduce((sum, values) => sum + Math.max(...values.values()), others)
}
