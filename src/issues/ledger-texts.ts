import type {ContentFiles} from '../messages/add-message.ts'
import {issueText} from './issue-text.ts'
import type {Ledger} from './ledger.ts'

/** Technical texts by page id as an issue holds them, without its withdrawn pages; one that is lost is a message. */
export function textsOfLedger(
  {vessel, pages}: Ledger,
  texts: ReadonlyMap<string, string>,
  files: ContentFiles,
): ReadonlyMap<string, string> {
  return new Map(
    Object.entries(pages).flatMap(([page, {hash, revision, withdrawn}]): [string, string][] => {
      const text = withdrawn ? undefined : issueText({vessel, page, revision, hash}, texts, files)
      return text === undefined ? [] : [[page, text]]
    }),
  )
}
