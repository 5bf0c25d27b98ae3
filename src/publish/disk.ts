import {
  accessSync,
  constants,
  existsSync,
  linkSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs'

/** What publishing asks of a disk; tests give one that stops at every call. */
export interface Disk {
  exists(path: string): boolean
  /** True for a folder; the path exists. */
  isFolder(path: string): boolean
  /** Whether files may be listed, made and taken away in a folder that exists. */
  mayWrite(folder: string): boolean
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
  isFolder: (path) => statSync(path).isDirectory(),
  mayWrite: (folder) => {
    try {
      accessSync(folder, constants.R_OK | constants.W_OK | constants.X_OK)
      return true
    } catch {
      return false
    }
  },
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
