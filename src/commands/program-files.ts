import {readdir, readFile} from 'node:fs/promises'
import {join} from 'node:path'
import {fileURLToPath} from 'node:url'

/** What the program ships beside its code: templates, and the compiled page runtime. */
export interface ProgramFiles {
  readonly templates: ReadonlyMap<string, string>
  readonly runtime: {
    readonly head: string
    readonly page: string
    readonly hub: string
    readonly charts: string
  }
}

/** Reads templates and runtime from the program's own folder. */
export async function readProgramFiles(): Promise<ProgramFiles> {
  const root = fileURLToPath(new URL('..', import.meta.url))
  const runtime = async (name: string): Promise<string> =>
    readFile(join(root, '.build', 'runtime', `${name}.js`), 'utf8')
  const templates = new Map<string, string>()
  for (const folder of ['pages', 'parts', 'styles', 'signs', 'alone']) {
    for (const name of (await readdir(join(root, 'templates', folder))).sort()) {
      templates.set(`${folder}/${name}`, await readFile(join(root, 'templates', folder, name), 'utf8'))
    }
  }
  return {
    templates,
    runtime: {
      head: await runtime('head'),
      page: await runtime('page'),
      hub: await runtime('hub'),
      charts: await runtime('charts'),
    },
  }
}

/** The same with the version of the program. */
export type ProgramWithVersion = ProgramFiles & {readonly version: string}

/** Reads templates, runtime and version from the program's own folder. */
export async function readProgramWithVersion(): Promise<ProgramWithVersion> {
  return {...(await readProgramFiles()), version: await readProgramVersion()}
}

async function readProgramVersion(): Promise<string> {
  const path = fileURLToPath(new URL('../package.json', import.meta.url))
  const data: unknown = JSON.parse(await readFile(path, 'utf8'))
  return typeof data === 'object' && data !== null && 'version' in data ? String(data.version) : ''
}
