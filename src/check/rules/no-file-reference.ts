import type {Procedure, RichText, StepPart} from '../../handbook-model/procedure.ts'
import {addMessage, type ContentFiles} from '../../messages/add-message.ts'
import type {Place} from '../../messages/place.ts'
import {wordsOfText} from '../language/words-of-text.ts'

const fileName = /\b[\w-]+\.(?:md|html?|pdf|docx?|xlsx?|ya?ml)\b|\bpage \d+|\bsheet \d+/iu

/**
 * A text refers to things by id, never by the name of a file or the number of a page.
 *
 * Files are renamed and pages move; an id is checked with every build.
 *
 * Accepted: `:procedure[the isolation]{ref=isolation}`. Rejected: "see isolation.html".
 */
export function noFileReference(procedure: Procedure, files: ContentFiles): void {
  const look = (text: RichText, place: Place): void => {
    const found = fileName.exec(wordsOfText(text))
    if (!found) return
    addMessage(
      files,
      place,
      'no-file-reference',
      `Unexpected \`${found[0]}\` in a text, expected a reference by id such as \`:procedure[…]{ref=…}\``,
      {note: 'Refer by id: files are renamed and pages move'},
    )
  }
  for (const text of [...procedure.purpose, ...procedure.before, ...procedure.after])
    look(text, procedure.place)
  for (const section of procedure.sections) {
    for (const text of section.intro) look(text, section.place)
    for (const item of section.items) {
      if (item.kind === 'hold-point') for (const text of item.text) look(text, item.place)
      else {
        look(item.instruction, item.place)
        for (const part of item.parts) for (const text of textsOf(part)) look(text, part.place)
      }
    }
  }
}

function textsOf(part: StepPart): readonly RichText[] {
  if (part.kind === 'note') return [part.text]
  return part.kind === 'alternatives' ? part.items.map((item) => item.text) : []
}
