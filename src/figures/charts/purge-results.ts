import {dayNumber} from '../../calculations/planning/calendar-day.ts'
import {judgeReading, type Verdict} from '../../calculations/verdicts/judge-reading.ts'
import {quantityOf} from '../../quantities/quantity.ts'
import {worse} from './wear-trend.ts'

/** What came out of a cofferdam; `mixture` is oil and cargo together, or what nobody can tell. */
export const purgeFluids = ['oil', 'cargo', 'water', 'mixture', 'none'] as const

export type PurgeFluid = (typeof purgeFluids)[number]

/** One purge, in millilitres and running hours. */
export interface PurgePoint {
  readonly day: string
  /** Running hours since the purge before; none where the pump did not run. */
  readonly hours: number
  /** Gas was seen to flow at the outlet. */
  readonly gas: boolean
  readonly volume: number
  readonly fluid: PurgeFluid
  /** Uncertainty of the volume; absent where nobody wrote what it was measured with. */
  readonly uncertainty?: number
  readonly tried?: boolean
}

/** Limits of one kind of leak by one measure; what is absent nobody knows. */
export interface RateLimits {
  /** From here on the pump is watched. */
  readonly watch?: number
  readonly renew?: number
  readonly stop?: number
}

/** What a chart of purges is drawn from; plain data, so that a page carries it. */
export interface PurgeData {
  /** "cofferdam of pump 4S" */
  readonly what: string
  /** In the order in which they were taken. */
  readonly results: readonly PurgePoint[]
  /** Above it the pump is stopped, whatever the rate; in millilitres. */
  readonly large?: number
  /** In millilitres for each running hour. */
  readonly hourly: {readonly oil: RateLimits; readonly cargo: RateLimits}
  /** In millilitres for each day. */
  readonly daily: {readonly oil: RateLimits; readonly cargo: RateLimits}
}

/** A purge as it is judged. */
export interface JudgedPurge {
  readonly point: PurgePoint
  readonly verdict: Verdict
  /** Absent without running hours. */
  readonly perHour?: number
  /** Absent for the first purge, and for a second one of its day. */
  readonly perDay?: number
  /** Volume that would still be accepted, by the stricter of both measures; absent where neither speaks. */
  readonly accepted?: number
  /** The third of three valid results of one kind, each above the one before. */
  readonly rising: readonly number[]
}

/** Judges each purge by its hours and by the days since the one before. */
export function judgePurges(data: PurgeData): readonly JudgedPurge[] {
  const judged: JudgedPurge[] = []
  for (const [index, point] of data.results.entries()) {
    const before = data.results[index - 1]
    const days = before ? dayNumber(point.day) - dayNumber(before.day) : 0
    const rising = risingTo(point, judged)
    const measures = measuresOf(point, days, data)
    const accepted = Math.min(
      ...measures.flatMap(({limits, per}) => (limits.watch === undefined ? [] : [limits.watch * per])),
    )
    judged.push({
      point,
      verdict: verdictOf(point, measures, rising.length > 0, data),
      ...(point.hours > 0 ? {perHour: point.volume / point.hours} : {}),
      ...(days > 0 ? {perDay: point.volume / days} : {}),
      ...(Number.isFinite(accepted) ? {accepted} : {}),
      rising,
    })
  }
  return judged
}

/** One way to judge a volume: over so many hours or days. */
interface Measure {
  readonly limits: RateLimits
  readonly per: number
}

function measuresOf(
  {hours, fluid}: PurgePoint,
  days: number,
  {hourly, daily}: PurgeData,
): readonly Measure[] {
  const kind = fluid === 'oil' ? 'oil' : 'cargo'
  return [
    ...(hours > 0 ? [{limits: hourly[kind], per: hours}] : []),
    ...(days > 0 ? [{limits: daily[kind], per: days}] : []),
  ]
}

/** Washing water and what nobody can tell count as cargo; a result without gas counts only where it is beyond a limit. */
function verdictOf(
  point: PurgePoint,
  measures: readonly Measure[],
  isRising: boolean,
  {large}: PurgeData,
): Verdict {
  const verdicts: Verdict[] = [
    judge(point, 1, [{value: large, outside: 'STOP'}]),
    ...measures.flatMap(({limits, per}): Verdict[] => [
      judge(point, per, [
        {value: limits.renew, outside: 'RENEW'},
        {value: limits.stop, outside: 'STOP'},
      ]),
      ...(limits.watch !== undefined && point.volume / per >= limits.watch ? ['WATCH' as const] : []),
    ]),
    ...(measures.length === 0 ? ['CANNOT JUDGE' as const] : []),
    ...(isRising ? ['WATCH' as const] : []),
    ...(point.fluid === 'mixture' ? ['STOP' as const] : []),
    ...(point.gas ? [] : ['NOT VALID' as const]),
  ]
  return verdicts.reduce(worse)
}

/** Holds a volume, or a volume over hours or days, against limits of the same measure. */
function judge(
  {volume, uncertainty, gas, fluid}: PurgePoint,
  per: number,
  limits: readonly {readonly value: number | undefined; readonly outside: 'RENEW' | 'STOP'}[],
): Verdict {
  // A dry purge is read without an instrument.
  const doubt = fluid === 'none' ? 0 : uncertainty
  return judgeReading({
    reading: quantityOf('volume-flow', volume / per),
    uncertainty: doubt === undefined ? undefined : quantityOf('volume-flow', doubt / per),
    limits: limits.map(({value, outside}) => ({
      side: 'not-above',
      value: value === undefined ? undefined : quantityOf('volume-flow', value),
      outside,
      holdsUncertainty: false,
    })),
    gasFlow: gas ? 'confirmed' : 'not confirmed',
  }).verdict
}

/** The volumes of three valid results of one kind in a row that rise to this one; none where they do not. */
function risingTo(point: PurgePoint, before: readonly JudgedPurge[]): readonly number[] {
  if (point.fluid === 'none' || !point.gas) return []
  const valid = before.filter((one) => one.point.gas).slice(-2)
  const volumes = [...valid.map((one) => one.point), point]
  const isRise = volumes.every(
    (one, index) =>
      one.fluid === point.fluid && (index === 0 || one.volume > (volumes[index - 1]?.volume ?? 0)),
  )
  return volumes.length === 3 && isRise ? volumes.map((one) => one.volume) : []
}
