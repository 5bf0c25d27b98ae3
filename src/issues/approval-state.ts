import {type Approval, type SignatureRole, signatureRoles} from '../handbook-model/approval-content.ts'
import {recordAt} from '../handbook-model/record-files.ts'
import {addMessage, type ContentFiles} from '../messages/add-message.ts'
import {technicalHash} from '../technical-text/technical-hash.ts'

/** Files that say who answers for the others, and records that no issued page shows; they are signed by being what they are. */
const unsigned = /^(?:approvals|changes|trials)\.yaml$|^issues\/|^\.$/u

/**
 * Hash of every source that people sign, by its path.
 *
 * The text is hashed as it was read: line feeds, no byte-order mark. A checkout on another system changes nothing,
 * one other letter does.
 */
export function sourceHashes(files: ContentFiles): ReadonlyMap<string, string> {
  return new Map(
    [...files]
      .filter(([path]) => !unsigned.test(path) && !recordAt(path))
      .map(([path, file]): [string, string] => [path, technicalHash(String(file.value ?? ''))])
      .sort(([a], [b]) => (a < b ? -1 : 1)),
  )
}

/** One hash over all sources: what an issue was made from. */
export function contentHashOf(hashes: ReadonlyMap<string, string>): string {
  return technicalHash([...hashes].map(([path, hash]) => `${hash}  ${path}\n`).join(''))
}

/** How a source stands: signed in every role as it reads now, signed as it read before, or not signed by all. */
export interface ApprovalState {
  readonly source: string
  readonly kind: 'approved' | 'lapsed' | 'unapproved'
  /** Roles without a signature on the source as it reads now. */
  readonly missing: readonly SignatureRole[]
}

/** States of all sources in order of their paths. */
export function approvalStates(
  hashes: ReadonlyMap<string, string>,
  approvals: readonly Approval[],
): readonly ApprovalState[] {
  return [...hashes].map(([source, hash]): ApprovalState => {
    const own = approvals.filter((one) => one.file === source)
    const now = own.find((one) => one.hash === hash)
    const missing = signatureRoles.filter((role) => !now?.signatures.some((one) => one.role === role))
    if (missing.length === 0) return {source, kind: 'approved', missing}
    return {source, kind: own.length > 0 && !now ? 'lapsed' : 'unapproved', missing}
  })
}

/** Tells every source of a list that is not approved as it reads now. */
export function refuseUnapproved(
  sources: ReadonlySet<string>,
  hashes: ReadonlyMap<string, string>,
  approvals: readonly Approval[],
  files: ContentFiles,
): void {
  for (const {source, kind, missing} of approvalStates(hashes, approvals)) {
    if (kind === 'approved' || !sources.has(source)) continue
    const lapsed = approvals.find((one) => one.file === source)
    addMessage(
      files,
      {path: source, line: 1, column: 1},
      'no-unapproved-source',
      kind === 'lapsed'
        ? `Unexpected change of \`${source}\` after its approval, expected the text that was signed`
        : `Unexpected source \`${source}\` without a signature of its ${missing.join(', ')}, expected all three on the text as it reads now`,
      {
        note: `Read it and sign it: \`sheetanchor approve ${source} --as ${missing[0] ?? 'author'} --by … --date … --statement …\``,
        ...(kind === 'lapsed' && lapsed ? {cause: lapsed.place} : {}),
      },
    )
  }
}
