import {cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync} from 'node:fs'
import {tmpdir} from 'node:os'
import {dirname, join} from 'node:path'
import {fileURLToPath} from 'node:url'
import {runCheck} from '../../src/commands/check.ts'
import {copyVesselOne} from './vessel-one.ts'

/** A small content without a fault: one vessel with one pump, one procedure, one row of each kind. */
export const smallContent = fileURLToPath(new URL('../handbooks/small', import.meta.url))

/** A content folder, copied where a test may spoil it. */
export interface ChangedContent {
  readonly folder: string
  /** Path of a file of it. */
  path(name: string): string
  /** Text of a file of it. */
  read(name: string): string
  /** Puts new words in the place of old ones that stand there; throws when they do not. */
  replace(name: string, old: string | RegExp, words: string | ((found: string) => string)): void
  write(name: string, bytes: string | Uint8Array): void
  remove(name: string): void
}

/** Copies a content, vessel one of the demonstration when none is named, lets a test spoil it, and removes it afterwards. */
export async function withChangedContent<T>(
  run: (content: ChangedContent) => T | Promise<T>,
  from?: string,
): Promise<T> {
  const folder = mkdtempSync(join(tmpdir(), 'content-'))
  const path = (name: string): string => join(folder, name)
  const read = (name: string): string => readFileSync(path(name), 'utf8')
  try {
    if (from === undefined) copyVesselOne(folder)
    else cpSync(from, folder, {recursive: true})
    return await run({
      folder,
      path,
      read,
      replace: (name, old, words) => {
        const text = read(name)
        const changed = text.replace(old, (found) => (typeof words === 'string' ? words : words(found)))
        if (changed === text)
          throw new Error(`Unexpected \`${name}\` without \`${old}\`, expected it there to be replaced`)
        writeFileSync(path(name), changed)
      },
      write: (name, bytes) => {
        mkdirSync(dirname(path(name)), {recursive: true})
        writeFileSync(path(name), bytes)
      },
      remove: (name) => rmSync(path(name), {recursive: true}),
    })
  } finally {
    rmSync(folder, {recursive: true, force: true})
  }
}

/** What `check` says about spoiled content: exit status and the lines of errors, paths below the content folder. */
export async function errorsAfter(
  spoil: (content: ChangedContent) => void,
  from?: string,
): Promise<{readonly exitStatus: number; readonly errors: readonly string[]; readonly said: string}> {
  return withChangedContent(async (content) => {
    spoil(content)
    const outcome = await runCheck({
      content: content.folder,
      out: join(content.folder, 'site'),
      vessels: [],
      json: false,
      progress: () => undefined,
    })
    const said = outcome.err.replaceAll(`${content.folder}/`, '')
    return {
      exitStatus: outcome.exitStatus,
      errors: said.split('\n').filter((line) => / error /u.test(line)),
      said,
    }
  }, from)
}
