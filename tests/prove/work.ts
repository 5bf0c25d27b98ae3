import {readFileSync, rmSync} from 'node:fs'
import {dirname, join} from 'node:path'
import {afterAll, expect} from 'vitest'
import {z} from 'zod'
import {copyToOddFolder} from '../offline/odd-folder.ts'

declare module 'vitest' {
  interface TaskMeta {
    /** Sheets of paper that a test looked at. */
    sheets?: number
    /** What the summary lists by name. */
    tall?: readonly string[]
    goOn?: readonly string[]
    /** Files whose bytes were compared. */
    files?: number
    /** Where a kill fell. */
    moment?: string
  }
}

const shape = z.object({
  /** Name of the part. */
  name: z.string(),
  /** Kind of work, as `print-firefox-on`. */
  work: z.string(),
  /** Folder of the content, of the compiled program and of the published handbooks. */
  content: z.string(),
  program: z.string(),
  site: z.string(),
  units: z.array(z.object({vessel: z.string(), path: z.string()})),
})

/** What this part has to look at. */
export const work = shape.parse(JSON.parse(readFileSync(workPath(), 'utf8')))

/** Each unit with its name, as the summary lists it. */
export const named = work.units.map(
  (unit) => [unit.vessel === '' ? unit.path : `${unit.vessel}/${unit.path}`, unit] as const,
)

function workPath(): string {
  const path = process.env.PROVE_WORK
  if (path === undefined)
    throw new Error('Unexpected run without a plan, expected to be started by `npm run prove`')
  return path
}

/** Browser and scripts that the name of the work asks for. */
export const asked = {
  firefox: work.work.includes('-firefox-'),
  scripts: work.work.endsWith('-on'),
}

/** The vessels that this part looks at, each copied into a folder with an odd name of its own, taken away at the end. */
export function copyVessels(): ReadonlyMap<string, string> {
  const vessels = new Set(work.units.map((one) => one.vessel))
  const folders = new Map([...vessels].map((vessel) => [vessel, copyToOddFolder(join(work.site, vessel))]))
  afterAll(() => {
    for (const folder of folders.values()) rmSync(dirname(folder), {recursive: true, force: true})
  })
  return folders
}

/** Demands an empty list; the message begins with what stands first in it. */
export function expectNone(faults: readonly string[]): void {
  expect(faults, faults[0]).toEqual([])
}
