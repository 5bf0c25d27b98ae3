import type {Disk} from '../../src/publish/disk.ts'

/** When the power goes: before the call, after it, or, for a write, with half of the bytes on the disk. */
export type Moment = 'before' | 'half' | 'after'

/** Thrown where the program is stopped, so that a test can tell it from a fault. */
export const stopWords = 'the program was stopped here'

/** A disk that counts its calls, and what it was asked to do. */
export interface CountingDisk extends Disk {
  readonly calls: string[]
}

/** Counts every call that changes the disk. */
export function countingDisk(disk: Disk): CountingDisk {
  const calls: string[] = []
  return {...stoppingDisk(disk, Number.POSITIVE_INFINITY, 'before', calls), calls}
}

/** Passes calls on and stops the program at the call of the given number, counted from 0. */
export function stoppingDisk(disk: Disk, stopAt: number, moment: Moment, calls: string[] = []): Disk {
  const counted = <T>(name: string, run: () => T, half?: () => void): T => {
    const isHere = calls.length === stopAt
    calls.push(name)
    if (isHere && moment === 'before') throw new Error(stopWords)
    if (isHere && moment === 'half') {
      half?.()
      throw new Error(stopWords)
    }
    const result = run()
    if (isHere) throw new Error(stopWords)
    return result
  }
  return {
    exists: disk.exists,
    isFolder: disk.isFolder,
    mayWrite: disk.mayWrite,
    read: disk.read,
    list: disk.list,
    isHeld: disk.isHeld,
    claim: (path) =>
      counted(
        'claim',
        () => disk.claim(path),
        () => disk.write(path, new Uint8Array()),
      ),
    makeFolder: (path) => counted('makeFolder', () => disk.makeFolder(path)),
    write: (path, bytes) =>
      counted(
        'write',
        () => disk.write(path, bytes),
        () => disk.write(path, bytes.slice(0, Math.floor(bytes.length / 2))),
      ),
    link: (from, to) => counted('link', () => disk.link(from, to)),
    rename: (from, to) => counted('rename', () => disk.rename(from, to)),
    remove: (path) => counted('remove', () => disk.remove(path)),
  }
}
