/** Path of the first of the named programs, or undefined. */
export function findProgram(names: readonly string[]): string | undefined
/** Chromium and Firefox by path, installed when missing; throws with the remedy when that cannot be done. */
export function ensureBrowsers(): {readonly chromium: string; readonly firefox: string}
