import {join} from 'node:path'
import {beforeAll, describe, expect, test} from 'vitest'
import {runIssue} from '../../src/commands/issue.ts'
import type {CommandOptions, Outcome} from '../../src/commands/outcome.ts'
import type {Ledger} from '../../src/issues/ledger.ts'
import {nodeDisk} from '../../src/publish/disk.ts'
import {technicalHash} from '../../src/technical-text/technical-hash.ts'
import {textsBelow} from '../publish/folders-for-tests.ts'
import {type ChangedContent, smallContent, withChangedContent} from './changed-content.ts'
import {
  builtManifest,
  declare,
  issue,
  ledgerOf,
  optionsOf,
  program,
  sign,
  stopIssues,
} from './issues-for-tests.ts'

const procedure = 'procedures/ring-check.md'
const page = 'vessel-s/1p/ring-check'
const wear = (text: string): string => text.replace('id: ring-check', 'id: ring-look')

interface Told {
  readonly first: Outcome
  readonly second: Outcome
  readonly third: Outcome
  readonly ledgers: readonly [Ledger, Ledger, Ledger]
  readonly sites: readonly Readonly<Record<string, string>>[]
  readonly rebuilt: readonly string[]
}

let told: Told

beforeAll(async () => {
  told = await withChangedContent(async (content) => {
    const sites: Readonly<Record<string, string>>[] = []
    const rebuilt: string[] = []
    const keep = async (): Promise<void> => {
      sites.push(textsBelow(join(content.folder, '.site', 'vessel-s')))
      rebuilt.push(await builtManifest(content.folder))
    }
    await sign(content, '2031-01-02')
    const first = await issue(content, '2031-01', '2031-01-10')
    await keep()
    content.replace(
      procedure,
      'Close the pressure valve and lock it.',
      'Close the pressure valve and lock it up.',
    )
    declare(content, procedure, 'class: editorial, reason: plainer, reviewed-by: safety-reviewer')
    await sign(content, '2031-02-02')
    const second = await issue(content, '2031-02', '2031-02-10')
    await keep()
    const friction = 'tables/friction.csv'
    content.replace(friction, /^assembly-paste,.*$/mu, (row) => row.replaceAll('0.10', '0.14'))
    content.write('procedures/ring-look.md', wear(content.read(procedure)))
    content.remove(procedure)
    content.replace('jobs/ring-service.yaml', 'ring-check', 'ring-look')
    const reasons: readonly (readonly [string, string])[] = [
      [friction, 'another paste'],
      ['procedures/ring-look.md', 'new procedure'],
      ['jobs/ring-service.yaml', 'another procedure'],
    ]
    content.write(
      'changes.yaml',
      [
        'changes:',
        ...reasons.map(
          ([file, reason]) =>
            `  - {file: ${file}, hash: ${technicalHash(content.read(file))}, class: technical, reason: ${reason}}`,
        ),
        'withdrawn:',
        '  - {page: ring-check, reason: renamed, replaced-by: ring-look}',
        '',
      ].join('\n'),
    )
    await sign(content, '2031-03-02')
    const third = await issue(content, '2031-03', '2031-03-10')
    if (third.exitStatus !== 0) throw new Error(third.err)
    await keep()
    const ledgers = ['2031-01', '2031-02', '2031-03'].map((number) => ledgerOf(content, number))
    const [one, two, three] = ledgers
    if (!one || !two || !three) throw new Error('Unexpected gap, expected three ledgers')
    return {first, second, third, ledgers: [one, two, three], sites, rebuilt}
  }, smallContent)
}, 60_000)

describe('three issues in a row by commands', () => {
  test('say what became of the pages', () => {
    expect(told.first.err).toBe('')
    expect(told.first.out).toContain('Issue 2031-01 of vessel-s, 2031-01-10')
    expect(told.first.out).toContain('unchanged: 0\nnew pages: ')
    expect(told.second.out).toContain(`changed wording: 1\n  ${page}\n`)
    expect(told.third.out).toContain('new pages: 1\n  vessel-s/1p/ring-look\n')
    expect(told.third.out).toContain(`withdrawn: 1\n  ${page}\n`)
  })

  test('begin every page at revision 1 and keep the entry of a page that reads as before', () => {
    const [one, two] = told.ledgers
    expect(Object.values(one.pages).map(({revision}) => revision)).toEqual(
      Object.keys(one.pages).map(() => 1),
    )
    const {[page]: _was, ...others} = one.pages
    expect(two.pages).toEqual({...others, [page]: two.pages[page]})
  })

  test('give changed wording a letter under the same code', () => {
    const [one, two] = told.ledgers
    expect(two.pages[page]).toMatchObject({
      revision: 1,
      suffix: 'a',
      date: '2031-02-10',
      code: one.pages[page]?.code,
    })
    expect(two.pages[page]?.hash).not.toBe(one.pages[page]?.hash)
  })

  test('give a moved value a new revision, with its reason and another code, on each page that shows it', () => {
    const [, two, three] = told.ledgers
    const torques = 'vessel-s/design-s/torques'
    expect(three.pages[torques]).toMatchObject({
      revision: 2,
      date: '2031-03-10',
      reasons: ['another paste', 'new procedure'],
      previousHash: two.pages[torques]?.hash,
    })
    expect(three.pages[torques]?.code).not.toBe(two.pages[torques]?.code)
    expect(three.pages['vessel-s/words']).toEqual(two.pages['vessel-s/words'])
  })

  test('withdraw a page that is gone and name the one in its place', () => {
    expect(told.ledgers[2].pages[page]?.withdrawn).toEqual({
      date: '2031-03-10',
      reason: 'renamed',
      replacedBy: 'vessel-s/1p/ring-look',
    })
  })

  test('leave pages that nobody touched byte for byte as they were', () => {
    const [one = {}, two = {}, three = {}] = told.sites
    const changed = (from: object, to: Readonly<Record<string, string>>): readonly string[] =>
      Object.entries(from).flatMap(([path, text]) => (to[path] === text ? [] : [path]))
    expect(changed(one, two)).toEqual([
      'check-data.js',
      'issue.html',
      'issue.js',
      'manifest.js',
      'manifest.txt',
      'p/1p/ring-check.html',
    ])
    expect(changed(two, three)).not.toContain('words.html')
    expect(three['designs/design-s/torques.html']).toContain('2031-03-10')
  })

  test('are built again to the bytes that were issued, each from its own content', () => {
    expect(told.rebuilt).toEqual(told.ledgers.map(({manifestHash}) => manifestHash))
  })
})

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

describe('an issue that is stopped', () => {
  test('is the one before or this one, and whole again after the next command', async () => {
    const {found, stops} = await stopIssues(
      (call, ledgerAt) => call <= ledgerAt || (call - ledgerAt) % 12 === 1,
    )
    expect(found).toEqual(['2031-01', '2031-02'])
    expect(stops).toBeGreaterThan(18)
  }, 60_000)
})
