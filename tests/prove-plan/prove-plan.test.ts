import {describe, expect, test} from 'vitest'
import {
  allSeconds,
  describePage,
  firstRates,
  kills,
  layoutClass,
  type PlannedPage,
  type ProvePart,
  partSeconds,
  planParts,
  singleChecks,
} from '../../.config/prove-plan.mjs'

/** Pages of a fleet; every third pump differs in layout. */
function fleet(vessels: number, pumps: number, procedures: number): readonly PlannedPage[] {
  const list = (count: number): readonly number[] => Array.from({length: count}, (_, index) => index)
  return list(vessels).flatMap((vessel) =>
    list(pumps).flatMap((pump) => [
      page(`v${vessel}`, `p/${pump}/index.html`, 'position', pump),
      ...list(procedures).map((one) => page(`v${vessel}`, `p/${pump}/job${one}.html`, 'procedure', pump)),
    ]),
  )
}

function page(vessel: string, path: string, kind: string, pump: number): PlannedPage {
  return {vessel, path, kind, layout: `${path.slice(path.lastIndexOf('/'))} ${pump % 3}`}
}

function pagesOf(parts: readonly ProvePart[], work: string): readonly string[] {
  return parts
    .filter((part) => part.work === work)
    .flatMap((part) => part.units.map((one) => `${one.vessel}/${one.path}`))
}

function secondsOf(parts: readonly ProvePart[]): number {
  return parts.reduce((sum, part) => sum + part.estimate, 0)
}

describe('the plan of all parts', () => {
  test('takes every page in every way where there is time, and leaves nothing out', () => {
    const pages = fleet(1, 20, 6)
    const parts = planParts(pages, {})
    const all = pages.map((one) => `${one.vessel}/${one.path}`)
    const printed = all.filter((path) => path.includes('job'))
    for (const work of Object.keys(firstRates)) {
      if (singleChecks.has(work)) expect(pagesOf(parts, work)).toHaveLength(1)
      else if (work === 'killed-builds') expect(pagesOf(parts, work)).toHaveLength(kills)
      else expect(pagesOf(parts, work), work).toEqual(work.startsWith('print') ? printed : all)
    }
    expect(parts.every((part) => part.left === '')).toBe(true)
  })

  test.each([
    [1, 20, 10],
    [1, 24, 40],
    [3, 24, 40],
    [8, 24, 40],
  ])('for %s vessels of %s pumps with %s procedures stays within the time', (vessels, pumps, procedures) => {
    const parts = planParts(fleet(vessels, pumps, procedures), {})
    for (const part of parts) {
      expect(part.estimate, part.name).toBeLessThanOrEqual(partSeconds + 1)
      expect(part.units.length, part.name).toBeGreaterThan(0)
    }
    expect(new Set(parts.map((part) => part.name)).size).toBe(parts.length)
    if (vessels <= 3) expect(secondsOf(parts)).toBeLessThanOrEqual(allSeconds + 1)
    if (procedures === 40 && vessels <= 3) expect(secondsOf(parts)).toBeGreaterThan(allSeconds - 100)
  })

  test('keeps a page of each layout of each vessel, whatever is thinned, and says so', () => {
    const pages = fleet(3, 24, 40)
    const parts = planParts(pages, {})
    for (const work of Object.keys(firstRates).filter((one) => one.startsWith('print'))) {
      const kept = new Set(pagesOf(parts, work))
      const layouts = new Set(
        pages.filter((one) => kept.has(`${one.vessel}/${one.path}`)).map((one) => one.vessel + one.layout),
      )
      expect(layouts.size, work).toBe(3 * 40 * 3)
    }
    const thinned = parts.filter((part) => part.work === 'print-firefox-off')
    expect(thinned[0]?.left).toBe('360 of 2880: a layout class each')
    const full = planParts(pages.slice(0, 24 * 41), {}).filter((part) => part.left !== '')
    expect(full.map((part) => part.left)).toContainEqual(
      expect.stringMatching(/^\d+ of 960: a layout class each, and \d+ more$/u),
    )
  })

  test('splits finer on a slower machine', () => {
    const pages = fleet(1, 20, 10)
    const count = (rate: number): number =>
      planParts(pages, {'print-chromium-on': rate}).filter((part) => part.work === 'print-chromium-on').length
    expect(count(0.5)).toBe(1)
    expect(count(4)).toBeGreaterThan(1)
  })
})

describe('a layout class', () => {
  const html = (main: string, head = ''): string => `<body data-kind="job">${head}<main>${main}</main>`

  test('is the same for other words and figures', () => {
    expect(layoutClass(html('<p class="a">48 N·m</p>', '<b class="x"></b>'))).toBe(
      layoutClass(html('<p class="a">52 N·m, lubricated</p>')),
    )
  })

  test.each(['<p class="a">48</p><p>more</p>', '<p class="b">48</p>', '<div class="a">48</div>'])(
    'is another for %s',
    (main) => {
      expect(layoutClass(html(main))).not.toBe(layoutClass(html('<p class="a">48</p>')))
    },
  )

  test('belongs to a kind of page and a file name', () => {
    const page = describePage('v', 'p/4s/rings.html', html('<p>1</p>'))
    expect(page).toMatchObject({vessel: 'v', path: 'p/4s/rings.html', kind: 'job'})
    expect(page.layout).toBe(describePage('v', 'p/5s/rings.html', html('<p>2</p>')).layout)
    expect(page.layout).not.toBe(describePage('v', 'p/4s/seals.html', html('<p>1</p>')).layout)
    expect(describePage('v', 'hub/store.html', '<body>').kind).toBe('frame')
  })
})
