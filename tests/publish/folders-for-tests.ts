import {mkdtempSync, readdirSync, readFileSync, rmSync, statSync} from 'node:fs'
import {tmpdir} from 'node:os'
import {join, relative} from 'node:path'
import type {RenderedFile} from '../../src/handbook-model/files.ts'

/** Runs a test with a folder of its own and removes it afterwards. */
export function withFolder<T>(run: (folder: string) => T): T {
  const folder = mkdtempSync(join(tmpdir(), 'handbook-'))
  try {
    return run(folder)
  } finally {
    rmSync(folder, {recursive: true, force: true})
  }
}

/** A handbook from paths and texts. */
export function handbook(texts: Readonly<Record<string, string>>): readonly RenderedFile[] {
  return Object.entries(texts).map(([path, text]) => ({path, bytes: new TextEncoder().encode(text)}))
}

/** Every file below a folder by its path, with its text. */
export function textsBelow(folder: string): Readonly<Record<string, string>> {
  const names = readdirSync(folder, {recursive: true, encoding: 'utf8'}).sort()
  const paths = names.map((name) => join(folder, name)).filter((path) => statSync(path).isFile())
  return Object.fromEntries(paths.map((path) => [relative(folder, path), readFileSync(path, 'utf8')]))
}
