import type {Office} from '../../handbook-model/office-content.ts'
import type {ContentSources} from '../../handbook-model/sources.ts'
import type {Vessel} from '../../handbook-model/vessel-content.ts'
import {addMessage, type ContentFiles} from '../../messages/add-message.ts'

/**
 * A vessel of a demonstration carries a hull number that no ship in service has: those never begin with 0.
 *
 * A sheet with invented torques under the number of a ship could be taken for hers.
 *
 * Accepted: `hull-number: "0937241"`. Rejected: `hull-number: "1234567"` where the office says `demonstration: yes`.
 */
export function noServingHull(
  office: Office,
  vessels: Iterable<Vessel>,
  sources: ContentSources,
  files: ContentFiles,
): void {
  if (!office.demonstration) return
  for (const {hullNumber, place} of vessels) {
    if (hullNumber.startsWith('0')) continue
    const file = sources.yaml.get(place.path)
    const entries = file?.kind === 'map' ? file.entries : []
    addMessage(
      files,
      entries.find(({key}) => key.text === 'hull-number')?.value.place ?? place,
      'no-wrong-shape',
      `Unexpected hull number \`${hullNumber}\` of a demonstration, expected one that begins with \`0\``,
      {note: 'Invent a number that no ship carries, or write `demonstration: no`'},
    )
  }
}
