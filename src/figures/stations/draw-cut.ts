import {clipped} from '../section/details.ts'
import {type Box, hatchLines, type Outline, type Point} from '../section/shape.ts'
import {escaped, rounded, textWidth} from '../svg-text.ts'
import type {StationCut} from './cut.ts'
import {arrowhead, bar, path, through} from './strokes.ts'

/** What is measured at a cut: planes by their names, and how. */
export interface CutMark {
  readonly kind: 'bore' | 'outside' | 'groove' | 'gap' | 'depth' | 'dial'
  readonly surface: StationCut['surface']
  readonly planes: readonly string[]
}

/** Where a cut is drawn, in units of the view box. */
export interface CutArea {
  readonly left: number
  readonly top: number
  readonly width: number
  readonly height: number
}

const letter = 36

/** Section of a part with the planes of its stations as lines, or with the instrument on it; in the middle of its area. */
export function drawCut(
  cut: StationCut,
  marks: readonly CutMark[],
  area: CutArea,
): {readonly svg: string; readonly top: number; readonly bottom: number} {
  const names = marks.flatMap(({planes}) => planes)
  const room = 70 + Math.max(0, ...names.map((name) => textWidth(name, letter, true)))
  const inside = marks.every(({kind}) => kind === 'bore')
  const scale = Math.min(
    (area.width - room) / (cut.box.right - cut.box.left),
    area.height / (cut.box.high - cut.box.low),
  )
  const wide = (cut.box.right - cut.box.left) * scale
  const left = inside ? area.left + area.width - wide : area.left + Math.max(0, area.width - room - wide) / 2
  const high = (cut.box.high - cut.box.low) * scale
  const top = area.top + (area.height - high) / 2
  const place: Placing = ([r, z]) => [
    left + (r - cut.box.left) * scale,
    cut.turned ? top + (z - cut.box.low) * scale : top + (cut.box.high - z) * scale,
  ]
  const drawn = cut.outlines.map((outline, index) => drawOutline(outline, cut.box, place, index))
  const edge = inside ? left - 26 : left + wide + 26
  const svg = [
    ...drawn,
    cut.box.left === 0 ? path('thin', axis(cut, place)) : '',
    ...marks.map((mark) => measured(mark, place)),
    planeLines(marks, {place, edge, side: inside ? -1 : 1}),
  ].join('')
  return {svg, top, bottom: top + high}
}

type Placing = (point: Point) => Point

/** One outline within the box, over those before it: where the drawing ends, a thin wave instead of its edge. */
function drawOutline(outline: Outline, box: Box, place: Placing, index: number): string {
  const area = fromBreak(clipped(outline.points, box), box)
  if (area.length < 3) return ''
  const points = area.map(place)
  if (outline.drawn === 'thin' && !outline.hatch) return path('solid', through(points, true))
  const runs: Point[][] = [[]]
  const waves: string[] = []
  for (const [at, from] of area.entries()) {
    const to = area[(at + 1) % area.length] ?? from
    runs.at(-1)?.push(place(from))
    const side = borderOf(from, to, box)
    if (at === area.length - 1 && side === undefined) runs.at(-1)?.push(place(to))
    if (side === undefined) continue
    if (side !== 'axis') waves.push(wave(place(from), place(to)))
    runs.push([])
  }
  const line = runs.flatMap((run) => (run.length > 1 ? [through(run)] : []))
  if (outline.drawn === 'hidden') return path('hair', line.join(''))
  const hatch =
    outline.hatch === undefined
      ? ''
      : hatchLines(points, {way: index % 2 === 0 ? 'up' : 'down', spacing: 19})
          .map(stroke)
          .join('')
  // An open line is filled as if it were closed: it serves as the area where nothing else is left out.
  return line.length === 1
    ? path('part', line.join('')) + path('hair', hatch + waves.join(''))
    : path('blank', through(points, true)) +
        path('hair', hatch + waves.join('')) +
        path('line', line.join(''))
}

/** The points of an area, beginning behind an edge along which the drawing ends, so that its line is one. */
function fromBreak(area: readonly Point[], box: Box): readonly Point[] {
  const first = area.findIndex((to, index) => borderOf(area.at(index - 1) ?? to, to, box) !== undefined)
  return first > 0 ? [...area.slice(first), ...area.slice(0, first)] : area
}

/** A stroke of a hatch. */
function stroke([from, to]: readonly [Point, Point]): string {
  const [x, y] = from.map(Math.round)
  return `M${x} ${y}l${Math.round(to[0] - from[0])} ${Math.round(to[1] - from[1])}`
}

/** The edge of the drawing along which an edge of an outline runs. */
function borderOf(from: Point, to: Point, box: Box): 'axis' | 'break' | undefined {
  const along = (axis: 0 | 1, bound: number): boolean =>
    Math.abs(from[axis] - bound) < 1e-6 && Math.abs(to[axis] - bound) < 1e-6
  if (along(0, box.left)) return box.left === 0 ? 'axis' : 'break'
  return along(0, box.right) || along(1, box.low) || along(1, box.high) ? 'break' : undefined
}

function wave(from: Point, to: Point): string {
  const middle: Point = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2]
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]]
  const out = 7 / Math.max(1, Math.hypot(dx, dy))
  const bend: Point = [from[0] + dx / 4 - dy * out, from[1] + dy / 4 + dx * out]
  return `M${rounded(from[0])} ${rounded(from[1])}Q${rounded(bend[0])} ${rounded(bend[1])} ${rounded(middle[0])} ${rounded(middle[1])}T${rounded(to[0])} ${rounded(to[1])}`
}

function axis({box}: StationCut, place: Placing): string {
  const [x, low] = place([0, box.low])
  const [, high] = place([0, box.high])
  const [from, to] = low < high ? [low, high] : [high, low]
  return `M${rounded(x)} ${rounded(from - 24)}V${rounded(to + 24)}`
}

/** The running surface that is measured, or gap and depth with what is held there. */
function measured({kind, surface}: CutMark, place: Placing): string {
  const from = place([surface.r, surface.from])
  const to = place([surface.r, surface.to])
  const [x, y] = from
  if (kind === 'gap') {
    const [top, bottom] = y < to[1] ? [y, to[1]] : [to[1], y]
    const line = x + 40
    return (
      path(
        'hair',
        `M${rounded(x + 8)} ${rounded(top)}h56M${rounded(x + 8)} ${rounded(bottom)}h56M${rounded(line)} ${rounded(top)}v-56M${rounded(line)} ${rounded(bottom)}v56`,
      ) +
      path('solid', arrowhead([line, top], 90) + arrowhead([line, bottom], -90)) +
      path('part', bar([x - 6, (top + bottom) / 2], [60, Math.max(5, (bottom - top) * 0.6)], [x, y], 0))
    )
  }
  if (kind === 'depth') {
    const out = y < to[1] || (y === to[1] && true) ? -1 : 1
    return path(
      'part',
      bar([x, (y + to[1]) / 2], [10, Math.abs(to[1] - y)], [x, y], 0) +
        bar([x, y + out * 11], [104, 22], [x, y], 0) +
        bar([x, y + out * 44], [26, 44], [x, y], 0),
    )
  }
  if (kind === 'dial') {
    return (
      path('part', bar([x + 40, y], [80, 10], [x, y], 0)) +
      `<circle class="part" cx="${rounded(x + 112)}" cy="${rounded(y)}" r="34"/>` +
      path('line', `M${rounded(x + 112)} ${rounded(y)}l20 -18`)
    )
  }
  return path('bold', through([from, to]))
}

/** Heights of planes along a surface, the first one near its suction side; one plane lies in the middle. */
export function planeHeights({from, to}: StationCut['surface'], count: number): readonly number[] {
  return Array.from({length: count}, (_, index) =>
    count === 1 ? (from + to) / 2 : from + (to - from) * (0.15 + (0.7 * index) / (count - 1)),
  )
}

/** Lines of the planes, led apart to their names. */
function planeLines(
  marks: readonly CutMark[],
  {place, edge, side}: {readonly place: Placing; readonly edge: number; readonly side: 1 | -1},
): string {
  const lines = marks.flatMap(({surface, planes, kind}) =>
    kind === 'gap' || kind === 'depth' || kind === 'dial'
      ? []
      : planeHeights(surface, planes.length).map((z, index) => {
          const [x, y] = place([surface.r, z])
          return {name: planes[index] ?? '', x, y}
        }),
  )
  const sorted = lines.toSorted((a, b) => a.y - b.y)
  const heights = apart(
    sorted.map(({y}) => y),
    44,
  )
  const drawn = sorted.map(({name, x, y}, index) => {
    const label = heights[index] ?? y
    const width = textWidth(name, letter, true)
    const text = side === 1 ? edge + 34 : edge - 34 - width
    return {
      line: `M${rounded(x - side * 26)} ${rounded(y)}H${rounded(edge)}L${rounded(edge + side * 26)} ${rounded(label)}`,
      name:
        name === ''
          ? ''
          : `<text class="strong" x="${Math.round(text)}" y="${Math.round(label + 13)}">${escaped(name)}</text>`,
    }
  })
  return path('thin', drawn.map(({line}) => line).join('')) + drawn.map(({name}) => name).join('')
}

/** Sorted heights pushed apart to at least a distance, about where they were. */
function apart(heights: readonly number[], least: number): readonly number[] {
  const groups: {from: number; count: number; sum: number}[] = []
  for (const height of heights) {
    groups.push({from: height, count: 1, sum: height})
    for (;;) {
      const last = groups.at(-1)
      const before = groups.at(-2)
      if (!last || !before || before.from + before.count * least <= last.from) break
      const count = before.count + last.count
      const sum = before.sum + last.sum
      groups.splice(-2, 2, {from: sum / count - ((count - 1) * least) / 2, count, sum})
    }
  }
  return groups.flatMap(({from, count}) => Array.from({length: count}, (_, index) => from + index * least))
}
