import {printFigure} from '../../quantities/print-quantity.ts'
import {roundDecimal} from '../../quantities/round-decimal.ts'
import type {ChartWords} from './chart-words-en.ts'
import {type DueRule, nextDue} from './next-due.ts'
import type {ServiceRule, WearData, WearPoint, WearTrend} from './wear-trend.ts'

/** A clearance as it is printed. */
export function millimetresText(value: number): string {
  return printFigure(value, 2)
}

/** Hours as they are printed; what is due is rounded down, never later. */
export function hoursText(value: number): string {
  return printFigure(value, Number.isInteger(value) ? 0 : 1)
}

function dueHours(value: number): string {
  return roundDecimal(value, 0, 'down').replace('-', '−')
}

/** What the readings of a ring come to, in sentences: line, limit, due hours, flags, verdict, next due. */
export function wearStatements(data: WearData, trend: WearTrend, all: ChartWords): readonly string[] {
  const words = all.wear
  if (data.readings.length === 0) return [words.none, ...limitStatements(data, all)]
  return [
    ...(trend.renewals.length > 0 ? [words.renewals(trend.renewals.map(hoursText))] : []),
    ...lineStatements(trend, all),
    ...limitStatements(data, all),
    ...dueStatements(trend, all),
    ...lastStatements(trend, all),
    ...nextStatements(trend, data.service, all),
  ]
}

function lineStatements({lives, current, forecast}: WearTrend, {wear}: ChartWords): readonly string[] {
  const lines = lives.flatMap(({line}, index) =>
    line
      ? [
          wear.growth(
            wear.ring(index + 1, lives.length),
            printFigure(line.slope * 1000, 3),
            line.count,
            printFigure(line.residualDeviation, 3),
          ),
        ]
      : [],
  )
  return [
    ...lines,
    ...(forecast.kind === 'not-enough-readings' ? [wear.notEnough(forecast.count)] : []),
    ...(forecast.kind === 'one-place' ? [wear.onePlace] : []),
    ...(lives.some((life) => life.counted.length < life.readings.length) && current ? [wear.repeated] : []),
  ]
}

function limitStatements({renewal, minimumNew}: WearData, {wear}: ChartWords): readonly string[] {
  return [
    renewal
      ? wear.limitStands(millimetresText(renewal.value), renewal.governs, renewal.outside)
      : wear.noLimit,
    minimumNew ? wear.leastStands(millimetresText(minimumNew.value)) : wear.noLeast,
  ]
}

function dueStatements({forecast, current}: WearTrend, {wear}: ChartWords): readonly string[] {
  if (forecast.kind === 'no-uncertainty') return [wear.noUncertainty]
  if (forecast.kind === 'no-rise') return [wear.noRise]
  if (forecast.kind !== 'due') return []
  const last = current.counted.at(-1)?.hours ?? 0
  return [
    forecast.governs === 'prediction band'
      ? wear.bandDue(dueHours(forecast.due))
      : wear.condition(dueHours(forecast.due), millimetresText(forecast.uncertainty)),
    wear.lineMeets(dueHours(forecast.byLine)),
    ...(forecast.byBand === undefined ? [wear.bandUnused] : []),
    ...(forecast.due <= last ? [wear.met] : []),
    ...(forecast.beyondSpan ? [wear.beyondSpan(dueHours(forecast.trustedUntil))] : []),
  ]
}

function lastStatements({last, verdict}: WearTrend, {wear, verdicts, tried}: ChartWords): readonly string[] {
  if (!last) return []
  const gap = last.leastGap === undefined ? wear.noGap : wear.gap(millimetresText(last.leastGap))
  return [
    wear.lastReading(millimetresText(last.clearance), `${hoursText(last.hours)}`, verdicts[verdict]) +
      (last.tried ? ` (${tried})` : ''),
    ...(last.phase === 'as-left' ? [gap] : []),
  ]
}

function nextStatements(trend: WearTrend, service: ServiceRule, all: ChartWords): readonly string[] {
  const {due} = all
  if (trend.verdict === 'RENEW' || trend.verdict === 'STOP') return [due.now]
  const {rules, first} = nextDue(trend, service)
  const isOpen = trend.forecast.kind !== 'due' && trend.forecast.kind !== 'no-rise'
  const named = (one: DueRule): string =>
    due.at(ruleName(one, service, all), one.hours === undefined ? '' : dueHours(one.hours), one.day ?? '')
  const {rate} = service
  return [
    rules.length === 0
      ? due.none
      : first
        ? due.next(named(first), rules.filter((one) => one !== first).map(named))
        : due.apart(rules.map(named)),
    ...(isOpen ? [due.conditionUnknown] : []),
    ...(rate && rules.some((one) => one.hours !== undefined && one.day !== undefined)
      ? [due.rate(printFigure(rate.perDay, 2), rate.from, rate.to)]
      : []),
  ]
}

function ruleName({rule}: DueRule, {job, hours = 0, calendar = ''}: ServiceRule, {due}: ChartWords): string {
  if (rule === 'condition') return due.rules.condition
  return rule === 'hours' ? due.rules.hours(job, hoursText(hours)) : due.rules.calendar(job, calendar)
}

/** Every reading in words, in the order of the hours. */
export function pointWords({lives}: WearTrend, {wear, tried}: ChartWords): readonly string[] {
  const said = (point: WearPoint): string =>
    [
      wear.point(
        point.phase === 'as-found' ? wear.found : wear.left,
        millimetresText(point.clearance),
        hoursText(point.hours),
        point.day,
      ),
      ...(point.renewed ? [wear.renewed] : []),
      ...(point.tried ? [tried] : []),
    ].join(', ')
  return lives.flatMap(({readings}) => readings.map(said))
}
