import {spawnSync} from 'node:child_process'
import {cpSync, mkdtempSync, readFileSync} from 'node:fs'
import {tmpdir} from 'node:os'
import {join} from 'node:path'
import {sha256} from '../../src/publish/manifest.ts'
import {filesBelow} from '../offline/odd-folder.ts'

/** A new folder for one purpose. */
export function newFolder(name: string): string {
  return mkdtempSync(join(tmpdir(), `${name}-`))
}

/**
 * Copies a folder, links followed where they are no folder of packages.
 *
 * @throws {Error}
 *   The machine's own error.
 */
export function copyFolder(from: string, to: string): void {
  cpSync(from, to, {recursive: true, verbatimSymlinks: true})
}

/** Runs the program of a folder in other surroundings; the shell sets what rights new files have. */
export function runProgram(
  program: string,
  words: readonly string[],
  around: {
    readonly folder: string
    readonly umask: string
    readonly variables: Readonly<Record<string, string>>
  },
): {readonly status: number | null; readonly err: string} {
  const run = spawnSync(
    'sh',
    [
      '-c',
      'umask "$1"; shift; exec "$@"',
      'sh',
      around.umask,
      process.execPath,
      join(program, '.build', 'cli.js'),
      ...words,
    ],
    {cwd: around.folder, encoding: 'utf8', env: {...process.env, ...around.variables}},
  )
  return {status: run.status, err: run.stderr}
}

/** Hash of every file below a folder by its path. */
export function hashesBelow(folder: string): ReadonlyMap<string, string> {
  return new Map(filesBelow(folder).map((path) => [path, sha256(readFileSync(join(folder, path)))]))
}
