import {mkdtempSync, rmSync} from 'node:fs'
import {tmpdir} from 'node:os'
import {join} from 'node:path'
import {chromium} from 'playwright-core'
import puppeteer from 'puppeteer-core'
import {ensureBrowsers} from '../../.config/ensure-browsers.mjs'

/** What a test asks of either browser. */
export interface DrivenBrowser {
  readonly name: 'chromium' | 'firefox'
  /** Opens an address, waits until it has loaded, and gives what went wrong and where it asked for things. */
  visit(address: string): Promise<Visit>
  /** Prints an address as the crew's browser does, to PDF bytes. */
  print(address: string): Promise<Uint8Array>
  close(): Promise<void>
}

export interface Visit {
  readonly faults: readonly string[]
  readonly requests: readonly string[]
  /** Runs a function's text in the page; only with scripts on. */
  evaluate(expression: string): Promise<unknown>
  screenshot(path: string): Promise<void>
  done(): Promise<void>
}

const programs = ensureBrowsers()

/** Starts Debian's Chromium without any relaxation of its rules for local files. */
export async function startChromium(scripts: boolean, width = 1280): Promise<DrivenBrowser> {
  const folder = mkdtempSync(join(tmpdir(), 'chromium-'))
  const context = await chromium.launchPersistentContext(folder, {
    executablePath: programs.chromium,
    args: [
      '--headless=new',
      '--no-sandbox',
      '--disable-gpu',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
    ],
    javaScriptEnabled: scripts,
    viewport: {width, height: 900},
  })
  const visit = async (address: string): Promise<Visit> => {
    const page = await context.newPage()
    const faults: string[] = []
    const requests: string[] = []
    page.on('console', (message) => {
      if (message.type() === 'error' || message.type() === 'warning') faults.push(message.text())
    })
    page.on('pageerror', (error) => faults.push(String(error)))
    page.on('requestfailed', (request) => faults.push(`failed: ${request.url()}`))
    page.on('request', (request) => requests.push(request.url()))
    await page.goto(address, {waitUntil: 'load'})
    return {
      faults,
      requests,
      evaluate: (expression) => page.evaluate(expression),
      screenshot: async (path) => {
        await page.screenshot({path, fullPage: true})
      },
      done: () => page.close(),
    }
  }
  return {
    name: 'chromium',
    visit,
    print: async (address) => {
      const page = await context.newPage()
      await page.goto(address, {waitUntil: 'load'})
      const bytes = await page.pdf({preferCSSPageSize: true})
      await page.close()
      return bytes
    },
    close: async () => {
      await context.close()
      rmSync(folder, {recursive: true, force: true})
    },
  }
}

/** Starts Debian's Firefox over BiDi with the preferences that a crew's Firefox has for local files. */
export async function startFirefox(scripts: boolean): Promise<DrivenBrowser> {
  const browser = await puppeteer.launch({
    browser: 'firefox',
    executablePath: programs.firefox,
    headless: true,
    protocol: 'webDriverBiDi',
    extraPrefsFirefox: {
      'remote.prefs.recommended': false,
      'security.fileuri.strict_origin_policy': true,
      'privacy.file_unique_origin': true,
      'javascript.enabled': scripts,
    },
  })
  return {
    name: 'firefox',
    visit: async (address) => {
      const page = await browser.newPage()
      const faults: string[] = []
      const requests: string[] = []
      page.on('console', (message) => {
        if (message.type() === 'error' || message.type() === 'warn') faults.push(message.text())
      })
      page.on('pageerror', (error) => faults.push(String(error)))
      page.on('requestfailed', (request) => faults.push(`failed: ${request.url()}`))
      page.on('request', (request) => requests.push(request.url()))
      await page.goto(address, {waitUntil: 'load'})
      return {
        faults,
        requests,
        evaluate: (expression) => page.evaluate(expression),
        screenshot: async (path) => {
          if (path.endsWith('.png')) await page.screenshot({path: `${path.slice(0, -4)}.png`, fullPage: true})
        },
        done: () => page.close(),
      }
    },
    print: async (address) => {
      const page = await browser.newPage()
      await page.goto(address, {waitUntil: 'load'})
      const bytes = await page.pdf({preferCSSPageSize: true})
      await page.close()
      return bytes
    },
    close: () => browser.close(),
  }
}
