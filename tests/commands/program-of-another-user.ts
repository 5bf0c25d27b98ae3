import {spawnSync} from 'node:child_process'
import {chmodSync, cpSync, mkdirSync, mkdtempSync, rmSync} from 'node:fs'
import {tmpdir} from 'node:os'
import {join} from 'node:path'
import {build} from 'esbuild'
import {smallContent} from './changed-content.ts'
import {compileProgram, type Program} from './program-for-tests.ts'

/** The user and group that own nothing. */
const nobody = {uid: 65534, gid: 65534}

/**
 * The program beside the small content, both readable by everybody, run by a user whom closed folders stop.
 *
 * Nothing stops the superuser, so that a test of root runs the program as nobody. The packages are bundled: the folder of
 * the repository may be closed to others.
 */
export async function programOfAnotherUser(): Promise<Program> {
  const compiled = compileProgram()
  const folder = mkdtempSync(join(tmpdir(), 'another-user-'))
  try {
    await build({
      entryPoints: [join(compiled.folder, '.build', 'cli.js')],
      outfile: join(folder, '.build', 'cli.js'),
      bundle: true,
      platform: 'node',
      format: 'esm',
      target: 'node20',
      banner: {
        js: "import {createRequire} from 'node:module'; const require = createRequire(import.meta.url)",
      },
      logLevel: 'error',
    })
    mkdirSync(join(folder, '.build', 'runtime'), {recursive: true})
    cpSync(join(compiled.folder, '.build', 'runtime'), join(folder, '.build', 'runtime'), {recursive: true})
    cpSync(join(compiled.folder, 'templates'), join(folder, 'templates'), {
      recursive: true,
      dereference: true,
    })
    cpSync(join(compiled.folder, 'package.json'), join(folder, 'package.json'), {dereference: true})
    cpSync(smallContent, join(folder, 'content'), {recursive: true})
  } finally {
    rmSync(compiled.folder, {recursive: true, force: true})
  }
  openToAll(folder)
  const run: Program['run'] = (words) => {
    const ended = spawnSync(process.execPath, [join(folder, '.build', 'cli.js'), ...words], {
      cwd: folder,
      encoding: 'utf8',
      ...(process.getuid?.() === 0 ? nobody : {}),
    })
    return {status: ended.status, out: ended.stdout, err: ended.stderr}
  }
  return {folder, run}
}

function openToAll(folder: string): void {
  const ended = spawnSync('chmod', ['-R', 'a+rX', folder], {encoding: 'utf8'})
  if (ended.status !== 0) throw new Error(ended.stderr)
}

/** A folder in which everybody may write. */
export function openFolder(path: string): string {
  mkdirSync(path)
  chmodSync(path, 0o777)
  return path
}
