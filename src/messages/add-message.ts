import {VFile} from 'vfile'
import type {VFileMessage} from 'vfile-message'
import type {Place} from './place.ts'
import {type RuleId, severities} from './severities.ts'

/** The content files of one run by path, each carrying its messages. A message on a path not yet listed lists it. */
export type ContentFiles = Map<string, VFile>

/** What helps to mend a mistake, besides the reason. */
export interface MessageDetails {
  /** How to mend it: one sentence, an imperative. */
  readonly note?: string
  /** The other place that matters, for example the first definition. */
  readonly cause?: Place
}

/**
 * The one way to speak to the author, for every stage.
 *
 * @param reason
 *   "Unexpected X, expected Y", values in backticks, no full stop.
 */
export function addMessage(
  files: ContentFiles,
  place: Place,
  ruleId: RuleId,
  reason: string,
  details: MessageDetails = {},
): VFileMessage {
  const file = files.get(place.path) ?? new VFile({path: place.path})
  files.set(place.path, file)
  const start = {line: place.line, column: place.column}
  const end = {line: place.endLine ?? place.line, column: place.endColumn ?? place.column}
  const message = file.message(reason, {place: {start, end}, source: 'handbook', ruleId})
  const severity = severities[ruleId]
  message.fatal = severity === 'stops-the-build' ? true : severity === 'warns' ? false : undefined
  message.file = place.path
  if (details.note !== undefined) message.note = details.note
  if (details.cause !== undefined) {
    message.cause = `${details.cause.path}:${details.cause.line}:${details.cause.column}`
  }
  return message
}

/** True when any message so far forbids publishing. */
export function stopsTheBuild(files: ContentFiles): boolean {
  return [...files.values()].some((file) => file.messages.some((message) => message.fatal === true))
}
