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
  /** Opens a window of its own that goes from address to address, so that many can be open at a time. */
  openWindow(): Promise<BrowserWindow>
  close(): Promise<void>
}

/** A window that is used again: its visits and prints follow one another. */
export interface BrowserWindow {
  visit(address: string): Promise<Omit<Visit, 'done'>>
  /** Prints what the last visit shows. */
  print(): Promise<Uint8Array>
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
  const open = async (): Promise<OpenPage> => {
    const page = await context.newPage()
    const ear = newEar()
    page
      .on('console', ear.console)
      .on('pageerror', ear.error)
      .on('requestfailed', ear.failed)
      .on('request', ear.request)
    return {page, ear}
  }
  return {
    name: 'chromium',
    ...actsOf(open, open),
    close: async () => {
      await context.close()
      rmSync(folder, {recursive: true, force: true})
    },
  }
}

/** Starts Debian's Firefox over BiDi with the preferences that a crew's Firefox has for local files. */
export async function startFirefox(scripts: boolean, width?: number): Promise<DrivenBrowser> {
  const browser = await puppeteer.launch({
    browser: 'firefox',
    executablePath: programs.firefox,
    headless: true,
    protocol: 'webDriverBiDi',
    ...(width === undefined ? {} : {defaultViewport: {width, height: 900}}),
    extraPrefsFirefox: {
      'remote.prefs.recommended': false,
      'security.fileuri.strict_origin_policy': true,
      'privacy.file_unique_origin': true,
      'javascript.enabled': scripts,
    },
  })
  const open = async (type: 'tab' | 'window'): Promise<OpenPage> => {
    const page = await browser.newPage({type})
    const ear = newEar()
    page
      .on('console', ear.console)
      .on('pageerror', ear.error)
      .on('requestfailed', ear.failed)
      .on('request', ear.request)
    return {page, ear}
  }
  return {
    name: 'firefox',
    ...actsOf(
      () => open('tab'),
      // A tab in the background waits a second for each sheet it prints; a window does not.
      () => open('window'),
    ),
    close: () => browser.close(),
  }
}

/** Paper size and margins come from the page's own styles. */
const asTheSheetAsks = {preferCSSPageSize: true}

/** A page with the ear that listens to it. */
interface OpenPage {
  readonly page: DriverPage
  readonly ear: Ear
}

/** Takes down what a page says and asks for. */
interface Ear {
  faults: string[]
  requests: string[]
  console(message: {type(): string; text(): string}): void
  error(error: unknown): void
  failed(request: {url(): string}): void
  request(request: {url(): string}): void
}

function newEar(): Ear {
  const ear: Ear = {
    faults: [],
    requests: [],
    console: (message) => {
      if (['error', 'warning', 'warn'].includes(message.type())) ear.faults.push(message.text())
    },
    error: (error) => {
      ear.faults.push(String(error))
    },
    failed: (request) => {
      ear.faults.push(`failed: ${request.url()}`)
    },
    request: (request) => {
      ear.requests.push(request.url())
    },
  }
  return ear
}

function actsOf(
  openTab: () => Promise<OpenPage>,
  openWindow: () => Promise<OpenPage>,
): Pick<DrivenBrowser, 'visit' | 'print' | 'openWindow'> {
  return {
    visit: async (address) => visitWith(await openTab(), address),
    print: async (address) => {
      const opened = await openTab()
      await visitWith(opened, address)
      const bytes = await opened.page.pdf(asTheSheetAsks)
      await opened.page.close()
      return bytes
    },
    openWindow: async () => {
      const opened = await openWindow()
      return {
        visit: async (address) => {
          opened.ear.faults = []
          opened.ear.requests = []
          return visitWith(opened, address)
        },
        print: () => opened.page.pdf(asTheSheetAsks),
      }
    },
  }
}

async function visitWith({page, ear}: OpenPage, address: string): Promise<Visit> {
  await page.goto(address, {waitUntil: 'load'})
  const {faults, requests} = ear
  return {faults, requests, evaluate: (expression) => page.evaluate(expression), done: () => page.close()}
}
