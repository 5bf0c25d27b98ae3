import {addMessage, type ContentFiles} from '../messages/add-message.ts'
import type {CommandOptions} from './outcome.ts'
import {type CheckedContent, checkAndCompute} from './run-stages.ts'

/** The content that `--against` names; one with errors is a message. Undefined where none is named. */
export async function earlierContent(
  {against, asOf}: CommandOptions,
  files: ContentFiles,
): Promise<CheckedContent | undefined> {
  if (against === undefined) return undefined
  const earlier = await checkAndCompute(against, asOf)
  if (!earlier.content)
    addMessage(
      files,
      {path: '.', line: 1, column: 1},
      'no-missing-content',
      `Unexpected errors in \`${against}\`, expected a content that passes the check to compare with`,
      {note: `Run \`sheetanchor check --content ${against}\` and mend it, or name another folder`},
    )
  return earlier
}
