import {addMessage, type ContentFiles} from '../messages/add-message.ts'
import {technicalHash} from '../technical-text/technical-hash.ts'
import type {Ledger} from './ledger.ts'

/** Technical texts by page id as an issue holds them, without its withdrawn pages; one that is lost is a message. */
export function textsOfLedger(
  {vessel, pages}: Ledger,
  textsByHash: ReadonlyMap<string, string>,
  files: ContentFiles,
): ReadonlyMap<string, string> {
  return new Map(
    Object.entries(pages).flatMap(([page, {hash, revision, withdrawn}]): [string, string][] => {
      if (withdrawn) return []
      const text = textsByHash.get(hash)
      if (text !== undefined && technicalHash(text) === hash) return [[page, text]]
      addMessage(
        files,
        {path: `issues/${vessel}/texts/${hash}.txt`, line: 1, column: 1},
        'no-lost-text',
        `Unexpected ledger without the text of page \`${page}\` in revision ${revision}, expected the file as the tool wrote it`,
        {note: 'Take the texts again from the commit of the issue'},
      )
      return []
    }),
  )
}
