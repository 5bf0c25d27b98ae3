import type {PageHead} from '../handbook-model/pages.ts'
import {found, type PumpDesk} from './desk.ts'
import {unique} from './made-from.ts'

/** Head of a page that the whole ship has once; it rests on the files of ship and office too. */
export function shipPageHead(
  desks: readonly PumpDesk[],
  name: string,
  path: string,
  title: string,
  madeFrom: readonly string[],
): PageHead {
  const {vessel, content} = found(desks[0], 'a pump')
  const {office} = content
  return {
    id: `${vessel.id}/${name}`,
    shownAs: title.toLowerCase(),
    path,
    title,
    language: 'en',
    madeFrom: unique([vessel.place.path, office.place.path, ...madeFrom]),
  }
}
