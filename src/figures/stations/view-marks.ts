import type {Point} from '../section/shape.ts'
import {escaped, rounded, textWidth} from '../svg-text.ts'
import {arrowhead, at, path} from './strokes.ts'
import type {StationView} from './view.ts'

const letter = 36

/** A place on a circle, by the angle from the top with the clock. */
export function polar([x, y]: Point, radius: number, angle: number): Point {
  return [x + radius * Math.sin(angle), y - radius * Math.cos(angle)]
}

/** A text about its middle. */
export function centred(text: string, x: number, y: number, strong = false): string {
  return `<text class="${strong ? 'strong mid' : 'mid'}" x="${Math.round(x)}" y="${Math.round(y)}">${escaped(text)}</text>`
}

/** Circles of the part; the one that is measured is heavy, the one on which a rod stands is a centre line. */
export function circlesOf({circles, kind, r}: StationView, [x, y]: Point, scale: number): string {
  return circles
    .map(
      (one) =>
        `<circle class="${one.r !== r ? 'line' : kind === 'depth' ? 'thin' : 'bold'}${one.hidden ? ' wire' : ''}" cx="${rounded(x)}" cy="${rounded(y)}" r="${rounded(one.r * scale)}"/>`,
    )
    .join('')
}

/** Each direction as a centre line: a diameter, or a radius where one end alone is measured. */
export function crossLines({kind, stations, way}: StationView, middle: Point, radius: number): string {
  const directions = new Set(stations.flatMap(({direction}) => direction ?? []))
  return [...directions]
    .map((direction) => {
      const angle = (way * direction * Math.PI) / 180
      const whole = kind === 'bore' || kind === 'outside'
      return `M${at(polar(middle, radius + 30, angle))}L${at(polar(middle, whole ? -radius - 30 : 0, angle))}`
    })
    .join('')
}

/** An arc with its arrowhead between the first two directions: the way in which degrees count. */
export function countArrow({stations, way}: StationView, middle: Point, radius: number): string {
  const next = Math.min(...stations.flatMap(({direction}) => (direction ? [direction] : [])))
  if (!Number.isFinite(next)) return ''
  const far = Math.min(next, 90)
  const [from, to] = [far * 0.24, far * 0.76].map((degrees) => (way * degrees * Math.PI) / 180)
  const reach = radius + 40
  const end = polar(middle, reach, to ?? 0)
  const looks = way === 1 ? far * 0.76 : 180 - far * 0.76
  return `${path('line', `M${at(polar(middle, reach, from ?? 0))}A${rounded(reach)} ${rounded(reach)} 0 0 ${way === 1 ? 1 : 0} ${at(end)}`)}${path('solid', arrowhead(end, looks))}`
}

/** A solid triangle at the zero mark: outside, or inside of the outline where an instrument reaches in from outside. */
export function zeroMark({kind, stations}: StationView, [x, y]: Point, radius: number, r: number): string {
  if (!stations.some(({direction}) => direction === 0)) return ''
  const tip = kind === 'bore' || kind === 'outside' || kind === 'depth' ? y - radius - 10 : y - r + 12
  return path('solid', arrowhead([x, tip], tip < y - r ? 90 : -90, 30))
}

/** Dimension of a diameter beside the view, where no station has its name: a leader through the middle with the text on its shelf. */
export function dimensionAside(
  {stations}: StationView,
  {r, text}: {readonly r: number; readonly text: string},
  scale: number,
  middle: Point,
  rim: number,
): string {
  const directions = new Set(stations.map(({direction = 0}) => direction))
  const angle = Math.PI + Math.PI / Math.max(4, directions.size)
  const tip = polar(middle, r * scale, angle)
  const end = polar(middle, rim + 34, angle)
  const wide = textWidth(text, letter) + 8
  const d = `M${at(polar(middle, -r * scale, angle))}L${at(end)}h${rounded(-wide)}`
  const turn = (angle * 180) / Math.PI - 90
  const heads = arrowhead(tip, turn) + arrowhead(polar(middle, -r * scale, angle), turn + 180)
  return `${path('hair', d)}${path('solid', heads)}${centred(text, end[0] - wide / 2, end[1] - 10)}`
}

/** Dimension of a diameter below the view: extension lines, a line with arrowheads, the text above it. */
export function dimensionBelow(
  {r, text}: {readonly r: number; readonly text: string},
  scale: number,
  [x, y]: Point,
  line: number,
): string {
  const [from, to] = [x - r * scale, x + r * scale]
  const d = `M${rounded(from)} ${rounded(y)}V${rounded(line + 14)}M${rounded(to)} ${rounded(y)}V${rounded(line + 14)}M${rounded(from)} ${rounded(line)}H${rounded(to)}`
  const heads = arrowhead([from, line], 180) + arrowhead([to, line], 0)
  const room = to - from - 12
  const wide = textWidth(text, letter)
  // A text that is wider than its dimension stands beside it, on a line that goes on.
  const beside = wide > room
  const shelf = beside ? `H${rounded(to + 24 + wide)}` : ''
  const middle = beside ? to + 18 + wide / 2 : x
  return `${path('hair', d + shelf)}${path('solid', heads)}${centred(text, middle, line - 12)}`
}
