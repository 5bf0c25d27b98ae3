import type {LanguageException, Office} from '../handbook-model/office-content.ts'
import {addMessage, type ContentFiles} from '../messages/add-message.ts'
import {refersTo} from './identity.ts'

/**
 * Takes the weight off messages that a reviewed exception covers: they stay as information, with the reason.
 *
 * An exception names the rule, the file and words of the line. One that covers nothing is told: it would hide the next mistake.
 */
export function acceptExceptions(
  exceptions: readonly LanguageException[],
  office: Office | undefined,
  files: ContentFiles,
): void {
  const reviewers = new Set(
    (office?.people ?? []).flatMap((person) => (person.may.includes('review') ? [person.id] : [])),
  )
  for (const exception of exceptions) {
    refersTo(exception.reviewedBy, reviewers, 'person who may review', files)
    const file = files.get(exception.file)
    const lines = String(file?.value ?? '').split(/\r?\n/u)
    const covered = (file?.messages ?? []).filter(
      (message) =>
        message.ruleId === exception.rule && paragraphAt(lines, message.line ?? 1).includes(exception.words),
    )
    for (const message of covered) {
      message.fatal = undefined
      message.note = `Accepted: ${exception.reason} (${exception.reviewedBy.id})`
    }
    if (covered.length > 0) continue
    addMessage(
      files,
      exception.place,
      'no-idle-exception',
      `Unexpected exception from \`${exception.rule}\` for \`${exception.words}\` in \`${exception.file}\`, expected a line of it that breaks the rule`,
      {note: 'Take the exception out, or copy the words of the line again'},
    )
  }
}

/** The line of a message and those that belong to it: a paragraph may be wrapped. */
function paragraphAt(lines: readonly string[], line: number): string {
  const end = lines.findIndex((text, index) => index >= line && text.trim() === '')
  return lines.slice(line - 1, end === -1 ? undefined : end).join('\n')
}
