import {join} from 'node:path'
import type {RenderedFile} from '../handbook-model/files.ts'
import type {Disk} from './disk.ts'
import {manifestFiles, manifestText, sha256} from './manifest.ts'

/** Names used while a vessel's folder is swapped; a leading point keeps them out of any vessel id. */
function namesOf(
  siteFolder: string,
  vessel: string,
): {live: string; next: string; old: string; journal: string; busy: string} {
  return {
    live: join(siteFolder, vessel),
    next: join(siteFolder, `.new-${vessel}`),
    old: join(siteFolder, `.old-${vessel}`),
    journal: join(siteFolder, `.swap-${vessel}`),
    busy: join(siteFolder, `.busy-${vessel}`),
  }
}

/**
 * Writes a vessel's handbook to a new folder and swaps it in.
 *
 * Files that did not change are hard links to the bytes already there. Until
 * the journal is written the last good folder is untouched; after it, any
 * later command completes the swap. A file says from the first to the last
 * moment which program is at work.
 *
 * @throws {Error}
 *   The machine's own error when it cannot write; `EBUSY` when another program is at work on this vessel.
 */
export function publishVessel(input: {
  readonly vesselId: string
  readonly files: readonly RenderedFile[]
  readonly siteFolder: string
  readonly disk: Disk
}): void {
  const {vesselId, siteFolder, disk} = input
  const {live, next, journal, busy} = namesOf(siteFolder, vesselId)
  disk.makeFolder(siteFolder)
  completeInterruptedSwaps(siteFolder, disk)
  if (!disk.claim(busy))
    throw Object.assign(
      new Error(
        `another build is writing the handbook of \`${vesselId}\`: wait for it, or remove \`${busy}\` when none runs`,
      ),
      {code: 'EBUSY'},
    )
  disk.remove(next)
  const known = hashesOf(join(live, manifestText), disk)
  const files = [...input.files].sort((a, b) => (a.path < b.path ? -1 : 1))
  for (const folder of new Set(files.map((file) => join(next, file.path, '..')))) disk.makeFolder(folder)
  for (const file of files) {
    const target = join(next, file.path)
    const same = known.get(file.path) === sha256(file.bytes)
    if (!same || !isIntact(join(live, file.path), file, disk) || !disk.link(join(live, file.path), target))
      disk.write(target, file.bytes)
  }
  for (const file of manifestFiles(files)) disk.write(join(next, file.path), file.bytes)
  disk.write(journal, new TextEncoder().encode(`${vesselId}\n`))
  finishSwap(siteFolder, vesselId, disk)
}

/**
 * Completes every swap that was interrupted, and clears folders that were never finished. Every command begins with it.
 *
 * Only what a publishing run left behind is touched: its claim or its journal names the vessel. What a running program
 * is at work on is left to it.
 */
export function completeInterruptedSwaps(siteFolder: string, disk: Disk): void {
  if (!disk.exists(siteFolder)) return
  const vessels = disk.list(siteFolder).flatMap((name) => /^\.(?:busy|swap)-(.+)$/u.exec(name)?.[1] ?? [])
  for (const vessel of new Set(vessels))
    if (!disk.isHeld(namesOf(siteFolder, vessel).busy)) finishOrClear(siteFolder, vessel, disk)
}

function finishOrClear(siteFolder: string, vessel: string, disk: Disk): void {
  const {live, next, old, journal, busy} = namesOf(siteFolder, vessel)
  if (disk.exists(journal)) finishSwap(siteFolder, vessel, disk)
  else {
    disk.remove(next)
    if (disk.exists(old) && !disk.exists(live)) disk.rename(old, live)
    disk.remove(old)
    disk.remove(busy)
  }
}

/** The two renames; each may already have been done by the run that was interrupted. */
function finishSwap(siteFolder: string, vessel: string, disk: Disk): void {
  const {live, next, old, journal, busy} = namesOf(siteFolder, vessel)
  if (disk.exists(next)) {
    if (disk.exists(live)) {
      disk.remove(old)
      disk.rename(live, old)
    }
    disk.rename(next, live)
  }
  disk.remove(journal)
  disk.remove(old)
  disk.remove(busy)
}

function isIntact(path: string, file: RenderedFile, disk: Disk): boolean {
  return disk.exists(path) && sha256(disk.read(path)) === sha256(file.bytes)
}

function hashesOf(manifest: string, disk: Disk): ReadonlyMap<string, string> {
  if (!disk.exists(manifest)) return new Map()
  const lines = new TextDecoder().decode(disk.read(manifest)).split('\n')
  return new Map(lines.filter((line) => line.length > 66).map((line) => [line.slice(66), line.slice(0, 64)]))
}
