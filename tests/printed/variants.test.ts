import {readFileSync} from 'node:fs'
import {join} from 'node:path'
import {expect, test} from 'vitest'
import {startChromium} from '../offline/browsers.ts'
import {addressOf, copyToOddFolder} from '../offline/odd-folder.ts'
import {readSheets} from './printed-sheets.ts'
import {sheetFindings} from './sheet-faults.ts'
import {readTaskPage} from './task-page.ts'

const folder = copyToOddFolder(join('site', 'vessel-b'))

/** Words on paper of a page of vessel two, in one line, its sheets being sound. */
async function paperOf(path: string): Promise<string> {
  const browser = await startChromium(true)
  const window = await browser.openWindow()
  await window.visit(addressOf(folder, path))
  const sheets = await readSheets(await window.print())
  await browser.close()
  const page = readTaskPage(readFileSync(join(folder, path), 'utf8'))
  expect(sheetFindings(page, sheets, true), path).toMatchObject({faults: [], tall: []})
  return sheets.flatMap(({words}) => words.map(({text}) => text)).join(' ')
}

function times(words: string, text: string): number {
  return text.split(words).length - 1
}

test('both ways of a ring whose fit nobody knows stand on paper, each below its condition, behind the question', async () => {
  const paper = await paperOf('p/2p/wear-rings.html')
  const question = paper.indexOf('Find out: fit of the wear rings')
  expect(question).toBeGreaterThan(0)
  for (const [condition, step] of [
    [
      'only if fit of the wear rings is held by screws',
      'File the punch marks of each ring to be renewed off',
    ],
    [
      'only if fit of the wear rings is pressed into the seat',
      'Draw each ring to be renewed out of its seat',
    ],
  ] as const) {
    expect(paper.indexOf(step)).toBeGreaterThan(question)
    expect(times(condition, paper)).toBeGreaterThan(3)
  }
})

test('a pump with the older motor is drained through both of its cocks, and never through a bore that it lacks', async () => {
  const paper = await paperOf('p/1p/oil-draining.html')
  expect(times('PIPE DRAIN', paper)).toBeGreaterThan(3)
  expect(paper).not.toContain('only if')
  expect(paper).not.toContain('through the flushing bore')
})
