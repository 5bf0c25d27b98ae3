import {rounded} from '../svg-text.ts'
import type {CrossSection} from './cross-section.ts'
import {lineOf, placed} from './paint.ts'
import type {SectionPart} from './section-geometry.ts'

/**
 * Marks parts of a section: a drawing of the same view box that is laid over the shared file.
 *
 * Each part that is touched gets a dense hatch and a heavy outline, and its balloon a second ring; the classes take their
 * colours from the page, so that print marks them in black.
 *
 * @param name
 *   Prefix of element ids, so that two figures may stand on one page.
 */
export function sectionOverlay(
  {outlines, balloons, frame}: Pick<CrossSection, 'outlines' | 'balloons' | 'frame'>,
  touched: readonly SectionPart[],
  name: string,
): string {
  const marked = new Set<string>(touched)
  const areas = outlines
    .filter((one) => marked.has(one.part) && one.drawn !== 'hidden' && one.isOpen !== true)
    .map(({points}) => `${lineOf(points.map((point) => whole(placed(point, frame))))}z`)
    .join('')
  const spacing = rounded(frame.line * 0.55)
  const rings = balloons
    .filter(({part}) => marked.has(part))
    .map(({at}) => {
      const [x, y] = placed(at, frame)
      return `<circle class="figure-mark-ring" cx="${Math.round(x)}" cy="${Math.round(y)}" r="${Math.round(frame.text * 0.98)}"/>`
    })
    .join('')
  return [
    `<svg class="figure-marks" viewBox="0 0 ${frame.width} ${frame.height}" aria-hidden="true">`,
    `<defs><pattern id="${name}" width="${spacing}" height="${spacing}" patternUnits="userSpaceOnUse"><path class="figure-mark-hatch" d="M0 0H${spacing}"/></pattern></defs>`,
    areas === '' ? '' : `<path class="figure-mark" style="fill:url(#${name})" d="${areas}"/>`,
    rings,
    '</svg>',
  ].join('')
}

/** Parts whose balloons are among these, in the order of the section. */
export function partsOfBalloons(
  {balloons}: Pick<CrossSection, 'balloons'>,
  numbers: ReadonlySet<string>,
): readonly SectionPart[] {
  return balloons.flatMap(({part, number}) => (numbers.has(number) ? [part] : []))
}

function whole([x, y]: readonly [number, number]): readonly [number, number] {
  return [Math.round(x), Math.round(y)]
}
