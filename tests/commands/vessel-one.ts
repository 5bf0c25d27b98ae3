import {appendFileSync, cpSync} from 'node:fs'
import {join, relative, sep} from 'node:path'
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
 * The design of the portable pump stays, because its procedures stand among the others: it is kept for them.
 *
 * A test that compiles whole handbooks of a content would take three times as long with all of them and see no more.
 */
export function copyVesselOne(to: string): void {
  cpSync(demonstration, to, {
    recursive: true,
    filter: (path) => servesVesselOne(relative(demonstration, path)),
  })
  appendFileSync(join(to, 'designs', 'design-p.yaml'), '\nkept-for: its procedures name its values\n')
}
