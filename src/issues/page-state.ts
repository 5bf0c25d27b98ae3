import type {PageUpdate} from '../handbook-model/page-update.ts'
import type {PageState} from '../handbook-model/pages.ts'
import {technicalHash} from '../technical-text/technical-hash.ts'
import type {Ledger, PageEntry} from './ledger.ts'

/**
 * State of a page against the ledger: equal technical text is issued with its revision, anything else is a draft.
 *
 * That each check code of the ledger belongs to its page has been proved when the ledger was read.
 *
 * @param updateOf
 *   What the revision of an issued page changed.
 */
export function pageState(
  pageId: string,
  technicalText: string,
  ledger: Ledger | undefined,
  updateOf: (entry: PageEntry) => PageUpdate | undefined = () => undefined,
): PageState {
  const entry = ledger?.pages[pageId]
  if (!entry || entry.withdrawn || entry.hash !== technicalHash(technicalText)) return {kind: 'draft'}
  const update = updateOf(entry)
  return {
    kind: 'issued',
    revision: entry.revision,
    suffix: entry.suffix ?? '',
    date: entry.date,
    checkCode: entry.code,
    ...(update ? {update} : {}),
  }
}
