import {type Figure, figureOf} from './figure.ts'
import {wallsOf} from './stack/pipe-walls.ts'
import {stackAcross} from './stack/stack-across.ts'
import type {PipeStack, StackWords} from './stack/stack-data.ts'
import {lengthRows, margin, rowHead, supportRow, text} from './stack/stack-dimensions.ts'
import {placeOf, placeOfLetters, type StackFrame, stackLength, standOut} from './stack/stack-length.ts'
import {type StackStations, stationsOf} from './stack/stack-stations.ts'
import {stackData, stackTold} from './stack/stack-text.ts'
import {rounded} from './svg-text.ts'

const width = 1500
const left = rowHead + 32
const right = width - 106
/** How wide the outer pipe is drawn, as near as a whole number of times the scale of the lengths comes to it. */
const wide = 240

/**
 * Pipe stack of a pump in longitudinal section, lying with the deck at the left, from top plate to motor, and a section across it.
 *
 * Lengths are drawn to one scale, widths to another that is a whole number of times as large; both follow the data alone.
 */
export function pipeStackFigure(stack: PipeStack, words: StackWords): Figure {
  const stations = stationsOf(stack)
  const walls = wallsOf(stack)
  const along = (right - left) / stations.total
  const outside = walls[0]?.outside ?? 1
  const times = Math.max(1, Math.round(wide / ((2 * outside * along) / 1000)))
  const across = (times * along) / 1000
  const scale = scaleOf(stack, words, times)
  const supports = supportRow(stack, stations, words, {left, right, along}, 96)
  const half = outside * across
  const frame: StackFrame = {left, right, axis: Math.round(supports.bottom + half) + 34, along, across}
  const letters = placeOfLetters(stations, frame)
  const rows = lengthRows(stack, stations, words, frame, frame.axis + half)
  const cut = stackAcross(stack, walls, words, scale, {top: rows.bottom + 20, width})
  return figureOf({
    size: 'wide',
    width,
    height: Math.ceil(cut.bottom),
    drawn: [
      text(words.title, width / 2, 40, 'mid strong'),
      text(words.onDeck, margin, 86),
      text(words.inTank, left + 28, 86),
      supports.svg,
      text(words.rows.sections, margin, frame.axis + 12),
      stackLength({stack, stations, walls, words, frame, letters}),
      cuttingPlane(cutPlace(stations, frame, letters), frame, half, words.across),
      rows.svg,
      cut.svg,
    ].join(''),
    alternative: [words.text.view(stack.pump), ...stackTold(stack, words, scale)].join(' '),
    data: stackData(stack, words, scale).join(' '),
  })
}

/** How widths are drawn, and that a wall is dashed where an edge of it is not known. */
function scaleOf({diameters}: PipeStack, words: StackWords, times: number): readonly string[] {
  const isOpen = Object.values(diameters).some(({metres}) => metres === undefined)
  return [words.scale(times), ...(isOpen ? [words.dashed] : [])]
}

/** The section across is taken where nothing else stands, about two thirds down. */
function cutPlace(stations: StackStations, frame: StackFrame, letters: number): number {
  const taken = [
    letters,
    ...stations.joints.map(({at}) => placeOf(frame, at)),
    ...stations.supports.map(({at}) => placeOf(frame, at) + 10),
    ...stations.breaks.map((at) => placeOf(frame, at)),
  ]
  const wished = left + (right - left) * 0.62
  const free = (x: number): number => Math.min(72, ...taken.map((one) => Math.abs(one - x)))
  const places = Array.from({length: 60}, (_, index) => left + 50 + ((right - left - 120) * index) / 59)
  return places.reduce((best, one) => {
    const gain = free(one) - free(best)
    return gain > 0.5 || (gain > -0.5 && Math.abs(one - wished) < Math.abs(best - wished)) ? one : best
  })
}

/** Ends of the cutting plane with its letters and the arrows of the look down the stack. */
function cuttingPlane(x: number, {axis}: StackFrame, half: number, letter: string): string {
  const ends = [-1, 1].map((side) => {
    const near = axis + side * (half + 6)
    const far = axis + side * (half + standOut + 8)
    const y = axis + side * (half + standOut)
    return {
      dash: `M${rounded(x)} ${rounded(near)}V${rounded(far)}`,
      arrow: `M${rounded(x)} ${rounded(y)}h12v-6l16 6l-16 6v-6`,
      word: text(letter, x - 20, axis + side * (half + 20) + 14, 'mid strong'),
    }
  })
  return [
    `<path class="bold" d="${ends.map(({dash}) => dash).join('')}"/>`,
    `<path class="solid" d="${ends.map(({arrow}) => arrow).join('')}"/>`,
    ...ends.map(({word}) => word),
  ].join('')
}
