import {serves} from '../../conditions/serves.ts'
import type {Procedure, Section, Step} from '../../handbook-model/procedure.ts'
import type {ReplacedStep, UrgentRevision} from '../../handbook-model/urgent-content.ts'
import {addMessage, type ContentFiles} from '../../messages/add-message.ts'
import type {Pump} from '../pump.ts'
import {knownValueIds} from './known-value-ids.ts'

/**
 * An urgent revision counts for a pump, and a step that it replaces is printed for one.
 *
 * The office believes that the ships are warned; a warning that stands on no page is the worst of all.
 *
 * Accepted: `when: backstop = fitted` with such a pump on one of its vessels.
 * Rejected: the same where every backstop is `none`.
 *
 * @param counted
 *   The pumps that it counts for, one of them at least of an unknown fact included.
 */
export function noIdleUrgent(
  revision: UrgentRevision,
  counted: readonly Pump[],
  procedures: ReadonlyMap<string, Procedure>,
  files: ContentFiles,
): void {
  const {number, when, place} = revision
  if (counted.length === 0) {
    addMessage(
      files,
      place,
      'no-idle-urgent',
      `Unexpected urgent revision \`${number}\` that counts for no pump${when ? ` where \`${when.text}\`` : ''}, expected one at least`,
      {note: 'Correct vessels, positions or the condition: it would stand on no page'},
    )
    return
  }
  for (const {value} of revision.values) {
    if (counted.some(({design}) => knownValueIds(design).has(value.id))) continue
    addMessage(
      files,
      value.place,
      'no-idle-urgent',
      `Unexpected value \`${value.id}\` that no pump of urgent revision \`${number}\` has, expected one that is printed there`,
      {note: 'Name a value of these pumps'},
    )
  }
  for (const replaced of revision.steps) {
    const found = stepOf(replaced, procedures)
    if (!found || counted.some(({facts}) => found.under.every((one) => serves(one, facts)))) continue
    addMessage(
      files,
      replaced.step.place,
      'no-idle-urgent',
      `Unexpected step \`${replaced.step.id}\` that stands on no pump of urgent revision \`${number}\`, expected one that is printed there`,
      {note: 'Name the step of these pumps', cause: found.step.place},
    )
  }
}

/** The step that is replaced, with what it stands under: procedure, section and itself. */
function stepOf(
  {procedure, step: wanted}: ReplacedStep,
  procedures: ReadonlyMap<string, Procedure>,
): {readonly step: Step; readonly under: readonly (Procedure | Section | Step)[]} | undefined {
  const own = procedures.get(procedure.id)
  for (const section of own?.sections ?? [])
    for (const step of section.items)
      if (own && step.kind === 'step' && step.id === wanted.id) return {step, under: [own, section, step]}
  return undefined
}
