import {afterAll, beforeAll, describe, expect, test} from 'vitest'
import {chartWordsEn} from '../../src/figures/charts/chart-words-en.ts'
import {drawChart} from '../../src/figures/charts/draw-chart.ts'
import {accessibilityFaults} from './accessibility.ts'
import {type DrivenBrowser, startChromium, startFirefox, type Visit} from './browsers.ts'
import {addressOf, copyToOddFolder} from './odd-folder.ts'

const folder = copyToOddFolder()

/** A form of a record page, with what is typed into it. */
interface TriedForm {
  readonly page: string
  readonly section: string
  readonly kind: string
  readonly entries: Readonly<Record<string, string>>
  /** Words that the statements gain. */
  readonly says: string
}

const clearance: TriedForm = {
  page: 'records/pump-4s.html',
  section: 'wear-lower-ring',
  kind: 'wear',
  entries: {
    day: '2019-04-10',
    hours: '3440',
    clearance: '1.06',
    uncertainty: '0.02',
    phase: 'found',
    gap: '',
  },
  says: 'Last reading 1.06 mm at 3440 h: WITHIN LIMITS. (tried, not recorded)',
}

const purge: TriedForm = {
  page: 'records/pump-4s.html',
  section: 'purge-results',
  kind: 'purge',
  entries: {day: '2019-04-09', hours: '8', gas: 'no', volume: '0', fluid: 'none', uncertainty: ''},
  says: 'NOT VALID on 2019-04-09: dry without gas that was seen to flow',
}

const hold: TriedForm = {
  page: 'records/pump-1p.html',
  section: 'pressure-hold',
  kind: 'hold',
  entries: {
    'minute-1': '0',
    'gauge-1': '2.90',
    'temperature-1': '20',
    'barometer-1': '1012',
    'minute-3': '60',
    'gauge-3': '2.80',
    'temperature-3': '20',
    'barometer-3': '1012',
  },
  says: 'Drop after correction 100.0 mbar: STOP: ask the office. (tried, not recorded)',
}

const tried: readonly TriedForm[] = [clearance, purge, hold]

/** Types into the form and presses its button. */
function typed({section, entries}: TriedForm): string {
  return `(() => { const form = document.querySelector('#${section} form'); for (const [name, value] of Object.entries(${JSON.stringify(entries)})) form.elements[name].value = value; form.querySelector('[type=submit]').click() })()`
}

/** Whether the chart in the page reads like this text, once the browser has read that too. */
function shows(section: string, svg: string): string {
  return `(() => { const box = document.createElement('div'); box.innerHTML = ${JSON.stringify(svg)}; return document.querySelector('#${section} .chart-place').innerHTML === box.innerHTML })()`
}

/** What the function draws from the data that the page carries. */
async function drawnFrom(visit: Visit, {section, kind, entries}: TriedForm, isTried: boolean) {
  const json = await visit.evaluate(
    `document.querySelector('#${section} [type="application/json"]').textContent`,
  )
  const data: unknown = JSON.parse(String(json))
  const drawn = drawChart(kind, data, isTried ? new Map(Object.entries(entries)) : undefined, chartWordsEn)
  if (!drawn.ok) throw new Error(drawn.refusal)
  return drawn.chart
}

const statementsOf = (section: string): string =>
  `[...document.querySelectorAll('#${section} .statements li')].map((one) => one.textContent)`

describe.each([
  ['chromium', () => startChromium(true)],
  ['firefox', () => startFirefox(true)],
] as const)('%s', (_name, start) => {
  let browser: DrivenBrowser
  beforeAll(async () => {
    browser = await start()
  })
  afterAll(() => browser.close())

  test.each(tried)(
    'draws a reading of $section as the build draws it, and takes it away again',
    async (form) => {
      const {page, section, says} = form
      const visit = await browser.visit(addressOf(folder, page))
      const built = await drawnFrom(visit, form, false)
      expect(await visit.evaluate(shows(section, built.svg))).toBe(true)
      expect(await visit.evaluate(statementsOf(section))).toEqual(built.statements)
      await visit.evaluate(typed(form))
      const again = await drawnFrom(visit, form, true)
      expect(again.svg).not.toBe(built.svg)
      expect(await visit.evaluate(shows(section, again.svg))).toBe(true)
      expect(await visit.evaluate(statementsOf(section))).toEqual(again.statements)
      expect(again.statements.join(' ')).toContain(says)
      await visit.evaluate(`document.querySelector('#${section} [type=reset]').click()`)
      expect(await visit.evaluate(shows(section, built.svg))).toBe(true)
      expect(await visit.evaluate(`document.querySelector('#${section} [type=reset]').hidden`)).toBe(true)
      expect(await visit.evaluate('localStorage.length')).toBe(0)
      expect(visit.faults).toEqual([])
      await visit.done()
    },
  )

  test('says in plain words why it draws nothing, and leaves the chart as it is', async () => {
    const visit = await browser.visit(addressOf(folder, clearance.page))
    const built = await drawnFrom(visit, clearance, false)
    await visit.evaluate(typed({...clearance, entries: {...clearance.entries, clearance: '1,06'}}))
    expect(
      await visit.evaluate(`document.querySelector('#${clearance.section} .try-refusal').textContent`),
    ).toBe('Clearance: “1,06” has a comma. Write a decimal point, such as 0.85.')
    expect(await visit.evaluate(shows(clearance.section, built.svg))).toBe(true)
    await visit.done()
  })

  test('draws a first reading where none is on record', async () => {
    const empty = {...clearance, page: 'records/pump-3s.html', entries: {...clearance.entries, hours: '2293'}}
    const visit = await browser.visit(addressOf(folder, empty.page))
    expect(await visit.evaluate(`document.querySelector('#${empty.section} .chart')`)).toBe(null)
    await visit.evaluate(typed(empty))
    expect(await visit.evaluate(shows(empty.section, (await drawnFrom(visit, empty, true)).svg))).toBe(true)
    await visit.evaluate(`document.querySelector('#${empty.section} [type=reset]').click()`)
    expect(await visit.evaluate(`document.querySelector('#${empty.section} .chart')`)).toBe(null)
    await visit.done()
  })
})

describe.each([1280, 320])('at %i px', (width) => {
  test('a record page has no fault of accessibility in any palette, with a reading tried', async () => {
    const browser = await startChromium(true, width)
    for (const palette of ['day', 'dusk', 'night']) {
      const visit = await browser.visit(`${addressOf(folder, clearance.page)}?p=${palette}`)
      await visit.evaluate(typed(clearance))
      expect(await accessibilityFaults(visit), palette).toEqual([])
      expect(await visit.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(width)
      await visit.done()
    }
    await browser.close()
  })
})
