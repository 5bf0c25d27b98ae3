import {readFileSync} from 'node:fs'
import {join} from 'node:path'
import {afterAll, beforeAll, expect, test} from 'vitest'
import {type DrivenBrowser, startChromium, startFirefox} from '../offline/browsers.ts'
import {addressOf} from '../offline/odd-folder.ts'
import {readSheets} from '../printed/printed-sheets.ts'
import {sheetFindings} from '../printed/sheet-faults.ts'
import {readTaskPage} from '../printed/task-page.ts'
import {shareWindows, type Windows} from './windows.ts'
import {asked, copyVessels, expectNone, named} from './work.ts'

const folders = copyVessels()
let browser: DrivenBrowser
let windows: Windows

beforeAll(async () => {
  browser = asked.firefox ? await startFirefox(asked.scripts) : await startChromium(asked.scripts)
  // Firefox waits up to a second between the first ten sheets, so many windows print at a time.
  windows = shareWindows(browser, asked.firefox ? 12 : 3)
})
afterAll(() => browser.close())

/** Sheets whose content outgrows them, as the page's own script marks them. */
const overflowing =
  'dispatchEvent(new Event("beforeprint")), document.querySelectorAll(".sheet").length > 0 && document.querySelectorAll("[data-overflow]").length'

test.concurrent.for(named)('%s', async ([, {vessel, path}], {task}) => {
  const folder = folders.get(vessel) ?? ''
  const printed = await windows.use(async (window) => {
    const {evaluate} = await window.visit(addressOf(folder, path))
    if (asked.scripts) expect(await evaluate(overflowing)).toBe(0)
    return window.print()
  })
  const sheets = await readSheets(printed)
  const page = readTaskPage(readFileSync(join(folder, path), 'utf8'))
  const {faults, tall, goOn} = sheetFindings(page, sheets, asked.scripts)
  task.meta.sheets = sheets.length
  task.meta.tall = tall
  task.meta.goOn = goOn
  expectNone(faults)
})
