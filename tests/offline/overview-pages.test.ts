import {afterAll, beforeAll, describe, expect, test} from 'vitest'
import {accessibilityFaults} from './accessibility.ts'
import {type DrivenBrowser, startChromium} from './browsers.ts'
import {addressOf, copyToOddFolder} from './odd-folder.ts'

const folder = copyToOddFolder()
const paths = ['work.html', 'failures.html'] as const

/** Words that hang out of the window at the right, whatever scrolls. */
const beyond = `[...document.querySelectorAll('main th, main td, main a, main p')].filter((one) => one.getBoundingClientRect().right > innerWidth + 0.5).map((one) => one.textContent.slice(0, 40))`

describe.each(paths)('%s', (path) => {
  describe.each([1280, 320])('at %i px', (width) => {
    let browser: DrivenBrowser
    beforeAll(async () => {
      browser = await startChromium(true, width)
    })
    afterAll(() => browser.close())

    test('has no fault of accessibility in any palette', async () => {
      for (const palette of ['day', 'dusk', 'night']) {
        const visit = await browser.visit(`${addressOf(folder, path)}?p=${palette}`)
        expect(visit.faults).toEqual([])
        expect(await accessibilityFaults(visit), palette).toEqual([])
        await visit.done()
      }
    })

    test('shows every word without scrolling to the side', async () => {
      const visit = await browser.visit(addressOf(folder, path))
      expect(await visit.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(width)
      expect(await visit.evaluate(`document.querySelectorAll('main td').length`)).toBeGreaterThan(10)
      expect(await visit.evaluate(beyond)).toEqual([])
      await visit.done()
    })
  })

  test('is one click from the start page', async () => {
    const browser = await startChromium(true)
    const visit = await browser.visit(addressOf(folder, 'index.html'))
    expect(
      await visit.evaluate(
        `[...document.querySelectorAll('main a')].some((one) => one.getAttribute('href').startsWith('${path}'))`,
      ),
    ).toBe(true)
    await browser.close()
  })
})
