import type {Office} from '../../handbook-model/office-content.ts'
import type {ContentSources} from '../../handbook-model/sources.ts'
import {addMessage, type ContentFiles} from '../../messages/add-message.ts'
import {expectedWord} from '../nearest-word.ts'

/**
 * What a cargo asks people to wear is among the protections that the office lists, each by its own word.
 *
 * The mate looks in the locker for what the sheet says: a mistyped or second word is one that nobody finds there.
 * An office that lists no protections is not asked.
 *
 * Accepted: `"chemical gloves, goggles"` with both under `protections:` of office.yaml.
 * Rejected: `"chemical glove, goggles"`.
 */
export function noUnlistedProtection(office: Office, sources: ContentSources, files: ContentFiles): void {
  const listed = office.protections
  const cargoes = sources.csv.get('tables/cargoes.csv')
  if (listed === undefined || !cargoes) return
  const column = cargoes.header.findIndex((cell) => cell.text === 'protection')
  for (const {text, place} of cargoes.rows.flatMap((row) => row[column] ?? []))
    for (const word of text.split(',').map((one) => one.trim())) {
      if (word === '' || listed.includes(word)) continue
      addMessage(
        files,
        place,
        'no-unlisted-protection',
        `Unexpected protection \`${word}\`, ${expectedWord(word, listed, 'a protection')}`,
        {note: 'Write a word of `protections:` in office.yaml, with commas between, or add it there'},
      )
    }
}
