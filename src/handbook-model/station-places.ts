/** How stations lie at a place, and what is held at them. */
export type StationKind = 'bore' | 'outside' | 'groove' | 'gap' | 'depth' | 'dial' | 'gauge' | 'wall'

/** Where readings are taken, with the values that say how large it is: the first one is drawn as a dimension. */
interface Place {
  readonly kind: StationKind
  readonly values: readonly string[]
}

const impeller = 'geometry.impeller-diameter'

/** The places that a figure of stations can draw. */
export const stationPlaces = {
  'lower-ring': {kind: 'bore', values: ['lower-ring.running-diameter']},
  'upper-ring': {kind: 'bore', values: ['upper-ring.running-diameter']},
  eye: {kind: 'outside', values: ['lower-ring.running-diameter', impeller]},
  back: {kind: 'outside', values: ['upper-ring.running-diameter', impeller]},
  'eye-run-out': {kind: 'dial', values: ['lower-ring.running-diameter', impeller]},
  sleeve: {kind: 'groove', values: ['geometry.sleeve-diameter']},
  'sleeve-run-out': {kind: 'dial', values: ['geometry.sleeve-diameter']},
  'sleeve-end': {kind: 'depth', values: ['geometry.sleeve-diameter']},
  'cargo-seal': {kind: 'depth', values: ['geometry.sleeve-diameter']},
  'single-lip': {kind: 'depth', values: ['geometry.sleeve-diameter']},
  hub: {kind: 'gap', values: ['geometry.hub-diameter']},
  'head-flange': {kind: 'gap', values: ['geometry.motor-flange-diameter']},
  'motor-joint': {kind: 'gap', values: ['geometry.motor-diameter']},
  'shaft-reach': {kind: 'depth', values: ['geometry.hub-diameter', 'geometry.shaft-reach']},
  'oil-seal-length': {kind: 'depth', values: ['geometry.shaft-diameter']},
  'oil-seal-seat': {kind: 'depth', values: ['geometry.shaft-diameter']},
  'shaft-run-out': {kind: 'dial', values: ['geometry.shaft-diameter']},
  'flange-run-out': {kind: 'dial', values: ['geometry.sleeve-diameter']},
  'foot-seat': {kind: 'outside', values: ['geometry.foot-bearing-bore']},
  'top-seat': {kind: 'outside', values: ['geometry.top-bearing-bore']},
  'foot-bore': {kind: 'bore', values: ['geometry.foot-bearing-outside']},
  'top-bore': {kind: 'bore', values: ['geometry.top-bearing-outside']},
  'test-gauge': {kind: 'gauge', values: ['cofferdam.test-pressure']},
  'stack-pipe': {
    kind: 'wall',
    values: ['geometry.stack-diameter', 'cofferdam.outer-pipe-bore', 'cofferdam.inner-pipe-outside'],
  },
} as const satisfies Record<string, Place>

export type StationPlace = keyof typeof stationPlaces

/** Whether a word is one of the places. */
export function isStationPlace(word: string): word is StationPlace {
  return Object.hasOwn(stationPlaces, word)
}

/** A reading and the place where its stations lie, as the name of a figure says them. */
export interface WrittenStations {
  readonly reading: string
  readonly place: string
}

/**
 * The readings of a figure `stations:<reading>:<place>`, or of two in one drawing,
 * `stations:<reading>+<reading>:<place>+<place>`; nothing for a figure of another name.
 */
export function writtenStations(figure: string): readonly WrittenStations[] {
  const [name, readings = '', places = ''] = figure.split(':')
  if (name !== 'stations') return []
  const at = places.split('+')
  return readings.split('+').map((reading, index) => ({reading, place: at[index] ?? ''}))
}

/** Values whose figures a drawing of stations shows, each once. */
export function valuesBehindStations(figure: string): readonly string[] {
  return [
    ...new Set(
      writtenStations(figure).flatMap(({place}) =>
        isStationPlace(place) ? stationPlaces[place].values : [],
      ),
    ),
  ]
}

/** A station by its name: the plane that it lies in, blank where there is one alone, and its direction in degrees. */
export interface Station {
  readonly name: string
  readonly plane: string
  readonly direction?: number
  /** Found with a dial, wherever it is; or a side of a pipe. */
  readonly side?: 'highest' | 'lowest' | 'port' | 'starboard'
}

/** Reads `a 60°`, `0°`, `highest`, `port side`; nothing for other words. */
export function stationOf(name: string): Station | undefined {
  const words = name.toLowerCase()
  if (words === 'highest' || words === 'lowest') return {name, plane: '', side: words}
  if (words === 'port side') return {name, plane: '', side: 'port'}
  if (words === 'starboard side') return {name, plane: '', side: 'starboard'}
  const [, plane = '', degrees] = /^(?:(.+) )?(\d+(?:\.\d+)?)°$/u.exec(name) ?? []
  return degrees === undefined ? undefined : {name, plane, direction: Number(degrees)}
}

/** What the names of stations look like at a place of each kind. */
export const stationForms: Readonly<Record<StationKind, string>> = {
  bore: 'a diameter such as `a 60°`, below 180°',
  outside: 'a diameter such as `a 60°`, below 180°',
  groove: 'a direction such as `90°` or `second lip 90°`, below 360°',
  gap: 'a direction such as `90°`, below 360°',
  depth: 'a direction such as `90°`, below 360°',
  dial: '`highest`, `lowest` or a direction such as `back at 0°`',
  gauge: 'one station, the gauge',
  wall: '`port side` or `starboard side`',
}

/** Most planes that a drawing has room for. */
const mostPlanes = 4

/** The first station of a reading that a place of this kind cannot show, if there is one. */
export function stationWithoutPlace(kind: StationKind, names: readonly string[]): string | undefined {
  const planes: string[] = []
  return names.find((name, index) => {
    if (kind === 'gauge') return index > 0
    const station = stationOf(name)
    if (!station || names.indexOf(name) < index) return true
    const {direction, plane, side} = station
    if (kind === 'wall') return side !== 'port' && side !== 'starboard'
    if (kind === 'dial')
      return direction === undefined ? side !== 'highest' && side !== 'lowest' : direction >= 360
    if (direction === undefined || direction >= (kind === 'bore' || kind === 'outside' ? 180 : 360))
      return true
    if ((kind === 'gap' || kind === 'depth') && plane !== '') return true
    if (!planes.includes(plane)) planes.push(plane)
    return planes.length > mostPlanes
  })
}
