import {elastomerShelfLife} from '../calculations/seals/elastomer-shelf-life.ts'
import type {Content} from '../handbook-model/content.ts'
import {addMessage, type ContentFiles} from '../messages/add-message.ts'

/**
 * A spare of rubber that lies aboard is within the first storage period of its material on the day that dates are compared with.
 *
 * The day is never that of the machine. Where none is known, nothing is compared.
 *
 * Accepted: an O-ring of FKM cured ten years before that day, or later.
 * Rejected: one that was cured earlier; a cure date on a part whose rubber is not stated.
 */
export function noAgedRubber(content: Content, day: string | undefined, files: ContentFiles): void {
  for (const vessel of content.vessels.values())
    for (const {part: reference, quantity, cured, place} of vessel.sparesAboard) {
      const part = content.parts.get(reference.id)
      if (cured === undefined || quantity === 0 || !part) continue
      if (part.rubber === undefined) {
        addMessage(
          files,
          place,
          'no-aged-rubber',
          `Unexpected cure date of \`${part.id}\`, expected it on a part whose rubber is stated`,
          {note: 'State `rubber:` of the part in parts.yaml, such as `FKM`', cause: part.place},
        )
        continue
      }
      const {validTo, validToAfterInspection} = elastomerShelfLife(part.rubber, cured)
      if (day === undefined || day <= validTo) continue
      addMessage(
        files,
        place,
        'no-aged-rubber',
        `Unexpected \`${part.id}\` aboard \`${vessel.id}\`, cured ${cured} and valid to ${validTo}, expected rubber that is valid on ${day}`,
        {
          note:
            day <= validToAfterInspection
              ? `Send new ones; until ${validToAfterInspection} the old ones serve after an inspection`
              : 'Send new ones and have the old ones taken out of the store',
          cause: part.place,
        },
      )
    }
}
