import type {PageState} from '../handbook-model/pages.ts'
import {checkCode, technicalHash} from '../technical-text/technical-hash.ts'
import type {Ledger} from './ledger.ts'

/**
 * State of a page against the ledger: equal technical text is issued with its revision, anything else is a draft.
 *
 * @throws {Error}
 *   When the ledger's check code does not belong to its hash: the ledger was edited.
 */
export function pageState(pageId: string, technicalText: string, ledger: Ledger | undefined): PageState {
  const entry = ledger?.pages[pageId]
  const hash = technicalHash(technicalText)
  if (!entry || entry.withdrawn || entry.hash !== hash) return {kind: 'draft'}
  const code = checkCode(pageId, entry.revision, hash)
  if (code !== entry.code)
    throw new Error(
      `Unexpected check code \`${entry.code}\` of page \`${pageId}\` in the ledger, expected \`${code}\`: the ledger was edited`,
    )
  return {
    kind: 'issued',
    revision: entry.revision,
    suffix: entry.suffix ?? '',
    date: entry.date,
    checkCode: code,
  }
}
