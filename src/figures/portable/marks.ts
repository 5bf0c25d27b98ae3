import type {Point} from '../section/shape.ts'
import {escaped, rounded, textLines, textWidth} from '../svg-text.ts'

const letter = 36
const radius = 42

/** Words beside something, with a leader from one of their ends where it lies apart. */
export interface Callout {
  readonly text: string
  /** Left end of its base line. */
  readonly at: Point
  readonly to?: Point
  readonly from?: 'left' | 'right' | 'below' | 'above'
  readonly isStrong?: true
  /** Width in which the words are broken into lines. */
  readonly room?: number
}

/** Words with their leaders, which end in dots. */
export function calloutInks(callouts: readonly Callout[]): readonly string[] {
  const leaders = callouts.flatMap((one) => (one.to ? [leaderOf(one, one.to)] : []))
  const dots = callouts.flatMap(({to}) => (to ? [dot(to)] : []))
  return [
    `<path class="hair" d="${leaders.join('')}"/><path class="solid" d="${dots.join('')}"/>`,
    ...callouts.flatMap(({text, at: [x, y], isStrong, room = Infinity}) =>
      textLines(text, letter, room, isStrong).map(
        (one, index) =>
          `<text${isStrong ? ' class="strong"' : ''} x="${rounded(x)}" y="${rounded(y + index * 42)}">${escaped(one)}</text>`,
      ),
    ),
  ]
}

function leaderOf({text, at: [x, y], from}: Callout, to: Point): string {
  const wide = textWidth(text, letter)
  const start: Point =
    from === 'right'
      ? [x + wide + 8, y - 12]
      : from === 'below'
        ? [x + wide / 2, y + 12]
        : from === 'above'
          ? [x + wide / 2, y - 36]
          : [x - 8, y - 12]
  return `M${start.map(rounded).join(' ')}L${to.map(rounded).join(' ')}`
}

function dot([x, y]: Point): string {
  return `M${rounded(x - 5)} ${rounded(y)}a5 5 0 1 1 10 0a5 5 0 1 1 -10 0z`
}

/** Circles with their numbers, and leaders that end in a dot. */
export function balloonInks(
  balloons: readonly {readonly at: Point; readonly anchor: Point; readonly number: string}[],
): readonly string[] {
  const leaders = balloons.map(
    ({at, anchor}) => `M${at.map(rounded).join(' ')}L${anchor.map(rounded).join(' ')}`,
  )
  const circles = balloons.map(
    ({at: [x, y]}) =>
      `M${rounded(x - radius)} ${rounded(y)}a${radius} ${radius} 0 1 1 ${2 * radius} 0a${radius} ${radius} 0 1 1 ${-2 * radius} 0z`,
  )
  return [
    `<path class="hair" d="${leaders.join('')}"/><path class="solid" d="${balloons.map(({anchor}) => dot(anchor)).join('')}"/>`,
    `<path class="part" d="${circles.join('')}"/>`,
    ...balloons.map(
      ({at: [x, y], number}) =>
        `<text class="strong mid" x="${rounded(x)}" y="${rounded(y + 13)}">${escaped(number)}</text>`,
    ),
  ]
}

/** A length with its extension lines and its text above the line. */
export interface Dimension {
  readonly lines: string
  readonly heads: string
  readonly text: string
}

/** A dimension upwards, its line at one place across, or across, its line at one height. */
export function dimensionOf(input: {
  readonly from: Point
  readonly to: Point
  readonly line: number
  readonly way: 'up' | 'across'
  readonly text: string
  /** Where along an upward line its text stands, from the lower end. */
  readonly along?: number
}): Dimension {
  const {from, to, line, way, text, along = 0.5} = input
  if (way === 'up') {
    const [low, high] = [from[1], to[1]]
    const beyond = (x: number): number => line + Math.sign(line - x) * 10
    const at = `translate(${rounded(line - 12)} ${rounded(low + (high - low) * along)}) rotate(-90)`
    return {
      lines: `${edge(from[0], beyond(from[0]), low)}${edge(to[0], beyond(to[0]), high)}M${rounded(line)} ${rounded(low)}V${rounded(high)}`,
      heads: `${arrow([line, low], [0, -1])}${arrow([line, high], [0, 1])}`,
      text: `<text class="mid" transform="${at}">${escaped(text)}</text>`,
    }
  }
  const upright = (x: number): string => `M${rounded(x)} ${rounded(from[1] + 8)}V${rounded(line + 10)}`
  return {
    lines: `${upright(from[0])}${upright(to[0])}M${rounded(from[0])} ${rounded(line)}H${rounded(to[0])}`,
    heads: `${arrow([from[0], line], [1, 0])}${arrow([to[0], line], [-1, 0])}`,
    text: `<text class="mid" x="${rounded((from[0] + to[0]) / 2)}" y="${rounded(line - 12)}">${escaped(text)}</text>`,
  }
}

/** Dimensions as SVG. */
export function dimensionInks(dimensions: readonly Dimension[]): readonly string[] {
  return [
    `<path class="hair" d="${dimensions.map(({lines}) => lines).join('')}"/>`,
    `<path class="solid" d="${dimensions.map(({heads}) => heads).join('')}"/>`,
    ...dimensions.map(({text}) => text),
  ]
}

function edge(from: number, to: number, y: number): string {
  return `M${rounded(from + Math.sign(to - from) * 8)} ${rounded(y)}H${rounded(to)}`
}

/** Arrow head with its tip at a place; the way leads from the tip into the dimension line. */
function arrow([x, y]: Point, [dx, dy]: Point): string {
  const [long, half] = [26, 5]
  const [baseX, baseY] = [x + dx * long, y + dy * long]
  return `M${rounded(x)} ${rounded(y)}L${rounded(baseX - dy * half)} ${rounded(baseY + dx * half)}L${rounded(baseX + dy * half)} ${rounded(baseY - dx * half)}z`
}
