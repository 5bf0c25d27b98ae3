import {execFile} from 'node:child_process'
import {mkdtempSync, rmSync, writeFileSync} from 'node:fs'
import {tmpdir} from 'node:os'
import {join} from 'node:path'
import {promisify} from 'node:util'
import {expect, test} from 'vitest'
import {startChromium} from '../offline/browsers.ts'
import {addressOf, copyToOddFolder} from '../offline/odd-folder.ts'

const folder = copyToOddFolder()
const run = promisify(execFile)

/** Margin at the right edge of a sheet and the gutter where change bars stand, in points: ten and five millimetres. */
const margin = (15 / 25.4) * 72

/** How much of the gutter is free before the bar, in points. */
const freeBeforeBar = 4

/** Words of a PDF that stand in the right margin, its gutter or beyond, with their sheet. */
async function wordsInMargin(pdf: Uint8Array): Promise<readonly string[]> {
  const own = mkdtempSync(join(tmpdir(), 'paper-'))
  try {
    writeFileSync(join(own, 'page.pdf'), pdf)
    const {stdout} = await run('pdftotext', ['-bbox', join(own, 'page.pdf'), '-'], {maxBuffer: 200_000_000})
    return stdout
      .split('<page ')
      .slice(1)
      .flatMap((page, index) => {
        const edge = Number(/width="([^"]*)"/u.exec(page)?.[1]) - margin + freeBeforeBar
        const words = [...page.matchAll(/xMax="([^"]*)"[^>]*>([^<]*)</gu)]
        expect(words.length).toBeGreaterThan(0)
        return words
          .filter(([, right]) => !(Number(right) <= edge))
          .map(([, , word]) => `sheet ${index + 1}: ${word}`)
      })
  } finally {
    rmSync(own, {recursive: true, force: true})
  }
}

const pages = [
  'values.html',
  'effective.html',
  'changed.html',
  'cautions.html',
  'tools.html',
  'parts.html',
  'sources.html',
  'work.html',
  'failures.html',
  'p/4s/index.html',
  'p/4s/values.html',
  'p/4s/symptoms.html',
  'p/4s/job-wear-ring-service.html',
  'designs/design-a/torques.html',
  'designs/design-a/fasteners.html',
]

test('no page prints a word where change bars stand or beyond', async () => {
  const browser = await startChromium(true)
  const found = await Promise.all(
    pages.map(async (path) => {
      const window = await browser.openWindow()
      await window.visit(addressOf(folder, path))
      return (await wordsInMargin(await window.print())).map((word) => `${path}, ${word}`)
    }),
  )
  await browser.close()
  expect(found.flat()).toEqual([])
})
