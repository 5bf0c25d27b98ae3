import type {SectionPart} from './section-geometry.ts'
import {boundsOf, isInside, type Outline, type Point} from './shape.ts'

/** A numbered balloon: its middle, and the place in its part where its leader ends. */
export interface Balloon {
  readonly part: SectionPart
  readonly number: string
  readonly at: Point
  readonly anchor: Point
}

/** Which piece of a part its leader ends in, and on which side of the centre line. */
const anchors: Readonly<
  Record<
    SectionPart,
    {
      readonly piece: string
      readonly otherwise?: string
      readonly side: 'left' | 'right'
      readonly towards?: keyof typeof pulls
    }
  >
> = {
  'suction-cover': {piece: 'cover', side: 'right', towards: 'bottom'},
  'suction-cover-bolts': {piece: 'bolt', side: 'right', towards: 'low'},
  'suction-cover-ring': {piece: 'ring', side: 'right'},
  'lower-ring': {piece: 'ring left', side: 'left', towards: 'bottom'},
  'lower-ring-screws': {piece: 'screw left', side: 'left', towards: 'high'},
  impeller: {piece: 'front shroud left', side: 'left', towards: 'high'},
  'upper-ring': {piece: 'ring left', side: 'left', towards: 'low'},
  'upper-ring-screws': {piece: 'screw left', side: 'left', towards: 'high'},
  casing: {piece: 'branch', side: 'right', towards: 'middle'},
  'spigot-ring': {piece: 'ring', side: 'right'},
  'cargo-seal': {piece: 'lip 1 left', otherwise: 'O-ring of the seal housing left', side: 'left'},
  sleeve: {piece: 'sleeve left', side: 'left', towards: 'middle'},
  'hub-bolts': {piece: 'bolt', side: 'right', towards: 'low'},
  'shaft-flange': {piece: 'flange', side: 'right'},
  'hand-hole-ring': {piece: 'ring 1', side: 'left'},
  'hand-hole-bolts': {piece: 'bolt 1', side: 'left'},
  'head-flange-ring': {piece: 'ring', side: 'right'},
  'head-flange-bolts': {piece: 'bolt', side: 'right', towards: 'high'},
  'oil-seal': {piece: 'rotating part', side: 'right', towards: 'high'},
  motor: {piece: 'motor body outside of the cofferdam', side: 'right', towards: 'middle'},
  stack: {piece: 'outer pipe', side: 'right', towards: 'middle'},
}

/** How much a place gains by each millimetre towards an end of its piece. */
const pulls = {high: 0.01, low: -0.01, bottom: -0.1, middle: 0} as const

/** Places the balloons in two columns, numbers from the wet end up, each as near to the height of its part as its neighbours allow. */
export function balloonsOf(
  outlines: readonly Outline[],
  numbers: readonly {readonly part: SectionPart; readonly number: string}[],
  columns: {
    readonly left: number
    readonly right: number
    readonly low: number
    readonly high: number
    readonly gap: number
  },
): readonly Balloon[] {
  const anchored = numbers.map(({part, number}) => ({part, number, anchor: anchorOf(outlines, part)}))
  return (['left', 'right'] as const).flatMap((side) => {
    const column = anchored.filter(({part}) => anchors[part].side === side)
    const heights = spread(
      column.map(({anchor: [, z]}) => z),
      columns,
    )
    return column.map(
      (one, index): Balloon => ({...one, at: [columns[side], heights[index] ?? one.anchor[1]]}),
    )
  })
}

/** A place well inside the piece that a leader points at. */
function anchorOf(outlines: readonly Outline[], part: SectionPart): Point {
  const {piece, otherwise} = anchors[part]
  const named = (name: string | undefined): Outline | undefined =>
    outlines.find((one) => one.part === part && one.piece === name)
  // A seat whose lip nobody knows is shown by what lies beside it.
  const outline = named(piece) ?? named(otherwise)
  if (!outline) throw new Error(`Unexpected section without \`${part}\`, expected it drawn`)
  const {left, low, right, high} = boundsOf(outline.points)
  // What is painted later hides the place.
  const above = outlines.slice(outlines.indexOf(outline) + 1).filter((area) => {
    const its = boundsOf(area.points)
    return area.isOpen !== true && its.left < right && its.right > left && its.low < high && its.high > low
  })
  const steps = 18
  const inside = Array.from(
    {length: (steps + 1) ** 2},
    (_, index): Point => [
      left + ((right - left) * (index % (steps + 1))) / steps,
      low + ((high - low) * Math.floor(index / (steps + 1))) / steps,
    ],
  ).filter((one) => isInside(one, outline.points) && !above.some((area) => isInside(one, area.points)))
  const depth = (one: Point): number =>
    Math.min(
      ...outline.points.map((from, index) =>
        distance(one, from, outline.points[(index + 1) % outline.points.length] ?? from),
      ),
    )
  const sign = anchors[part].side === 'left' ? -1 : 1
  const {towards} = anchors[part]
  const gain = (z: number): number => {
    if (towards === undefined) return 0
    return towards === 'middle' ? -Math.abs(z - (low + high) / 2) / 10 : pulls[towards] * z
  }
  // Deep inside, and towards its end or its column where two places are as deep.
  return inside.reduce<readonly [Point, number]>(
    (best, one) => {
      const worth = Math.min(depth(one), 6) + gain(one[1]) + (sign * one[0]) / 1000
      return worth > best[1] ? [one, worth] : best
    },
    [outline.points[0] ?? [0, 0], Number.NEGATIVE_INFINITY],
  )[0]
}

/** Distance from a place to a piece of line. */
export function distance([r, z]: Point, [r1, z1]: Point, [r2, z2]: Point): number {
  const long = (r2 - r1) ** 2 + (z2 - z1) ** 2
  const t = long === 0 ? 0 : Math.max(0, Math.min(1, ((r - r1) * (r2 - r1) + (z - z1) * (z2 - z1)) / long))
  return Math.hypot(r - r1 - t * (r2 - r1), z - z1 - t * (z2 - z1))
}

/** Heights in the order given, at least a gap apart, together as near to what is wished as can be. */
function spread(
  wished: readonly number[],
  {low, high, gap}: {readonly low: number; readonly high: number; readonly gap: number},
): readonly number[] {
  // Neighbours that would overlap share the mean of their wishes (least squares with an order).
  const groups = wished
    .map((height, index) => ({sum: height - index * gap, count: 1}))
    .reduce<readonly Neighbours[]>((before, one) => joinLast(before.concat(one)), [])
  const raw = groups.flatMap(({sum, count}) => Array.from({length: count}, () => sum / count))
  const last = wished.length - 1
  return raw.map((height, index) => Math.max(low, Math.min(high - last * gap, height)) + index * gap)
}

interface Neighbours {
  readonly sum: number
  readonly count: number
}

function joinLast(groups: readonly Neighbours[]): readonly Neighbours[] {
  const last = groups.at(-1)
  const before = groups.at(-2)
  if (!last || !before || before.sum / before.count <= last.sum / last.count) return groups
  return joinLast([...groups.slice(0, -2), {sum: before.sum + last.sum, count: before.count + last.count}])
}
