import type {ContentFiles} from '../../src/messages/add-message.ts'
import {sortedMessages} from '../../src/messages/print-messages.ts'

/**
 * Each message as one line: `file:line:column reason rule`, and `see file:line:column` where another place matters.
 *
 * @throws {Error}
 *   When a message does not say how to mend the fault.
 */
export function linesOf(files: ContentFiles): readonly string[] {
  return sortedMessages(files).map((message) => {
    const {file, line, column, reason, ruleId, note, cause} = message
    if (!note) throw new Error(`Unexpected message \`${reason}\` without a note, expected how to mend it`)
    const other = typeof cause === 'string' ? ` see ${cause}` : ''
    return `${file}:${line}:${column} ${reason} ${ruleId}${other}`
  })
}

/** What the rule says, with the messages it adds to no files. */
export function toldBy(rule: (files: ContentFiles) => void): readonly string[] {
  const files: ContentFiles = new Map()
  rule(files)
  return linesOf(files)
}

/**
 * Place of the only occurrence of some words in a text, as `file:line:column`.
 *
 * @throws {Error}
 *   When the words stand there never or more than once.
 */
export function placeIn(text: string, words: string, path = 'procedures/sample.md'): string {
  const at = text.indexOf(words)
  if (at === -1 || text.indexOf(words, at + 1) !== -1)
    throw new Error(`Unexpected text with \`${words}\` never or more than once, expected it once`)
  const lines = text.slice(0, at).split('\n')
  return `${path}:${lines.length}:${(lines.at(-1) ?? '').length + 1}`
}
