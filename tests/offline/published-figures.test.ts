import {readdirSync, readFileSync} from 'node:fs'
import {join} from 'node:path'
import {afterAll, beforeAll, describe, expect, test} from 'vitest'
import {type DrivenBrowser, startChromium} from './browsers.ts'
import {type DrawnFigure, drawnFigures, faultsOfTexts} from './drawn-texts.ts'
import {addressOf, filesBelow} from './odd-folder.ts'

/** Millimetres that a picture is wide on paper, by its class; the tank plan is smallest in the head of a sheet. */
const paperWidths: Readonly<Record<string, number>> = {
  'picture-small': 52,
  'picture-middle': 120,
  'picture-wide': 150,
}
const planWidth = 30
/** A section stands 90 mm wide beside its parts list. */
const sectionWidth = 90

const vessels = readdirSync('site').filter((name) => !name.startsWith('.'))

interface PublishedFigure {
  readonly path: string
  readonly svg: string
  readonly width: number
}

/** Every picture that the pages of a vessel show, with the page that showed it first. */
function shownBy(folder: string): ReadonlyMap<string, string> {
  const shown = new Map<string, string>()
  for (const page of filesBelow(folder).filter((path) => path.endsWith('.html')))
    for (const [tag, src = ''] of readFileSync(join(folder, page), 'utf8').matchAll(
      /<img [^>]*?src="(?:\.\.\/)*(figures\/[^"]*)"[^>]*>/gu,
    ))
      if (!shown.has(src)) shown.set(src, tag)
  return shown
}

function figuresOf(folder: string, shown: ReadonlyMap<string, string>): readonly PublishedFigure[] {
  return [...shown].map(([path, tag]) => ({
    path: `${folder}/${path}`,
    svg: readFileSync(join(folder, path), 'utf8'),
    width: widthOf(path, tag),
  }))
}

/** Words of one pump together with the drawing that they lie over. */
function pairsOf(folder: string, figures: readonly PublishedFigure[]): readonly PublishedFigure[] {
  const byPath = new Map(figures.map((one) => [one.path, one]))
  const pairs = new Map<string, PublishedFigure>()
  for (const page of filesBelow(folder).filter((path) => path.endsWith('.html')))
    for (const [, below = '', above = ''] of readFileSync(join(folder, page), 'utf8').matchAll(
      /class="marked[^"]*"><img [^>]*?src="(?:\.\.\/)*(figures\/[^"]*)"[^>]*><img [^>]*?src="(?:\.\.\/)*(figures\/[^"]*)"/gu,
    )) {
      const [drawing, words] = [below, above].map((path) => byPath.get(`${folder}/${path}`))
      if (drawing && words)
        pairs.set(`${below} ${above}`, {
          ...drawing,
          path: `${drawing.path} below ${above}`,
          svg: drawing.svg.replace('</svg>', words.svg.replace(/^<svg[^>]*>/u, '').trim()),
        })
    }
  return [...pairs.values()]
}

function widthOf(path: string, tag: string): number {
  if (/figures\/plan-/u.test(path)) return planWidth
  const size = /picture-(?:small|middle|wide)/u.exec(tag)?.[0]
  return (size && paperWidths[size]) || sectionWidth
}

describe.each(vessels)('the figures of %s', (vessel) => {
  const folder = join('site', vessel)
  const shown = shownBy(folder)
  const figures = figuresOf(folder, shown)
  const pairs = pairsOf(folder, figures)
  let browser: DrivenBrowser
  let drawn: readonly DrawnFigure[]
  beforeAll(async () => {
    browser = await startChromium(true)
    drawn = await drawnFigures(await browser.openWindow(), addressOf(folder, 'words.html'), [
      ...figures,
      ...pairs,
    ])
  })
  afterAll(() => browser.close())

  test('are files that a page shows, each of them, and no other file lies beside them', () => {
    const files = filesBelow(join(folder, 'figures')).map((name) => `figures/${name}`)
    expect(files.length).toBeGreaterThan(30)
    expect(files).toEqual([...shown.keys()].sort())
  })

  test('together stay below 600 kB, a section below 40 kB', () => {
    const bytes = figures.map(({path, svg}) => [path, Buffer.byteLength(svg)] as const)
    expect(bytes.reduce((sum, [, size]) => sum + size, 0)).toBeLessThan(600_000)
    expect(bytes.filter(([, size]) => size >= 40_000)).toEqual([])
  })

  test('have no text outside, none over another, and none below 2.5 mm on paper', () => {
    expect(pairs.length).toBeGreaterThan(50)
    expect(drawn.length).toBe(figures.length + pairs.length)
    const wordless = drawn.filter(({texts}) => texts.length === 0).map(({path}) => path)
    expect(wordless.filter((path) => !path.includes('/figures/marks-'))).toEqual([])
    expect(drawn.flatMap(faultsOfTexts)).toEqual([])
  })

  test('are black and white: no colour, no tint and no half tone', () => {
    const tints = figures.flatMap(({path, svg}) =>
      [...svg.matchAll(/#[0-9a-f]{3,8}\b|\brgba?\([^)]*\)|opacity/giu)].flatMap(([one]) =>
        ['#000', '#fff'].includes(one) ? [] : [`${path}: ${one}`],
      ),
    )
    expect(tints).toEqual([])
  })
})

describe('what is told of a drawing', () => {
  const text = (left: number, top: number, capital = 3): DrawnFigure['texts'][number] => ({
    text: `${left} ${top}`,
    left,
    right: left + 10,
    top,
    bottom: top + 3,
    capital,
    isTooLight: false,
  })
  const faults = (...texts: DrawnFigure['texts']): readonly string[] =>
    faultsOfTexts({path: 'a', width: 50, height: 20, texts})

  test('is nothing where texts lie inside, apart and large enough', () => {
    expect(faults(text(0, 0), text(11, 0), text(0, 4))).toEqual([])
  })

  test('is each text that lies outside, lies over another or is too small', () => {
    expect(faults(text(41, 0))).toEqual(['a: "41 0" outside of the drawing'])
    expect(faults(text(0, 18))).toEqual(['a: "0 18" outside of the drawing'])
    expect(faults(text(0, 0), text(9, 2))).toEqual(['a: "0 0" over "9 2"'])
    expect(faults(text(0, 0, 2.4))).toEqual(['a: "0 0" 2.40 mm high'])
    expect(faults({...text(0, 0), isTooLight: true})).toEqual(['a: "0 0" is not set in strong letters'])
  })
})
