import type {Ledger} from '../../src/issues/ledger.ts'

/** A ledger of the test vessel with these pages. */
export function ledgerWith(pages: Ledger['pages'], more: Partial<Ledger> = {}): Ledger {
  return {
    version: 1,
    vessel: 'vessel-a',
    issue: '2031-03',
    date: '2031-03-14',
    asOf: '2031-03-14',
    issuedBy: 'publisher',
    toolVersion: '0.1.0',
    contentHash: '0'.repeat(64),
    manifestHash: '0'.repeat(64),
    sources: {},
    pages,
    ...more,
  }
}
