import type {Procedure, Reading, StepPart} from '../../handbook-model/procedure.ts'
import {
  isStationPlace,
  stationForms,
  stationPlaces,
  stationWithoutPlace,
  type WrittenStations,
  writtenStations,
} from '../../handbook-model/station-places.ts'
import {addMessage, type ContentFiles} from '../../messages/add-message.ts'
import {refersTo} from '../identity.ts'

/** Names of figures, with what an author puts behind the colon. */
const figures = [
  'tank-plan',
  'isolation-lines:isolated',
  'isolation-lines:restored',
  'lift:<lift>',
  'lowering',
  'raising',
  'pipe-stack',
  'portable-arrangement',
  'seal-orientation:<seal>',
  'stations:<reading>:<place>',
  'tightening-order:<joint>',
]
const figureNames =
  /^(?:tank-plan|pipe-stack|portable-arrangement|lowering|raising|lift:.+|isolation-lines:(?:isolated|restored)|seal-orientation:.+|stations:.*|tightening-order:.+)$/u

type FigurePart = Extract<StepPart, {readonly kind: 'figure'}>

/**
 * A figure has a name that exists; one of stations names readings of its procedure, places that exist, and stations that lie there.
 *
 * Accepted: `stations:eye:eye` with a reading `eye` of the stations `a 0°, a 60°`.
 * Rejected: `stations:eye:hub-bore`; a reading of the stations `first trial, second trial`.
 */
export function figureReferences(part: FigurePart, procedure: Procedure, files: ContentFiles): void {
  const written = writtenStations(part.figure)
  if (!figureNames.test(part.figure))
    refersTo({id: part.figure, place: part.place}, new Set(figures), 'figure', files)
  else if (part.figure.startsWith('stations:') && !isWellFormed(part.figure))
    refuse(
      part,
      `Unexpected figure \`${part.figure}\`, expected \`stations:<reading>:<place>\`, or two of each with \`+\` between them`,
      'Write as many readings as places, two at most',
      files,
    )
  else for (const one of written) stationsLie(one, part, procedure, files)
  const inRig = written.filter(({place}) => place === 'test-gauge' || place === 'stack-pipe')
  if (inRig.length > 0 && inRig.length < written.length)
    refuse(
      part,
      `Unexpected places \`${written.map(({place}) => place).join('+')}\` in one figure, expected places of one drawing`,
      'Write two figures',
      files,
    )
}

/** As many readings as places, two at most. */
function isWellFormed(figure: string): boolean {
  const [, readings = '', places = '', ...more] = figure.split(':')
  const [left, right] = [readings.split('+'), places.split('+')]
  return (
    more.length === 0 && left.length === right.length && left.length <= 2 && ![...left, ...right].includes('')
  )
}

function stationsLie(
  {reading: id, place: word}: WrittenStations,
  part: FigurePart,
  procedure: Procedure,
  files: ContentFiles,
): void {
  const readings = readingsOf(procedure)
  const named = refersTo({id, place: part.place}, readings, 'reading of this procedure', files)
  if (
    !refersTo({id: word, place: part.place}, new Set(Object.keys(stationPlaces)), 'place of stations', files)
  )
    return
  const reading = readings.get(id)
  if (!named || !reading || !isStationPlace(word)) return
  const {kind} = stationPlaces[word]
  const station = stationWithoutPlace(kind, reading.stations)
  if (station !== undefined)
    refuse(
      part,
      `Unexpected station \`${station}\` of reading \`${id}\` at \`${word}\`, expected ${stationForms[kind]}, each once`,
      'Name the stations by where they lie, or choose another place',
      files,
    )
}

function refuse(part: FigurePart, reason: string, note: string, files: ContentFiles): void {
  addMessage(files, part.place, 'no-undefined-reference', reason, {note})
}

function readingsOf({sections}: Procedure): ReadonlyMap<string, Reading> {
  const readings = sections.flatMap(({items}) =>
    items.flatMap((item) =>
      item.kind === 'step' ? item.parts.flatMap((part) => (part.kind === 'reading' ? [part] : [])) : [],
    ),
  )
  return new Map(readings.map((one) => [one.id, one]))
}
