import {cpSync, mkdtempSync, readdirSync, readFileSync, statSync} from 'node:fs'
import {tmpdir} from 'node:os'
import {join} from 'node:path'
import {pathToFileURL} from 'node:url'

/** Name that a crew gives a folder: a blank, a hash, a percent sign, brackets and a letter beyond ASCII. */
export const oddName = 'Pump book #2 (100 %) ø'

/** The demonstration vessel that the sample build published. */
export const publishedFolder = join('site', 'vessel-a')

/** Copies a published handbook into a folder with an odd name, outside the project. */
export function copyToOddFolder(published: string = publishedFolder): string {
  const folder = join(mkdtempSync(join(tmpdir(), 'handbook-')), oddName)
  cpSync(published, folder, {recursive: true})
  return folder
}

/** Address of a page in a folder, as a browser writes it. */
export function addressOf(folder: string, path: string): string {
  return pathToFileURL(join(folder, path)).href
}

/** Paths of all files below a folder, sorted. */
export function filesBelow(folder: string, below = ''): readonly string[] {
  return readdirSync(join(folder, below))
    .sort()
    .flatMap((name) => {
      const path = below === '' ? name : `${below}/${name}`
      return statSync(join(folder, path)).isDirectory() ? filesBelow(folder, path) : [path]
    })
}

/** One page of each kind: what a sample looks at. */
export const samplePages = [
  'index.html',
  'p/4s/index.html',
  'p/4s/wear-rings.html',
  'p/7s/tightness-test.html',
  'p/4s/job-wear-ring-service.html',
  'p/4s/values.html',
  'designs/design-a/torques.html',
  'values.html',
  'cautions.html',
  'tools.html',
  'parts.html',
  'sources.html',
  'words.html',
  'work.html',
  'failures.html',
] as const

/** Text of a published file. */
export function textOf(path: string): string {
  return readFileSync(join(publishedFolder, path), 'utf8')
}
