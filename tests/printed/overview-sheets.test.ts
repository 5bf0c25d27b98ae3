import {afterAll, beforeAll, describe, expect, test} from 'vitest'
import {type DrivenBrowser, startChromium, startFirefox} from '../offline/browsers.ts'
import {addressOf, copyToOddFolder} from '../offline/odd-folder.ts'
import {readSheets} from './printed-sheets.ts'

const folder = copyToOddFolder()

/** Words of each sheet of a printed page. */
async function sheetsOf(browser: DrivenBrowser, path: string): Promise<readonly string[]> {
  const sheets = await readSheets(await browser.print(addressOf(folder, path)))
  return sheets.map(({words}) => words.map(({text}) => text).join(' '))
}

/** What stands on top of a further sheet: the head of the table, below the title of a unit or a group at most. */
function beginOf(text: string): string {
  return text.slice(0, 100)
}

function countOf(pattern: RegExp, text: string): number {
  return [...text.matchAll(pattern)].length
}

describe.each([
  ['chromium', () => startChromium(true)],
  ['firefox', () => startFirefox(true)],
] as const)('%s', (_name, start) => {
  let browser: DrivenBrowser
  beforeAll(async () => {
    browser = await start()
  })
  afterAll(() => browser.close())

  test('prints the head of the table on each sheet of the work by interval, and parts no job', async () => {
    const sheets = await sheetsOf(browser, 'work.html')
    const jobs = sheets.map((text) => countOf(/\d+ pumps:/gu, text))
    expect(jobs.reduce((sum, one) => sum + one, 0)).toBeGreaterThan(10)
    expect(jobs.filter((one) => one > 0).length).toBeGreaterThan(1)
    for (const [index, text] of sheets.entries()) {
      expect(countOf(/common practice, no source/gu, text), `sheet ${index + 1}`).toBe(jobs[index])
      if (index > 0 && jobs[index] !== 0)
        expect(beginOf(text), `sheet ${index + 1}`).toContain('How often, and why')
    }
  })

  test('prints the head of the table on each sheet of the failures by part', async () => {
    const sheets = await sheetsOf(browser, 'failures.html')
    expect(sheets.length).toBeGreaterThan(3)
    for (const [index, text] of sheets.slice(1, -1).entries())
      expect(beginOf(text), `sheet ${index + 2}`).toContain('Found or mended by')
  })
})
