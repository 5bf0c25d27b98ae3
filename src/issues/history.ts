import type {Ledger} from './ledger.ts'

/** What was issued so far, as the content holds it. */
export interface IssueHistory {
  /** All ledgers of each vessel, oldest first; an empty list where it was never issued. */
  readonly ledgers: ReadonlyMap<string, readonly Ledger[]>
  /** Technical texts of all issues by their hash. */
  readonly texts: ReadonlyMap<string, string>
}

/** The ledger of the last issue of a vessel, where it has one. */
export function newestLedger({ledgers}: IssueHistory, vessel: string): Ledger | undefined {
  return ledgers.get(vessel)?.at(-1)
}
