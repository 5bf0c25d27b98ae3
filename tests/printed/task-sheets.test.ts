import {spawnSync} from 'node:child_process'
import {mkdtempSync, writeFileSync} from 'node:fs'
import {tmpdir} from 'node:os'
import {join} from 'node:path'
import {describe, expect, test} from 'vitest'
import {type DrivenBrowser, startChromium, startFirefox} from '../offline/browsers.ts'
import {addressOf, copyToOddFolder} from '../offline/odd-folder.ts'

const folder = copyToOddFolder()

/** Words of each page of a PDF, white space folded. */
function pagesOf(pdf: Uint8Array): readonly string[] {
  const path = join(mkdtempSync(join(tmpdir(), 'sheet-')), 'sheet.pdf')
  writeFileSync(path, pdf)
  const run = spawnSync('pdftotext', ['-layout', path, '-'], {encoding: 'utf8', maxBuffer: 50_000_000})
  return run.stdout
    .split('\f')
    .map((page) => page.replace(/\s+/gu, ' ').trim())
    .filter((page) => page !== '')
}

/** No step or caution outgrows its sheet. */
async function expectNoOverflow(browser: DrivenBrowser, procedure: string): Promise<void> {
  const visit = await browser.visit(addressOf(folder, `p/4s/${procedure}.html`))
  const sheets = await visit.evaluate(
    'dispatchEvent(new Event("beforeprint")), [document.querySelectorAll(".sheet").length, document.querySelectorAll("[data-overflow]").length].join(" ")',
  )
  expect(sheets, procedure).toMatch(/^\d+ 0$/u)
  await visit.done()
}

/** The longest and the shortest procedure of the demonstration. */
const printed = ['wear-rings', 'restoration'] as const

describe.each([
  ['chromium', true, () => startChromium(true)],
  ['chromium', false, () => startChromium(false)],
  ['firefox', true, () => startFirefox(true)],
  ['firefox', false, () => startFirefox(false)],
] as const)('%s, scripts %s', (_name, scripts, start) => {
  test('prints identity on every sheet of the longest and the shortest procedure', async () => {
    const browser = await start()
    for (const procedure of printed) {
      if (scripts) await expectNoOverflow(browser, procedure)
      const sheets = pagesOf(await browser.print(addressOf(folder, `p/4s/${procedure}.html`)))
      expect(sheets.length, procedure).toBeGreaterThan(3)
      const named = scripts
        ? sheets
        : sheets.filter((sheet) => /\d+ |HOLD POINT|When it is done/u.test(sheet))
      for (const [index, sheet] of named.entries()) {
        const where = `${procedure}, sheet ${index + 1}: ${sheet.slice(0, 200)}`
        expect(sheet, where).toContain('4S')
        expect(sheet, where).toContain('Example Vessel A')
        expect(sheet, where).toContain(`vessel-a/4s/${procedure}`)
        expect(sheet, where).toContain('DRAFT, NOT ISSUED')
        expect(sheet, where).toContain(
          scripts ? `Sheet ${index + 1} of ${sheets.length}` : 'sheet ____ of ____',
        )
      }
    }
    await browser.close()
  })
})
