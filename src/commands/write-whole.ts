import {basename, dirname, join} from 'node:path'
import type {Disk} from '../publish/disk.ts'

/**
 * Writes a file of the content so that a stop leaves either the old or the new one whole.
 *
 * What a stop leaves beside it begins with a point: no command reads it, and the next write takes its place.
 *
 * @throws {Error}
 *   The machine's own error when it cannot write.
 */
export function writeWhole(path: string, text: string, disk: Disk): void {
  const next = join(dirname(path), `.new-${basename(path)}`)
  disk.makeFolder(dirname(path))
  disk.write(next, new TextEncoder().encode(text))
  disk.rename(next, path)
}
