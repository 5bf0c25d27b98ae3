import {cpSync, mkdirSync, mkdtempSync, readFileSync, writeFileSync} from 'node:fs'
import {tmpdir} from 'node:os'
import {join} from 'node:path'
import {afterAll, beforeAll, describe, expect, test} from 'vitest'
import {smallContent} from '../commands/changed-content.ts'
import {compileProgram} from '../commands/program-for-tests.ts'
import {otherStep, otherTorque, urgentText} from '../commands/urgent-for-tests.ts'
import {readSheets} from '../printed/printed-sheets.ts'
import {accessibilityFaults} from './accessibility.ts'
import {type DrivenBrowser, startChromium, startFirefox} from './browsers.ts'
import {addressOf, oddName} from './odd-folder.ts'

const page = 'impact.html'
const folder = previewed()

/** The reviewer's page of an edit that moves values, a step and a caution, in a folder with an odd name. */
function previewed(): string {
  const content = mkdtempSync(join(tmpdir(), 'impact-'))
  cpSync(smallContent, content, {recursive: true})
  const change = (path: string, old: string, words: string): void => {
    const text = readFileSync(join(content, path), 'utf8')
    if (!text.includes(old)) throw new Error(`Unexpected ${path} without ${old}, expected it there`)
    writeFileSync(join(content, path), text.replace(old, words))
  }
  change('procedures/ring-check.md', 'Close the pressure valve and lock it.', 'Close the pressure valve.')
  change(
    'procedures/ring-check.md',
    '1. :step{#close',
    '1. :step{#look} Look at the ring.\n\n2. :step{#close',
  )
  change('cautions/sharp-edges.yaml', 'Cut hands.', 'Cuts of hands.')
  change('designs/design-s.yaml', 'utilisation: 80 %', 'utilisation: 70 %')
  mkdirSync(join(content, 'urgent'))
  writeFileSync(join(content, 'urgent', 't-07.yaml'), urgentText({...otherTorque, ...otherStep}))
  const out = join(mkdtempSync(join(tmpdir(), 'impact-site-')), oddName)
  const {status, err} = compileProgram().run([
    'preview',
    '--content',
    content,
    '--against',
    smallContent,
    '--out',
    out,
  ])
  if (status !== 0) throw new Error(err)
  return out
}

describe.each([
  ['chromium', startChromium],
  ['firefox', startFirefox],
] as const)('the page of what an edit moves, in %s', (_name, start) => {
  let browser: DrivenBrowser
  beforeAll(async () => {
    browser = await start(true, 1280)
  })
  afterAll(() => browser.close())

  test('opens with no fault and asks for no other file', async () => {
    const visit = await browser.visit(addressOf(folder, page))
    expect(visit.faults).toEqual([])
    expect(visit.requests.filter((one) => one !== addressOf(folder, page))).toEqual([])
    expect(await visit.evaluate(`document.querySelectorAll('.differences li').length`)).toBeGreaterThan(5)
    await visit.done()
  })

  test.each([320, 1280])('fits %d px without a way to the side', async (width) => {
    const sized = await start(true, width)
    const visit = await sized.visit(addressOf(folder, page))
    expect(await visit.evaluate('innerWidth')).toBe(width)
    expect(await visit.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(width)
    const past = await visit.evaluate(
      `[...document.querySelectorAll('main *')].filter((one) => one.getBoundingClientRect().right > innerWidth + 0.5).map((one) => one.outerHTML.slice(0, 80))`,
    )
    expect(past).toEqual([])
    await sized.close()
  })

  test('breaks no rule of accessibility, in none of the palettes', async () => {
    for (const palette of ['pc', 'day', 'dusk', 'night']) {
      const visit = await browser.visit(addressOf(folder, page))
      await visit.evaluate(`document.querySelector('#palette-${palette}').click()`)
      expect(await accessibilityFaults(visit), palette).toEqual([])
      await visit.done()
    }
  })

  test('counts the ticks without a script, up to the last one', async () => {
    const visit = await browser.visit(addressOf(folder, page))
    const seen = `['.open', '.complete'].filter((one) => document.querySelector(one).getBoundingClientRect().height > 0).join()`
    expect(await visit.evaluate(seen)).toBe('.open')
    await visit.evaluate(
      `[...document.querySelectorAll('.what input')].slice(1).forEach((one) => one.click())`,
    )
    expect(await visit.evaluate(seen)).toBe('.open')
    await visit.evaluate(`document.querySelector('.what input').click()`)
    expect(await visit.evaluate(seen)).toBe('.complete')
    await visit.done()
  })

  test('prints every difference with both sides, and the place to sign', async () => {
    const sheets = await readSheets(await browser.print(addressOf(folder, page)))
    const text = sheets.flatMap(({words}) => words.map((one) => one.text)).join(' ')
    for (const words of [
      'What this edit moves',
      'Close the pressure valve and lock it.',
      'Cuts of hands.',
      'T-07',
      'Every page that moves',
      'Reviewer, role',
    ])
      expect(text).toContain(words)
    expect(text).not.toMatch(/As the PC|\bDusk\b/u)
  })
})
