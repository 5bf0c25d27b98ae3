import type {Change, RuleCase} from './rule-case.ts'

function tried(words: string): Change {
  return (content) =>
    content.write(
      'trials.yaml',
      `trials:\n  - {procedure: ring-check, vessel: vessel-s, ${words}, date: 2031-01-05, result: done as written}\n`,
    )
}

const sound = tried('position: 1p, role: second engineer')

/** Rules about trials on board. */
export const trialCases: readonly RuleCase[] = [
  {
    rule: 'no-unplaced-trial',
    what: 'a trial of a procedure on a pump that names no pump',
    accepted: sound,
    rejected: tried('role: second engineer'),
    at: ['trials.yaml', '{procedure: ring-check'],
    reason: 'Unexpected trial of `ring-check` without `position:`, expected the pump on which it was tried',
    mend: 'Name the pump: what is tried on one design is not tried on another',
  },
  {
    rule: 'no-unplaced-trial',
    what: 'a trial told by somebody instead of a role',
    accepted: sound,
    rejected: tried('position: 1p, role: second enginer'),
    at: ['trials.yaml', 'second enginer'],
    reason:
      'Unexpected role `second enginer` of a trial, expected `second engineer` or another role that a procedure names',
    mend: 'Write a role of `performed-by` or `supervised-by`, never the name of a person',
  },
  {
    rule: 'no-undefined-reference',
    what: 'a trial on a pump that the ship has not',
    accepted: sound,
    rejected: tried('position: 1s, role: second engineer'),
    at: ['trials.yaml', '1s'],
    reason: 'Unexpected `1s`, expected the id of a position such as `1p`',
    mend: 'Write the id of a position that exists, or add it',
  },
]
