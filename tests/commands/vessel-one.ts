import {cpSync} from 'node:fs'
import {join, relative} from 'node:path'
import {fileURLToPath} from 'node:url'

/** The demonstration content of the repository: three vessels. */
export const demonstration = fileURLToPath(new URL('../../content', import.meta.url))

/** What belongs to the other vessels of the demonstration alone. */
const ofOtherVessels: readonly string[] = ['vessels/vessel-b', 'vessels/vessel-c', 'designs/design-b.yaml']

/**
 * Copies the demonstration with its first vessel and what that one needs.
 *
 * A test that compiles whole handbooks of a content would take three times as long with all of them and see no more.
 */
export function copyVesselOne(to: string): void {
  const others = new Set(ofOtherVessels.map((name) => join(name)))
  cpSync(demonstration, to, {recursive: true, filter: (path) => !others.has(relative(demonstration, path))})
}
