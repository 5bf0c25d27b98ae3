import {
  existsSync,
  linkSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs'

/** What publishing asks of a disk; tests give one that stops at every call. */
export interface Disk {
  exists(path: string): boolean
  read(path: string): Uint8Array
  list(folder: string): readonly string[]
  makeFolder(path: string): void
  write(path: string, bytes: Uint8Array): void
  /** A second name for the same bytes; false where the disk cannot do it. */
  link(from: string, to: string): boolean
  rename(from: string, to: string): void
  remove(path: string): void
}

/** The real disk. Every call throws the machine's own error. */
export const nodeDisk: Disk = {
  exists: existsSync,
  read: (path) => readFileSync(path),
  list: (folder) => readdirSync(folder).sort(),
  makeFolder: (path) => {
    mkdirSync(path, {recursive: true})
  },
  write: (path, bytes) => writeFileSync(path, bytes),
  link: (from, to) => {
    try {
      linkSync(from, to)
      return true
    } catch {
      return false
    }
  },
  rename: renameSync,
  remove: (path) => rmSync(path, {recursive: true, force: true}),
}
