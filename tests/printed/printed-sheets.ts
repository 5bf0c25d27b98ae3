import {execFile} from 'node:child_process'
import {mkdtempSync, rmSync, writeFileSync} from 'node:fs'
import {tmpdir} from 'node:os'
import {join} from 'node:path'
import {promisify} from 'node:util'

/** A word on paper; lengths in points, counted from the upper left corner of its sheet. */
export interface PrintedWord {
  readonly text: string
  readonly top: number
  readonly bottom: number
}

/** One sheet of a PDF: its words in the order in which the browser printed them, which is the order of the page. */
export interface PrintedSheet {
  readonly words: readonly PrintedWord[]
}

const run = promisify(execFile)

/**
 * Reads words with their places out of a PDF.
 *
 * @throws {Error}
 *   When the bytes are no PDF.
 */
export async function readSheets(pdf: Uint8Array): Promise<readonly PrintedSheet[]> {
  const folder = mkdtempSync(join(tmpdir(), 'sheets-'))
  try {
    const path = join(folder, 'sheets.pdf')
    writeFileSync(path, pdf)
    const {stdout} = await run('pdftotext', ['-raw', '-bbox', path, '-'], {maxBuffer: 200_000_000})
    return stdout
      .split('<page ')
      .slice(1)
      .map((page) => ({words: wordsOf(page)}))
  } finally {
    rmSync(folder, {recursive: true, force: true})
  }
}

function wordsOf(page: string): readonly PrintedWord[] {
  const words = page.matchAll(/<word xMin="[^"]*" yMin="([^"]*)" xMax="[^"]*" yMax="([^"]*)">([^<]*)</gu)
  return [...words].map(([, top, bottom, text]) => ({
    text: decoded(text ?? ''),
    top: Number(top),
    bottom: Number(bottom),
  }))
}

const entities: Readonly<Record<string, string>> = {lt: '<', gt: '>', quot: '"', apos: "'", amp: '&'}

function decoded(text: string): string {
  return text.replace(/&(lt|gt|quot|apos|amp);/gu, (whole, name: string) => entities[name] ?? whole)
}
