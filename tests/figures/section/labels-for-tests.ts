import {type Balloon, distance} from '../../../src/figures/section/balloons.ts'
import type {CrossSection} from '../../../src/figures/section/cross-section.ts'
import type {Point} from '../../../src/figures/section/shape.ts'

/** Everything with letters: its middle and how far it reaches aside and up. */
export interface Label {
  readonly text: string
  readonly at: Point
  readonly wide: number
  readonly high: number
}

/** Labels as they stand in the drawing, in the view box. */
export function labelsOf({svg, frame}: CrossSection): readonly Label[] {
  const circles = [...svg.matchAll(/<circle class="b" cx="([\d.-]+)" cy="([\d.-]+)" r="([\d.]+)"/gu)].map(
    ([, x, y, r]) => ({at: [Number(x), Number(y)] as const, r: Number(r)}),
  )
  return [...svg.matchAll(/<text x="([\d.-]+)" y="([\d.-]+)"[^>]*>([^<]*)</gu)].map(([, x, y, text = '']) => {
    const at: Point = [Number(x), Number(y)]
    const circle = circles.find((one) => one.at[0] === at[0] && one.at[1] === at[1])
    // A letter of the bold typeface is at most 0.72 of its size wide on average.
    return circle
      ? {text, at, wide: circle.r, high: circle.r}
      : {text, at, wide: (text.length * frame.text * 0.72) / 2, high: frame.text / 2}
  })
}

export function overlaps(labels: readonly Label[]): readonly string[] {
  return labels.flatMap((one, index) =>
    labels
      .slice(index + 1)
      .filter(
        (other) =>
          Math.abs(one.at[0] - other.at[0]) < one.wide + other.wide &&
          Math.abs(one.at[1] - other.at[1]) < one.high + other.high,
      )
      .map((other) => `${one.text} on ${other.text}`),
  )
}

/** Leaders that cross, and leaders that run through the balloon of another. */
export function crossings(balloons: readonly Balloon[], radius: number): readonly string[] {
  return balloons.flatMap((one, index) => [
    ...balloons
      .slice(index + 1)
      .filter((other) => doCross(one.at, one.anchor, other.at, other.anchor))
      .map((other) => `${one.number} across ${other.number}`),
    ...balloons
      .filter((other) => other !== one && distance(other.at, one.at, one.anchor) < radius)
      .map((other) => `${one.number} through ${other.number}`),
  ])
}

function doCross(a: Point, b: Point, c: Point, d: Point): boolean {
  const side = ([r1, z1]: Point, [r2, z2]: Point, [r, z]: Point): number =>
    Math.sign((r2 - r1) * (z - z1) - (z2 - z1) * (r - r1))
  return side(a, b, c) !== side(a, b, d) && side(c, d, a) !== side(c, d, b)
}

/** Every place that the drawing names, paths followed step by step. */
export function placesOf(svg: string): readonly Point[] {
  return [...svg.matchAll(/ d="([^"]*)"/gu)].flatMap(([, path = '']) => {
    const steps = [...path.matchAll(/([MLlhv])([^MLlhvz]*)/gu)]
    const places: Point[] = []
    for (const [, command, rest = ''] of steps) {
      const [first = 0, second = 0] = [...rest.matchAll(/-?[\d.]+/gu)].map(Number)
      const [x, y] = places.at(-1) ?? [0, 0]
      if (command === 'M' || command === 'L') places.push([first, second])
      else if (command === 'h') places.push([x + first, y])
      else if (command === 'v') places.push([x, y + first])
      else places.push([x + first, y + second])
    }
    return places
  })
}
