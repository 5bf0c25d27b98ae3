import {cpSync, mkdirSync, mkdtempSync, readFileSync, writeFileSync} from 'node:fs'
import {tmpdir} from 'node:os'
import {join} from 'node:path'
import {afterAll, beforeAll, describe, expect, test} from 'vitest'
import {smallContent} from '../commands/changed-content.ts'
import {compileProgram} from '../commands/program-for-tests.ts'
import {otherStep, otherTorque, urgentText} from '../commands/urgent-for-tests.ts'
import {type PrintedSheet, readSheets} from '../printed/printed-sheets.ts'
import {sheetFindings} from '../printed/sheet-faults.ts'
import {readTaskPage} from '../printed/task-page.ts'
import {accessibilityFaults} from './accessibility.ts'
import {type BrowserWindow, type DrivenBrowser, startChromium, startFirefox} from './browsers.ts'
import {addressOf, copyToOddFolder} from './odd-folder.ts'

const sheet = 'p/1p/ring-check.html'
const pages = [sheet, 'p/1p/index.html', 'index.html', 'effective.html', 'changed.html', 'values.html']
const program = compileProgram()

/** The small handbook with an urgent revision up to a day, in a folder with an odd name. */
function published(first: string, last: string): string {
  const content = mkdtempSync(join(tmpdir(), 'urgent-'))
  cpSync(smallContent, content, {recursive: true})
  mkdirSync(join(content, 'urgent'))
  writeFileSync(
    join(content, 'urgent', 't-07.yaml'),
    urgentText({'valid-from': first, 'valid-to': last, ...otherTorque, ...otherStep}),
  )
  const out = mkdtempSync(join(tmpdir(), 'urgent-site-'))
  const {status, err} = program.run(['build', '--content', content, '--out', out])
  if (status !== 0) throw new Error(err)
  return copyToOddFolder(join(out, 'vessel-s'))
}

const over = published('2019-05-01', '2019-12-31')
const counting = published('2019-05-01', '2199-12-31')

/** Whether the hint is seen, what it says, and whether the notice around it is still there. */
const hints = `JSON.stringify([...document.querySelectorAll('.drawing [data-valid-to]')].map((one) => { const hint = one.querySelector('.urgent-over'); return {seen: hint.getBoundingClientRect().height > 0, words: hint.textContent.replace(/\\s+/g, ' '), whole: one.getBoundingClientRect().height > 40 && one.textContent.includes('T-07')} }))`

/** The sheets of the procedure, printed from a window. */
async function printedIn(browser: DrivenBrowser): Promise<readonly PrintedSheet[]> {
  const window = await browser.openWindow()
  await window.visit(addressOf(over, sheet))
  return readSheets(await window.print())
}

function wordsOf({words}: PrintedSheet): string {
  return words.map(({text}) => text).join(' ')
}

describe.each([
  ['chromium', startChromium],
  ['firefox', startFirefox],
] as const)('an urgent revision in %s', (_name, start) => {
  let browser: DrivenBrowser
  let window: BrowserWindow
  let sheets: readonly PrintedSheet[]
  beforeAll(async () => {
    browser = await start(true, 1280)
    window = await browser.openWindow()
    sheets = await printedIn(browser)
  })
  afterAll(() => browser.close())

  test('whose last day is over says so by the clock, says to ask the office, and stays where it stands', async () => {
    for (const path of pages) {
      const visit = await window.visit(addressOf(over, path))
      const found: unknown = JSON.parse(String(await visit.evaluate(hints)))
      const today = await visit.evaluate(`new Date().toLocaleDateString('sv-SE')`)
      expect(visit.faults, path).toEqual([])
      expect(found, path).toEqual([
        {
          seen: true,
          words: `The day to which it is valid is over: the clock of this computer says ${today}. Ask the office what counts now, before you go on.`,
          whole: true,
        },
      ])
    }
  })

  test('that counts gives no hint', async () => {
    for (const path of pages) {
      const visit = await window.visit(addressOf(counting, path))
      const found: unknown = JSON.parse(String(await visit.evaluate(hints)))
      expect(found, path).toMatchObject([{seen: false, whole: true}])
    }
  })

  test('prints on the first sheet with a bar at its side, and its number and last day on every sheet', async () => {
    const printed = sheets.map(wordsOf)
    expect(printed.length).toBeGreaterThan(1)
    for (const text of printed) expect(text).toMatch(/urgent T-07, valid to 2019-12-31/u)
    const [first = ''] = printed
    expect(first).toMatch(
      /Wear ring check URGENT REVISION T-07 Hub bolts of a bad batch valid from 2019-05-01, valid to 2019-12-31/u,
    )
    expect(first).toContain('Ask the office what counts now, before you go on.')
    expect(first).toContain('Stand clear of the wrench.')
    const visit = await window.visit(addressOf(over, sheet))
    const bar = `(() => { const style = getComputedStyle(document.querySelector('.sheets .urgent')); return style.borderLeftStyle + ' ' + parseFloat(style.borderLeftWidth).toFixed() })()`
    await visit.evaluate(`dispatchEvent(new Event('beforeprint'))`)
    expect(await visit.evaluate(bar)).toBe('double 18')
    await visit.evaluate(`document.querySelector('link[data-paper]').setAttribute('media', 'all')`)
    expect(await visit.evaluate(bar)).toBe('double 15')
    expect(await visit.evaluate(`document.querySelectorAll('[data-overflow]').length`)).toBe(0)
  })

  test('leaves every text of its page on paper, in order and whole', () => {
    const page = readTaskPage(readFileSync(join(over, sheet), 'utf8'))
    expect(page.units.length).toBeGreaterThan(10)
    expect(sheetFindings(page, sheets, true)).toMatchObject({faults: [], tall: []})
  })

  test('breaks no rule of accessibility, in none of the palettes', async () => {
    for (const palette of ['day', 'dusk', 'night']) {
      const visit = await window.visit(`${addressOf(over, sheet)}?p=${palette}`)
      expect(await accessibilityFaults(visit), palette).toEqual([])
    }
  })

  test('fits 320 px', async () => {
    const narrow = await start(true, 320)
    const own = await narrow.openWindow()
    for (const path of pages) {
      const visit = await own.visit(addressOf(over, path))
      expect(await visit.evaluate('innerWidth'), path).toBe(320)
      expect(await visit.evaluate('document.documentElement.scrollWidth'), path).toBeLessThanOrEqual(320)
    }
    await narrow.close()
  })

  test('without scripts prints its days and no hint', async () => {
    const silent = await start(false, 1280)
    const text = (await printedIn(silent)).map(wordsOf).join(' ')
    expect(text).toMatch(/URGENT REVISION T-07 .* valid to 2019-12-31/u)
    expect(text).not.toContain('the clock of this computer')
    await silent.close()
  })
})
