import {lineAt, predictionHalfWidth, type StraightLine} from '../../calculations/wear/straight-line.ts'
import {textWidth} from '../svg-text.ts'
import {type ChartPoint, roundAxis} from './axis.ts'
import {
  across,
  type Chart,
  chain,
  chartSvg,
  type Frame,
  type LegendEntry,
  letter,
  markAt,
  newLabels,
  placeOf,
  plot,
  upright,
} from './chart-frame.ts'
import type {ChartWords} from './chart-words-en.ts'
import type {MarkShape} from './marks.ts'
import {hoursText, millimetresText, pointWords, wearStatements} from './wear-statements.ts'
import {type RingLife, type WearData, type WearPoint, type WearTrend, wearTrend} from './wear-trend.ts'

/** Share of readings that the band leaves out, and into how many pieces its edges are drawn. */
const confidence = 0.95
const pieces = 24

/**
 * Clearance of a ring over running hours: readings by shape, renewals, a line for each ring with its band, the limits,
 * and the hours that are due.
 *
 * The same function draws the page as it is built and a reading that is tried on it.
 */
export function wearChart(data: WearData, words: ChartWords): Chart {
  const trend = wearTrend(data)
  const statements = wearStatements(data, trend, words)
  const alternative = [
    words.wear.title(data.what),
    ...(data.readings.length > 0 ? [words.wear.points(pointWords(trend, words))] : []),
    ...statements,
  ].join(' ')
  return {svg: svgOf(data, trend, words, alternative), alternative, statements}
}

function svgOf(data: WearData, trend: WearTrend, words: ChartWords, alternative: string): string {
  const frame = frameOf(data, trend, words)
  const {renewal, minimumNew} = data
  const points = trend.lives.flatMap(({readings}) => readings)
  const lines = trend.lives.flatMap((life) => lineOf(frame, life, life === trend.current))
  const marks = points.map((point) => markAt(frame, at(point), shapeOf(point)))
  return chartSvg(
    frame,
    [
      ...(minimumNew ? [across(frame, minimumNew.value, 'least')] : []),
      ...(renewal ? [across(frame, renewal.value, 'limit')] : []),
      ...[...trend.renewals, ...spanEnd(frame, trend)].map((hours) => upright(frame, hours, 'mark')),
      ...lines,
      ...dueMark(frame, data, trend),
      ...marks,
      labelsOf(frame, data, trend, words),
    ],
    legendOf(points, lines.join(''), words),
    alternative,
  )
}

function at(point: WearPoint): ChartPoint {
  return {x: point.hours, y: point.clearance}
}

function shapeOf({phase, tried}: WearPoint): MarkShape {
  if (tried) return 'star'
  return phase === 'as-found' ? 'circle' : 'square'
}

/** Axes that hold readings, limits and the hours that are due; what is due far beyond the readings lies outside. */
function frameOf({readings, renewal, minimumNew}: WearData, trend: WearTrend, {wear}: ChartWords): Frame {
  const run = readings.map((one) => one.hours)
  const first = Math.min(...run, Number.POSITIVE_INFINITY)
  const last = Math.max(...run, 0)
  const {forecast, current} = trend
  const start = current.counted[0]?.hours ?? 0
  const most =
    forecast.kind === 'due' ? Math.max(last, Math.min(forecast.due * 1.02, start + 4 * (last - start))) : last
  const heights = [
    ...readings.map((one) => one.clearance),
    ...[renewal, minimumNew].flatMap((limit) => limit?.value ?? []),
  ]
  const low = Math.min(...heights, Number.POSITIVE_INFINITY)
  const high = Math.max(...heights, 0)
  return {
    x: roundAxis(first === Number.POSITIVE_INFINITY ? 0 : first, most > 0 ? most : 1000, 7),
    y: roundAxis(low === Number.POSITIVE_INFINITY ? 0 : low - 0.04, high > 0 ? high + 0.08 : 1, 6),
    xTitle: wear.xTitle,
    yTitle: wear.yTitle,
  }
}

/** Line and band of one ring: full between its readings, dashed beyond them where the ring is still fitted. */
function lineOf(frame: Frame, {counted, line}: RingLife, goesOn: boolean): readonly string[] {
  const first = counted[0]?.hours
  const last = counted.at(-1)?.hours
  if (!line || first === undefined || last === undefined) return []
  const end = goesOn ? frame.x.most : last
  const on = (x: number): ChartPoint => ({x, y: lineAt(line, x)})
  return [
    ...edges(line, first, end).map((edge) => chain(frame, edge, 'band')),
    chain(frame, [on(first), on(last)], 'line'),
    ...(end > last ? [chain(frame, [on(last), on(end)], 'beyond')] : []),
  ]
}

function edges(line: StraightLine, from: number, to: number): readonly (readonly ChartPoint[])[] {
  const places = Array.from({length: pieces + 1}, (_, index) => from + (index / pieces) * (to - from))
  return [-1, 1].map((side) =>
    places.map((x) => ({x, y: lineAt(line, x) + side * predictionHalfWidth(line, x, confidence)})),
  )
}

/** Where the observed span ends that a forecast is trusted for, when the hours that are due lie beyond it. */
function spanEnd({x}: Frame, {forecast}: WearTrend): readonly number[] {
  return forecast.kind === 'due' && forecast.beyondSpan && forecast.trustedUntil < x.most
    ? [forecast.trustedUntil]
    : []
}

function dueMark(frame: Frame, {renewal}: WearData, {forecast}: WearTrend): readonly string[] {
  if (forecast.kind !== 'due' || !renewal) return []
  const {due} = forecast
  if (due < frame.x.least || due > frame.x.most) return []
  const foot = placeOf(frame, {x: due, y: frame.y.least})
  return [
    chain(
      frame,
      [
        {x: due, y: frame.y.least},
        {x: due, y: renewal.value},
      ],
      'level',
    ),
    `<path class="chart-solid" d="M${foot.x.toFixed(1)} ${foot.y}l-11-26h22z"/>`,
  ]
}

function labelsOf(
  frame: Frame,
  {renewal, minimumNew}: WearData,
  trend: WearTrend,
  {wear}: ChartWords,
): string {
  const heights = [renewal, minimumNew].flatMap((limit) =>
    limit ? [placeOf(frame, {x: frame.x.least, y: limit.value}).y] : [],
  )
  const labels = newLabels(
    trend.lives.flatMap(({readings}) => readings.map((point) => placeOf(frame, at(point)))),
    heights,
  )
  const along = (value: number, up: number): readonly ChartPoint[] => {
    const {y} = placeOf(frame, {x: frame.x.least, y: value})
    return [plot.left + 12, 560, 900, plot.right].map((x) => ({x, y: y + up}))
  }
  if (renewal)
    labels.put(wear.limit(millimetresText(renewal.value), renewal.governs), along(renewal.value, -20))
  if (minimumNew)
    labels.put(wear.least(millimetresText(minimumNew.value)), [
      ...along(minimumNew.value, 42),
      ...along(minimumNew.value, -20),
    ])
  const {forecast} = trend
  if (forecast.kind === 'due') {
    const {x} = placeOf(frame, {x: Math.min(forecast.due, frame.x.most), y: frame.y.least})
    const words = wear.due(hoursText(Math.floor(forecast.due)))
    labels.put(
      forecast.due > frame.x.most ? `${words} →` : words,
      [60, 110, 160].flatMap((up) => [
        {x: x + 18, y: plot.bottom - up},
        {x: x - 250, y: plot.bottom - up},
      ]),
    )
  }
  const stands = [
    ...trend.renewals.map((hours) => ({hours, words: wear.renewed})),
    ...spanEnd(frame, trend).map((hours) => ({hours, words: wear.span})),
  ]
  for (const {hours, words} of stands) {
    const {x} = placeOf(frame, {x: hours, y: frame.y.most})
    labels.put(
      words,
      [34, 78, 122, 166].flatMap((down) => [
        {x: x + 10, y: plot.top + down},
        {x: x - 10 - textWidth(words, letter), y: plot.top + down},
      ]),
    )
  }
  return labels.drawn()
}

function legendOf(
  points: readonly WearPoint[],
  lines: string,
  {wear, tried}: ChartWords,
): readonly LegendEntry[] {
  const has = (kind: string): boolean => lines.includes(`"chart-${kind}"`)
  const shows = (shape: MarkShape): boolean => points.some((point) => shapeOf(point) === shape)
  return [
    ...(shows('circle') ? [{shape: 'circle', words: wear.found} as const] : []),
    ...(shows('square') ? [{shape: 'square', words: wear.left} as const] : []),
    ...(shows('star') ? [{shape: 'star', words: tried} as const] : []),
    ...(has('line') ? [{line: 'line', words: wear.line} as const] : []),
    ...(has('beyond') ? [{line: 'beyond', words: wear.beyond} as const] : []),
    ...(has('band') ? [{line: 'band', words: wear.band} as const] : []),
  ]
}
