import type {VFileMessage} from 'vfile-message'
import type {ContentFiles} from './add-message.ts'

const words = new Map<boolean | null | undefined, string>([
  [true, 'error'],
  [false, 'warning'],
])

/** Prints every message, sorted by file, line and column: `file:line:column word reason rule`, then how to mend it and the other place. */
export function printMessages(files: ContentFiles, contentFolder: string): string {
  const lines = sortedMessages(files).flatMap((message) => [
    `${contentFolder}/${message.file}:${message.line}:${message.column} ${wordOf(message)} ${legible(message.reason)} ${message.ruleId}`,
    ...(message.note ? [`    mend: ${message.note}`] : []),
    ...(typeof message.cause === 'string' ? [`    see: ${contentFolder}/${message.cause}`] : []),
  ])
  return lines.map((line) => `${line}\n`).join('')
}

/** All messages of a run in reading order. */
export function sortedMessages(files: ContentFiles): readonly VFileMessage[] {
  const all = [...files.values()].flatMap((file) => file.messages)
  return all.sort(
    (a, b) =>
      compareText(a.file ?? '', b.file ?? '') ||
      (a.line ?? 0) - (b.line ?? 0) ||
      (a.column ?? 0) - (b.column ?? 0) ||
      compareText(a.reason, b.reason),
  )
}

function wordOf(message: VFileMessage): string {
  return words.get(message.fatal) ?? 'information'
}

/** Longer words of an author are not read in a message; its place leads to them. */
const longestQuote = 120

/** One line of a terminal: no sign that moves the cursor, no quote of a whole page. */
function legible(reason: string): string {
  return reason
    .replace(/[\p{Cc}\u2028\u2029]/gu, '\uFFFD')
    .replace(/`([^`]+)`/gu, (quoted, words: string) =>
      words.length > longestQuote ? `\`${[...words].slice(0, longestQuote).join('')}…\`` : quoted,
    )
}

function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0
}
