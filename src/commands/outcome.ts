import type {ContentFiles} from '../messages/add-message.ts'
import {printMessages, sortedMessages} from '../messages/print-messages.ts'

/** What a command says and how it ends: 0 done, 1 the content has errors, 2 used wrongly, 3 our fault or the machine's. */
export interface Outcome {
  readonly exitStatus: 0 | 1 | 2 | 3
  readonly out: string
  readonly err: string
}

/** Options that commands share. */
export interface CommandOptions {
  readonly content: string
  readonly out: string
  readonly vessels: readonly string[]
  readonly json: boolean
  /** With build: a copy for the office, whose explanations name file and line of each input. */
  readonly withPlaces?: boolean
  /** An earlier content to hold this one against. */
  readonly against?: string
  /** The day that dates are compared with; the newest one of the content when none is named. */
  readonly asOf?: string
  /** Called with a line of progress; does nothing in a pipe. */
  readonly progress: (line: string) => void
}

/** Counts of messages by weight, in words. */
export function countWords(files: ContentFiles): string {
  const all = sortedMessages(files)
  const errors = all.filter((one) => one.fatal === true).length
  const warnings = all.filter((one) => one.fatal === false).length
  const rest = all.length - errors - warnings
  return `${errors} errors, ${warnings} warnings, ${rest} notes`
}

/** Messages for people, or as JSON lines for machines. */
export function messagesText(files: ContentFiles, options: CommandOptions): string {
  return options.json ? '' : printMessages(files, options.content)
}

/** Messages as plain data. */
export function messagesData(files: ContentFiles): readonly object[] {
  return sortedMessages(files).map((message) => ({
    file: message.file,
    line: message.line,
    column: message.column,
    rule: message.ruleId,
    severity: message.fatal === true ? 'error' : message.fatal === false ? 'warning' : 'information',
    reason: message.reason,
    ...(message.note ? {mend: message.note} : {}),
  }))
}
