/** What a revision of a page changed against the revision before it. */
export interface PageUpdate {
  /** Why the revision is there, one reason each. */
  readonly reasons: readonly string[]
  /** Keys of the blocks that changed or are new: they carry a bar. */
  readonly bars: ReadonlySet<string>
  /** Blocks that are gone from a place, in page order. */
  readonly removed: readonly RemovedBlock[]
  /** False where no text of an earlier revision stands behind it: a page that comes back. */
  readonly compared: boolean
}

/** A block that is gone: named by its id, never by its old words or figures, which would be read. */
export interface RemovedBlock {
  readonly what: RemovedKind
  readonly id: string
  /** Number of the step behind which it stood; blank where none stood before it. */
  readonly afterStep: string
}

/** What a block was that is gone. */
export type RemovedKind =
  | 'step'
  | 'hold'
  | 'urgent'
  | 'caution'
  | 'value'
  | 'limit'
  | 'isolation'
  | 'reading'
  | 'tool'
  | 'part'
  | 'line'

/**
 * Key of a block at its place.
 *
 * @param within
 *   Section, step or hold point that it stands in; blank elsewhere.
 */
export function barKey(within: string, block: string): string {
  return `${within}\t${block}`
}
