import {readFileSync, writeFileSync} from 'node:fs'
import {join} from 'node:path'
import {afterAll, beforeAll, describe, expect, test} from 'vitest'
import {type DrivenBrowser, startChromium, startFirefox} from './browsers.ts'
import {addressOf, copyToOddFolder, oddName, samplePages} from './odd-folder.ts'

const folder = copyToOddFolder()

describe.each([
  ['chromium with scripts', () => startChromium(true)],
  ['chromium without scripts', () => startChromium(false)],
  ['firefox with scripts', () => startFirefox(true)],
  ['firefox without scripts', () => startFirefox(false)],
] as const)('%s', (name, start) => {
  let browser: DrivenBrowser
  beforeAll(async () => {
    browser = await start()
  })
  afterAll(() => browser.close())

  test(`opens a page of each kind from "${oddName}" with no fault and no request outside`, async () => {
    const inside = addressOf(folder, '')
    for (const path of samplePages) {
      const visit = await browser.visit(addressOf(folder, path))
      expect(visit.faults, path).toEqual([])
      expect(
        visit.requests.filter((one) => !one.startsWith(inside) && !one.startsWith('data:')),
        path,
      ).toEqual([])
      if (name.endsWith('with scripts')) {
        expect(await visit.evaluate('document.documentElement.classList.contains("app-ok")'), path).toBe(true)
      }
      await visit.done()
    }
  })

  if (name.endsWith('with scripts'))
    test('cannot fetch a neighbour file, as the browser of a crew cannot', async () => {
      const visit = await browser.visit(addressOf(folder, 'hub/store.html'))
      const fetched = await visit.evaluate(
        'new Promise((done) => { const asked = new XMLHttpRequest(); asked.onload = () => done("read"); asked.onerror = () => done("refused"); try { asked.open("GET", "store.js"); asked.send() } catch (fault) { done("refused") } })',
      )
      expect(fetched).toBe('refused')
      await visit.done()
    })
})

test('a runtime leaves a page of another contract alone', async () => {
  const other = copyToOddFolder()
  const page = readFileSync(join(other, 'index.html'), 'utf8')
  expect(page).toContain('data-contract="1"')
  writeFileSync(join(other, 'index.html'), page.replace('data-contract="1"', 'data-contract="2"'))
  const browser = await startChromium(true)
  const visit = await browser.visit(addressOf(other, 'index.html'))
  expect(visit.faults).toEqual([])
  expect(await visit.evaluate('document.documentElement.classList.contains("app-ok")')).toBe(false)
  await browser.close()
})

test('night travels in the links, and a page at 320 px scrolls one way only', async () => {
  const browser = await startChromium(true, 320)
  const visit = await browser.visit(`${addressOf(folder, 'p/4s/wear-rings.html')}?p=night`)
  expect(await visit.evaluate('document.documentElement.dataset.palette')).toBe('night')
  expect(await visit.evaluate('document.querySelector(".ways a").getAttribute("href")')).toBe(
    '../../index.html?p=night',
  )
  expect(await visit.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(320)
  await visit.done()
  for (const path of samplePages) {
    const narrow = await browser.visit(addressOf(folder, path))
    expect(await narrow.evaluate('document.documentElement.scrollWidth'), path).toBeLessThanOrEqual(320)
    await narrow.done()
  }
  await browser.close()
})
