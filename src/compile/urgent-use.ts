import type {UrgentRevision} from '../handbook-model/urgent-content.ts'

/** An urgent revision that counts for a pump, or for some of the pumps that a page serves. */
export interface UrgentUse {
  readonly revision: UrgentRevision
  /** Where nobody knows whether this pump is concerned: the condition in words. */
  readonly variant?: string
  /** Tags of the pumps, on a page that serves others too; empty where it counts for the whole page. */
  readonly pumps: readonly string[]
}
