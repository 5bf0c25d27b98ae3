import {beforeAll, describe, expect, test} from 'vitest'
import {smallContent, withChangedContent} from '../commands/changed-content.ts'
import {declareAll, issue, sign, siteOf} from '../commands/issues-for-tests.ts'
import {renderedContent} from '../commands/rendered-content.ts'
import {deadLinks, validatorFaults} from '../offline/page-faults.ts'
import {linksAndIds, visibleText} from '../offline/visible-text.ts'
import {foreignPages} from './list-of-pages.ts'

const procedure = 'procedures/ring-check.md'

let draft: Readonly<Record<string, string>>
let sites: readonly Readonly<Record<string, string>>[]

beforeAll(async () => {
  const decoder = new TextDecoder()
  const {vessels} = await renderedContent(smallContent)
  draft = Object.fromEntries(
    (vessels.get('vessel-s') ?? []).map(({path, bytes}) => [path, decoder.decode(bytes)]),
  )
  sites = await withChangedContent(async (content) => {
    const told: Readonly<Record<string, string>>[] = []
    const next = async (
      month: number,
      reasons: Readonly<Record<string, string>>,
      more = '',
    ): Promise<void> => {
      declareAll(content, reasons)
      if (more !== '') content.write('changes.yaml', `${content.read('changes.yaml')}${more}`)
      await sign(content, `2031-0${month}-02`)
      const outcome = await issue(content, `2031-0${month}`, `2031-0${month}-10`)
      if (outcome.exitStatus !== 0) throw new Error(outcome.err)
      told.push(siteOf(content))
    }
    await next(1, {})
    content.replace('tables/friction.csv', /^assembly-paste,.*$/mu, (row) => row.replaceAll('0.10', '0.14'))
    content.replace(procedure, 'lock it.', 'lock it up.')
    content.write(
      'procedures/ring-look.md',
      content.read(procedure).replace('id: ring-check', 'id: ring-look'),
    )
    content.replace('jobs/ring-service.yaml', 'ring-check', 'ring-look, ring-check')
    await next(2, {
      'tables/friction.csv': 'class: technical, reason: another paste',
      [procedure]: 'class: technical, reason: locked',
      'procedures/ring-look.md': 'class: technical, reason: a look between',
      'jobs/ring-service.yaml': 'class: technical, reason: a look between',
    })
    content.remove(procedure)
    content.replace('jobs/ring-service.yaml', 'ring-look, ring-check', 'ring-look')
    await next(
      3,
      {'jobs/ring-service.yaml': 'class: technical, reason: one look'},
      'withdrawn:\n  - {page: ring-check, reason: one look is enough, replaced-by: ring-look}\n',
    )
    return told
  }, smallContent)
}, 60_000)

const pageOf = (site: Readonly<Record<string, string>> | undefined, path: string): string =>
  site?.[path] ?? ''

describe('the list of effective pages', () => {
  test('names every page of its folder and no other, in a draft and in each issue', () => {
    for (const site of [draft, ...sites]) expect(foreignPages(site)).toEqual({strange: [], missing: []})
  })

  test('tells a page that does not belong to the folder, and one that is gone', () => {
    const {['words.html']: words = '', ...rest} = sites[1] ?? {}
    expect(foreignPages({...rest, 'p/1p/old.html': words})).toEqual({
      strange: ['p/1p/old.html'],
      missing: ['words.html'],
    })
  })

  test('gives revision, date and code of each page, of a withdrawn one too', () => {
    const row = (site: number, id: string): string => {
      const rows = pageOf(sites[site], 'effective.html').match(/<tr>.*?<\/tr>/gu) ?? []
      return visibleText(`<table>${rows.find((one) => one.includes(`>${id}<`)) ?? ''}</table>`)
    }
    expect(row(0, 'vessel-s/1p/ring-check')).toMatch(/1 2031-01-10 \S+-\S+-\S+ new$/u)
    expect(row(1, 'vessel-s/1p/ring-check')).toMatch(/2 2031-02-10 \S+-\S+-\S+ changed$/u)
    expect(row(2, 'vessel-s/1p/ring-check')).toMatch(/2 2031-02-10 \S+-\S+-\S+ WITHDRAWN$/u)
    expect(row(2, 'vessel-s/words')).toMatch(/1 2031-01-10 \S+-\S+-\S+ as in the issue before$/u)
  })

  test('says plainly that there is no issue yet', () => {
    expect(visibleText(pageOf(draft, 'effective.html'))).toContain(
      'No issue yet: every page of this folder is a draft.',
    )
    expect(visibleText(pageOf(draft, 'changed.html'))).toContain('No issue yet: nothing to compare with.')
  })

  test('is reached from the start page, beside what changed', () => {
    const {links} = linksAndIds(pageOf(draft, 'index.html'))
    expect(links).toEqual(expect.arrayContaining(['effective.html', 'changed.html']))
  })
})

describe('what changed', () => {
  test('of a first issue is that every page is new', () => {
    expect(visibleText(pageOf(sites[0], 'changed.html'))).toContain(
      'Issue 2031-01 of 2031-01-10: the first one, every page is new.',
    )
  })

  test('gives old and new values, steps, reasons, new pages and issue', () => {
    const visible = visibleText(pageOf(sites[1], 'changed.html'))
    expect(visible).toContain('Issue 2031-02 of 2031-02-10, compared with issue 2031-01 of 2031-01-10.')
    expect(visible).toMatch(/changed: value hub-bolts\.torque (\d+) N·m (?!\1)\d+ N·m/u)
    expect(visible).toContain(
      'changed: step close-pressure Close the pressure valve and lock it. Close the pressure valve and lock it up.',
    )
    expect(visible).toContain('another paste; locked')
    expect(visible).toMatch(/New pages Wear ring check, revision 1 vessel-s\/1p\/ring-look /u)
    expect(visible).not.toContain('vessel-s/words')
  })

  test('names withdrawn pages with their reason in the issue that withdraws them', () => {
    expect(visibleText(pageOf(sites[2], 'changed.html'))).toMatch(
      /Withdrawn pages Wear ring check, revision 2: one look is enough vessel-s\/1p\/ring-check /u,
    )
  })
})

test('pages about an issue and pages with bars pass the HTML validator and lead to no dead link', async () => {
  const [, second = {}, third = {}] = sites
  const ids = new Map(Object.entries(third).map(([path, text]) => [path, linksAndIds(text).ids]))
  for (const path of ['changed.html', 'effective.html', 'p/1p/ring-check.html', 'values.html']) {
    expect(await validatorFaults(pageOf(second, path)), path).toEqual([])
    expect(await validatorFaults(pageOf(third, path)), path).toEqual([])
    expect(
      deadLinks(path, linksAndIds(pageOf(third, path)).links, (target) => ids.get(target)),
      path,
    ).toEqual([])
  }
})

describe('a withdrawn page', () => {
  test('leaves a stub at its place that leads to the one that replaces it', () => {
    const stub = pageOf(sites[2], 'p/1p/ring-check.html')
    const visible = visibleText(stub)
    for (const words of [
      '1P · Wear ring check',
      'WITHDRAWN 2031-03-10',
      'Reason: one look is enough',
      'vessel-s/1p/ring-look',
      'last revision 2',
    ])
      expect(visible).toContain(words)
    expect(linksAndIds(stub).links).toContain('../../p/1p/ring-look.html')
    expect(visible).not.toContain('Close the pressure valve')
  })
})
