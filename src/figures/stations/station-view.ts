import type {Point} from '../section/shape.ts'
import {escaped, textLines, textWidth} from '../svg-text.ts'
import {held} from './instruments.ts'
import {at, path} from './strokes.ts'
import type {DrawnView, PlacedStation, StationView, ViewStation} from './view.ts'
import {
  centred,
  circlesOf,
  countArrow,
  crossLines,
  dimensionAside,
  dimensionBelow,
  polar,
  zeroMark,
} from './view-marks.ts'

const letter = 36
const step = 44
const balloon = 21
const offset = 62
const dialRadius = 46
/** What the bow of an outside micrometer takes up around the part. */
const bow = 50
/** A name that is wider stands below its direction, without it. */
const longName = 170

/** Units of the view box for one millimetre, so that a view with its labels fits into a width. */
export function scaleOf(view: StationView, width: number): number {
  const {left, right} = roomBeside(view)
  const room = Math.min(185, (width - left - right) / 2)
  const scale = room / largest(view)
  return rimOf(view, scale) > room ? (room - bow) / view.r : scale
}

/** How far a view reaches out: its largest circle, or the bow of the micrometer around what is measured. */
function rimOf(view: StationView, scale: number): number {
  return Math.max(largest(view) * scale, view.kind === 'outside' ? view.r * scale + bow : 0)
}

function largest({circles}: StationView): number {
  return Math.max(...circles.map(({r}) => r))
}

/** Room for the labels on each side. */
function roomBeside(view: StationView): {readonly left: number; readonly right: number} {
  const sides = view.stations.map((one) => {
    const across = Math.sin(angleOf(one, view))
    return {across, wide: offset + labelWidth(labelOf(one, view))}
  })
  const most = (right: boolean): number =>
    Math.max(24, ...sides.map(({across, wide}) => (across * (right ? 1 : -1) > 0.3 ? wide : 24)))
  // A view stands in the middle of its room where a dial has its names on both sides.
  return {left: view.kind === 'dial' ? 120 : most(false), right: view.kind === 'dial' ? 120 : most(true)}
}

/** Whether directions stand once above the planes of their stations. */
export function isLong({stations}: StationView): boolean {
  return stations.some(({name, plane}) => plane !== '' && textWidth(name, letter) > longName)
}

function labelOf(station: ViewStation, view: StationView): string {
  return isLong(view) ? station.plane : station.name
}

function labelWidth(name: string): number {
  return 2 * balloon + 10 + textWidth(name, letter)
}

/** Angle of a station from the top with the clock, as the view shows it. */
function angleOf({direction = 0}: ViewStation, {way}: StationView): number {
  return (way * direction * Math.PI) / 180
}

/** Where a view stands; views beside each other have their middles at one height. */
export interface ViewArea {
  readonly left: number
  readonly top: number
  readonly width: number
  readonly middle?: number
}

/** Draws a view from `top` down, with its title and notes. */
export function drawView(view: StationView, area: ViewArea, scale: number): DrawnView {
  const middleOfArea = area.left + area.width / 2
  const titles = textLines(view.title, letter, area.width - 10, true)
  const numbered = view.stations.map((station, index) => ({station, number: index + 1}))
  const blocks = blocksOf(numbered, view)
  const radius = largest(view) * scale
  const r = view.r * scale
  const rim = rimOf(view, scale)
  const head = isLong(view) ? 1 : 0
  const above = blocks.find(({angle}) => Math.cos(angle) > 0.95)?.stations.length ?? 0
  const reach = view.kind === 'dial' ? Math.max(rim + offset, r + 204) : rim + offset
  const {left, right} = roomBeside(view)
  const cx = area.left + left + (area.width - left - right) / 2
  const cy = Math.max(area.middle ?? 0, area.top + (titles.length + above + head) * step + reach + 8)
  const middle: Point = [cx, cy]
  const onDial: Point = [cx, cy - r - 96 - dialRadius]
  const placed = numbered.map(({station, number}): PlacedStation => {
    const outline =
      station.direction === undefined ? {middle: onDial, radius: dialRadius} : {middle, radius: r}
    const angle =
      station.direction === undefined ? (station.side === 'lowest' ? -1 : 1) : angleOf(station, view)
    return {name: station.name, number, at: polar(outline.middle, outline.radius, angle), outline}
  })
  const labels = blocks.map((block) => labelsOf(block, {middle, rim, onDial}, view))
  const low = Math.max(
    cy + rim + 40,
    view.kind === 'outside' ? cy + r + 74 : 0,
    ...labels.map(({bottom}) => bottom),
  )
  const below = view.kind === 'bore' || view.kind === 'outside' || view.kind === 'dial'
  const dimension = !view.dimension
    ? ''
    : below
      ? dimensionBelow(view.dimension, scale, middle, low + 54)
      : dimensionAside(view, view.dimension, scale, middle, rim)
  const notes = view.notes.flatMap((note) => textLines(note, letter, area.width - 10))
  const first = low + (view.dimension && below ? 112 : 50)
  return {
    svg: [
      titles.map((text, index) => centred(text, middleOfArea, area.top + 30 + index * step, true)).join(''),
      circlesOf(view, middle, scale),
      path('thin', crossLines(view, middle, radius)),
      countArrow(view, middle, rim),
      held(view.kind, {middle, r, way: view.way, angles: view.stations.map((one) => angleOf(one, view))}),
      zeroMark(view, middle, rim, r),
      [...new Set(placed.map((one) => at(one.at)))]
        .map((one) => `<circle class="solid" cx="${one.replace(' ', '" cy="')}" r="8"/>`)
        .join(''),
      labels.map(({svg}) => svg).join(''),
      dimension,
      notes.map((text, index) => centred(text, middleOfArea, first + index * step)).join(''),
    ].join(''),
    bottom: first + (notes.length - 1) * step + 14,
    middle: cy,
    placed,
  }
}

type Numbered = {readonly station: ViewStation; readonly number: number}

/** Stations of one direction stand below each other. */
interface Block {
  readonly angle: number
  readonly side?: ViewStation['side']
  readonly stations: readonly Numbered[]
}

function blocksOf(stations: readonly Numbered[], view: StationView): readonly Block[] {
  const blocks = new Map<string, Block>()
  for (const one of stations) {
    const {side, direction} = one.station
    const key = direction === undefined ? (side ?? '') : String(direction)
    const before = blocks.get(key)?.stations ?? []
    const angle = angleOf(one.station, view)
    blocks.set(key, {angle, ...(direction === undefined && side ? {side} : {}), stations: [...before, one]})
  }
  return [...blocks.values()]
}

function labelsOf(
  {angle, side, stations}: Block,
  on: {readonly middle: Point; readonly rim: number; readonly onDial: Point},
  view: StationView,
): {readonly svg: string; readonly bottom: number} {
  const head = isLong(view) ? `${stations[0]?.station.direction ?? ''}°` : ''
  const lines = stations.length + (head === '' ? 0 : 1)
  const high = lines * step
  const wide = Math.max(...stations.map(({station}) => labelWidth(labelOf(station, view))))
  const dial = view.kind === 'dial' && Math.cos(angle) > 0.95
  const anchor: Point = dial
    ? [on.onDial[0], on.onDial[1] - dialRadius - 12]
    : polar(on.middle, on.rim + offset, angle)
  const across = Math.sin(angle)
  let [left, top] = [anchor[0] - wide / 2, anchor[1] - high / 2]
  if (side) {
    left = side === 'lowest' ? on.onDial[0] - dialRadius - 24 - wide : on.onDial[0] + dialRadius + 24
    top = on.onDial[1] - dialRadius * 0.5 - high / 2
  } else if (Math.abs(across) > 0.3) left = across > 0 ? anchor[0] : anchor[0] - wide
  else top = Math.cos(angle) > 0 ? anchor[1] - high + (dial ? 0 : 10) : anchor[1] - 10
  const first = top + (head === '' ? 0 : step)
  return {
    svg: [
      head === ''
        ? ''
        : `<text class="strong" x="${Math.round(left + 2 * balloon + 10)}" y="${Math.round(top + step / 2 + 13)}">${head}</text>`,
      ...stations.map(({station, number}, index) => {
        const y = first + index * step + step / 2
        return `<circle class="part" cx="${Math.round(left + balloon)}" cy="${Math.round(y)}" r="${balloon}"/><text class="strong mid" x="${Math.round(left + balloon)}" y="${Math.round(y + 13)}">${number}</text><text x="${Math.round(left + 2 * balloon + 10)}" y="${Math.round(y + 13)}">${escaped(labelOf(station, view))}</text>`
      }),
    ].join(''),
    bottom: top + high,
  }
}
