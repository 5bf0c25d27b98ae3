import type {Point} from '../section/shape.ts'
import {rounded} from '../svg-text.ts'
import {hair, heads, word} from './drawing-parts.ts'

/** Legs as they are drawn. */
export interface DrawnLegs {
  readonly svg: string
  /** The part of a leg on which a leader may end, from above down. */
  readonly along: readonly [Point, Point]
}

/** Below this angle from the vertical the legs meet outside of the drawing: they are broken off above. */
const steepest = 10
/** Height of legs that do not end at the hook by themselves. */
export const freeHeight = 190
export const eyeRadius = 11

/** Whether the legs are drawn up to the hook. */
export function reachesHook(legs: number, degrees: number): boolean {
  return legs === 1 || degrees >= steepest
}

/** Height of the hook above the eyes, where eyes lie `reach` from its line. */
export function legHeight(legs: number, degrees: number, reach: number): number {
  return legs > 1 && degrees >= steepest ? reach / Math.tan(radians(degrees)) : freeHeight
}

/**
 * Legs from the hook to their eyes, one of them in the plane of the drawing, so that it shows its true angle.
 *
 * @param reach
 *   Distance of an eye from the line of the hook.
 */
export function drawnLegs(
  sling: {
    readonly legs: number
    readonly degrees: number
    readonly reach: number
    readonly isBroken: boolean
  },
  apex: Point,
  eyeLevel: number,
): DrawnLegs {
  const {legs, degrees, reach, isBroken} = sling
  const [x, y] = apex
  const eyes = eyePlaces(legs).map((share) => x + share * reach)
  const hooked = reachesHook(legs, degrees)
  const gap = y + (eyeLevel - y) * 0.3
  const lines = eyes.map((eye) => {
    if (!hooked) return leaning(eye, x, eyeLevel, degrees)
    return isBroken
      ? `M${rounded(x)} ${rounded(y)}V${rounded(gap - 9)}M${rounded(x)} ${rounded(gap + 9)}V${rounded(eyeLevel)}`
      : `M${rounded(x)} ${rounded(y)}L${rounded(eye)} ${rounded(eyeLevel)}`
  })
  const rings = eyes.map((eye) => `<circle cx="${rounded(eye)}" cy="${rounded(eyeLevel)}" r="${eyeRadius}"/>`)
  const last = Math.max(...eyes)
  const upper: Point = hooked ? apex : [last - Math.tan(radians(degrees)) * freeHeight, eyeLevel - freeHeight]
  const on = (share: number): Point => [
    upper[0] + (last - upper[0]) * share,
    upper[1] + (eyeLevel - upper[1]) * share,
  ]
  const marks = isBroken ? hair(`M${rounded(x - 20)} ${rounded(gap - 3)}l40 -12m-40 30l40 -12`) : ''
  return {
    svg: `<g class="part">${rings.join('')}</g><path class="bold" d="${lines.join('')}"/>${marks}`,
    along: [on(isBroken ? 0.45 : 0.25), on(0.85)],
  }
}

/** Where the eyes of evenly spread legs lie across, in shares of their distance; those behind each other once. */
function eyePlaces(legs: number): readonly number[] {
  const places = Array.from({length: legs}, (_, index) =>
    Math.round(Math.cos(Math.PI + (index * 2 * Math.PI) / legs) * 1000),
  )
  return [...new Set(places)].map((share) => share / 1000)
}

/** A leg that goes up from its eye at its angle and is broken off above. */
function leaning(eye: number, middle: number, level: number, degrees: number): string {
  const lean = Math.tan(radians(degrees)) * freeHeight * Math.sign(middle - eye)
  return `M${rounded(eye)} ${rounded(level)}L${rounded(eye + lean)} ${rounded(level - freeHeight)}m-16 10l32 -20`
}

/** The angle between the line of the hook and the leg on the left, its arrows outside where the arc is short. */
export function angleMark(
  angle: {readonly degrees: number; readonly text: string},
  [x, y]: Point,
  length: number,
): string {
  const radius = Math.min(190, Math.max(80, length * 0.55))
  const end = radians(angle.degrees)
  const isShort = radius * end < 72
  const beyond = Math.max(radians(12), isShort ? 60 / radius : 0)
  const at = (turn: number): Point => [x - radius * Math.sin(turn), y + radius * Math.cos(turn)]
  const [from, to] = [at(isShort ? -beyond : 0), at(end + beyond)]
  const way = isShort ? 1 : -1
  const arc = `M${rounded(from[0])} ${rounded(from[1])}A${rounded(radius)} ${rounded(radius)} 0 0 1 ${rounded(to[0])} ${rounded(to[1])}`
  const near = 20 / radius
  return [
    hair(arc),
    heads([
      {tip: at(0), towards: at(-way * near)},
      {tip: at(end), towards: at(end + way * near)},
    ]),
    word(angle.text, to[0] - 10, to[1] + 13, 'end'),
  ].join('')
}

/** The sling from above: how many legs there are, which the view from the side cannot show. */
export function slingFromAbove(legs: number, [x, y]: Point, radius: number): string {
  const ends = Array.from({length: legs}, (_, index): Point => {
    const turn = Math.PI + (index * 2 * Math.PI) / legs
    return [x + radius * Math.cos(turn), y + radius * Math.sin(turn)]
  })
  return [
    `<g class="part">${ends.map(([a, b]) => `<circle cx="${rounded(a)}" cy="${rounded(b)}" r="${eyeRadius}"/>`).join('')}</g>`,
    `<path class="bold" d="${ends.map(([a, b]) => `M${rounded(x)} ${rounded(y)}L${rounded(a)} ${rounded(b)}`).join('')}"/>`,
  ].join('')
}

function radians(degrees: number): number {
  return (degrees * Math.PI) / 180
}
