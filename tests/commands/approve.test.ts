import {describe, expect, test} from 'vitest'
import {runApprove} from '../../src/commands/approve.ts'
import {smallContent, withChangedContent} from './changed-content.ts'
import {optionsOf, sign} from './issues-for-tests.ts'

const procedure = 'procedures/ring-check.md'

describe('a signature', () => {
  test('is written once, whoever signs again, and in the order of the roles', async () => {
    await withChangedContent(async (content) => {
      await sign(content, '2031-01-02', [procedure])
      await sign(content, '2031-01-05', ['procedures'])
      expect(content.read('approvals.yaml')).toMatch(
        /^# Written by .*\napprovals:\n {2}- file: "procedures\/ring-check\.md"\n {4}hash: "[0-9a-f]{64}"\n {4}signatures:\n(?: {6}- role: "(?:author|reviewer|approver)"\n {8}by: "[a-z-]+"\n {8}date: "2031-01-05"\n {8}statement: "read"\n){3}$/u,
      )
    }, smallContent)
  })

  test('on an older text goes when the text is signed anew, and with its file', async () => {
    await withChangedContent(async (content) => {
      await sign(content, '2031-01-02', ['terms.yaml', procedure])
      content.replace(procedure, 'lock it.', 'lock it up.')
      const author = {role: 'author', by: 'pump-author', date: '2031-01-03', statement: 'written'}
      await runApprove({...author, sources: [procedure]}, optionsOf(content))
      const text = content.read('approvals.yaml')
      expect(text.match(/role: /gu)).toHaveLength(4)
      expect(text).toContain('date: "2031-01-03"')
    }, smallContent)
  })
})

describe('a signature is refused', () => {
  test.each<[string, Partial<Parameters<typeof runApprove>[0]>, string]>([
    [
      'on a file that is not there',
      {sources: ['procedures/ring-chek.md']},
      'Unexpected source `procedures/ring-chek.md`, expected `procedures/ring-check.md`',
    ],
    ['on nothing', {sources: []}, 'Unexpected call without a source'],
    [
      'in a role that is not known',
      {role: 'checker'},
      'Unexpected role `checker`, expected one of author, reviewer, approver with --as',
    ],
    [
      'of a person who is not known',
      {by: 'pump-autor'},
      'Unexpected person `pump-autor`, expected `pump-author`',
    ],
    [
      'of a person without the authority',
      {role: 'approver'},
      'Unexpected `pump-author` as approver, expected a person who may `approve` by office.yaml:8',
    ],
    ['without a day', {date: ''}, 'expected it with --date'],
    ['without words', {statement: ''}, 'expected what was done with --statement'],
    [
      'of one who has signed in another role',
      {role: 'reviewer', by: 'approving-superintendent'},
      'Unexpected `approving-superintendent` as reviewer of `procedures/ring-check.md` and as its approver, expected another person',
    ],
  ])('%s', async (_what, words, reason) => {
    const outcome = await withChangedContent(async (content) => {
      await sign(content, '2031-01-02')
      const before = content.read('approvals.yaml')
      const signed = await runApprove(
        {
          sources: [procedure],
          role: 'author',
          by: 'pump-author',
          date: '2031-01-03',
          statement: 'read',
          ...words,
        },
        optionsOf(content),
      )
      expect(content.read('approvals.yaml')).toBe(before)
      return signed
    }, smallContent)
    expect(outcome).toMatchObject({exitStatus: 2, out: ''})
    expect(outcome.err).toContain(reason)
  })
})
