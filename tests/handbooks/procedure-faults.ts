import {all, type Change, type RuleCase, replaced} from '../check/each-rule/rule-case.ts'

const procedure = 'procedures/ring-check.md'
const vessel = 'vessels/vessel-s/vessel.yaml'
const sharpEdges = 'cautions/sharp-edges.yaml'
const note = 'The locking plates are bent up afterwards.'
const isolation = '   ::isolate{role=pressure}\n'
const restoration = '   ::restore{role=pressure}\n'
const holdPoint = '::hold-point{#nameplate title="Nameplate" signed-by="second engineer" second-by="pumpman"}'

/** A pump with one more thing that is fitted for a job and comes off again, and a procedure that puts it on. */
function fitted(role: string, kind: string): Change {
  return all(
    replaced(
      vessel,
      'isolation-pattern:\n',
      `isolation-pattern:\n  ${role}:\n    - {id: "{tag}-${role}", tag: "X {tag}", medium: gas, kind: ${kind}, normal: not fitted, isolated: fitted, where: top plate, lock: red tag, proof: seen, restored-with: taken off}\n`,
    ),
    replaced(procedure, isolation, `${isolation}\n   ::isolate{role=${role}}\n`),
  )
}

/** The same with the step that takes it off again. */
function fittedAndTakenOff(role: string, kind: string): Change {
  return all(
    fitted(role, kind),
    replaced(procedure, restoration, `${restoration}\n   ::restore{role=${role}}\n`),
  )
}

/** What stays on: one fault for each kind of thing that is fitted for a job. */
function leftOn(what: string, role: string, kind: string): RuleCase {
  return {
    rule: 'no-unrestored-isolation',
    what,
    accepted: fittedAndTakenOff(role, kind),
    rejected: fitted(role, kind),
    at: [procedure, `::isolate{role=${role}}`],
    reason: `Unexpected isolation of \`${role}\` in step \`close-pressure\` that job \`ring-service\` never restores, expected \`::restore{role=${role}}\` in a later step`,
    mend: 'Add the restore step to the procedure that hands the pump back',
    see: ['jobs/ring-service.yaml'],
  }
}

/** A section with steps of a hazardous action below cautions of every hazard class that it brings. */
export function withSection(classes: readonly string[], steps: string): Change {
  return (content) => {
    for (const one of classes)
      content.write(
        `cautions/hazard-${one.toLowerCase()}.yaml`,
        content
          .read('cautions/oil-under-pressure.yaml')
          .replace('id: oil-under-pressure', `id: hazard-${one.toLowerCase()}`)
          .replace('H03', one),
      )
    const cautions = classes.map((one) => `::caution{ref=hazard-${one.toLowerCase()} section}\n\n`).join('')
    content.replace(
      procedure,
      '## Restore the pump',
      `## Work on the cover\n\n::section{#cover-work}\n\n${cautions}${steps}\n\n## Restore the pump`,
    )
  }
}

function lift(below: string): Change {
  const steps = `1. :step{#lift-cover action=lift} Lift the cover.\n\n   ${below}`
  return withSection(['H07', 'H08', 'H23', 'H27'], steps)
}

function drain(action: string): Change {
  const steps = `1. :step{#drain-oil action=drain} Drain the oil.\n\n2. :step{#empty-tray${action}} Empty the tray.`
  return withSection(['H09', 'H13', 'H21'], steps)
}

function reading(unit: string): Change {
  return replaced(
    procedure,
    note,
    `::reading{#turn title="run-out of the hub" quantity=length ${unit} stations="one turn" instrument=inside-micrometer phase=during limits=run-out}`,
  )
}

/** Faults that an author plants in a procedure or a caution, beside those that stand among the twins of the rules. */
export const procedureFaults: readonly RuleCase[] = [
  {
    rule: 'no-missing-key',
    what: 'a caution without its hazard',
    accepted: replaced(sharpEdges, /^hazard: .*/mu, 'hazard: Ring and hub have sharp edges.'),
    rejected: replaced(sharpEdges, /^hazard: .*\n/mu, ''),
    at: [sharpEdges],
    reason: 'Unexpected map without `hazard`, expected `hazard:` with text',
    mend: 'Add `hazard:`',
  },
  {
    rule: 'no-missing-key',
    what: 'a caution without its consequence',
    accepted: replaced(sharpEdges, /^consequence: .*/mu, 'consequence: Deep cuts.'),
    rejected: replaced(sharpEdges, /^consequence: .*\n/mu, ''),
    at: [sharpEdges],
    reason: 'Unexpected map without `consequence`, expected `consequence:` with text',
    mend: 'Add `consequence:`',
  },
  {
    rule: 'no-incomplete-caution',
    what: 'a caution without advice',
    accepted: replaced(sharpEdges, /^avoid: .*/mu, 'avoid: [Wear gloves.]'),
    rejected: replaced(sharpEdges, /^avoid: .*/mu, 'avoid: []'),
    at: [sharpEdges],
    reason: 'Unexpected caution `sharp-edges` without advice, expected at least one line under `avoid`',
    mend: 'Say what the reader does to avoid the harm',
  },
  {
    rule: 'no-incomplete-caution',
    what: 'a signal word that does not fit the harm',
    accepted: all(
      replaced(sharpEdges, 'word: CAUTION', 'word: WARNING'),
      replaced(sharpEdges, 'minor-or-moderate-injury', 'death-or-serious-injury'),
    ),
    rejected: replaced(sharpEdges, 'word: CAUTION', 'word: WARNING'),
    at: [sharpEdges],
    reason:
      'Unexpected word WARNING of caution `sharp-edges`, expected CAUTION for minor-or-moderate-injury that could happen',
    mend: 'Change the word, the worst harm or the likelihood',
  },
  leftOn('a blind that stays in its line', 'cofferdam-vent', 'blind'),
  leftOn('temporary plugs that stay in', 'temporary-plugs', 'plug'),
  leftOn('transport bolts that stay in', 'transport-bolts', 'transport-bolt'),
  {
    rule: 'no-undisposed-drain',
    what: 'oil that is drained and goes nowhere',
    accepted: drain(' action=dispose'),
    rejected: drain(''),
    at: [procedure, ':step{#drain-oil'],
    reason:
      'Unexpected drain in step `drain-oil` without a disposal, expected a step with `action=dispose` at it or behind it',
    mend: 'Say where the liquid goes: a closed and labelled drum to shore',
  },
  {
    rule: 'no-massless-lift',
    what: 'a lift whose mass stands nowhere',
    accepted: lift('::value{ref=mass.pump-unit}'),
    rejected: lift('The cover is round.'),
    at: [procedure, ':step{#lift-cover'],
    reason:
      'Unexpected lift in step `lift-cover` without a mass, expected `::value{ref=mass.…}` or `::value{ref=….mass}` at it or before it in its section',
    mend: 'Show the mass of what hangs',
  },
  {
    rule: 'no-unlimited-reading',
    what: 'a reading in a unit that there is not',
    accepted: reading('unit=mm'),
    rejected: reading('unit=mmm'),
    at: [procedure, '::reading{#turn'],
    reason: 'Unexpected unit `mmm` of reading `turn`, expected a unit such as `mm`',
    mend: 'Write the unit in its proper form',
  },
  {
    rule: 'no-missing-key',
    what: 'a reading without a unit',
    accepted: reading('unit=mm'),
    rejected: reading(''),
    at: [procedure, '::reading{#turn'],
    reason: 'Unexpected `reading` without `unit=…`, expected it in the braces',
    mend: 'Add `unit=…` inside the braces',
  },
  {
    rule: 'no-unknown-fact',
    what: 'a condition over a fact that nobody declared',
    accepted: replaced(procedure, 'backstop = fitted', 'vessel = vessel-s'),
    rejected: replaced(procedure, 'backstop = fitted', 'backstopp = fitted'),
    at: [procedure, 'backstopp = fitted'],
    reason: 'Unexpected fact `backstopp`, expected a fact such as `backstop`',
    mend: 'Declare the fact in office.yaml',
  },
  {
    rule: 'no-unknown-fact',
    what: 'a condition over a fact that nobody knows of the pump',
    accepted: replaced(vessel, 'backstop: fitted', 'backstop: none'),
    rejected: replaced(vessel, 'backstop: fitted', 'backstop: {value: not known, reason: no record}'),
    at: [procedure, 'backstop = fitted'],
    reason:
      'Unexpected condition on fact `backstop` that is not known for position `1p`, expected an `::identify{fact=backstop}` step and a hold point before it in `ring-check`',
    mend: 'Let the crew find out first, or state the fact as fitted',
    see: [vessel, 'id: 1p\n'],
  },
  {
    rule: 'no-unwitnessed-hold',
    what: 'a hold point without a second signature',
    accepted: replaced(procedure, 'second-by="pumpman"', 'second-by="chief officer"'),
    rejected: replaced(procedure, ' second-by="pumpman"', ''),
    at: [procedure, '::hold-point'],
    reason: 'Unexpected hold point `nameplate` without `second-by`, expected two signatures',
    mend: 'Name the role that signs and the role that signs second',
  },
  {
    rule: 'no-unwitnessed-hold',
    what: 'a procedure that does not begin with the nameplate',
    accepted: replaced(procedure, 'title="Nameplate"', 'title="Nameplate read"'),
    rejected: replaced(procedure, holdPoint, holdPoint.replace('#nameplate', '#plate')),
    at: [procedure, '::hold-point'],
    reason: 'Unexpected first item of procedure `ring-check`, expected `::hold-point{#nameplate …}`',
    mend: 'Begin the first section with the nameplate hold point',
  },
]
