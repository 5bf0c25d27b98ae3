import type {SectionPart} from './section-geometry.ts'

/** A place in millimetres: `r` from the centre line to the right, `z` up from the bottom of the well. */
export type Point = readonly [r: number, z: number]

/**
 * One outline of the section.
 *
 * `cut` is hatched, `thin` is cut too and too thin for a hatch: it is filled; `whole` is seen and not cut; `hidden` is drawn thin;
 * `ground` goes on below and aside, so that its first edge alone is drawn; `blank` is left out behind a break.
 */
export interface Outline {
  readonly part: SectionPart | 'surroundings'
  /** Which piece of the part, so that a drawing of another geometry can be compared piece by piece. */
  readonly piece: string
  readonly drawn: 'cut' | 'thin' | 'whole' | 'hidden' | 'ground' | 'blank'
  readonly points: readonly Point[]
  /** A line that is no closed area. */
  readonly isOpen?: true
  /** Way and spacing of the hatch, so that parts that touch differ. */
  readonly hatch?: Hatch
}

/** Which way the lines of a hatch rise, and how far apart they lie. */
export interface Hatch {
  readonly way: 'up' | 'down'
  readonly spacing: number
}

/** A rectangle by its sides. */
export interface Box {
  readonly left: number
  readonly low: number
  readonly right: number
  readonly high: number
}

/** Rectangle between two corners. */
export function box(left: number, low: number, right: number, high: number): readonly Point[] {
  return [
    [left, low],
    [right, low],
    [right, high],
    [left, high],
  ]
}

/** The same area on the other side of the centre line. */
export function mirrored(points: readonly Point[]): readonly Point[] {
  return points.map(([r, z]): Point => [-r, z]).reverse()
}

/** Area across the centre line, from the outline of its right half, axis to axis. */
export function turned(half: readonly Point[]): readonly Point[] {
  return [...half, ...mirrored(half)]
}

/** The outline and its mirror image. */
export function both(outline: Outline): readonly Outline[] {
  return [outline, {...outline, piece: `${outline.piece} left`, points: mirrored(outline.points)}]
}

/** Points along a curve from `from` to `to` that leaves towards `pull`. */
export function curve(from: Point, pull: Point, to: Point, steps = 8): readonly Point[] {
  return Array.from({length: steps + 1}, (_, index): Point => {
    const t = index / steps
    const at = (axis: 0 | 1): number =>
      (1 - t) ** 2 * from[axis] + 2 * t * (1 - t) * pull[axis] + t ** 2 * to[axis]
    return [at(0), at(1)]
  })
}

/** Circle as an area. */
export function disc(r: number, z: number, radius: number, steps = 12): readonly Point[] {
  return Array.from({length: steps}, (_, index): Point => {
    const angle = (index / steps) * 2 * Math.PI
    return [r + radius * Math.cos(angle), z + radius * Math.sin(angle)]
  })
}

/** Bolt along the axis, seen from the side: the face below its head lies at `face`, the thread goes up or down. */
export function boltAlong(
  r: number,
  face: number,
  size: {readonly thread: number; readonly length: number},
  way: 'up' | 'down',
): readonly Point[] {
  const half = size.thread / 2
  const head = size.thread * 0.85
  const sign = way === 'up' ? 1 : -1
  const points: readonly Point[] = [
    [r - head, face - sign * size.thread * 0.65],
    [r + head, face - sign * size.thread * 0.65],
    [r + head, face],
    [r + half, face],
    [r + half, face + sign * size.length],
    [r - half, face + sign * size.length],
    [r - half, face],
    [r - head, face],
  ]
  return points
}

/** Whether a place lies inside an area. */
export function isInside([r, z]: Point, area: readonly Point[]): boolean {
  return area.reduce((inside, [r1, z1], index) => {
    const [r2, z2] = area[(index + 1) % area.length] ?? [r1, z1]
    return z1 > z !== z2 > z && r < ((r2 - r1) * (z - z1)) / (z2 - z1) + r1 ? !inside : inside
  }, false)
}

/** Hatch lines of an area: pairs of ends, at 45 degrees. */
export function hatchLines(
  area: readonly Point[],
  {way, spacing}: Hatch,
): readonly (readonly [Point, Point])[] {
  const sign = way === 'up' ? 1 : -1
  // Along a line of the hatch z − sign·r is one number.
  const heights = area.map(([r, z]) => z - sign * r)
  const step = spacing * Math.SQRT2
  const first = Math.ceil(Math.min(...heights) / step)
  const last = Math.floor(Math.max(...heights) / step)
  return Array.from(
    {length: Math.max(0, last - first + 1)},
    (_, index) => (first + index + 0.001) * step,
  ).flatMap((height) => {
    const crossings = area
      .flatMap(([r1, z1], index): readonly Point[] => {
        const [r2, z2] = area[(index + 1) % area.length] ?? [r1, z1]
        const h1 = z1 - sign * r1 - height
        const h2 = z2 - sign * r2 - height
        if (h1 > 0 === h2 > 0) return []
        const t = h1 / (h1 - h2)
        return [[r1 + t * (r2 - r1), z1 + t * (z2 - z1)]]
      })
      .sort(([a], [b]) => a - b)
    return Array.from({length: Math.floor(crossings.length / 2)}, (_, pair) =>
      crossings.slice(2 * pair, 2 * pair + 2),
    ).flatMap(([from, to]) => (from && to ? [[from, to] as const] : []))
  })
}

/** The least box around places. */
export function boundsOf(points: readonly Point[]): Box {
  return points.reduce(
    ({left, low, right, high}, [r, z]) => ({
      left: Math.min(left, r),
      low: Math.min(low, z),
      right: Math.max(right, r),
      high: Math.max(high, z),
    }),
    {left: Infinity, low: Infinity, right: -Infinity, high: -Infinity},
  )
}
