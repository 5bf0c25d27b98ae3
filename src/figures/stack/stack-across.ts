import {rounded, textLines} from '../svg-text.ts'
import {circlePath, type PipeWall} from './pipe-walls.ts'
import type {PipeStack, StackWords} from './stack-data.ts'
import {type Drawn, margin, text} from './stack-dimensions.ts'
import {letter, row} from './stack-labels.ts'

const radius = 136
const middle = 190
const column = 400
/** Heights of the six rows from the middle: pipes above, spaces below, so that no leader crosses another. */
const heights = [-110, -66, -22, 22, 66, 110]

/** Section across the stack with the diameters of its pipes, its spaces, and what holds for every joint. */
export function stackAcross(
  stack: PipeStack,
  walls: readonly PipeWall[],
  words: StackWords,
  notes: readonly string[],
  {top, width}: {readonly top: number; readonly width: number},
): Drawn {
  const [outer, returning, pressure] = walls
  if (!outer || !returning || !pressure) return {svg: '', bottom: top}
  const scale = radius / outer.outside
  const axis = top + 12 + radius
  const known = walls.filter((one) => one.known)
  const rings = (list: readonly PipeWall[]): string =>
    list
      .map(
        ({outside, bore}) =>
          circlePath(middle, axis, outside * scale) + circlePath(middle, axis, bore * scale),
      )
      .join('')
  const dashed = walls.filter((one) => !one.known)
  const rows = [
    ...walls.map(({pipe, outside, bore}) => ({
      text: words.pipe(
        words.pipes[pipe],
        stack.diameters[`${pipe}-outside`].text,
        stack.diameters[`${pipe}-bore`].text,
      ),
      at: ((outside + bore) / 2) * scale,
    })),
    {text: spaceText(words, 'pressure'), at: pressure.bore * scale * 0.5},
    {text: spaceText(words, 'return'), at: ((returning.bore + pressure.outside) / 2) * scale},
    {text: spaceText(words, 'cofferdam'), at: ((outer.bore + returning.outside) / 2) * scale},
  ]
  const ends = rows.map(({at}, index) => {
    const height = heights[index] ?? 0
    const y = Math.sign(height) * Math.min(Math.abs(height), at * 0.85)
    return {x: middle + Math.sqrt(at ** 2 - y ** 2), y: axis + y, height: axis + height}
  })
  const told = notes.flatMap((note) => textLines(note, letter, width - column))
  const first = axis + 110 + 12 + row
  return {
    svg: [
      text(`${words.across}–${words.across}`, margin, top + 52, 'strong'),
      `<path class="thin" d="M${middle - radius - 20} ${rounded(axis)}h${2 * radius + 40}M${middle} ${rounded(axis - radius - 10)}v${2 * radius + 20}"/>`,
      oil(walls, axis, scale),
      ...(known.length > 0 ? [`<path class="solid" fill-rule="evenodd" d="${rings(known)}"/>`] : []),
      ...(dashed.length > 0 ? [`<path class="hair" stroke-dasharray="16 8" d="${rings(dashed)}"/>`] : []),
      `<path class="hair" d="${ends.map(({x, y, height}) => `M${rounded(x)} ${rounded(y)}L${column - 60} ${rounded(height)}H${column - 12}`).join('')}"/>`,
      `<path class="part" d="${ends.map(({x, y}) => circlePath(x, y, 5)).join('')}"/>`,
      ...rows.map((one, index) => text(one.text, column, axis + (heights[index] ?? 0) + 12)),
      ...told.map((one, index) => text(one, column, first + index * row)),
    ].join(''),
    bottom: Math.max(axis + radius + 16, first + (told.length - 1) * row + 16),
  }
}

function spaceText({spaces}: StackWords, space: keyof StackWords['spaces']): string {
  const {letter: sign, title} = spaces[space]
  return `${sign} ${title}`
}

/** The patterns of the oil, as along the stack. */
function oil(walls: readonly PipeWall[], axis: number, scale: number): string {
  const [, returning, pressure] = walls
  if (!returning || !pressure) return ''
  const bore = pressure.bore * scale
  const inner = pressure.outside * scale
  const wide = returning.bore * scale - inner
  const circles = (radii: readonly number[]): string =>
    radii.map((one) => circlePath(middle, axis, one)).join('')
  return [
    `<path class="hair" stroke-dasharray="22 12" d="${circles([bore * 0.3, bore * 0.7])}"/>`,
    `<path class="hair" stroke-dasharray="4 14" d="${circles([inner + wide * 0.28, inner + wide * 0.72])}"/>`,
  ].join('')
}
