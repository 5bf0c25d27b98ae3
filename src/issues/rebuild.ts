import {contentHashOf} from './approval-state.ts'
import type {Ledger} from './ledger.ts'

/** What a build is made from, and what came of it. */
export interface BuiltFrom {
  readonly toolVersion: string
  /** Hash of each source by its path. */
  readonly hashes: ReadonlyMap<string, string>
  /** Of the list of all files with their hashes. */
  readonly manifestHash: string
}

/** Whether a build gives an issue again, byte for byte, and if not, why. */
export interface Rebuild {
  readonly issue: string
  readonly isSame: boolean
  readonly reasons: readonly string[]
}

/** Holds a build against the newest ledger of its vessel: version of the program, content, and the bytes themselves. */
export function rebuildOf(ledger: Ledger, {toolVersion, hashes, manifestHash}: BuiltFrom): Rebuild {
  const isSame = manifestHash === ledger.manifestHash
  const version =
    toolVersion === ledger.toolVersion
      ? []
      : [`built by version ${toolVersion}, issued by version ${ledger.toolVersion}`]
  const paths = [...new Set([...hashes.keys(), ...Object.keys(ledger.sources)])].sort()
  const changed = paths.filter((path) => hashes.get(path) !== ledger.sources[path])
  const content =
    contentHashOf(hashes) === ledger.contentHash
      ? []
      : [`content differs from that of the issue: ${changed.join(', ')}`]
  const reasons = [...version, ...content]
  return {
    issue: ledger.issue,
    isSame,
    reasons:
      isSame || reasons.length > 0
        ? reasons
        : ['content and version are those of the issue, the program itself or its ledgers are not'],
  }
}

/** What a build says of the issue, in one line. */
export function rebuildText(vessel: string, {issue, isSame, reasons}: Rebuild): string {
  const because = reasons.length === 0 ? '' : ` (${reasons.join('; ')})`
  return isSame
    ? `${vessel}: issue ${issue} again, byte for byte${because}`
    : `${vessel}: not the bytes of issue ${issue}: ${reasons.join('; ')}`
}
