import {afterAll, beforeAll, describe, expect, test} from 'vitest'
import {type DrivenBrowser, startChromium, startFirefox, type Visit} from './browsers.ts'
import {addressOf, copyToOddFolder} from './odd-folder.ts'

const folder = copyToOddFolder()

/** Waits until an expression holds in the page, at most five seconds, and gives whether it did. */
function holds(visit: Visit, expression: string): Promise<unknown> {
  return visit.evaluate(
    `new Promise((done) => { const end = Date.now() + 5000; const look = () => (${expression}) ? done(true) : Date.now() > end ? done(false) : setTimeout(look, 20); look() })`,
  )
}

/** Asks the issue frame of the start page, which nobody may look into, by its address and whether it is seen. */
const frameIn = (palette: string): string =>
  `document.querySelector('iframe.issue').getAttribute('src') === 'issue.html?p=${palette}' && getComputedStyle(document.querySelector('iframe.issue')).visibility === 'visible'`

const pressed = `document.querySelector('[aria-pressed=true]')?.getAttribute('data-palette-choice')`

describe.each([
  ['chromium', () => startChromium(true)],
  ['firefox', () => startFirefox(true)],
] as const)('%s', (_name, start) => {
  let browser: DrivenBrowser
  beforeAll(async () => {
    browser = await start()
  })
  afterAll(() => browser.close())

  test('opens the start page at night with the issue frame at night too', async () => {
    const visit = await browser.visit(`${addressOf(folder, 'index.html')}?p=night`)
    expect(await holds(visit, frameIn('night'))).toBe(true)
    expect(await visit.evaluate(pressed)).toBe('night')
    await visit.done()
  })

  test('changes page, address, links and frame by one button, so that loading again keeps the palette', async () => {
    const visit = await browser.visit(`${addressOf(folder, 'index.html')}?p=day#page`)
    await visit.evaluate(`document.querySelector('[data-palette-choice=dusk]').click()`)
    expect(await visit.evaluate('document.documentElement.dataset.palette')).toBe('dusk')
    expect(await visit.evaluate('location.search + location.hash')).toBe('?p=dusk#page')
    expect(await visit.evaluate(pressed)).toBe('dusk')
    expect(await holds(visit, frameIn('dusk'))).toBe(true)
    expect(
      await visit.evaluate(
        `[...document.querySelectorAll('.pumps a')].every((one) => /\\?p=dusk$/.test(one.getAttribute('href')))`,
      ),
    ).toBe(true)
    await visit.done()
  })

  test('leaves links to elements of the same page as they are', async () => {
    const visit = await browser.visit(`${addressOf(folder, 'index.html')}?p=night`)
    expect(await visit.evaluate(`document.querySelector('.skip').getAttribute('href')`)).toBe('#page')
    await visit.done()
  })

  test('takes no palette from the address but the three', async () => {
    const visit = await browser.visit(`${addressOf(folder, 'words.html')}?p=pink`)
    expect(await visit.evaluate('document.documentElement.hasAttribute("data-palette")')).toBe(false)
    await visit.done()
  })

  test('gives every way, button and pump of the start page an area of 44 px', async () => {
    const visit = await browser.visit(addressOf(folder, 'index.html'))
    const small = await visit.evaluate(
      `[...document.querySelectorAll('.ways a, .palettes button, .pumps a, .plan-link rect')].map((one) => [one.textContent, one.getBoundingClientRect()]).filter(([, box]) => box.width < 43.9 || box.height < 43.9).map(([words, box]) => words + ' ' + box.width + ' x ' + box.height)`,
    )
    expect(small).toEqual([])
    await visit.done()
  })
})
