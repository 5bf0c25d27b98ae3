import {printFigure} from '../../quantities/print-quantity.ts'
import type {ChartWords} from './chart-words-en.ts'
import {
  type JudgedPurge,
  judgePurges,
  type PurgeData,
  type PurgePoint,
  type RateLimits,
} from './purge-results.ts'

/** A volume in millilitres as it is printed. */
export function volumeText(value: number): string {
  return printFigure(value, Number.isInteger(value) ? 0 : 1)
}

/** What came, in words: "35 ml of oil", "dry". */
export function resultText({volume, fluid}: PurgePoint, {purge}: ChartWords): string {
  return fluid === 'none' ? purge.fluids.none : purge.volume(volumeText(volume), purge.fluids[fluid])
}

/** What purges come to, in sentences: what does not count, what rises, the last result by every rate, the limits. */
export function purgeStatements(data: PurgeData, words: ChartWords): readonly string[] {
  const {purge, verdicts} = words
  const judged = judgePurges(data)
  return [
    ...(judged.length === 0 ? [purge.none] : []),
    ...judged
      .filter(({point}) => !point.gas)
      .map(({point, verdict}) =>
        verdict === 'NOT VALID'
          ? purge.noGas(point.day, resultText(point, words))
          : purge.beyondAllTheSame(point.day, resultText(point, words), verdicts[verdict]),
      ),
    ...risingStatements(judged, words),
    ...lastStatements(judged.at(-1), words),
    ...limitStatements(data, words),
  ]
}

/** The newest rise alone: an older one is past where a result fell since. */
function risingStatements(judged: readonly JudgedPurge[], {purge}: ChartWords): readonly string[] {
  const last = judged.filter(({point}) => point.gas).at(-1)
  return last && last.rising.length > 0
    ? [purge.rising(last.rising.map(volumeText), purge.fluids[last.point.fluid], last.point.day)]
    : []
}

function lastStatements(last: JudgedPurge | undefined, words: ChartWords): readonly string[] {
  if (!last) return []
  const {purge, verdicts, tried} = words
  const {point, perHour, perDay, verdict} = last
  const isDry = point.fluid === 'none'
  const rates = [
    ...(isDry || perHour === undefined ? [] : [purge.perHour(printFigure(perHour, 1))]),
    ...(isDry || perDay === undefined ? [] : [purge.perDay(printFigure(perDay, 1))]),
  ]
  const basis =
    perHour === undefined
      ? [perDay === undefined ? purge.neither : purge.daysAlone]
      : perDay === undefined
        ? [purge.hoursAlone]
        : []
  return [
    purge.last(point.day, resultText(point, words), rates, verdicts[verdict]) +
      (point.tried ? ` (${tried})` : ''),
    ...basis,
    ...(point.fluid === 'mixture' ? [purge.mixture] : []),
    ...(point.fluid === 'water' ? [purge.water] : []),
  ]
}

function limitStatements({hourly, daily, large}: PurgeData, {purge}: ChartWords): readonly string[] {
  const said = ({watch, renew, stop}: RateLimits): readonly string[] => {
    const known = [
      ...(watch === undefined ? [] : [purge.watchFrom(volumeText(watch))]),
      ...(renew === undefined ? [] : [purge.renewAbove(volumeText(renew))]),
      ...(stop === undefined ? [] : [purge.stopAbove(volumeText(stop))]),
    ]
    return renew === undefined || stop === undefined ? [...known, purge.notKnown] : known
  }
  return [
    ...(['oil', 'cargo'] as const).map((kind) =>
      purge.limits(purge.kinds[kind], said(hourly[kind]), said(daily[kind])),
    ),
    large === undefined ? purge.noLarge : purge.largeStands(volumeText(large)),
  ]
}
