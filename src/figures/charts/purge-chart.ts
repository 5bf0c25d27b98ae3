import {dateOfDay, dayNumber} from '../../calculations/planning/calendar-day.ts'
import {rounded} from '../svg-text.ts'
import {type ChartPoint, roundAxis} from './axis.ts'
import {
  across,
  type Chart,
  chartSvg,
  type Frame,
  type LegendEntry,
  markAt,
  newLabels,
  placeOf,
  plot,
} from './chart-frame.ts'
import type {ChartWords} from './chart-words-en.ts'
import type {MarkShape} from './marks.ts'
import {type JudgedPurge, judgePurges, type PurgeData, type PurgeFluid, purgeFluids} from './purge-results.ts'
import {purgeStatements, resultText, volumeText} from './purge-statements.ts'

const shapes: Readonly<Record<PurgeFluid, MarkShape>> = {
  oil: 'dot',
  cargo: 'triangle',
  water: 'diamond',
  mixture: 'square',
  none: 'circle',
}

/**
 * Volumes of purges over days: what came by shape, what does not count crossed out, and beside each result how much
 * would be accepted over its hours and days.
 *
 * The same function draws the page as it is built and a purge that is tried on it.
 */
export function purgeChart(data: PurgeData, words: ChartWords): Chart {
  const {purge, tried, verdicts} = words
  const judged = judgePurges(data)
  const statements = purgeStatements(data, words)
  const points = judged.map(({point, verdict}) =>
    [
      purge.point(point.day, resultText(point, words), verdicts[verdict].replace(/\.$/u, '')),
      ...(point.tried ? [tried] : []),
    ].join(', '),
  )
  const alternative = [
    purge.title(data.what),
    ...(points.length > 0 ? [purge.points(points)] : []),
    ...statements,
  ].join(' ')
  return {svg: svgOf(data, judged, words, alternative), alternative, statements}
}

function svgOf(
  data: PurgeData,
  judged: readonly JudgedPurge[],
  {purge, tried}: ChartWords,
  alternative: string,
): string {
  const frame = frameOf(judged, purge)
  const {large} = data
  const showsLarge = large !== undefined && large <= frame.y.most
  const labels = newLabels(judged.map((one) => placeOf(frame, at(one))))
  if (showsLarge) {
    const {y} = placeOf(frame, {x: frame.x.least, y: large})
    labels.put(purge.large(volumeText(large)), [{x: plot.left + 12, y: y - 20}])
  }
  const last = judged.filter(({point}) => point.gas).at(-1)
  if (last && last.rising.length > 0) {
    const {x, y} = placeOf(frame, at(last))
    labels.put(purge.rise, [
      {x: x - 360, y: y - 24},
      {x: x - 360, y: y + 12},
      {x: x + 40, y: y - 24},
    ])
  }
  const brackets = judged.map((one) => bracketOf(frame, one)).join('')
  return chartSvg(
    frame,
    [
      ...(showsLarge ? [across(frame, large, 'limit')] : []),
      ...(brackets === '' ? [] : [`<path class="chart-level" d="${brackets}"/>`]),
      ...judged.map((one) => markAt(frame, at(one), one.point.tried ? 'star' : shapes[one.point.fluid])),
      ...judged.filter(isCrossed).map((one) => markAt(frame, at(one), 'cross')),
      labels.drawn(),
    ],
    legendOf(judged, brackets !== '', {purge, tried}),
    alternative,
  )
}

/** A result that does not count. */
function isCrossed({verdict}: JudgedPurge): boolean {
  return verdict === 'NOT VALID'
}

function at({point}: JudgedPurge): ChartPoint {
  return {x: dayNumber(point.day), y: point.volume}
}

function frameOf(judged: readonly JudgedPurge[], purge: ChartWords['purge']): Frame {
  const days = judged.map(({point}) => dayNumber(point.day))
  const first = days.length > 0 ? Math.min(...days) : 0
  const last = days.length > 0 ? Math.max(...days) : 0
  const volumes = judged.map(({point}) => point.volume)
  const highest = Math.max(10, ...volumes)
  const accepted = Math.max(0, ...judged.map((one) => one.accepted ?? 0))
  return {
    x: roundAxis(first - 1, Math.max(last + 1, first + 7), 4),
    y: roundAxis(0, Math.min(Math.max(highest * 1.1, accepted * 1.05), highest * 2), 6),
    xTitle: purge.xTitle,
    yTitle: purge.yTitle,
    xWords: dateOfDay,
  }
}

/** From nothing up to what would be accepted, beside the mark; open at the top where the chart ends first. */
function bracketOf(frame: Frame, {point, accepted}: JudgedPurge): string {
  if (accepted === undefined) return ''
  const x = dayNumber(point.day)
  const foot = placeOf(frame, {x, y: 0})
  const head = placeOf(frame, {x, y: Math.min(accepted, frame.y.most)})
  const cap = accepted <= frame.y.most ? 'm-9 0h18' : ''
  return `M${rounded(foot.x + 24)} ${rounded(foot.y)}V${rounded(head.y)}${cap}`
}

function legendOf(
  judged: readonly JudgedPurge[],
  hasBrackets: boolean,
  {purge, tried}: Pick<ChartWords, 'purge' | 'tried'>,
): readonly LegendEntry[] {
  const recorded = judged.filter(({point}) => !point.tried)
  return [
    ...purgeFluids
      .filter((fluid) => recorded.some(({point}) => point.fluid === fluid))
      .map((fluid) => ({shape: shapes[fluid], words: purge.fluids[fluid]})),
    ...(judged.some(isCrossed) ? [{shape: 'cross', words: purge.notValid} as const] : []),
    ...(judged.some(({point}) => point.tried) ? [{shape: 'star', words: tried} as const] : []),
    ...(hasBrackets ? [{line: 'level', words: purge.accepted} as const] : []),
  ]
}
