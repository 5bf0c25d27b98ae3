import {afterAll, beforeAll, describe, expect, test} from 'vitest'
import {type DrivenBrowser, startChromium, startFirefox} from './browsers.ts'
import {addressOf, publishedFolder} from './odd-folder.ts'

const pages = ['p/4s/wear-rings.html', 'p/4s/reassembly.html', 'designs/design-a/bearings.html']

/** Left, top, width and height of each picture of the marked section, in hundredths of a pixel, whether it has loaded. */
const boxes = `[...document.querySelectorAll('.drawing .marked img')].map((one) => {
  const {left, top, width, height} = one.getBoundingClientRect()
  return [...[left, top, width, height].map((length) => Math.round(length * 100)), one.complete && one.naturalWidth > 0]
})`

/** The same with the styles of paper. */
const onPaper = `new Promise((done) => {
  const paper = document.querySelector('link[href*="paper.css"]')
  paper.media = 'all'
  const measured = () => done(${boxes})
  if (paper.sheet) setTimeout(measured, 100)
  else paper.onload = measured
})`

describe.each([
  ['chromium at 1280 px', () => startChromium(true)],
  ['chromium at 320 px', () => startChromium(true, 320)],
  ['firefox', () => startFirefox(true)],
] as const)('the marks of parts in %s', (_name, start) => {
  let browser: DrivenBrowser
  beforeAll(async () => {
    browser = await start()
  })
  afterAll(() => browser.close())

  test.each(pages)('lie exactly over the section on %s, on screen and on paper 90 mm wide', async (path) => {
    for (const where of [boxes, onPaper]) {
      const visit = await browser.visit(addressOf(publishedFolder, path))
      expect(visit.faults).toEqual([])
      const [section, marks, ...others] = boxesOf(await visit.evaluate(where))
      expect(others).toEqual([])
      expect(marks).toEqual(section)
      const [, , width = 0, height = 0, loaded] = section ?? []
      expect(loaded).toBe(true)
      expect(Number(height)).toBeGreaterThan(Number(width))
      if (where === onPaper) expect(Number(width) / 100).toBeCloseTo((90 / 25.4) * 96, 0)
      await visit.done()
    }
  })
})

function boxesOf(value: unknown): readonly (readonly unknown[])[] {
  return Array.isArray(value) ? value.filter((one) => Array.isArray(one)) : []
}
