import {escaped, rounded} from '../svg-text.ts'
import {circlePath, type PipeWall} from './pipe-walls.ts'
import type {PipeStack, StackWords} from './stack-data.ts'
import type {StackStations} from './stack-stations.ts'

/** Where the longitudinal section lies in the figure. */
export interface StackFrame {
  /** Underside of the top plate and foot of the stack. */
  readonly left: number
  readonly right: number
  readonly axis: number
  /** Units for one metre along the stack, and for one millimetre across it. */
  readonly along: number
  readonly across: number
}

/** Place along the stack in the drawing, in whole units. */
export function placeOf({left, along}: Pick<StackFrame, 'left' | 'along'>, at: number): number {
  return Math.round(left + at * along)
}

/** How far flanges and supports stand out from the outer pipe. */
export const standOut = 34
const flange = 9
/** Radius of the circle of a section number, and half of what it or a letter takes up of the oil. */
const numberRadius = 22
const numberRoom = 24

/** Longitudinal section of a stack: top plate and deck, pipes with their joints, spaces, supports, and the head of the motor. */
export function stackLength(input: {
  readonly stack: PipeStack
  readonly stations: StackStations
  readonly walls: readonly PipeWall[]
  readonly words: StackWords
  readonly frame: StackFrame
  /** Place of the letters of the three spaces. */
  readonly letters: number
}): string {
  const {stack, stations, walls, words, frame, letters} = input
  const {left, right, axis, along, across} = frame
  const place = (at: number): number => placeOf(frame, at)
  const outside = Math.round((walls[0]?.outside ?? 0) * across)
  const numbers = stations.sections.flatMap(({number, from, to}) =>
    hasNumber((to - from) * along) ? [{number, x: place(numberAt(from, to, stations.breaks))}] : [],
  )
  const solid: string[] = []
  const dashed: string[] = []
  for (const wall of walls)
    for (const side of [-1, 1]) {
      const y = axis + side * wall.outside * across
      const inner = axis + side * wall.bore * across
      const box = `M${rounded(left)} ${rounded(y)}H${rounded(right)}V${rounded(inner)}H${rounded(left)}z`
      ;(wall.known ? solid : dashed).push(box)
    }
  for (const x of [...stations.joints.map(({at}) => place(at)), right])
    for (const side of [-1, 1]) solid.push(flanges(x, axis + side * outside, side, x === left))
  return [
    topPlate(frame, outside),
    motorHead(frame, outside, words.motor),
    oilPatterns(walls, frame, letters),
    `<path class="thin" d="M${left - 40} ${rounded(axis)}H${rounded(letters - numberRoom)}M${rounded(letters + numberRoom)} ${rounded(axis)}H${right + 90}"/>`,
    ...(dashed.length > 0 ? [`<path class="hair" stroke-dasharray="16 8" d="${dashed.join('')}"/>`] : []),
    `<path class="solid" d="${solid.join('')}"/>`,
    ringsDrawn(stack, walls, stations, frame),
    ...stations.breaks.map((at) => breakLines(place(at), axis, outside)),
    ...numbers.map(
      ({number, x}) =>
        `<circle class="part" cx="${rounded(x)}" cy="${rounded(axis)}" r="${numberRadius}"/><text class="mid" x="${rounded(x)}" y="${rounded(axis + 13)}">${number}</text>`,
    ),
    spaceLetters(walls, frame, letters, words),
    supportsDrawn(stations, frame, outside),
  ].join('')
}

/** In the middle of its section, beside the break where there is one. */
function numberAt(from: number, to: number, breaks: readonly number[]): number {
  return from + (to - from) * (breaks.some((one) => one > from && one < to) ? 0.25 : 0.5)
}

/** A section that is too narrow in the drawing has its number beside its length. */
export function hasNumber(wide: number): boolean {
  return wide >= 2 * numberRoom + 26
}

/** Both flanges of a joint, a narrow gap between them; at the top plate the lower one alone. */
function flanges(x: number, edge: number, side: number, first: boolean): string {
  const one = `h${flange}v${side * standOut}h-${flange}z`
  return first
    ? `M${rounded(x + 2)} ${rounded(edge)}${one}`
    : `M${rounded(x - 2 - flange)} ${rounded(edge)}${one}m${flange + 4} 0${one}`
}

/** Top plate and deck: cut, with their hatch. */
function topPlate({left, axis}: StackFrame, outside: number): string {
  const half = Math.round(outside) + standOut + 4
  const top = Math.round(axis) - half
  const hatch: string[] = []
  for (let y = 30; y < 2 * half; y += 24) hatch.push(`M${left - 30} ${top + y}l30-30`)
  const deck = [top - 34, top + 2 * half - 12]
  for (const y of deck) for (const step of [18, 32, 46]) hatch.push(`M${left} ${y + step}l14-14`)
  return [
    `<path class="hair" d="${hatch.join('')}"/>`,
    `<path class="line" d="M${left - 30} ${top}h30v${2 * half}h-30z${deck.map((y) => `M${left} ${y}h14v46h-14z`).join('')}"/>`,
  ].join('')
}

/** Head of the motor behind the last joint, broken off. */
function motorHead({right, axis}: StackFrame, outside: number, motor: string): string {
  const half = outside * 1.16
  const end = right + 74
  const word = `<text class="mid" x="${right + 52}" y="${rounded(axis - half - 18)}">${escaped(motor)}</text>`
  return `${word}<path class="line" d="M${right + 11} ${rounded(axis - half)}H${end}M${right + 11} ${rounded(axis + half)}H${end}"/><path class="hair" d="M${end} ${rounded(axis - half)}q22 ${rounded(half / 2)} 0 ${rounded(half)}t0 ${rounded(half)}"/>`
}

/** Oil by its pattern: dashes where it goes down to the motor, dots where it comes back. */
function oilPatterns(walls: readonly PipeWall[], frame: StackFrame, letters: number): string {
  const {left, right, across, axis} = frame
  const [, returning, pressure] = walls
  if (!returning || !pressure) return ''
  const bore = pressure.bore * across
  const inner = pressure.outside * across
  const wide = returning.bore * across - inner
  const lines = (places: readonly number[]): string =>
    places
      .map(
        (y) =>
          `M${left + 16} ${rounded(axis + y)}H${rounded(letters - numberRoom)}m${2 * numberRoom} 0H${right - 12}`,
      )
      .join('')
  return [
    `<path class="hair" stroke-dasharray="22 12" d="${lines([-0.66, -0.3, 0.3, 0.66].map((share) => share * bore))}"/>`,
    `<path class="hair" stroke-dasharray="4 14" d="${lines([-0.72, -0.28, 0.28, 0.72].map((share) => Math.sign(share) * inner + share * wide))}"/>`,
  ].join('')
}

/** O-rings of each joint, one where each pipe meets the next. */
function ringsDrawn(
  {rings}: PipeStack,
  walls: readonly PipeWall[],
  {joints}: StackStations,
  frame: StackFrame,
): string {
  const circles = walls.flatMap(({pipe, outside, bore}) =>
    !rings.includes(pipe)
      ? []
      : joints.flatMap(({at}) =>
          [-1, 1].map((side) =>
            circlePath(placeOf(frame, at), frame.axis + (side * (outside + bore) * frame.across) / 2, 7),
          ),
        ),
  )
  return circles.length === 0 ? '' : `<path class="part" d="${circles.join('')}"/>`
}

/** Two waved lines with nothing between them. */
function breakLines(x: number, axis: number, outside: number): string {
  const half = outside + 22
  const wave = (from: number): string =>
    `M${rounded(from)} ${rounded(axis - half)}q20 ${rounded(half / 2)} 0 ${rounded(half)}t0 ${rounded(half)}`
  return `<path class="part" d="${wave(x - 12)}h24q-20 ${rounded(-half / 2)} 0 ${rounded(-half)}t0 ${rounded(-half)}z"/>`
}

/** Letters of the three spaces: in the oil where it is drawn, beside the stack with a leader for the narrow cofferdam. */
function spaceLetters(
  walls: readonly PipeWall[],
  {axis, across}: StackFrame,
  x: number,
  {spaces}: StackWords,
): string {
  const [outer, returning, pressure] = walls
  if (!outer || !returning || !pressure) return ''
  const annulus = axis - ((returning.bore + pressure.outside) * across) / 2
  const gap = axis - ((outer.bore + returning.outside) * across) / 2
  const top = axis - outer.outside * across
  const word = (text: string, y: number): string =>
    `<text class="mid strong" x="${rounded(x)}" y="${rounded(y)}">${text}</text>`
  return [
    word(spaces.pressure.letter, axis + 13),
    word(spaces.return.letter, annulus + 13),
    word(spaces.cofferdam.letter, top - 18),
    `<path class="hair" d="M${rounded(x)} ${rounded(gap)}V${rounded(top - 12)}"/>`,
    `<circle class="solid" cx="${rounded(x)}" cy="${rounded(gap)}" r="4"/>`,
  ].join('')
}

/** Supports at both sides of the outer pipe; one whose place nobody knows is dashed. */
function supportsDrawn({supports}: StackStations, frame: StackFrame, outside: number): string {
  const {axis} = frame
  const shapes = (known: boolean): string =>
    supports
      .filter((one) => one.known === known)
      .flatMap(({at}) =>
        [-1, 1].map((side) => {
          const x = placeOf(frame, at)
          const y = axis + side * (outside + 5)
          return `M${rounded(x - 9)} ${rounded(y)}h18v${side * 14}h-18z`
        }),
      )
      .join('')
  const ground = supports
    .flatMap(({at}) =>
      [-1, 1].map((side) => {
        const x = placeOf(frame, at)
        const y = axis + side * (outside + 21)
        return `M${rounded(x - 13)} ${rounded(y)}h26m-26 0l8 ${side * 8}m0 ${side * -8}l8 ${side * 8}m0 ${side * -8}l8 ${side * 8}`
      }),
    )
    .join('')
  if (supports.length === 0) return ''
  return [
    `<path class="solid" d="${shapes(true)}"/>`,
    `<path class="hair" stroke-dasharray="8 5" d="${shapes(false)}"/>`,
    `<path class="hair" d="${ground}"/>`,
  ]
    .filter((one) => !one.includes('d=""'))
    .join('')
}

/** The widest section whose length is known has the letters of the spaces, on the side that no support stands at. */
export function placeOfLetters(stations: StackStations, frame: StackFrame): number {
  const sections = stations.sections.filter(
    ({from, to}) => !stations.breaks.some((one) => one > from && one < to),
  )
  const {from, to} = sections.reduce(
    (best, one) => (one.to - one.from > best.to - best.from + 1e-6 ? one : best),
    sections[0] ?? {from: 0, to: stations.total / 3},
  )
  const aside = ((placeOf(frame, to) - placeOf(frame, from)) / 2 - numberRadius + 2 + flange) / 2 + 4
  const free = (x: number): number =>
    Math.min(50, ...stations.supports.map(({at}) => Math.abs(placeOf(frame, at) - x)))
  const [first, second] = [placeOf(frame, from) + aside, placeOf(frame, to) - aside]
  return free(first) >= free(second) ? first : second
}
