import type {Design} from '../../handbook-model/design-content.ts'
import type {HoldKind} from '../../handbook-model/hold-kinds.ts'
import type {Procedure, Step} from '../../handbook-model/procedure.ts'

/** What a step does, with the procedure and the designs that its words are about. */
export interface Work {
  readonly procedure: Procedure
  readonly step: Step
  readonly designs: readonly Design[]
}

/** One kind of hold point and the work that demands it. */
export interface HoldDemand {
  readonly kind: HoldKind
  /** What demands it, in words of a message; blank where the step does not. */
  readonly because: (work: Work) => string
  /** True where the hold stands behind the first such step of a procedure, and later ones demand no other. */
  readonly once?: true
}

const opening: ReadonlySet<string> = new Set(['open-cargo', 'open-hydraulic', 'open-oil-side', 'open-purge'])
const renewing: ReadonlySet<string> = new Set(['chemical', 'change-elastomer', 'fit-seal', 'fit-sleeve'])

/**
 * Hold points that stand before the work, in the job or in the procedure itself.
 *
 * Cocks that a test or the isolation itself opens are no opening of the machine, and work of a design is done on a part
 * that hangs in no line. A hand line is no lifting gear: a lift outside of an overhaul counts where the step shows the
 * load that its gear must carry.
 */
export const holdsBefore: readonly HoldDemand[] = [
  {
    kind: 'isolation',
    because: ({procedure, step}) =>
      actionOf(step, (action) => action === 'enter' || (isOverhaul(procedure) && opening.has(action))),
  },
  {kind: 'entry', because: ({step}) => actionOf(step, (action) => action === 'enter')},
  {
    kind: 'lift-plan',
    because: ({procedure, step}) =>
      actionOf(step, (action) => action === 'lift' && (takesApart(procedure) || showsGear(step))),
  },
]

/** The hold point between the last reading as found and the first work behind it that cleans or renews. */
export const holdsAfterFound: HoldDemand = {
  kind: 'as-found',
  because: ({step}) => actionOf(step, (action) => renewing.has(action)),
}

/** Hold points that stand behind the work, in the same procedure. */
export const holdsBehind: readonly HoldDemand[] = [
  {
    kind: 'lip-orientation',
    once: true,
    because: ({procedure, step, designs}) => {
      const sets = new Set(designs.flatMap((design) => design.seals.map((seal) => seal.part.id)))
      const fitted = procedure.parts.find((one) => sets.has(one.part.id))
      return fitted && ['fit-seal', 'change-elastomer'].every((action) => step.actions.includes(action))
        ? `\`action=fit-seal\` of part \`${fitted.part.id}\``
        : ''
    },
  },
  {kind: 'setting-length', because: (work) => limitHeld(work, 'setting-length')},
  {kind: 'impeller-lock', because: (work) => jointHeld(work, 'impeller-lock')},
  {
    kind: 'tightness',
    because: ({step}) =>
      step.parts.some((part) => part.kind === 'derived' && part.calculation === 'corrected-drop')
        ? '`calculation=corrected-drop`'
        : '',
  },
]

function actionOf(step: Step, counts: (action: string) => boolean): string {
  const action = step.actions.find(counts)
  return action === undefined ? '' : `\`action=${action}\``
}

function isOverhaul({activity, scope}: Procedure): boolean {
  return scope === 'position' && (activity === 'overhaul' || activity === 'repair')
}

function takesApart({activity}: Procedure): boolean {
  return activity === 'overhaul' || activity === 'repair'
}

function showsGear({parts}: Step): boolean {
  return parts.some((part) => part.kind === 'value' && part.value.id.endsWith('.rated-load'))
}

/** The limit of an as-left reading that a design says is held. */
function limitHeld({step, designs}: Work, kind: HoldKind): string {
  const held = new Set(
    designs.flatMap(({limits}) => limits.filter((limit) => limit.held === kind).map((limit) => limit.id)),
  )
  const limits = step.parts.flatMap((part) =>
    (part.kind === 'reading' || part.kind === 'derived') && part.phase === 'as-left' ? part.limits : [],
  )
  const found = limits.find((limit) => held.has(limit.id))
  return found ? `limit \`${found.id}\`` : ''
}

/** The torque of a joint that a design says is held. */
function jointHeld({step, designs}: Work, kind: HoldKind): string {
  const held = new Set(
    designs.flatMap(({joints}) =>
      joints.filter((joint) => joint.held === kind).map((joint) => `${joint.id}.torque`),
    ),
  )
  const found = step.parts.find((part) => part.kind === 'value' && held.has(part.value.id))
  return found?.kind === 'value' ? `value \`${found.value.id}\`` : ''
}
