import {readdirSync, readFileSync, statSync} from 'node:fs'
import {join} from 'node:path'
import {describe, expect, test} from 'vitest'
import {type BrowserWindow, startChromium, startFirefox} from '../offline/browsers.ts'
import {addressOf, copyToOddFolder} from '../offline/odd-folder.ts'
import {readSheets} from './printed-sheets.ts'
import {sheetFindings} from './sheet-faults.ts'
import {readTaskPage} from './task-page.ts'

const folder = copyToOddFolder()

/** The longest and the shortest procedure of one pump. */
const printed = longestAndShortest('p/4s')

function longestAndShortest(below: string): readonly string[] {
  const procedures = readdirSync(join(folder, below))
    .map((name) => `${below}/${name}`)
    .filter((path) => readFileSync(join(folder, path), 'utf8').includes('data-kind="procedure"'))
    .sort((a, b) => statSync(join(folder, b)).size - statSync(join(folder, a)).size)
  return [procedures[0], procedures[procedures.length - 1]].filter((path) => path !== undefined)
}

/** No step or caution outgrows its sheet. */
async function expectNoOverflow(window: BrowserWindow, path: string): Promise<void> {
  const {evaluate} = await window.visit(addressOf(folder, path))
  const sheets = await evaluate(
    'dispatchEvent(new Event("beforeprint")), [document.querySelectorAll(".sheet").length, document.querySelectorAll("[data-overflow]").length].join(" ")',
  )
  expect(sheets, path).toMatch(/^[1-9]\d* 0$/u)
}

describe.each([
  ['chromium', true, () => startChromium(true)],
  ['chromium', false, () => startChromium(false)],
  ['firefox', true, () => startFirefox(true)],
  ['firefox', false, () => startFirefox(false)],
] as const)('%s, scripts %s', (_name, scripts, start) => {
  test('prints identity on every sheet, every text, and no step parted from its cautions', async () => {
    expect(printed).toHaveLength(2)
    const browser = await start()
    await Promise.all(
      printed.map(async (path) => {
        const window = await browser.openWindow()
        if (scripts) await expectNoOverflow(window, path)
        await window.visit(addressOf(folder, path))
        const sheets = await readSheets(await window.print())
        const page = readTaskPage(readFileSync(join(folder, path), 'utf8'))
        expect(sheets.length, path).toBeGreaterThan(3)
        expect(page.units.length, path).toBeGreaterThan(10)
        expect(sheetFindings(page, sheets, scripts), path).toMatchObject({faults: [], tall: []})
      }),
    )
    await browser.close()
  })
})
