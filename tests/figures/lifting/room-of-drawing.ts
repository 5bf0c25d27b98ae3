import {expect} from 'vitest'
import {viewOf} from '../svg-for-tests.ts'

/** Numbers of a path that is written with absolute corners, as pairs. */
export function cornersOf(path: string): readonly (readonly [number, number])[] {
  return [...path.matchAll(/[ML]([\d.-]+) ([\d.-]+)/gu)].map(([, x, y]) => [Number(x), Number(y)] as const)
}

/** Paths of a class. */
export function pathsOf(svg: string, name: string): readonly string[] {
  return [...svg.matchAll(new RegExp(`<path class="${name}"[^>]* d="([^"]+)"`, 'gu'))].map(
    ([, path = '']) => path,
  )
}

/** What is drawn, without the words in it. */
export function drawingOf(svg: string): string {
  return svg.replace(/<text.*?<\/text>/gu, '')
}

/** Every line and circle lies inside of the view box. */
export function expectInside(svg: string): void {
  const view = viewOf(svg)
  const places = [...svg.matchAll(/ d="([^"]+)"/gu)].flatMap(([, path = '']) => walked(path))
  const circles = [...svg.matchAll(/cx="([\d.-]+)" cy="([\d.-]+)" r="([\d.]+)"/gu)].flatMap(
    ([, ...numbers]) => {
      const [x = 0, y = 0, r = 0] = numbers.map(Number)
      return [
        [x - r, y - r],
        [x + r, y + r],
      ] as const
    },
  )
  expect(places.length).toBeGreaterThan(1)
  for (const [x, y] of [...places, ...circles]) {
    expect(x).toBeGreaterThanOrEqual(0)
    expect(x).toBeLessThanOrEqual(view.width)
    expect(y).toBeGreaterThanOrEqual(0)
    expect(y).toBeLessThanOrEqual(view.height)
  }
}

/** Places that a path leads to, in their order; of a curve its end. */
function walked(path: string): readonly (readonly [number, number])[] {
  const places: (readonly [number, number])[] = []
  let [x, y] = [0, 0]
  for (const [, letter = '', rest = ''] of path.matchAll(/([A-Za-z])([^A-Za-z]*)/gu)) {
    const numbers = (rest.match(/-?\d+(?:\.\d+)?/gu) ?? []).map(Number)
    const [last = 0] = numbers.slice(-1)
    const [across = 0] = numbers.slice(-2)
    const isRelative = letter === letter.toLowerCase()
    if (letter === 'z') continue
    const [dx, dy] =
      letter.toLowerCase() === 'h' ? [last, 0] : letter.toLowerCase() === 'v' ? [0, last] : [across, last]
    x = isRelative ? x + dx : letter === 'V' ? x : dx
    y = isRelative ? y + dy : letter === 'H' ? y : dy
    places.push([x, y])
  }
  return places
}
