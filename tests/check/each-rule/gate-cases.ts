import {all, type RuleCase, replaced} from './rule-case.ts'

const procedure = 'procedures/ring-check.md'
const vessel = 'vessels/vessel-s/vessel.yaml'
const sharpEdges = 'cautions/sharp-edges.yaml'
const note = 'The locking plates are bent up afterwards.'
const beforeRestoring = '::caution{ref=oil-under-pressure}\n::caution{ref=unexpected-start}'
const isolation = '   ::isolate{role=pressure}\n'
const restoration = '   ::restore{role=pressure}\n'

function reading(more: string): string {
  return `::reading{#turn title="run-out of the hub" stations="one turn" phase=during ${more}}`
}

/** Rules that keep people whole: cautions, isolation, readings, hold points. */
export const gateCases: readonly RuleCase[] = [
  {
    rule: 'no-uncautioned-hazard',
    what: 'a step whose action brings a hazard that no caution names',
    accepted: replaced(procedure, beforeRestoring, beforeRestoring.replace('pressure}', 'pressure section}')),
    rejected: replaced(procedure, beforeRestoring, '::caution{ref=unexpected-start}'),
    at: [procedure, ':step{#open-pressure'],
    reason:
      'Unexpected step `open-pressure` with action `restore-pressure` and no caution of hazard class H03, expected `oil-under-pressure` before it',
    mend: 'Write `::caution{ref=…}` above the step, or mark one with `section` under the heading',
  },
  {
    rule: 'no-late-caution',
    what: 'a caution after the instruction',
    accepted: replaced(
      procedure,
      '2. :step{#tighten',
      '::caution{ref=oil-under-pressure}\n\n2. :step{#tighten',
    ),
    rejected: replaced(procedure, note, '::caution{ref=oil-under-pressure}'),
    at: [procedure, '::caution{ref=oil-under-pressure}\n\n   ::value'],
    reason: 'Unexpected caution `oil-under-pressure` after the instruction, expected it before the step',
    mend: 'Move the `::caution` line above the list item',
  },
  {
    rule: 'no-incomplete-caution',
    what: 'advice that says nothing to do',
    accepted: replaced(sharpEdges, /^avoid: .*/mu, 'avoid: [Do not touch the edges.]'),
    rejected: replaced(sharpEdges, /^avoid: .*/mu, 'avoid: [Be careful with the edges.]'),
    at: [sharpEdges],
    reason:
      'Unexpected advice `Be careful with the edges.` of caution `sharp-edges`, expected a line that starts with a verb of the list',
    mend: 'Begin with a verb such as bend, bolt, bond, call, cap, catch, check, choose',
  },
  {
    rule: 'no-unrestored-isolation',
    what: 'a valve that stays locked',
    accepted: replaced(procedure, restoration, `${restoration}\n   The lock goes back to its board.\n`),
    rejected: replaced(procedure, restoration, ''),
    at: [procedure, '::isolate'],
    reason:
      'Unexpected isolation of `pressure` in step `close-pressure` that job `ring-service` never restores, expected `::restore{role=pressure}` in a later step',
    mend: 'Add the restore step to the procedure that hands the pump back',
    see: ['jobs/ring-service.yaml'],
  },
  {
    rule: 'no-unmatched-restoration',
    what: 'a valve opened that nobody closed',
    accepted: replaced(procedure, isolation, `${isolation}\n   The key stays with the second engineer.\n`),
    rejected: replaced(procedure, isolation, ''),
    at: [procedure, '::restore'],
    reason:
      'Unexpected restoration of `pressure` in step `open-pressure`, expected an isolation of it earlier in job `ring-service`',
    mend: 'Add `::isolate{role=pressure}` before it, or remove the restoration',
  },
  {
    rule: 'no-missing-isolation-point',
    what: 'a pump without a point for a role that is isolated',
    accepted: replaced(
      vessel,
      /^ {2}pressure:\n.*\n/mu,
      '  pressure: {none: the line is blinded for good}\n',
    ),
    rejected: replaced(vessel, /^ {2}pressure:\n.*\n/mu, '  return: {none: the line is blinded for good}\n'),
    at: [vessel, 'id: 1p\n'],
    reason:
      'Unexpected position `1p` without isolation point for `pressure`, expected a point or `{none: reason}` as procedure `ring-check` isolates it',
    mend: "Add `pressure:` under `isolation:` or in the vessel's `isolation-pattern:`",
  },
  {
    rule: 'no-unlimited-reading',
    what: 'a reading that nobody judges',
    accepted: replaced(
      procedure,
      note,
      reading('quantity=length unit=mm instrument=inside-micrometer limits=run-out'),
    ),
    rejected: replaced(procedure, note, reading('quantity=length unit=mm instrument=inside-micrometer')),
    at: [procedure, '::reading{#turn'],
    reason:
      'Unexpected reading `turn` without a limit, expected `limits=…` or a `::derived` that is computed from it',
    mend: 'Name a limit of the design, or the derived reading that is judged',
  },
  {
    rule: 'no-unread-instrument',
    what: 'an instrument that shows nothing',
    accepted: replaced(
      procedure,
      note,
      reading('quantity=length unit=mm instrument=outside-micrometer limits=run-out'),
    ),
    rejected: replaced(
      procedure,
      note,
      reading('quantity=length unit=mm instrument=ring-spanner limits=run-out'),
    ),
    at: [procedure, '::reading{#turn'],
    reason:
      'Unexpected instrument `ring-spanner` of reading `turn` without an instrument class, expected `instrument: {graduation: …, uncertainty: …}` in tools.yaml',
    mend: 'State what the instrument can show',
    see: ['tools.yaml', '{id: ring-spanner'],
  },
  {
    rule: 'no-unwitnessed-hold',
    what: 'a hold point that one role signs twice',
    accepted: replaced(procedure, 'second-by="pumpman"', 'second-by="chief officer"'),
    rejected: replaced(procedure, 'second-by="pumpman"', 'second-by="second engineer"'),
    at: [procedure, '::hold-point'],
    reason: 'Unexpected hold point `nameplate` signed twice by `second engineer`, expected two roles',
    mend: 'Let another role sign second',
  },
  {
    rule: 'no-as-left-alone',
    what: 'a reading as left without its twin as found',
    accepted: all(
      replaced(procedure, '#gap-found', '#opening-found'),
      replaced(procedure, '#gap-left', '#opening-left'),
    ),
    rejected: replaced(procedure, '#gap-left', '#opening-left'),
    at: [procedure, '::derived{#opening-left'],
    reason:
      'Unexpected as-left reading `opening-left` without an as-found twin before it, expected a reading `opening-found` with `phase=as-found`',
    mend: 'Take the reading as found first and name it `opening-found`; the as-left one ends in `-left`',
  },
  {
    rule: 'no-unit-mix',
    what: 'a clearance held against a length',
    accepted: replaced(
      procedure,
      note,
      reading('quantity=length unit=µm instrument=inside-micrometer limits=run-out'),
    ),
    rejected: replaced(
      procedure,
      note,
      reading('quantity=radial-clearance unit="mm radial" instrument=inside-micrometer limits=run-out'),
    ),
    at: [procedure, '::reading{#turn'],
    reason: 'Unexpected unit `mm radial` of reading `turn`, expected a unit of length as in limit `run-out`',
    mend: 'Read and limit in one kind of unit; radial and diametral, gauge and absolute are different kinds',
    see: ['designs/design-s.yaml', '{id: run-out, title: run-out of the hub'],
  },
]
