import {lineOf} from '../section/paint.ts'
import type {Point} from '../section/shape.ts'
import {rounded} from '../svg-text.ts'

/** Path through places, closed or open. */
export function through(points: readonly Point[], closed = false): string {
  return (
    lineOf(points.map(([x, y]): Point => [Math.round(x * 10) / 10, Math.round(y * 10) / 10])) +
    (closed ? 'z' : '')
  )
}

/** A place in a path. */
export function at([x, y]: Point): string {
  return `${rounded(x)} ${rounded(y)}`
}

/** A solid arrowhead whose point lies at a place; the angle is the way that it looks, in degrees from the right with the clock. */
export function arrowhead([x, y]: Point, degrees: number, size = 22): string {
  const back = (side: number): Point => turned([x - size, y + side * size * 0.3], [x, y], degrees)
  return through([[x, y], back(1), back(-1)], true)
}

/** A place turned about another with the clock. */
export function turned([x, y]: Point, [cx, cy]: Point, degrees: number): Point {
  const angle = (degrees * Math.PI) / 180
  const [dx, dy] = [x - cx, y - cy]
  return [cx + dx * Math.cos(angle) - dy * Math.sin(angle), cy + dx * Math.sin(angle) + dy * Math.cos(angle)]
}

/** A rectangle by its middle, turned about a place with the clock. */
export function bar(
  middle: Point,
  size: readonly [wide: number, high: number],
  about: Point,
  degrees: number,
): string {
  const [x, y] = middle
  const [w, h] = [size[0] / 2, size[1] / 2]
  const corners: readonly Point[] = [
    [x - w, y - h],
    [x + w, y - h],
    [x + w, y + h],
    [x - w, y + h],
  ]
  return through(
    corners.map((corner) => turned(corner, about, degrees)),
    true,
  )
}

/** A path of one class, or nothing where it draws nothing. */
export function path(kind: string, d: string, more = ''): string {
  return d === '' ? '' : `<path class="${kind}"${more} d="${d}"/>`
}
