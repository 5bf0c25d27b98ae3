import {lineOf} from '../section/paint.ts'
import type {Point} from '../section/shape.ts'
import {escaped, rounded, textLines, textWidth} from '../svg-text.ts'

/** Size of the letters and distance of their lines: a capital is 2.5 mm high where ten units are one millimetre. */
export const letter = 36
export const linePitch = 42
/** Distance of a text from its line. */
const clear = 12
const head = 24

/** A text in a figure, from its left end, about its middle or up to its right end. */
export function word(
  text: string,
  x: number,
  y: number,
  look: 'plain' | 'strong' | 'mid' | 'end' | 'central strong' = 'plain',
): string {
  const how = look === 'plain' ? '' : ` class="${look}"`
  return `<text${how} x="${rounded(x)}" y="${rounded(y)}">${escaped(text)}</text>`
}

/** Thin lines of one figure: dimensions, leaders, breaks. */
export function hair(d: string): string {
  return `<path class="hair" d="${d}"/>`
}

/** Closed lines, each painted over the one before. */
export function areas(all: readonly (readonly Point[])[]): string {
  return `<g class="part">${all.map((one) => `<path d="${lineOf(one)}z"/>`).join('')}</g>`
}

/** Arrow heads of dimension lines, as one solid path. */
export function heads(all: readonly {readonly tip: Point; readonly towards: Point}[]): string {
  const one = ({tip: [x, y], towards: [a, b]}: (typeof all)[number]): string => {
    const long = Math.hypot(a - x, b - y)
    const [ux, uy] = [((a - x) / long) * head, ((b - y) / long) * head]
    const side = 0.18
    return lineOf([
      [x, y],
      [x + ux - uy * side, y + uy + ux * side],
      [x + ux + uy * side, y + uy - ux * side],
    ])
  }
  return `<path class="solid" d="${all.map((arrow) => `${one(arrow)}z`).join('')}"/>`
}

/**
 * A dimension below a drawing: its line at `y`, extension lines from `edge`, the text above the line.
 *
 * Where it is short its arrows stand outside, and where it is shorter than its text, the text stands on the right.
 */
export function dimensionAcross(left: number, right: number, edge: number, y: number, text: string): string {
  const long = textWidth(text, letter)
  const isWide = right - left > long + 2 * head
  const holdsText = right - left > long + 12
  const [from, to] = isWide
    ? [left, right]
    : [left - 2.5 * head, right + (holdsText ? 2.5 * head : head + long)]
  const way = isWide ? 1 : -1
  return [
    hair(
      `M${rounded(left)} ${rounded(edge)}V${rounded(y + 8)}M${rounded(right)} ${rounded(edge)}V${rounded(y + 8)}M${rounded(from)} ${rounded(y)}H${rounded(to)}`,
    ),
    heads([
      {tip: [left, y], towards: [left + way, y]},
      {tip: [right, y], towards: [right - way, y]},
    ]),
    holdsText ? word(text, (left + right) / 2, y - clear, 'mid') : word(text, right + head, y - clear),
  ].join('')
}

/** A dimension left of a drawing, read from the right: its line at `x`, extension lines from `edge`. */
export function dimensionUpright(top: number, low: number, edge: number, x: number, text: string): string {
  const middle = (top + low) / 2
  return [
    hair(
      `M${rounded(edge)} ${rounded(top)}H${rounded(x - 8)}M${rounded(edge)} ${rounded(low)}H${rounded(x - 8)}M${rounded(x)} ${rounded(top)}V${rounded(low)}`,
    ),
    heads([
      {tip: [x, top], towards: [x, top + 1]},
      {tip: [x, low], towards: [x, low - 1]},
    ]),
    `<text class="mid" transform="translate(${rounded(x - clear)} ${rounded(middle)}) rotate(-90)">${escaped(text)}</text>`,
  ].join('')
}

/** Words beside a drawing, with a leader to what they tell of. */
export interface Note {
  /** In large letters, first. */
  readonly strong: readonly string[]
  readonly plain: readonly string[]
  /** The line on which the leader ends, from above down: level with the words where it can be. */
  readonly along?: readonly [Point, Point]
  /** The leader ends in a dot inside of an area. */
  readonly isInside?: true
}

/** Notes in a column from above down, each as near to the height of what it tells of as the ones above allow. */
export function notesColumn(
  notes: readonly Note[],
  column: {readonly x: number; readonly width: number; readonly top: number; readonly gap: number},
): {readonly svg: string; readonly bottom: number} {
  const {x, width, gap} = column
  const svg: string[] = []
  let free = column.top
  for (const {strong, plain, along, isInside} of notes) {
    const bold = strong.flatMap((text) => textLines(text, letter, width, true))
    const thin = plain.flatMap((text) => textLines(text, letter, width))
    const first = Math.max(free + letter * 0.8, along ? (along[0][1] + along[1][1]) / 2 + 12 : 0)
    if (along) svg.push(leader(along, first - 12, x, isInside === true))
    svg.push(
      ...bold.map((text, index) => word(text, x, first + index * linePitch, 'strong')),
      ...thin.map((text, index) => word(text, x, first + (bold.length + index) * linePitch)),
    )
    free = first + (bold.length + thin.length - 1) * linePitch + gap
  }
  return {svg: svg.join(''), bottom: free - gap}
}

function leader(
  [above, below]: readonly [Point, Point],
  level: number,
  x: number,
  isInside: boolean,
): string {
  const high = below[1] - above[1]
  const share = high === 0 ? 0 : Math.min(1, Math.max(0, (level - above[1]) / high))
  const end: Point = [above[0] + (below[0] - above[0]) * share, above[1] + high * share]
  const bend = Math.abs(level - end[1]) < 0.1 ? '' : `L${rounded(x - 60)} ${rounded(level)}`
  const dot = isInside ? `<circle class="solid" cx="${rounded(end[0])}" cy="${rounded(end[1])}" r="6"/>` : ''
  return `${hair(`M${rounded(end[0])} ${rounded(end[1])}${bend}H${rounded(x - 14)}`)}${dot}`
}

/** Hook with its ring: the ring hangs below the hook, and its lowest inside is where the legs meet. */
export function hook(x: number, top: number): {readonly svg: string; readonly apex: Point} {
  const shank = `M${rounded(x)} ${rounded(top)}v26`
  const bow = `${rounded(x)} ${rounded(top + 26)}`
  return {
    svg: `<path class="bold" d="${shank}M${bow}c30 6 34 52 0 52c-20 0 -30 -14 -24 -28"/><ellipse class="line" cx="${rounded(x)}" cy="${rounded(top + 96)}" rx="13" ry="24"/>`,
    apex: [x, top + 116],
  }
}
