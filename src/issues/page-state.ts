import type {PageState} from '../handbook-model/pages.ts'
import {technicalHash} from '../technical-text/technical-hash.ts'
import type {Ledger} from './ledger.ts'

/**
 * State of a page against the ledger: equal technical text is issued with its revision, anything else is a draft.
 *
 * That each check code of the ledger belongs to its page has been proved when the ledger was read.
 */
export function pageState(pageId: string, technicalText: string, ledger: Ledger | undefined): PageState {
  const entry = ledger?.pages[pageId]
  if (!entry || entry.withdrawn || entry.hash !== technicalHash(technicalText)) return {kind: 'draft'}
  return {
    kind: 'issued',
    revision: entry.revision,
    suffix: entry.suffix ?? '',
    date: entry.date,
    checkCode: entry.code,
  }
}
