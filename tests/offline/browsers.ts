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
  done(): Promise<void>
}

/** What the pages of both drivers have in common. */
interface DriverPage {
  goto(address: string, options: {waitUntil: 'load'}): Promise<unknown>
  evaluate(expression: string): Promise<unknown>
  pdf(options: {preferCSSPageSize: boolean}): Promise<Uint8Array>
  close(): Promise<void>
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
  return {
    name: 'chromium',
    visit: async (address) => {
      const page = await context.newPage()
      const ear = listener()
      page
        .on('console', ear.console)
        .on('pageerror', ear.error)
        .on('requestfailed', ear.failed)
        .on('request', ear.request)
      return visitWith(page, ear, address)
    },
    print: async (address) => printWith(await context.newPage(), address),
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
      const ear = listener()
      page
        .on('console', ear.console)
        .on('pageerror', ear.error)
        .on('requestfailed', ear.failed)
        .on('request', ear.request)
      return visitWith(page, ear, address)
    },
    print: async (address) => printWith(await browser.newPage(), address),
    close: () => browser.close(),
  }
}

/** Takes down what a page says and asks for. */
interface Listener {
  readonly faults: readonly string[]
  readonly requests: readonly string[]
  console(message: {type(): string; text(): string}): void
  error(error: unknown): void
  failed(request: {url(): string}): void
  request(request: {url(): string}): void
}

function listener(): Listener {
  const faults: string[] = []
  const requests: string[] = []
  return {
    faults,
    requests,
    console: (message) => {
      if (['error', 'warning', 'warn'].includes(message.type())) faults.push(message.text())
    },
    error: (error) => {
      faults.push(String(error))
    },
    failed: (request) => {
      faults.push(`failed: ${request.url()}`)
    },
    request: (request) => {
      requests.push(request.url())
    },
  }
}

async function visitWith(page: DriverPage, {faults, requests}: Listener, address: string): Promise<Visit> {
  await page.goto(address, {waitUntil: 'load'})
  return {faults, requests, evaluate: (expression) => page.evaluate(expression), done: () => page.close()}
}

async function printWith(page: DriverPage, address: string): Promise<Uint8Array> {
  await page.goto(address, {waitUntil: 'load'})
  const bytes = await page.pdf({preferCSSPageSize: true})
  await page.close()
  return bytes
}
