import {addMessage, type ContentFiles} from '../messages/add-message.ts'
import {technicalHash} from '../technical-text/technical-hash.ts'

/** A technical text that a ledger names. */
export interface NamedText {
  readonly vessel: string
  readonly page: string
  readonly revision: number
  readonly hash: string
}

/** The text as the tool wrote it; one that is missing or was edited is a message. */
export function issueText(
  {vessel, page, revision, hash}: NamedText,
  texts: ReadonlyMap<string, string>,
  files: ContentFiles,
): string | undefined {
  const text = texts.get(hash)
  if (text !== undefined && technicalHash(text) === hash) return text
  addMessage(
    files,
    {path: `issues/${vessel}/texts/${hash}.txt`, line: 1, column: 1},
    'no-lost-text',
    `Unexpected ledger without the text of page \`${page}\` in revision ${revision}, expected the file as the tool wrote it`,
    {note: 'Take the texts again from the commit of the issue'},
  )
  return undefined
}
