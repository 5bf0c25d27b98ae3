import type {Change, RuleCase} from './rule-case.ts'

const hash = 'a'.repeat(64)

function signed(...signatures: readonly string[]): Change {
  return (content) =>
    content.write(
      'approvals.yaml',
      `approvals:\n  - file: terms.yaml\n    hash: ${hash}\n    signatures:\n${signatures.map((one) => `      - {${one}}\n`).join('')}`,
    )
}

function author(by: string): string {
  return `role: author, by: ${by}, date: 2031-01-02, statement: written`
}

function approver(by: string): string {
  return `role: approver, by: ${by}, date: 2031-01-04, statement: accepted`
}

function changed(rest: string): Change {
  return (content) =>
    content.write(
      'changes.yaml',
      `changes:\n  - {file: terms.yaml, hash: ${hash}, class: editorial, reason: spelling${rest}}\n`,
    )
}

/** Rules about who signs, and what may be called a change of wording. */
export const approvalCases: readonly RuleCase[] = [
  {
    rule: 'no-unauthorised-signature',
    what: 'an approver whom the office lets write alone',
    accepted: signed(author('pump-author'), approver('approving-superintendent')),
    rejected: signed(approver('pump-author')),
    at: ['approvals.yaml', 'pump-author'],
    reason: 'Unexpected `pump-author` as approver of `terms.yaml`, expected a person who may `approve`',
    mend: 'Let a person with the authority sign, or give it in office.yaml',
    see: ['office.yaml', '{id: pump-author'],
  },
  {
    rule: 'no-own-approval',
    what: 'a reviewer who approves what he reviewed',
    accepted: signed(
      'role: reviewer, by: safety-reviewer, date: 2031-01-03, statement: read',
      approver('approving-superintendent'),
    ),
    rejected: signed(
      'role: reviewer, by: approving-superintendent, date: 2031-01-03, statement: read',
      'role: approver, date: 2031-01-04, statement: accepted, by: "approving-superintendent"',
    ),
    at: ['approvals.yaml', '"approving-superintendent"'],
    reason:
      'Unexpected `approving-superintendent` as approver of `terms.yaml` and as its reviewer, expected another person',
    mend: 'Let another person sign',
    see: ['approvals.yaml', '{role: reviewer'],
  },
  {
    rule: 'no-disguised-change',
    what: 'a change of wording that no reviewer has seen',
    accepted: changed(', reviewed-by: safety-reviewer'),
    rejected: changed(''),
    at: ['changes.yaml', '{file: terms.yaml'],
    reason: 'Unexpected editorial change of `terms.yaml` without a reviewer, expected `reviewed-by:`',
    mend: 'Let a person who may review confirm that wording alone changed',
  },
]
