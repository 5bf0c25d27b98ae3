import {rounded} from '../svg-text.ts'
import type {CrossSection} from './cross-section.ts'
import {lineOf, placed} from './paint.ts'
import type {SectionPart} from './section-geometry.ts'
import type {Point} from './shape.ts'

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
  const areas = outlines
    .filter(({part, drawn, isOpen}) => marked.has(part) && drawn !== 'hidden' && isOpen !== true)
    .map(({points}) => `${lineOf(points.map((point) => whole(placed(point, frame))))}z`)
    .join('')
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
    areas === '' ? '' : hatched(areas, frame),
    leaders === '' ? '' : `<path d="${leaders}"/>`,
    rings,
    '</svg>',
  ].join('')
}

/** Areas in a heavy outline, filled by the dashes of one upright stroke as wide as the drawing: a pattern prints as a picture of dots. */
function hatched(areas: string, {width, height, line}: CrossSection['frame']): string {
  const dashes = [0.22, 0.5].map((millimetres) => rounded(line * millimetres)).join(' ')
  return [
    `<path id="a" d="${areas}"/><clipPath id="c"><use href="#a"/></clipPath>`,
    `<path clip-path="url(#c)" style="stroke-width:${width};stroke-dasharray:${dashes}" d="M${Math.round(width / 2)} 0V${height}"/>`,
  ].join('')
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

function whole([x, y]: Point): Point {
  return [Math.round(x), Math.round(y)]
}
