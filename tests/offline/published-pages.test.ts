import {beforeAll, describe, expect, test} from 'vitest'
import {describePage} from '../../.config/prove-plan.mjs'
import {checkAndCompute, stateVessel} from '../../src/commands/run-stages.ts'
import {desksOfVessel} from '../../src/compile/desk.ts'
import {serves} from '../../src/conditions/serves.ts'
import {filesBelow, publishedFolder, textOf} from './odd-folder.ts'
import {deadLinks, doubledIds, fileFaults, linesNotShown, strayWords, validatorFaults} from './page-faults.ts'
import {linksAndIds, visibleText} from './visible-text.ts'

const paths = filesBelow(publishedFolder)
const pages = paths.filter((path) => path.endsWith('.html'))

/** Links, ids and words of every page, each read once. */
const read = new Map(
  pages.map((path) => {
    const html = textOf(path)
    return [path, {...linksAndIds(html), words: visibleText(html)}] as const
  }),
)

/** One page of each layout: which pages differ by more than words is told by their markup. */
const sample = [
  ...new Map(
    pages
      .map((path) => describePage('vessel-a', path, textOf(path)))
      .reverse()
      .map((page) => [page.layout, page.path]),
  ).values(),
]

describe('the published handbook', () => {
  test('resolves every link, also to the element named', () => {
    const idsOf = (path: string): readonly string[] | undefined =>
      read.get(path)?.ids ?? (paths.includes(path) ? [] : undefined)
    expect([...read].flatMap(([path, {links}]) => deadLinks(path, links, idsOf))).toEqual([])
  })

  test('holds no id twice on a page', () => {
    for (const [path, {ids}] of read) expect(doubledIds(ids), path).toEqual([])
  })

  test('shows no `undefined`, `NaN` or `[object` anywhere', () => {
    for (const path of paths.filter((one) => /\.(html|txt|svg)$/u.test(one))) {
      const text = read.get(path)?.words ?? textOf(path)
      expect(strayWords(text), path).toEqual([])
    }
  })

  test('holds only plain files with small names, and no page over 150 kB', () => {
    for (const path of paths) expect(fileFaults(path, Buffer.byteLength(textOf(path))), path).toEqual([])
  })

  test('passes the HTML validator with a page of each layout', async () => {
    expect(sample.length).toBeGreaterThan(20)
    for (const path of sample) expect(await validatorFaults(textOf(path)), path).toEqual([])
  })
})

describe('technical texts', () => {
  const texts = new Map<string, string>()
  const expected: string[] = []
  beforeAll(async () => {
    const {content, values, history} = await checkAndCompute('content')
    if (!content || !values)
      throw new Error('Unexpected content with errors, expected the demonstration to check')
    const stated = stateVessel(content, values, 'vessel-a', history)
    for (const {head} of stated.pages.pages) texts.set(head.path, stated.technicalTexts.get(head.id) ?? '')
    for (const {position, facts} of desksOfVessel(content, values, 'vessel-a'))
      for (const procedure of content.procedures.values())
        if (procedure.scope === 'position' && serves(procedure, facts))
          expected.push(`p/${position.id}/${procedure.id}.html`)
  })

  test('belong to a page that is published, every procedure of a pump among them on every pump that it is for', () => {
    expect([...texts.keys()].filter((path) => !pages.includes(path))).toEqual([])
    expect(expected.length).toBeGreaterThan(400)
    expect(expected.filter((path) => !texts.has(path))).toEqual([])
  })

  test('stand line by line and in order in the visible text of their page, on a page of each layout', () => {
    const stating = sample.filter((path) => texts.has(path))
    expect(stating.length).toBeGreaterThan(20)
    for (const path of stating) {
      const text = texts.get(path) ?? ''
      expect(text.split('\n').length, path).toBeGreaterThan(3)
      expect(linesNotShown(text, textOf(path)), path).toEqual([])
    }
  })
})
