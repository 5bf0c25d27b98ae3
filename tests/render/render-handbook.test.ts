import {FileSystemConfigLoader, HtmlValidate} from 'html-validate'
import {describe, expect, test} from 'vitest'
import type {Page} from '../../src/handbook-model/pages.ts'
import {technicalText} from '../../src/technical-text/technical-text.ts'
import {textsIn} from '../compile/page-walker.ts'
import {linksAndIds, visibleText} from '../offline/visible-text.ts'
import {fixture} from './fixture-pages.ts'
import {fileAt, inputOf, textsOf} from './rendered.ts'
import {templates} from './templates-on-disk.ts'

const files = textsOf(inputOf())
const htmlOf = (page: Page): string => fileAt(files, page.head.path)

/** Fields that a page leaves to another place, with the reason. */
const elsewhere: readonly {readonly pattern: RegExp; readonly reason: string}[] = [
  {
    pattern: /\.(?:line|least|caution|cautions\[\d+\]|recalls\[\d+\])\.link\.text$/u,
    reason: 'title is shown',
  },
  {
    pattern: /\.(?:ratings|others|tools|parts|valuesUsed|cautionsUsed)\[\d+\]\.link\.text$/u,
    reason: 'title is shown',
  },
  {pattern: /\.(?:line|least)\.basis$/u, reason: 'a plate leads to the explanation'},
  {pattern: /\.parts\[\d+\]\.limits\[\d+\]\.title$/u, reason: 'the title of the reading is shown'},
  {pattern: /^\.(?:section|touched)\.alternative$/u, reason: 'the drawing carries it'},
  {
    pattern: /\.(?:(?:figure|arrangement)\.values|section\.sizes)\[\d+\]\.(?:basis|mark|link\.text)$/u,
    reason: 'the figure leads to the explanation',
  },
  {pattern: /\.(?:picture|plan)\.alternative$/u, reason: 'the drawing carries it'},
  {pattern: /\.recalls\[\d+\]\.title$/u, reason: 'a recall is word and number'},
  {pattern: /\.valuesUsed\[\d+\]\.(?!title)/u, reason: 'a list of ways to the values'},
]

/** A job sums tools and parts over its procedures, so that it shows no note of one of them. */
const leftByJob = /^\.(?:tools|parts)\[\d+\]\.(?:note|balloon)$/u

describe.each(fixture.pages.map((page) => [page.kind, page] as const))('the %s page', (_kind, page) => {
  test('shows every text of its model, escaped', () => {
    const visible = visibleText(htmlOf(page))
    const texts = textsIn(page)
      .filter(({text}) => text.includes('<b>'))
      .filter(({where}) => page.kind !== 'job' || !leftByJob.test(where))
      .filter(({where}) => !elsewhere.some(({pattern}) => pattern.test(where)))
    expect(texts.length).toBeGreaterThan(2)
    expect(texts.filter(({text}) => !visible.includes(text)).map(({where}) => where)).toEqual([])
    expect(htmlOf(page)).not.toContain('<b> &')
  })

  test('shows its technical text line by line and in order', () => {
    const visible = visibleText(htmlOf(page))
    let from = 0
    const lines = technicalText(page, fixture.vessel.name).trimEnd().split('\n')
    expect(lines.length).toBeGreaterThan(2)
    for (const line of lines) {
      const words = line.split('\t')[2] ?? ''
      const at = visible.indexOf(words, from)
      expect(at === -1 ? line : '', `after: ${visible.slice(Math.max(0, from - 80), from + 80)}`).toBe('')
      from = at + words.length
    }
  })

  test('names vessel, page, state and the flag of demonstration data', () => {
    const visible = visibleText(htmlOf(page))
    for (const words of [
      fixture.vessel.name,
      page.head.id,
      page.head.title,
      fixture.vessel.owner,
      fixture.vessel.approvedBy,
      'DRAFT, NOT ISSUED',
      'Demonstration data, not for service',
      'replaces no permit',
    ])
      expect(visible, words).toContain(words)
  })

  test('passes the HTML validator', async () => {
    const validator = new HtmlValidate(
      new FileSystemConfigLoader({
        root: true,
        extends: ['html-validate:standard'],
        rules: {
          'long-title': 'off',
          'no-inline-style': 'off',
          'prefer-native-element': 'off',
          'require-sri': 'off',
          'no-trailing-whitespace': 'off',
          'void-style': 'off',
          'attribute-boolean-style': 'off',
          'doctype-style': 'off',
        },
      }),
    )
    const report = await validator.validateString(htmlOf(page))
    expect(
      report.results.flatMap(({messages}) =>
        messages.map(({ruleId, message, line}) => `${line} ${ruleId} ${message}`),
      ),
    ).toEqual([])
  })

  test('is the same, whichever texts the other pages hold, and prints nothing of the program', () => {
    expect(visibleText(htmlOf(page))).not.toMatch(/\bundefined\b|\bNaN\b|\[object/u)
    const alone = textsOf(inputOf({pages: {...fixture, pages: [page]}}))
    expect(fileAt(alone, page.head.path)).toBe(htmlOf(page))
  })
})

describe('rendered files', () => {
  test('lead to no page and no element that is not there', () => {
    const known = new Map(
      [...files].filter(([path]) => path.endsWith('.html')).map(([path, text]) => [path, linksAndIds(text)]),
    )
    const dead: string[] = []
    for (const [path, {links, ids}] of known) {
      expect(
        ids.filter((id, index) => ids.indexOf(id) !== index),
        path,
      ).toEqual([])
      for (const link of links) {
        const {pathname, hash} = new URL(link, `file:///${path}`)
        const target = pathname.slice(1)
        if (!files.has(target)) dead.push(`${path}: ${link}`)
        else if (hash !== '' && !known.get(target)?.ids.includes(hash.slice(1))) dead.push(`${path}: ${link}`)
      }
    }
    expect(dead).toEqual([])
  })

  test('change or fail with each template that is taken away: none is dead, none is replaced by nothing', () => {
    const whole = [...files].join('\n')
    for (const path of templates.keys()) {
      if (path.startsWith('alone/')) continue
      const rest = new Map([...templates].filter(([one]) => one !== path))
      const render = (): string => [...textsOf(inputOf({templates: rest}))].join('\n')
      if (path === 'styles/paper.css') expect(render, path).toThrow('expected the styles of paper')
      else if (path.endsWith('.css')) expect(render(), path).not.toBe(whole)
      else expect(render, path).toThrow(/partial/u)
    }
  })

  test('are the runtime and the styles beside the pages', () => {
    expect(fileAt(files, 'assets/head.js')).toBe('head()')
    expect(fileAt(files, 'assets/page.js')).toBe('page()')
    expect(fileAt(files, 'hub/store.js')).toBe('hub()')
    expect(fileAt(files, 'assets/paper.css')).toBe(templates.get('styles/paper.css'))
    expect(fileAt(files, 'assets/site.css')).not.toContain('@page')
  })

  test('need a state for each page', () => {
    expect(() => textsOf(inputOf({states: new Map()}))).toThrow(
      'Unexpected page `vessel-a/index` without a state, expected one for every page',
    )
  })
})

describe('issue and revision', () => {
  const path = 'p/4s/wear.html'
  const issued = textsOf(
    inputOf({
      states: new Map(
        fixture.pages.map(({head}) => [
          head.id,
          {kind: 'issued', revision: 7, suffix: 'b', date: '2031-02-14', checkCode: '7K2M-9QTR-4'} as const,
        ]),
      ),
      issue: {number: '2031-03', date: '2031-03-01'},
    }),
  )

  test('an issued page prints revision, date and check code, also as it is spoken and above each printed table', () => {
    const visible = visibleText(fileAt(issued, path))
    expect(visible).toContain('revision 7b, 2031-02-14, 7K2M-9QTR-4')
    expect(visible).toContain('Page revision 7b Date of revision 2031-02-14 Check code 7K2M-9QTR-4')
    expect(visible).toContain('Seven Kilo Two Mike, Nine Quebec Tango Romeo, Four')
    expect(visible).not.toContain('DRAFT')
  })

  test('a draft prints no revision, no date and no code', () => {
    const visible = visibleText(fileAt(files, path))
    expect(visible).toContain('Page revision DRAFT, NOT ISSUED Date of revision not issued Check code none')
    expect(visible).not.toContain('Read the code aloud')
  })

  test('the issue stands in two files and on the pages about it alone, so that a new issue leaves every page as it is', () => {
    const naming = [...issued].filter(([, text]) => text.includes('2031-03')).map(([one]) => one)
    expect(naming).toEqual(['effective.html', 'changed.html', 'issue.html', 'issue.js'])
    expect(visibleText(fileAt(issued, 'issue.html'))).toBe('Issue 2031-03 of 2031-03-01')
    expect(fileAt(issued, 'issue.js')).toContain(
      '{"version":1,"vessel":"vessel-a","number":"2031-03","date":"2031-03-01"}',
    )
  })

  test('without an issue the folder says that it is a draft', () => {
    expect(visibleText(fileAt(files, 'issue.html'))).toBe('No issue yet: this folder is a draft')
    expect(fileAt(files, 'issue.js')).toContain('"number":null,"date":null')
  })
})

describe('the section of a pump', () => {
  const html = fileAt(files, 'p/4s/index.html')

  test('is shown from the file that pumps share, in its proportions and with its text alternative', () => {
    const image = /<img class="picture" [^>]*>/u.exec(html)?.[0] ?? ''
    expect(image).toContain('src="../../figures/design-a.svg" width="900" height="1500"')
    expect(image).toMatch(/ alt="[^"]*section-alternative[^"]*"/u)
    expect(fileAt(files, 'figures/design-a.svg')).toMatch(/^<svg xmlns/u)
  })

  test('is recoloured on screen alone, in each dark palette', () => {
    expect(outermostOf(fileAt(files, 'assets/site.css'), 'filter:')).toEqual([
      '@media screen',
      '@media screen',
      '@media screen and (prefers-color-scheme:dark)',
    ])
    for (const palette of ['dusk', 'night'])
      expect(fileAt(files, 'assets/site.css')).toContain(`[data-palette=${palette}] .picture{filter:`)
    expect(fileAt(files, 'assets/paper.css')).not.toContain('filter')
  })
})

/** The outermost block around each declaration that begins with these words. */
function outermostOf(css: string, words: string): readonly string[] {
  const blocks: string[] = []
  return css.split(/(?<=[{};])/u).flatMap((piece) => {
    if (piece.endsWith('{')) blocks.push(piece.slice(0, -1).trim())
    const found = piece.startsWith(words) ? [blocks[0] ?? ''] : []
    if (piece.endsWith('}')) blocks.pop()
    return found
  })
}
