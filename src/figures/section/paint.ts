import {rounded} from '../svg-text.ts'
import type {Levels} from './levels.ts'
import type {SectionGeometry} from './section-geometry.ts'
import {boundsOf, hatchLines, type Outline, type Point} from './shape.ts'

/** View box of a section, and the widths that follow from a print of 90 mm. */
export interface SectionFrame {
  readonly left: number
  readonly right: number
  /** Top of the drawing and height at which its details begin. */
  readonly ceiling: number
  readonly floor: number
  readonly width: number
  readonly height: number
  /** Size of the smallest text and one millimetre of that print. */
  readonly text: number
  readonly line: number
  /** Height of the boxes of the details below the drawing. */
  readonly detail: number
}

/** Width of the print that text and lines are made for. */
const printWidth = 90
/** Height of capital letters of the typeface by its size. */
const capital = 0.716

/** The frame around the drawing, its balloons and its details. */
export function frameOf(g: SectionGeometry, at: Levels): SectionFrame {
  const spigot = g.rings['spigot-ring'].groove / 2 + g.rings['spigot-ring'].section + at.wall
  const drawnLeft = -Math.max(at.casing, at.coverFlange)
  const drawnRight = Math.max(g.spigotOffset + spigot, at.casing)
  // Text is 2.5 mm high where the whole is printed 90 mm wide; the balloons beside the drawing grow with it.
  const drawn = drawnRight - drawnLeft
  const letter = 2.5 / capital / printWidth
  const width = Math.round(drawn / (1 - 2 * letter * 2.6))
  const text = Math.ceil(width * letter)
  const side = (width - drawn) / 2
  const ceiling = at.top + at.wall * 3
  const floor = -at.wall * 2.5
  const detail = Math.round(width * 0.5)
  return {
    left: drawnLeft - side,
    right: drawnRight + side,
    ceiling,
    floor,
    width,
    height: Math.round(ceiling - floor + detail),
    text,
    line: width / printWidth,
    detail,
  }
}

/** A place of the section in the view box, to a tenth. */
export function placed([r, z]: Point, frame: SectionFrame): Point {
  return [Math.round((r - frame.left) * 10) / 10, Math.round((frame.ceiling - z) * 10) / 10]
}

/** Outlines with their hatches, painted one over the other. */
export function paint(outlines: readonly Outline[], frame: SectionFrame): string {
  return outlines.map((one) => painted(one, (point) => placed(point, frame))).join('')
}

/** One outline, by any way of placing its points. */
export function painted(outline: Outline, place: (point: Point) => Point): string {
  const line = `${lineOf(outline.points.map(place))}${outline.isOpen ? '' : 'z'}`
  if (outline.drawn === 'thin') return `<path class="${outline.hatch ? 's' : 'k'}" d="${line}"/>`
  if (outline.drawn === 'blank') return `<path class="o" d="${line}"/>`
  if (outline.drawn === 'hidden') return `<path class="t" d="${line}"/>`
  const hatch = outline.hatch
    ? `<path class="h" d="${hatchLines(outline.points, outline.hatch)
        .map(([from, to]) => strokeOf(place(from), place(to)))
        .join('')}"/>`
    : ''
  if (outline.drawn === 'ground')
    return `${hatch}<path class="w" d="${lineOf(outline.points.slice(0, 2).map(place))}"/>`
  return `<path class="${isSmall(outline.points) ? 'v' : 'w'}" d="${line}"/>${hatch}`
}

/** Path through places of the view box, each told by its distance from the one before. */
export function lineOf(places: readonly Point[]): string {
  const [first = [0, 0] as const, ...rest] = places
  return rest.reduce(
    ({path, last: [x, y]}, next) => {
      const right = rounded(next[0] - x)
      const down = rounded(next[1] - y)
      const step = down === '0' ? `h${right}` : right === '0' ? `v${down}` : `l${joined(right, down)}`
      return {path: `${path}${step}`, last: next}
    },
    {path: `M${joined(rounded(first[0]), rounded(first[1]))}`, last: first},
  ).path
}

/** Line of a hatch: its end lies as far aside as up or down. */
function strokeOf(from: Point, to: Point): string {
  const long = Math.round(to[0] - from[0])
  const x = Math.round(from[0])
  const y = Math.round(from[1])
  return long === 0
    ? ''
    : `M${joined(String(x), String(y))}l${joined(String(long), String(to[1] > from[1] ? long : -long))}`
}

function joined(first: string, second: string): string {
  return second.startsWith('-') ? `${first}${second}` : `${first} ${second}`
}

/** Whether a piece is so narrow that a thick line would fill it. */
function isSmall(points: readonly Point[]): boolean {
  const {left, low, right, high} = boundsOf(points)
  return Math.min(right - left, high - low) < narrow
}

/** Millimetres of the section below which a piece is drawn with a finer line. */
const narrow = 26
