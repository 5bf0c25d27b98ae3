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
  /** Puts the name of this program on a file that says who is at work; false where another running program did. */
  claim(path: string): boolean
  /** True when another program that still runs has claimed it. */
  isHeld(path: string): boolean
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
  claim: (path) => {
    if (isHeld(path)) return false
    writeFileSync(path, `${process.pid}\n`)
    return true
  },
  isHeld,
}

/**
 * Looks for the program whose number the file holds.
 *
 * Two programs on two machines do not see each other: it would take a lock of the disk itself, which not every disk has.
 */
function isHeld(path: string): boolean {
  if (!existsSync(path)) return false
  const holder = Number(readFileSync(path, 'utf8'))
  if (!Number.isInteger(holder) || holder <= 0 || holder === process.pid) return false
  try {
    process.kill(holder, 0)
    return true
  } catch (error) {
    return error instanceof Error && 'code' in error && error.code === 'EPERM'
  }
}
