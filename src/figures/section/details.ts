import {rounded} from '../svg-text.ts'
import {detailRegions} from './detail-regions.ts'
import type {Levels} from './levels.ts'
import {lineOf, painted, placed, type SectionFrame} from './paint.ts'
import type {SectionGeometry} from './section-geometry.ts'
import type {SectionWords} from './section-text.ts'
import {type Box, box, type Outline, type Point} from './shape.ts'

/** A part of the drawing that is drawn once more and larger: its letter, its box in the section and on the sheet. */
export interface Detail {
  readonly letter: string
  readonly title: string
  /** What lies above and below the lip, so that its direction tells something. */
  readonly above: string
  readonly below: string
  readonly from: Box
  readonly to: Box
  /** Place of the letter in the drawing. */
  readonly mark: Point
}

/** Both details: the cargo seal, and the lip below the motor with the faces of the oil seal. */
export function detailsOf(
  g: SectionGeometry,
  at: Levels,
  frame: SectionFrame,
  words: SectionWords,
): readonly Detail[] {
  const regions = detailRegions(g, at)
  const margin = frame.text * 0.3
  const wide = (frame.width - 3 * margin) / 2
  const high = frame.detail - frame.text * 3.6
  const low = frame.floor - frame.text * 1.9 - high
  return regions.map((region, index): Detail => {
    const left = frame.left + margin + index * (wide + margin)
    const to = {left, low, right: left + wide, high: low + high}
    // The box of the section takes the shape of its box on the sheet: it grows to the right, or up and down.
    const scale = Math.min(wide / (region.right - region.left), high / (region.high - region.low))
    const middle = (region.low + region.high) / 2
    const from = {
      left: region.left,
      right: region.left + wide / scale,
      low: middle - high / scale / 2,
      high: middle + high / scale / 2,
    }
    const {letter, title, above, below} = words.details[region.name]
    return {letter, title, above, below, from, to, mark: region.mark}
  })
}

/** Draws the details below the section, and the box and letter of each in it. */
export function drawDetails(
  details: readonly Detail[],
  outlines: readonly Outline[],
  frame: SectionFrame,
): string {
  return details
    .map((detail) => {
      const {from, to, mark} = detail
      const scale = (to.right - to.left) / (from.right - from.left)
      const enlarged = ([r, z]: Point): Point => [
        to.left + (r - from.left) * scale,
        to.low + (z - from.low) * scale,
      ]
      const drawn = outlines.flatMap((outline) => {
        const points = clipped(outline.points, from).map(enlarged)
        return points.length < 3 || outline.isOpen
          ? []
          : [painted(asDetail({...outline, points}), (point) => placed(point, frame))]
      })
      const middle = (to.left + to.right) / 2
      return [
        ...drawn,
        `<path class="f" d="${lineOf(box(to.left, to.low, to.right, to.high).map((point) => placed(point, frame)))}z"/>`,
        label(`${detail.letter} · ${detail.above}`, [middle, to.high + frame.text * 0.7], frame),
        label(detail.below, [middle, to.low - frame.text * 0.75], frame),
        `<path class="z" d="${lineOf(box(from.left, from.low, from.right, from.high).map((point) => placed(point, frame)))}z"/>`,
        label(detail.letter, mark, frame),
      ].join('')
    })
    .join('')
}

/** Sections that are thin in the drawing are wide enough for a hatch here. */
function asDetail(outline: Outline): Outline {
  const hatch = outline.hatch && {...outline.hatch, spacing: Math.max(outline.hatch.spacing, 9)}
  return outline.drawn === 'thin' && hatch
    ? {...outline, drawn: 'cut', hatch}
    : {...outline, ...(hatch ? {hatch} : {})}
}

function label(text: string, at: Point, frame: SectionFrame): string {
  const [x, y] = placed(at, frame)
  return `<text x="${rounded(x)}" y="${rounded(y)}" dy=".35em">${text}</text>`
}

/** The piece of an area within a box: cut along one side after the other. */
export function clipped(points: readonly Point[], {left, low, right, high}: Box): readonly Point[] {
  const sides: readonly (readonly [axis: 0 | 1, bound: number, sign: 1 | -1])[] = [
    [0, left, 1],
    [0, right, -1],
    [1, low, 1],
    [1, high, -1],
  ]
  return sides.reduce<readonly Point[]>(
    (area, [axis, bound, sign]) =>
      area.flatMap((to, index): readonly Point[] => {
        const from = area.at(index - 1) ?? to
        const depth = (one: Point): number => sign * (one[axis] - bound)
        const t = depth(from) / (depth(from) - depth(to))
        const crossing: Point = [from[0] + t * (to[0] - from[0]), from[1] + t * (to[1] - from[1])]
        if (depth(to) >= 0) return depth(from) >= 0 ? [to] : [crossing, to]
        return depth(from) >= 0 ? [crossing] : []
      }),
    points,
  )
}
