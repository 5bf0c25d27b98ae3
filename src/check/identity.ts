import type {Reference} from '../handbook-model/datum.ts'
import {addMessage, type ContentFiles} from '../messages/add-message.ts'
import type {Place} from '../messages/place.ts'
import type {KnownIds} from './known-ids.ts'
import {expectedWord} from './nearest-word.ts'

/** A thing of the content that others refer to. */
export interface Identified {
  readonly id: string
  readonly place: Place
}

/** A map by id in sorted order; a second entry of an id is a message that points at the first. */
export function byId<T extends Identified>(items: readonly T[], files: ContentFiles): ReadonlyMap<string, T> {
  const found = new Map<string, T>()
  for (const item of items) {
    const first = found.get(item.id)
    if (first) refuseSecondId(item, first, files)
    else found.set(item.id, item)
  }
  return new Map([...found].sort(([a], [b]) => (a < b ? -1 : 1)))
}

/** Reports an id that another thing has before it. */
export function refuseSecondId(item: Identified, first: Identified, files: ContentFiles): void {
  addMessage(
    files,
    item.place,
    'no-duplicate-id',
    `Unexpected second \`${item.id}\`, expected each id once`,
    {cause: first.place, note: 'Rename one of the two'},
  )
}

/** Reports a reference that leads nowhere, with the nearest id. */
export function refersTo(reference: Reference, known: KnownIds, what: string, files: ContentFiles): boolean {
  if (known.has(reference.id)) return true
  addMessage(
    files,
    reference.place,
    'no-undefined-reference',
    `Unexpected \`${reference.id}\`, ${expectedWord(reference.id, known.keys(), `the id of a ${what}`)}`,
    {note: `Write the id of a ${what} that exists, or add it`},
  )
  return false
}

/** Reports an id that is not the name of its file. */
export function nameFits(item: Identified, path: string, files: ContentFiles): void {
  if (item.place.path === path) return
  addMessage(
    files,
    item.place,
    'no-bad-id',
    `Unexpected id \`${item.id}\` in this file, expected the file to be \`${path}\``,
    {note: 'Make the id and the name of the file equal'},
  )
}
