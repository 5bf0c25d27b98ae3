import {describe, expect, test} from 'vitest'
import {runIssue} from '../../src/commands/issue.ts'
import type {CommandOptions, Outcome} from '../../src/commands/outcome.ts'
import {checkAndCompute} from '../../src/commands/run-stages.ts'
import {nodeDisk} from '../../src/publish/disk.ts'
import {type ChangedContent, smallContent, withChangedContent} from './changed-content.ts'
import {declareAll, issue, ledgerOf, optionsOf, program, sign, stopIssues} from './issues-for-tests.ts'

const procedure = 'procedures/ring-check.md'
const page = 'vessel-s/1p/ring-check'

describe('an issue is refused', () => {
  const refused = (
    spoil: (content: ChangedContent) => void | Promise<void>,
    words: Partial<Parameters<typeof runIssue>[0]> = {},
    options: Partial<CommandOptions> = {},
  ): Promise<Outcome> =>
    withChangedContent(async (content) => {
      await sign(content, '2031-01-02')
      await issue(content, '2031-01', '2031-01-10')
      await spoil(content)
      return runIssue(
        {number: '2031-02', date: '2031-02-10', by: 'document-controller', ...words},
        optionsOf(content, {asOf: '2031-02-10', ...options}),
        nodeDisk,
        async () => program,
      )
    }, smallContent)

  test('when one letter of a source changed after its approval', async () => {
    const outcome = await refused((content) => content.replace(procedure, 'lock it.', 'lock it!'))
    expect(outcome.exitStatus).toBe(1)
    expect(outcome.out).toMatch(/^Nothing issued: /u)
    expect(outcome.err).toMatch(
      /procedures\/ring-check\.md:1:1 error Unexpected change of `procedures\/ring-check\.md` after its approval, expected the text that was signed no-unapproved-source\n.*sheetanchor approve procedures\/ring-check\.md --as author .*\n {4}see: .*approvals\.yaml:\d+:5\n/u,
    )
  })

  test('when nobody signed a source', async () => {
    const outcome = await refused((content) => content.write('approvals.yaml', 'approvals: []\n'))
    expect(outcome.err).toContain(
      'procedures/ring-check.md:1:1 error Unexpected source `procedures/ring-check.md` without a signature of its author, reviewer, approver, expected all three on the text as it reads now no-unapproved-source',
    )
  })

  test.each<[string, Partial<Parameters<typeof runIssue>[0]>, Partial<CommandOptions>, string]>([
    [
      'of no vessel',
      {},
      {vessels: []},
      'Unexpected call without a vessel, expected one of `vessel-s` with --vessel',
    ],
    [
      'of a vessel that is not there',
      {},
      {vessels: ['vessel-x']},
      'Unexpected vessel `vessel-x`, expected one of `vessel-s` with --vessel',
    ],
    [
      'under a number of another form',
      {number: '3'},
      {},
      'Unexpected issue `3`, expected year and running number like `2031-03` with --number',
    ],
    [
      'under the number before',
      {number: '2031-01'},
      {},
      'Unexpected issue `2031-01` of 2031-02-10, expected one after `2031-01` of 2031-01-10',
    ],
    [
      'of an earlier day',
      {date: '2031-01-09'},
      {},
      'Unexpected issue `2031-02` of 2031-01-09, expected one after `2031-01` of 2031-01-10',
    ],
    ['without a day', {date: ''}, {}, 'Unexpected issue without a day, expected it with --date'],
    [
      'by nobody that is known',
      {by: 'document-controler'},
      {},
      'Unexpected person `document-controler`, expected `document-controller` or another of',
    ],
    [
      'by a person without the authority',
      {by: 'pump-author'},
      {},
      'Unexpected `pump-author` as publisher, expected a person who may `publish` by office.yaml:8',
    ],
  ])('%s', async (_what, words, options, reason) => {
    const outcome = await refused(() => undefined, words, options)
    expect(outcome).toMatchObject({exitStatus: 2, out: ''})
    expect(outcome.err).toContain(reason)
  })

  test('without the day that dates are compared with', async () => {
    const outcome = await withChangedContent(async (content) => {
      const words = {number: '2031-01', date: '2031-01-10', by: 'document-controller'}
      return runIssue(words, optionsOf(content), nodeDisk, async () => program)
    }, smallContent)
    expect(outcome.err).toContain('expected it with --as-of')
  })
})

test('a text from which changes are told is missed, and one that was edited too', async () => {
  await withChangedContent(async (content) => {
    await sign(content, '2031-01-02')
    await issue(content, '2031-01', '2031-01-10')
    content.replace(procedure, 'lock it.', 'lock it up.')
    declareAll(content, {[procedure]: 'class: technical, reason: safer'})
    await sign(content, '2031-02-02')
    expect((await issue(content, '2031-02', '2031-02-10')).err).toBe('')
    const {previousHash = '', hash = ''} = ledgerOf(content, '2031-02').pages[page] ?? {}
    content.remove(`issues/vessel-s/texts/${previousHash}.txt`)
    content.replace(`issues/vessel-s/texts/${hash}.txt`, 'lock', 'luck')
    const {files, content: sound} = await checkAndCompute(content.folder)
    const reasons = [...files.values()].flatMap((file) => file.messages).map((one) => one.reason)
    expect(sound).toBeUndefined()
    for (const revision of [1, 2])
      expect(reasons).toContain(
        `Unexpected ledger without the text of page \`${page}\` in revision ${revision}, expected the file as the tool wrote it`,
      )
  }, smallContent)
})

describe('an issue that is stopped', () => {
  test('is the one before or this one, and whole again after the next command', async () => {
    const {found, stops} = await stopIssues(
      (call, ledgerAt) => call <= ledgerAt || (call - ledgerAt) % 12 === 1,
    )
    expect(found).toEqual(['2031-01', '2031-02'])
    expect(stops).toBeGreaterThan(18)
  }, 60_000)
})
