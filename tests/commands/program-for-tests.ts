import {spawnSync} from 'node:child_process'
import {cpSync, mkdirSync, mkdtempSync, symlinkSync} from 'node:fs'
import {tmpdir} from 'node:os'
import {join} from 'node:path'
import {fileURLToPath} from 'node:url'
import {copyVesselOne} from './vessel-one.ts'

const repository = fileURLToPath(new URL('../..', import.meta.url))

/** How the program ended and what it said. */
export interface ProgramRun {
  readonly status: number | null
  readonly out: string
  readonly err: string
}

/** The compiled program in a folder of its own with the content of vessel one, so that no other run can change it. */
export interface Program {
  readonly folder: string
  run(words: readonly string[], surroundings?: Readonly<Record<string, string>>): ProgramRun
}

/**
 * Compiles the program the way `npm run compile` does, into a new folder.
 *
 * @throws {Error}
 *   When it does not compile.
 */
export function compileProgram(): Program {
  const folder = mkdtempSync(join(tmpdir(), 'program-'))
  for (const name of ['src', 'templates', 'node_modules', 'package.json', 'tsconfig.json'])
    symlinkSync(join(repository, name), join(folder, name))
  copyVesselOne(join(folder, 'content'))
  mkdirSync(join(folder, '.config'))
  cpSync(join(repository, '.config', 'compile.mjs'), join(folder, '.config', 'compile.mjs'))
  const compiled = spawnSync(process.execPath, [join(folder, '.config', 'compile.mjs')], {encoding: 'utf8'})
  if (compiled.status !== 0) throw new Error(compiled.stderr)
  const run: Program['run'] = (words, surroundings = {}) => {
    const ended = spawnSync(process.execPath, [join(folder, '.build', 'cli.js'), ...words], {
      cwd: folder,
      encoding: 'utf8',
      env: {...process.env, ...surroundings},
    })
    return {status: ended.status, out: ended.stdout, err: ended.stderr}
  }
  return {folder, run}
}
