import type {ContentFiles} from '../../src/messages/add-message.ts'
import {sortedMessages} from '../../src/messages/print-messages.ts'

/** Every message as one line: place, reason, rule; then how to mend it and the other place where they are told. */
export function messagesOf(files: ContentFiles): readonly string[] {
  return sortedMessages(files).map((message) => {
    const more = [
      message.note ? ` | ${message.note}` : '',
      message.cause ? ` | see ${String(message.cause)}` : '',
    ]
    return `${message.file}:${message.line}:${message.column} ${message.reason} ${message.ruleId}${more.join('')}`
  })
}

/** Lines without remedy and other place. */
export function linesOf(files: ContentFiles): readonly string[] {
  return messagesOf(files).map((line) => line.split(' | ')[0] ?? line)
}
