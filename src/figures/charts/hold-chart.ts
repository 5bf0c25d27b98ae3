import {printFigure} from '../../quantities/print-quantity.ts'
import {roundAxis} from './axis.ts'
import {
  type Chart,
  chain,
  chartSvg,
  type Frame,
  type LegendEntry,
  markAt,
  newLabels,
  placeOf,
  plot,
  upright,
} from './chart-frame.ts'
import type {ChartWords} from './chart-words-en.ts'
import {type HoldData, type JudgedHold, judgeHold} from './hold-results.ts'
import {holdStatements, oneDecimal} from './hold-statements.ts'

/**
 * A pressure hold over its minutes: absolute pressure as measured and as it would be at the temperature of the start,
 * against the line of the allowed drop.
 *
 * The same function draws the page as it is built and a hold that is tried on it.
 */
export function holdChart(data: HoldData, words: ChartWords): Chart {
  const {hold, tried} = words
  const judged = judgeHold(data)
  const statements = holdStatements(data, judged, words)
  const points = judged.points.map(({point, measured, corrected}) =>
    [
      hold.point(oneDecimal(point.minute), printFigure(measured, 3), printFigure(corrected, 3)),
      ...(point.tried ? [tried] : []),
    ].join(', '),
  )
  const alternative = [
    hold.title(data.what),
    ...(points.length > 0 ? [hold.points(points)] : []),
    ...statements,
  ].join(' ')
  return {svg: svgOf(data, judged, words, alternative), alternative, statements}
}

function svgOf(data: HoldData, {points}: JudgedHold, {hold, tried}: ChartWords, alternative: string): string {
  const {allowedDrop, holdTime} = data
  const start = points[0]?.corrected ?? 0
  const lasts = points.at(-1)?.after ?? 0
  const least = allowedDrop === undefined ? undefined : start - allowedDrop / 1000
  const heights = [
    ...points.flatMap((one) => [one.measured, one.corrected]),
    ...(least === undefined ? [] : [least]),
  ]
  const end = Math.max(lasts, holdTime ?? 0, 1)
  const frame: Frame = {
    x: roundAxis(0, end * 1.03, 7),
    y:
      points.length > 0
        ? roundAxis(Math.min(...heights) - 0.002, Math.max(...heights) + 0.004, 6)
        : roundAxis(0, 1, 5),
    xTitle: hold.xTitle,
    yTitle: hold.yTitle,
  }
  const places = points.flatMap(({after, measured, corrected}) => [
    {x: after, y: measured},
    {x: after, y: corrected},
  ])
  const labels = newLabels(places.map((one) => placeOf(frame, one)))
  const hasLimit = least !== undefined && holdTime !== undefined && points.length > 0
  if (hasLimit) {
    const {y} = placeOf(frame, {x: holdTime, y: least})
    labels.put(
      hold.allowed(oneDecimal(allowedDrop ?? 0)),
      [plot.right, plot.left + 12].flatMap((x) => [
        {x, y: y + 46},
        {x, y: y - 20},
        {x, y: y + 92},
      ]),
    )
  }
  if (holdTime !== undefined) {
    const {x} = placeOf(frame, {x: holdTime, y: frame.y.most})
    labels.put(
      hold.time(oneDecimal(holdTime)),
      [34, 78, 122].map((down) => ({x: x - 330, y: plot.top + down})),
    )
  }
  const isTried = points.some(({point}) => point.tried)
  return chartSvg(
    frame,
    [
      ...(holdTime === undefined ? [] : [upright(frame, holdTime, 'mark')]),
      ...(points.length > 0
        ? [
            chain(
              frame,
              [
                {x: 0, y: start},
                {x: frame.x.most, y: start},
              ],
              'least',
            ),
          ]
        : []),
      ...(hasLimit
        ? [
            chain(
              frame,
              [
                {x: 0, y: start},
                {x: holdTime, y: least},
                {x: frame.x.most, y: least},
              ],
              'limit',
            ),
          ]
        : []),
      chain(
        frame,
        points.map(({after, corrected}) => ({x: after, y: corrected})),
        'line',
      ),
      ...points.map(({after, measured}) => markAt(frame, {x: after, y: measured}, 'circle')),
      ...points.map(({after, corrected}) =>
        markAt(frame, {x: after, y: corrected}, isTried ? 'star' : 'square'),
      ),
      labels.drawn(),
    ],
    legendOf(points.length > 0, hasLimit, isTried, {hold, tried}),
    alternative,
  )
}

function legendOf(
  hasPoints: boolean,
  hasLimit: boolean,
  isTried: boolean,
  {hold, tried}: Pick<ChartWords, 'hold' | 'tried'>,
): readonly LegendEntry[] {
  if (!hasPoints) return []
  return [
    {shape: 'circle', words: hold.measured},
    {shape: isTried ? 'star' : 'square', words: isTried ? `${hold.atStart}, ${tried}` : hold.atStart},
    {line: 'least', words: hold.level},
    ...(hasLimit ? [{line: 'limit', words: hold.limitLine} as const] : []),
  ]
}
