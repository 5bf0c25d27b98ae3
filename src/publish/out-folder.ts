import {dirname, join} from 'node:path'
import type {Disk} from './disk.ts'
import {manifestText} from './manifest.ts'

/** Why nothing can be published into a folder, and what helps. */
export interface OutFolderFault {
  readonly reason: string
  readonly mend: string
}

/**
 * Tries the folder of the published handbooks before a build begins: nobody waits for a build that cannot end.
 *
 * Nothing is made or written. A folder that is not there yet is made later, so that the nearest one above it is tried.
 * Handbooks in it are tried too: their old files are taken away.
 *
 * @returns
 *   The fault, or `undefined` when handbooks can be published.
 */
export function faultOfOutFolder(siteFolder: string, disk: Disk): OutFolderFault | undefined {
  const wanted = siteFolder.replace(/(?<=[^/\\])[/\\]+$/u, '')
  const nearest = nearestThere(wanted, disk)
  if (!disk.isFolder(nearest)) {
    return {
      reason:
        nearest === wanted
          ? `Unexpected file \`${wanted}\`, expected a folder to publish into`
          : `Unexpected file \`${nearest}\` above \`${wanted}\`, expected a folder to publish into`,
      mend: 'Name another folder with --out',
    }
  }
  const closed = closedFolder(nearest, nearest === wanted, disk)
  if (closed === undefined) return undefined
  return {
    reason: `Unexpected folder \`${closed}\` that cannot be written, expected a folder to publish into`,
    mend: 'Give yourself the right to write into it, or name another folder with --out',
  }
}

function nearestThere(path: string, disk: Disk): string {
  const above = dirname(path)
  return disk.exists(path) || above === path ? path : nearestThere(above, disk)
}

function closedFolder(folder: string, withBelow: boolean, disk: Disk): string | undefined {
  if (!disk.mayWrite(folder)) return folder
  const below = withBelow ? disk.list(folder).map((name) => join(folder, name)) : []
  return below.find((path) => disk.exists(join(path, manifestText)) && !disk.mayWrite(path))
}
