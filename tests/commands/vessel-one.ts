import {cpSync} from 'node:fs'
import {relative, sep} from 'node:path'
import {fileURLToPath} from 'node:url'

/** The demonstration content of the repository: three vessels. */
export const demonstration = fileURLToPath(new URL('../../content', import.meta.url))

/** What belongs to the other vessels of the demonstration alone. */
const ofOtherVessels = /^(?:vessels\/(?!vessel-a(?:\/|$))[^/]+|designs\/design-b\.yaml$)/u

/** Whether a file or folder, by its path below the content, serves vessel one. */
export function servesVesselOne(path: string): boolean {
  return !ofOtherVessels.test(path.replaceAll(sep, '/'))
}

/**
 * Copies the demonstration with its first vessel and what that one needs.
 *
 * A test that compiles whole handbooks of a content would take three times as long with all of them and see no more.
 */
export function copyVesselOne(to: string): void {
  cpSync(demonstration, to, {
    recursive: true,
    filter: (path) => servesVesselOne(relative(demonstration, path)),
  })
}
