import {rounded} from '../svg-text.ts'
import {distance} from './balloons.ts'
import type {CrossSection} from './cross-section.ts'
import {lineOf, placed} from './paint.ts'
import type {SectionPart} from './section-geometry.ts'
import {mirrored, type Outline, type Point} from './shape.ts'

/**
 * Marks parts of a section: a drawing of the same view box, without a ground, that is laid over that of the section.
 *
 * Each part that is touched gets a level hatch, which no cut part has, and a heavy outline; its balloon gets a heavy ring
 * and a heavy leader. Widths of lines are millimetres of a print of 90 mm.
 */
export function sectionOverlay(
  {outlines, balloons, frame}: Pick<CrossSection, 'outlines' | 'balloons' | 'frame'>,
  touched: readonly SectionPart[],
): string {
  const marked = new Set<string>(touched)
  const one = (millimetres: number): string => rounded(frame.line * millimetres)
  const areas = outlines.filter(
    ({part, drawn, isOpen}) => marked.has(part) && drawn !== 'hidden' && isOpen !== true,
  )
  const pointed = balloons.filter(({part}) => marked.has(part))
  const leaders = pointed
    .map(({at, anchor}) => {
      const long = Math.hypot(anchor[0] - at[0], anchor[1] - at[1])
      const share = (frame.text * ringRadius) / long
      const edge: Point = [at[0] + (anchor[0] - at[0]) * share, at[1] + (anchor[1] - at[1]) * share]
      return lineOf([edge, anchor].map((point) => whole(placed(point, frame))))
    })
    .join('')
  const rings = pointed
    .map(({at}) => {
      const [x, y] = whole(placed(at, frame))
      return `<circle cx="${x}" cy="${y}" r="${Math.round(frame.text * ringRadius)}"/>`
    })
    .join('')
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${frame.width} ${frame.height}">`,
    `<style>path,circle{fill:none;stroke:#000;stroke-width:${one(0.4)};stroke-linejoin:round}circle{stroke-width:${one(0.7)}}</style>`,
    areas.length === 0 ? '' : hatched(areas, frame),
    leaders === '' ? '' : `<path d="${leaders}"/>`,
    rings,
    '</svg>',
  ].join('')
}

/**
 * Areas in a heavy outline, filled by the dashes of one upright stroke as wide as the drawing: a pattern prints as a picture
 * of dots. An area that is the mirror image of another one is drawn by it.
 */
function hatched(areas: readonly Outline[], frame: CrossSection['frame']): string {
  const {left, width, height, line} = frame
  const pairs = areas.filter((one, index) => areas.slice(index + 1).some((two) => areMirrored(one, two)))
  const images = areas.filter((one, index) => areas.slice(0, index).some((two) => areMirrored(one, two)))
  const others = areas.filter((one) => !pairs.includes(one) && !images.includes(one))
  const path = (id: string, some: readonly Outline[]): string =>
    `<path id="${id}" d="${some.map((one) => areaPath(one, frame)).join('')}"/>`
  const image = `<use href="#m" transform="matrix(-1 0 0 1 ${rounded(-2 * left)} 0)"/>`
  const dashes = [0.22, 0.5].map((millimetres) => rounded(line * millimetres)).join(' ')
  return [
    path('a', others),
    pairs.length === 0 ? '' : `${path('m', pairs)}${image}`,
    `<clipPath id="c"><use href="#a"/>${pairs.length === 0 ? '' : `<use href="#m"/>${image}`}</clipPath>`,
    `<path clip-path="url(#c)" style="stroke-width:${width};stroke-dasharray:${dashes}" d="M${Math.round(width / 2)} 0V${height}"/>`,
  ].join('')
}

function areMirrored(one: Outline, two: Outline): boolean {
  const image = mirrored(one.points)
  return (
    image.length === two.points.length &&
    image.every(([r, z], index) => {
      const [otherR, otherZ] = two.points[index] ?? [0, 0]
      return Math.abs(r - otherR) < 1e-6 && Math.abs(z - otherZ) < 1e-6
    })
  )
}

function areaPath({points}: Outline, frame: CrossSection['frame']): string {
  return `${lineOf(withoutBends(points.map((point) => whole(placed(point, frame)))))}z`
}

/** Radius of the heavy ring by the size of the text: it covers the ring of the balloon, and stays clear of the number and of the next balloon. */
const ringRadius = 0.82

/** Parts whose balloons are among these, in the order of the section. */
export function partsOfBalloons(
  {balloons}: Pick<CrossSection, 'balloons'>,
  numbers: ReadonlySet<string>,
): readonly SectionPart[] {
  return balloons.flatMap(({part, number}) => (numbers.has(number) ? [part] : []))
}

/** A line without the points that lie less than a tenth of a millimetre of the print beside it. */
function withoutBends(points: readonly Point[]): readonly Point[] {
  const kept: Point[] = []
  let skipped: Point[] = []
  for (const [index, point] of points.entries()) {
    const last = kept.at(-1)
    const next = points[index + 1]
    const between = [...skipped, point]
    if (last && next && between.every((one) => distance(one, last, next) < 1)) skipped = between
    else {
      kept.push(point)
      skipped = []
    }
  }
  return kept
}

function whole([x, y]: Point): Point {
  return [Math.round(x), Math.round(y)]
}
