import type {Caution} from '../../handbook-model/office-content.ts'
import type {Procedure, Section, Step} from '../../handbook-model/procedure.ts'
import {addMessage, type ContentFiles} from '../../messages/add-message.ts'
import {expectedWord} from '../nearest-word.ts'
import {
  actionsAtReactiveCargo,
  hazardClassesOfActions,
  reactiveCargoHazard,
} from './hazard-classes-of-actions.ts'

/**
 * Every hazard that a step's action class brings has a caution at the step or for its section.
 *
 * The crew reads one step at a time; a hazard named only somewhere else is a hazard not named.
 * A caution under a condition of its own does not count, unless the step has the same condition. A step that calls for a
 * caution that is not there waits until that reference is mended.
 *
 * Accepted: `::caution{ref=suspended-load}` … before `:step{#lower action=lift}`.
 * Rejected: `:step{#lower action=lift}` with no caution of the suspended load.
 */
export function noUncautionedHazard(
  procedure: Procedure,
  cautions: ReadonlyMap<string, Caution>,
  reactiveCargo: boolean,
  files: ContentFiles,
): void {
  for (const section of procedure.sections) {
    for (const step of section.items) {
      if (step.kind === 'step') checkStep(step, section, cautions, reactiveCargo, files)
    }
  }
}

function checkStep(
  step: Step,
  section: Section,
  cautions: ReadonlyMap<string, Caution>,
  reactiveCargo: boolean,
  files: ContentFiles,
): void {
  const uses = [...section.cautions, ...step.cautions].filter(
    (use) => !use.when || use.when.text === step.when?.text,
  )
  const allThere = uses.every((use) => cautions.has(use.caution.id))
  const covered = new Set(uses.map((use) => cautions.get(use.caution.id)?.hazardClass))
  for (const action of step.actions) {
    const demanded = hazardClassesOfActions.get(action)
    if (!demanded) {
      addMessage(
        files,
        step.place,
        'no-undefined-reference',
        `Unexpected action class \`${action}\` of step \`${step.id}\`, ${expectedWord(action, hazardClassesOfActions.keys(), 'an action class')}`,
        {note: `The action classes are ${[...hazardClassesOfActions.keys()].join(', ')}`},
      )
      continue
    }
    const more = reactiveCargo && actionsAtReactiveCargo.includes(action) ? [reactiveCargoHazard] : []
    for (const hazard of [...demanded, ...more]) {
      if (covered.has(hazard) || !allThere) continue
      const serving = [...cautions.values()]
        .filter((one) => one.hazardClass === hazard)
        .map((one) => `\`${one.id}\``)
      addMessage(
        files,
        step.place,
        'no-uncautioned-hazard',
        `Unexpected step \`${step.id}\` with action \`${action}\` and no caution of hazard class ${hazard}, expected ${serving.length > 0 ? serving.join(' or ') : 'a caution of that class'} before it`,
        {
          note: `Write \`::caution{ref=…}\` above the step, or mark one with \`section\` under the heading`,
        },
      )
    }
  }
}
