import {join} from 'node:path'
import {beforeAll, describe, expect, test} from 'vitest'
import type {Outcome} from '../../src/commands/outcome.ts'
import type {Ledger} from '../../src/issues/ledger.ts'
import {technicalHash} from '../../src/technical-text/technical-hash.ts'
import {foreignPages} from '../issues/list-of-pages.ts'
import {visibleText} from '../offline/visible-text.ts'
import {textsBelow} from '../publish/folders-for-tests.ts'
import {barsOf} from '../render/bars-of-page.ts'
import {smallContent, withChangedContent} from './changed-content.ts'
import {builtManifest, declare, issue, ledgerOf, sign} from './issues-for-tests.ts'

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
      'changed.html',
      'check-data.js',
      'effective.html',
      'issue.html',
      'issue.js',
      'manifest.js',
      'manifest.txt',
      'p/1p/ring-check.html',
    ])
    const same = Object.entries(told.ledgers[2].pages).flatMap(([id, entry]) =>
      entry.path !== undefined && JSON.stringify(entry) === JSON.stringify(told.ledgers[0].pages[id])
        ? [entry.path]
        : [],
    )
    const apart = same.filter((path) => !/ring-(?:check|look)/u.test(`${one[path]}${three[path]}`))
    expect(apart).toEqual(expect.arrayContaining(['designs/design-s/values.html', 'words.html']))
    for (const path of apart) expect([two[path], three[path]], path).toEqual([one[path], one[path]])
    expect(three['designs/design-s/torques.html']).toContain('2031-03-10')
  })

  test('show bars and reason on the pages of moved figures alone, and on none for wording', () => {
    const [one = {}, two = {}, three = {}] = told.sites
    const barred = (site: Readonly<Record<string, string>>): readonly string[] =>
      Object.entries(site).flatMap(([path, text]) => (barsOf(text).length > 0 ? [path] : []))
    expect([barred(one), barred(two)]).toEqual([[], []])
    const revised = Object.values(told.ledgers[2].pages).filter(
      ({revision, withdrawn}) => revision === 2 && !withdrawn,
    )
    expect(barred(three)).toEqual(revised.map(({path}) => path).sort())
    expect(barred(three)).toContain('designs/design-s/torques.html')
    for (const path of barred(three)) expect(three[path], path).toContain('Reason for update, revision 2')
  })

  test('say in each what changed: nothing to compare with, wording alone, figures with new and withdrawn pages', () => {
    const [one = '', two = '', three = ''] = told.sites.map((site) => visibleText(site['changed.html'] ?? ''))
    expect(one).toContain('the first one, every page is new')
    expect(two).toContain(`Wording alone No value, limit, caution or step moved on these pages`)
    expect(two).toContain(page)
    expect(two).not.toContain('Before Now')
    expect(three).toMatch(/changed: value hub-bolts\.torque (\d+) N·m (?!\1)\d+ N·m/u)
    expect(three).toContain('New pages Wear ring check, revision 1 vessel-s/1p/ring-look')
    expect(three).toMatch(
      /Withdrawn pages Wear ring check, revision 1[a-z]?: renamed[^:]* vessel-s\/1p\/ring-check /u,
    )
    const changed = Object.entries(told.ledgers[2].pages).filter(
      ([id, entry]) => entry.hash !== told.ledgers[1].pages[id]?.hash,
    )
    for (const id of Object.keys(told.ledgers[2].pages))
      expect(three.includes(` ${id} `), id).toBe(id === page || changed.some(([one]) => one === id))
  })

  test('list every page of each folder, with the stub of the withdrawn one', () => {
    for (const site of told.sites) expect(foreignPages(site)).toEqual({strange: [], missing: []})
    expect(visibleText(told.sites[2]?.['p/1p/ring-check.html'] ?? '')).toContain('WITHDRAWN 2031-03-10')
  })

  test('are built again to the bytes that were issued, each from its own content', () => {
    expect(told.rebuilt).toEqual(told.ledgers.map(({manifestHash}) => manifestHash))
  })
})
