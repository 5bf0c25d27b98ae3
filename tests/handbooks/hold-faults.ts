import {all, type Change, type RuleCase, replaced} from '../check/each-rule/rule-case.ts'
import {withSection} from './procedure-faults.ts'

const procedure = 'procedures/ring-check.md'
const design = 'designs/design-s.yaml'
const nameplate = '{#nameplate title="Nameplate"'
const beforeLeft = '::caution{ref=unexpected-start}\n\n3. :step{#read-left'
const stepAtEnd = '   ::restore{role=pressure}\n'

function hold(kind: string): string {
  return `::hold-point{#held title="Held" kind=${kind} signed-by="second engineer" second-by="chief officer"}\n\n`
}

/** One step on the cover below its cautions, with hold points before it, in an overhaul. */
function work(action: string, classes: readonly string[], kinds: readonly string[], below = ''): Change {
  const holds = kinds.map((kind) => hold(kind).replace('#held', `#held-${kind}`)).join('')
  return all(
    replaced(procedure, 'activity: inspection', 'activity: overhaul'),
    withSection(classes, `${holds}1. :step{#open-cover action=${action}} Open the cover.\n\n   ${below}`),
  )
}

interface WorkFault {
  readonly what: string
  readonly action: string
  readonly classes: readonly string[]
  readonly kind: string
  readonly others?: readonly string[]
  readonly below?: string
}

function workFault({what, action, classes, kind, others = [], below = 'It is round.'}: WorkFault): RuleCase {
  const behind = action === 'start-pump' ? ' behind an isolation' : ''
  const tally = others.includes('isolation') || kind === 'isolation' ? replacedTally : () => undefined
  return {
    rule: 'no-unheld-work',
    what,
    accepted: all(work(action, classes, [...others, kind], below), tally),
    rejected: all(work(action, classes, others, below), tally),
    at: [procedure, ':step{#open-cover'],
    reason: `Unexpected step \`open-cover\` with \`action=${action}\`${behind}, expected a hold point with \`kind=${kind}\` before it in job \`ring-service\``,
    mend: `Add \`::hold-point{#id title=… kind=${kind} signed-by=… second-by=…}\``,
    see: ['jobs/ring-service.yaml'],
  }
}

/** Everything is counted behind the step that takes the lock off. */
const replacedTally = replaced(
  procedure,
  stepAtEnd,
  `${stepAtEnd}\n${hold('tally').replace('#held', '#counted')}`,
)

const heldJoint = replaced(design, 'pattern: crosswise', 'pattern: crosswise\n    held: impeller-lock')

const cleaned: Change = withStepBeforeLeft('')

function withStepBeforeLeft(before: string): Change {
  return all(
    withSection(['H15'], '1. :step{#look-at-cover} Close the cover.'),
    replaced(
      procedure,
      beforeLeft,
      `${before}::caution{ref=hazard-h15}\n\n3. :step{#clean-seat action=chemical} Clean the seat.\n\n${beforeLeft.replace('3.', '4.')}`,
    ),
  )
}

/** Work that goes on although nobody has signed that it may. */
export const holdFaults: readonly RuleCase[] = [
  workFault({
    what: 'a machine opened that nobody has proved to be without pressure',
    action: 'open-cargo',
    classes: ['H05', 'H06'],
    kind: 'isolation',
  }),
  workFault({
    what: 'an entry whose readings nobody has accepted',
    action: 'enter',
    classes: ['H01', 'H02', 'H08', 'H26', 'H27'],
    kind: 'entry',
    others: ['isolation'],
  }),
  workFault({
    what: 'a lift by no plan',
    action: 'lift',
    classes: ['H07', 'H08', 'H23', 'H27'],
    kind: 'lift-plan',
    below: '::value{ref=mass.pump-unit}',
  }),
  workFault({
    what: 'a first start that nobody has released',
    action: 'start-pump',
    classes: ['H04', 'H20', 'H28'],
    kind: 'first-start',
    others: ['isolation'],
  }),
  {
    rule: 'no-unheld-work',
    what: 'a seat cleaned before anybody has looked at the readings as found',
    accepted: withStepBeforeLeft(hold('as-found')),
    rejected: cleaned,
    at: [procedure, ':step{#clean-seat'],
    reason:
      'Unexpected step `clean-seat` with `action=chemical`, expected a hold point with `kind=as-found` between it and the readings as found',
    mend: 'Add `::hold-point{#id title=… kind=as-found signed-by=… second-by=…}`',
  },
  {
    rule: 'no-unheld-work',
    what: 'bolts of the impeller whose lock nobody has seen',
    accepted: all(heldJoint, replaced(procedure, beforeLeft, `${hold('impeller-lock')}${beforeLeft}`)),
    rejected: heldJoint,
    at: [procedure, ':step{#tighten-hub-bolts'],
    reason:
      'Unexpected step `tighten-hub-bolts` with value `hub-bolts.torque`, expected a hold point with `kind=impeller-lock` behind it in the procedure',
    mend: 'Add `::hold-point{#id title=… kind=impeller-lock signed-by=… second-by=…}`',
  },
  {
    rule: 'no-unheld-work',
    what: 'a pump handed back with nothing counted',
    accepted: all(replaced(procedure, nameplate, `${nameplate} kind=isolation`), replacedTally),
    rejected: replaced(procedure, nameplate, `${nameplate} kind=isolation`),
    at: [procedure, ':step{#open-pressure'],
    reason:
      'Unexpected step `open-pressure` with `::restore`, expected a hold point with `kind=tally` behind it in job `ring-service`',
    mend: 'Add `::hold-point{#id title=… kind=tally signed-by=… second-by=…}`',
    see: ['jobs/ring-service.yaml'],
  },
  {
    rule: 'no-wrong-shape',
    what: 'a mistyped kind of hold point',
    accepted: replaced(procedure, nameplate, `${nameplate} kind=lift-plan`),
    rejected: replaced(procedure, nameplate, `${nameplate} kind=lift-plann`),
    at: [procedure, 'lift-plann'],
    reason: 'Unexpected `lift-plann`, expected a kind of hold point such as `lift-plan`',
    mend: 'Write one of isolation, entry, lift-plan, as-found, lip-orientation, setting-length, impeller-lock, tightness, tally, first-start, or leave `kind` out',
  },
  {
    rule: 'no-unwitnessed-hold',
    what: 'a lift plan that one person accepts',
    accepted: replaced(procedure, nameplate, `${nameplate} kind=lift-plan`),
    rejected: replaced(
      procedure,
      `${nameplate} signed-by="second engineer" second-by="pumpman"`,
      `${nameplate} kind=lift-plan signed-by="second engineer"`,
    ),
    at: [procedure, '::hold-point'],
    reason: 'Unexpected hold point `nameplate` without `second-by`, expected two signatures',
    mend: 'Name the role that signs and the role that signs second',
  },
]
