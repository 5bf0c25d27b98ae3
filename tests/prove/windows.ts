import type {BrowserWindow, DrivenBrowser} from '../offline/browsers.ts'

/** Windows of one browser that tests share. */
export interface Windows {
  /** Runs with a window that nobody else uses, waiting for one where all are in use. A window in which something went wrong is not used again. */
  use<T>(run: (window: BrowserWindow) => Promise<T>): Promise<T>
}

/** Keeps at most so many windows open. */
export function shareWindows(browser: DrivenBrowser, most: number): Windows {
  const free: BrowserWindow[] = []
  const waiting: (() => void)[] = []
  let inUse = 0
  const release = (): void => {
    inUse -= 1
    waiting.shift()?.()
  }
  return {
    use: async (run) => {
      while (inUse >= most) await new Promise<void>((resolve) => waiting.push(resolve))
      inUse += 1
      try {
        const window = free.pop() ?? (await browser.openWindow())
        const result = await run(window)
        free.push(window)
        return result
      } finally {
        release()
      }
    },
  }
}
