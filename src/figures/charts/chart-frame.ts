import {printFigure} from '../../quantities/print-quantity.ts'
import {escaped, rounded, textLines, textWidth} from '../svg-text.ts'
import {type Axis, type ChartPoint, clipped} from './axis.ts'
import type {MarkShape} from './marks.ts'
import {markOf} from './marks.ts'

/** A chart as it is drawn, what it tells in words, and the statements that stand below it. */
export interface Chart {
  readonly svg: string
  /** Everything that the picture tells, its points too. */
  readonly alternative: string
  readonly statements: readonly string[]
}

/** Width of every chart in the units of its drawing: ten to a millimetre on paper. */
export const chartWidth = 1500
/** Size of its letters, as the stylesheet gives it. */
export const letter = 36

/** Room in the drawing, and what stands along its axes. */
export interface Frame {
  readonly x: Axis
  readonly y: Axis
  readonly xTitle: string
  readonly yTitle: string
  /** Words at the ticks of x in place of figures. */
  readonly xWords?: (tick: number) => string
}

const left = 150
const right = 40
const top = 76
const plotHeight = 620
const tick = 12
const lineHeight = 44

/** Lines of a chart by what they say, told apart by weight and dashes. */
export type LineKind = 'line' | 'beyond' | 'band' | 'limit' | 'least' | 'mark' | 'level'

/** One entry of the legend: a mark or a line, and its words. */
export type LegendEntry =
  | {readonly shape: MarkShape; readonly words: string}
  | {readonly line: LineKind; readonly words: string}

/** Where a point of the axes lies in the drawing. */
export function placeOf({x, y}: Frame, point: ChartPoint): ChartPoint {
  return {
    x: left + ((point.x - x.least) / (x.most - x.least)) * (chartWidth - left - right),
    y: top + ((y.most - point.y) / (y.most - y.least)) * plotHeight,
  }
}

/** A chain of points, cut off at the ends of the axes. */
export function chain(frame: Frame, points: readonly ChartPoint[], kind: LineKind): string {
  const d = clipped(points, frame.x, frame.y)
    .map((piece) =>
      piece
        .map((point, index) => {
          const {x, y} = placeOf(frame, point)
          return `${index === 0 ? 'M' : 'L'}${rounded(x)} ${rounded(y)}`
        })
        .join(''),
    )
    .join('')
  return d === '' ? '' : `<path class="chart-${kind}" d="${d}"/>`
}

/** A line right across the chart. */
export function across(frame: Frame, y: number, kind: LineKind): string {
  return chain(
    frame,
    [
      {x: frame.x.least, y},
      {x: frame.x.most, y},
    ],
    kind,
  )
}

/** A line from the foot of the chart to its top. */
export function upright(frame: Frame, x: number, kind: LineKind): string {
  return chain(
    frame,
    [
      {x, y: frame.y.least},
      {x, y: frame.y.most},
    ],
    kind,
  )
}

/** A mark at a point. */
export function markAt(frame: Frame, point: ChartPoint, shape: MarkShape): string {
  const {x, y} = placeOf(frame, point)
  return markOf(shape, x, y)
}

/** Words within the chart that keep clear of each other. */
export interface Labels {
  /** Puts words at the first of the places where they have room, else at the first. */
  put(text: string, at: readonly ChartPoint[]): void
  drawn(): string
}

interface Room {
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
}

/**
 * Places words.
 *
 * @param marks
 *   Points of the drawing with marks, which are kept free.
 * @param lines
 *   Heights of lines right across, which are kept free too.
 */
export function newLabels(marks: readonly ChartPoint[], lines: readonly number[] = []): Labels {
  const taken: Room[] = [
    ...marks.map(({x, y}) => ({left: x - 18, right: x + 18, top: y - 18, bottom: y + 18})),
    ...lines.map((y) => ({left: 0, right: chartWidth, top: y - 8, bottom: y + 8})),
  ]
  const texts: string[] = []
  return {
    put: (text, places) => {
      const rooms = places.map(({x, y}) => roomOf(text, x, y))
      const room = rooms.find((one) => !taken.some((other) => overlap(one, other))) ?? rooms[0]
      if (!room) return
      taken.push(room)
      texts.push(
        `<text x="${rounded(room.left)}" y="${rounded(room.bottom - letter * 0.22)}">${escaped(text)}</text>`,
      )
    },
    drawn: () => texts.join(''),
  }
}

/** The room of a text that starts at a place, shifted so that it stays within the drawing. */
function roomOf(text: string, x: number, y: number): Room {
  const width = textWidth(text, letter)
  const start = Math.max(left + 8, Math.min(x, chartWidth - right - 8 - width))
  const base = Math.max(top + letter * 0.75 + 4, Math.min(y, top + plotHeight - letter * 0.22 - 4))
  return {left: start, right: start + width, top: base - letter * 0.75, bottom: base + letter * 0.22}
}

function overlap(one: Room, other: Room): boolean {
  return one.left < other.right && other.left < one.right && one.top < other.bottom && other.top < one.bottom
}

/** Foot and top of the room for points, in units of the drawing. */
export const plot = {left, right: chartWidth - right, top, bottom: top + plotHeight} as const

/** The whole drawing: axes with ticks and titles, what is drawn in it, and the legend below. */
export function chartSvg(
  frame: Frame,
  content: readonly string[],
  legend: readonly LegendEntry[],
  alternative: string,
): string {
  const {svg, height} = legendOf(legend, plot.bottom + 128)
  return [
    `<svg class="chart" viewBox="0 0 ${chartWidth} ${rounded(height)}" role="img" aria-label="${escaped(alternative)}">`,
    axes(frame),
    ...content,
    svg,
    '</svg>',
  ].join('')
}

function axes(frame: Frame): string {
  const {x, y, xTitle, yTitle, xWords} = frame
  const ticksOfX = x.ticks.map((one) => ({
    at: placeOf(frame, {x: one, y: y.least}).x,
    words: xWords ? xWords(one) : printFigure(one, x.decimals),
  }))
  const ticksOfY = y.ticks.map((one) => ({
    at: placeOf(frame, {x: x.least, y: one}).y,
    words: printFigure(one, y.decimals),
  }))
  const strokes = [
    `M${plot.left} ${top}V${plot.bottom}H${plot.right}`,
    ...ticksOfX.map(({at}) => `M${rounded(at)} ${plot.bottom}v${tick}`),
    ...ticksOfY.map(({at}) => `M${plot.left} ${rounded(at)}h-${tick}`),
  ]
  const grid = ticksOfY.slice(1).map(({at}) => `M${plot.left} ${rounded(at)}H${plot.right}`)
  return [
    `<path class="chart-grid" d="${grid.join('')}"/>`,
    `<path class="chart-axis" d="${strokes.join('')}"/>`,
    ...ticksOfX.map(({at, words}) => centred(words, at, plot.bottom + 52)),
    ...ticksOfY.map(
      ({at, words}) =>
        `<text x="${rounded(plot.left - tick - 10 - textWidth(words, letter))}" y="${rounded(at + letter * 0.35)}">${escaped(words)}</text>`,
    ),
    `<text x="8" y="36">${escaped(yTitle)}</text>`,
    `<text x="${rounded(plot.right - textWidth(xTitle, letter))}" y="${plot.bottom + 100}">${escaped(xTitle)}</text>`,
  ].join('')
}

/** Words around a place, pushed in at the edge of the drawing. */
function centred(words: string, at: number, y: number): string {
  const width = textWidth(words, letter)
  const start = Math.max(4, Math.min(at - width / 2, chartWidth - 4 - width))
  return `<text x="${rounded(start)}" y="${y}">${escaped(words)}</text>`
}

const sample = 90

/** Entries side by side, a new row where one has no room. */
function legendOf(
  entries: readonly LegendEntry[],
  from: number,
): {readonly svg: string; readonly height: number} {
  let x = plot.left
  let y = from + lineHeight
  const parts: string[] = []
  for (const entry of entries) {
    const lines = textLines(entry.words, letter, plot.right - plot.left - sample - 20)
    const width = sample + 20 + Math.max(...lines.map((line) => textWidth(line, letter))) + 50
    if (x > plot.left && x + width - 50 > plot.right) {
      x = plot.left
      y += lineHeight
    }
    const middle = y - letter * 0.36
    parts.push(
      'shape' in entry
        ? markOf(entry.shape, x + sample / 2, middle)
        : `<path class="chart-${entry.line}" d="M${rounded(x)} ${rounded(middle)}h${sample}"/>`,
      ...lines.map(
        (line, index) =>
          `<text x="${rounded(x + sample + 20)}" y="${rounded(y + index * lineHeight)}">${escaped(line)}</text>`,
      ),
    )
    y += (lines.length - 1) * lineHeight
    x += width
  }
  return {svg: parts.join(''), height: y + 20}
}
