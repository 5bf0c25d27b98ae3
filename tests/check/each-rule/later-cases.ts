import {withOldBook} from '../../handbooks/idle-faults.ts'
import {all, type Change, type RuleCase, replaced} from './rule-case.ts'

const design = 'designs/design-s.yaml'
const job = 'jobs/ring-service.yaml'
const vessel = 'vessels/vessel-s/vessel.yaml'
const procedure = 'procedures/ring-check.md'

/** A second procedure of the job. */
function procedureNamed(id: string): Change {
  return all(
    (content) =>
      content.write(`procedures/${id}.md`, content.read(procedure).replace('id: ring-check', `id: ${id}`)),
    replaced(job, '[ring-check]', `[ring-check, ${id}]`),
  )
}

/** Rules of computing and of publishing, which see what content comes to. */
export const laterCases: readonly RuleCase[] = [
  {
    rule: 'no-dry-torque',
    what: 'a joint that says nothing of its lubrication',
    accepted: replaced(design, 'utilisation: 80 %', 'utilisation: 70 %'),
    rejected: replaced(design, /^ +lubrication: .*\n/mu, ''),
    at: [design, 'id: hub-bolts'],
    reason:
      'Unexpected joint `hub-bolts` without a lubrication state, expected `lubrication:` with the id of a row of tables/friction.csv',
    mend: 'Say how threads and head are lubricated: the torque for a dry bolt breaks a lubricated one',
  },
  {
    rule: 'no-missing-table-row',
    what: 'a bolt that a table does not hold',
    accepted: replaced(design, 'thread: M12', 'thread: M10'),
    rejected: replaced(design, 'head: hexagon', 'head: socket'),
    at: [design, 'M12'],
    reason: 'Unexpected socket head of `M12` that tables/bolt-heads.csv does not hold, expected a row for it',
    mend: 'Add the row with its source to tables/bolt-heads.csv, or choose another fastener; nothing is read beyond the table',
  },
  {
    rule: 'no-uncomputable-value',
    what: 'a figure that nobody knows under a computed one',
    accepted: replaced(design, 'renewal: 1.20 mm diametral', 'renewal: 1.10 mm diametral'),
    rejected: replaced(
      design,
      'renewal: 1.20 mm diametral',
      'renewal: {value: not known, reason: no drawing}',
    ),
    at: [design, 'not known'],
    reason:
      'Unexpected gap, expected renewal clearance of the lower wear ring (no drawing) to compute `lower-ring.renewal` of `vessel-s/1p`',
    mend: 'The page prints NOT KNOWN until it is measured and reported',
  },
  {
    rule: 'no-superseded-source',
    what: 'a value that stands on a superseded book',
    accepted: replaced(
      design,
      'value: 186 kg',
      'value: {value: 186 kg, status: as-built, source: demo-data}',
    ),
    rejected: all(
      withOldBook('superseded, superseded-by: demo-data'),
      replaced(design, 'value: 186 kg', 'value: {value: 186 kg, status: as-built, source: old-data}'),
    ),
    at: ['sources.yaml', '{id: old-data'],
    reason: 'Unexpected superseded source `old-data` under 1 values, expected a current one',
    mend: 'Move the values to `demo-data`, or accept it in writing',
  },
  {
    rule: 'no-name-clash',
    what: 'a procedure and a job that come to one file',
    accepted: procedureNamed('service-ring-job'),
    rejected: procedureNamed('job-ring-service'),
    at: [vessel],
    reason:
      'Unexpected second file `p/1p/job-ring-service.html` beside `p/1p/job-ring-service.html`, expected names that differ by more than capitals',
    mend: 'Rename the position, procedure or job',
  },
  {
    rule: 'no-wrench-aboard',
    what: 'a torque above the range of the wrench that is listed',
    accepted: replaced('tools.yaml', 'most: 100 N·m', 'most: 150 N·m'),
    rejected: replaced('tools.yaml', 'most: 100 N·m', 'most: 50 N·m'),
    at: [procedure, '::value{ref=hub-bolts.torque'],
    reason:
      'Unexpected torque `hub-bolts.torque` of 61 N·m in `ring-check` with `torque-wrench` of 5 N·m to 50 N·m, expected one aboard `vessel-s` whose range from 20 % to 100 % of its most holds it',
    mend: 'List a torque wrench that covers it among the tools of the procedure, and put it aboard',
    see: [procedure, 'torque-wrench, note'],
  },
  {
    rule: 'no-wrench-aboard',
    what: 'a torque below a fifth of the most of the wrench that is listed',
    accepted: replaced('tools.yaml', 'most: 100 N·m', 'most: 300 N·m'),
    rejected: replaced('tools.yaml', 'most: 100 N·m', 'most: 310 N·m'),
    at: [procedure, '::value{ref=hub-bolts.torque'],
    reason:
      'Unexpected torque `hub-bolts.torque` of 61 N·m in `ring-check` with `torque-wrench` of 5 N·m to 310 N·m, expected one aboard `vessel-s` whose range from 20 % to 100 % of its most holds it',
    mend: 'List a torque wrench that covers it among the tools of the procedure, and put it aboard',
    see: [procedure, 'torque-wrench, note'],
  },
  {
    rule: 'no-wrench-aboard',
    what: 'a torque whose wrench is listed and ashore',
    accepted: replaced(vessel, 'number: TW-1', 'number: TW-2'),
    rejected: replaced(vessel, '{tool: torque-wrench, number: TW-1', '{tool: thermometer, number: TM-1'),
    at: [procedure, '::value{ref=hub-bolts.torque'],
    reason:
      'Unexpected torque `hub-bolts.torque` of 61 N·m in `ring-check` with `torque-wrench` of 5 N·m to 100 N·m, not aboard `vessel-s`, expected one aboard `vessel-s` whose range from 20 % to 100 % of its most holds it',
    mend: 'List a torque wrench that covers it among the tools of the procedure, and put it aboard',
    see: [procedure, 'torque-wrench, note'],
  },
  {
    rule: 'no-wrench-aboard',
    what: 'a torque whose wrench is aboard and not listed',
    accepted: replaced(procedure, 'note: hub bolts', 'note: all hub bolts'),
    rejected: replaced(procedure, '{tool: torque-wrench, note: hub bolts}', '{tool: ring-spanner}'),
    at: [procedure, '::value{ref=hub-bolts.torque'],
    reason:
      'Unexpected torque `hub-bolts.torque` of 61 N·m in `ring-check` with no torque wrench among the tools, expected one aboard `vessel-s` whose range from 20 % to 100 % of its most holds it',
    mend: 'List `torque-wrench` of 5 N·m to 100 N·m among the tools of the procedure: it is aboard',
  },
  {
    rule: 'no-wrench-aboard',
    what: 'a torque where no tool states a scale',
    accepted: replaced('tools.yaml', 'least: 5 N·m', 'least: 61 N·m'),
    rejected: replaced('tools.yaml', / torque-range: \{[^}]*\},/u, ''),
    at: [procedure, '::value{ref=hub-bolts.torque'],
    reason:
      'Unexpected torque `hub-bolts.torque` of 61 N·m in `ring-check` with no torque wrench among the tools, expected one aboard `vessel-s` whose range from 20 % to 100 % of its most holds it',
    mend: 'List a torque wrench that covers it among the tools of the procedure, and put it aboard',
  },
  {
    rule: 'no-wrench-aboard',
    what: 'a torque in a sentence alone',
    accepted: replaced(
      procedure,
      '   ::value{ref=hub-bolts.torque}\n',
      '   The torque is :value{ref=hub-bolts.torque}.\n',
    ),
    rejected: all(
      replaced(
        procedure,
        '   ::value{ref=hub-bolts.torque}\n',
        '   The torque is :value{ref=hub-bolts.torque}.\n',
      ),
      replaced('tools.yaml', 'most: 100 N·m', 'most: 50 N·m'),
    ),
    at: [procedure, ':value{ref=hub-bolts.torque'],
    reason:
      'Unexpected torque `hub-bolts.torque` of 61 N·m in `ring-check` with `torque-wrench` of 5 N·m to 50 N·m, expected one aboard `vessel-s` whose range from 20 % to 100 % of its most holds it',
    mend: 'List a torque wrench that covers it among the tools of the procedure, and put it aboard',
    see: [procedure, 'torque-wrench, note'],
  },
  {
    rule: 'no-impossible-value',
    what: 'a torque wrench whose scale does not rise',
    accepted: replaced('tools.yaml', 'least: 5 N·m', 'least: 60 N·m'),
    rejected: replaced('tools.yaml', 'least: 5 N·m, most: 100 N·m', 'least: 100 N·m, most: 100.0 N·m'),
    at: ['tools.yaml', '100.0 N·m'],
    reason:
      'Unexpected scale of `torque-wrench` from `100 N·m` to `100.0 N·m`, expected one that ends above its beginning',
    mend: 'Read the wrench again',
    see: ['tools.yaml', '100 N·m, most'],
  },
]
