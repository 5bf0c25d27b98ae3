import {mkdtempSync, readFileSync, writeFileSync} from 'node:fs'
import {createServer} from 'node:http'
import {tmpdir} from 'node:os'
import {join} from 'node:path'
import {pathToFileURL} from 'node:url'
import {afterAll, beforeAll, expect, test} from 'vitest'
import {z} from 'zod'
import {type DrivenBrowser, startChromium, startFirefox} from '../offline/browsers.ts'
import {addressOf} from '../offline/odd-folder.ts'
import {titleOf, visibleText} from '../offline/visible-text.ts'
import {shareWindows, type Windows} from './windows.ts'
import {asked, copyVessels, expectNone, named} from './work.ts'

const folders = copyVessels()
let browser: DrivenBrowser
let windows: Windows

beforeAll(async () => {
  browser = asked.firefox ? await startFirefox(asked.scripts) : await startChromium(asked.scripts)
  windows = shareWindows(browser, 3)
})
afterAll(() => browser.close())

/** Title, first words and marks of the page that a window shows. */
const shown = z.tuple([z.string(), z.number(), z.boolean(), z.boolean()])
const shownNow = `[document.title, document.body.innerText.trim().length, document.body.hasAttribute('data-contract'), document.documentElement.classList.contains('app-ok')]`

test('hears a request outside the folder, and what a page says', async () => {
  const heard: string[] = []
  const server = createServer((request, response) => {
    heard.push(request.url ?? '')
    response.end()
  })
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
  const address = server.address()
  const port = typeof address === 'object' ? address?.port : undefined
  const folder = mkdtempSync(join(tmpdir(), 'outside-'))
  writeFileSync(
    join(folder, 'page.html'),
    `<!doctype html><title>page</title><img alt="" src="http://127.0.0.1:${port}/seen.png"><img alt="" src="missing.png"><script>throw new Error('said')</script>`,
  )
  const visit = await browser.visit(pathToFileURL(join(folder, 'page.html')).href)
  expect(heard).toEqual(['/seen.png'])
  expect(visit.requests).toContain(`http://127.0.0.1:${port}/seen.png`)
  expect(visit.faults.join('\n').includes('said')).toBe(asked.scripts)
  if (!asked.firefox) expect(visit.faults.join('\n')).toContain('missing.png')
  await visit.done()
  server.close()
})

test.concurrent.for(named)('%s', async ([, {vessel, path}]) => {
  const folder = folders.get(vessel) ?? ''
  const html = readFileSync(join(folder, path), 'utf8')
  await windows.use(async (window) => {
    const {faults, requests, evaluate} = await window.visit(addressOf(folder, path))
    const [title, letters, governed, running] = shown.parse(await evaluate(shownNow))
    expectNone(faults)
    const inside = addressOf(folder, '')
    expectNone(requests.filter((one) => !one.startsWith(inside) && !one.startsWith('data:')))
    if (!asked.firefox) expect(requests).toContain(addressOf(folder, path))
    expect(title).toBe(titleOf(html))
    if (visibleText(html) !== '') expect(letters).toBeGreaterThan(0)
    expect(running).toBe(asked.scripts && governed)
  })
})
