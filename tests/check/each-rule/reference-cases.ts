import {all, type Change, type RuleCase, replaced, unchanged} from './rule-case.ts'

const tools = 'tools.yaml'
const job = 'jobs/ring-service.yaml'
const design = 'designs/design-s.yaml'
const vessel = 'vessels/vessel-s/vessel.yaml'
const procedure = 'procedures/ring-check.md'

/** A second procedure of the job, and a sentence of the first that refers to one of the two. */
function sentenceTo(id: string): Change {
  return all(
    (content) =>
      content.write(
        'procedures/ring-again.md',
        content.read(procedure).replace('id: ring-check', 'id: ring-again'),
      ),
    replaced(job, '[ring-check]', '[ring-check, ring-again]'),
    replaced(procedure, 'is vented.', `is vented: :procedure[the other check]{ref=${id}}.`),
  )
}

/** Rules of identity and references, and of values that cannot be. */
export const referenceCases: readonly RuleCase[] = [
  {
    rule: 'no-duplicate-id',
    what: 'two tools under one id',
    accepted: replaced(tools, 'id: ring-spanner', 'id: torque-wrench-2'),
    rejected: replaced(tools, 'id: ring-spanner', 'id: torque-wrench'),
    at: [tools, '{id: torque-wrench, title: ring spanner'],
    reason: 'Unexpected second `torque-wrench`, expected each id once',
    mend: 'Rename one of the two',
    see: [tools, '{id: torque-wrench, title: torque wrench'],
  },
  {
    rule: 'no-retired-id',
    what: 'a step under an id of an old step',
    accepted: replaced(procedure, '#read-found', '#read-rings'),
    rejected: replaced(procedure, '#read-found', '#read-ring'),
    at: [procedure, ':step{#read-ring '],
    reason: 'Unexpected id `read-ring` that is retired, expected a new id',
    mend: 'Records of old revisions still mean the old step: choose another id',
  },
  {
    rule: 'no-undefined-reference',
    what: 'a mistyped value id',
    accepted: replaced(procedure, '::value{ref=hub-bolts.torque}', '::value{ref=hub-bolts.passes}'),
    rejected: replaced(procedure, '::value{ref=hub-bolts.torque}', '::value{ref=hub-bolt.torque}'),
    at: [procedure, '::value{ref=hub-bolt.torque}'],
    reason: 'Unexpected `hub-bolt.torque`, expected the id of a value such as `hub-bolts.torque`',
    mend: 'Write the id of a value that exists, or add it',
  },
  {
    rule: 'no-reference-loop',
    what: 'a procedure that sends the reader to itself',
    accepted: sentenceTo('ring-again'),
    rejected: sentenceTo('ring-check'),
    at: [procedure, ':procedure'],
    reason: 'Unexpected reference of procedure `ring-check` to itself, expected another procedure',
    mend: 'Name the step in words, or refer to the procedure that is meant',
  },
  {
    rule: 'no-empty-vessel',
    what: 'a vessel without a pump',
    accepted: unchanged,
    rejected: replaced(vessel, /^positions:\n[\s\S]*(?=^tools-aboard)/mu, 'positions: []\n'),
    at: [vessel],
    reason: 'Unexpected vessel `vessel-s` without a pump, expected at least one entry under `positions`',
    mend: 'List the pump positions of the vessel',
  },
  {
    rule: 'no-impossible-value',
    what: 'pipes that do not nest',
    accepted: replaced(design, 'inner-pipe-outside: 139.7 mm', 'inner-pipe-outside: 160.2 mm'),
    rejected: replaced(design, 'inner-pipe-outside: 139.7 mm', 'inner-pipe-outside: 160.3 mm'),
    at: [design, '160.3 mm\n  inner'],
    reason: 'Unexpected outer pipe that is not larger than the inner pipe, expected pipes that nest',
    mend: 'Read the drawing or the record again',
    see: [design, '160.3 mm\n  head'],
  },
  {
    rule: 'no-implausible-value',
    what: 'a value outside the usual window',
    accepted: replaced(vessel, 'deadweight: 17600 t', 'deadweight: 50000 t'),
    rejected: replaced(vessel, 'deadweight: 17600 t', 'deadweight: 50001 t'),
    at: [vessel, '50001 t'],
    reason: 'Unexpected deadweight of `50001 t` outside the usual window, expected 3000 t to 50000 t',
    mend: 'Read the drawing or the record again; the build goes on',
  },
]
