import {judgeReading, type Verdict, verdictsByWeight} from '../../calculations/verdicts/judge-reading.ts'
import {
  type PhasedWearReading,
  splitAtRenewals,
  type WearReading,
} from '../../calculations/wear/split-at-renewals.ts'
import {type StraightLine, straightLine} from '../../calculations/wear/straight-line.ts'
import {type LimitReached, wearForecast} from '../../calculations/wear/wear-forecast.ts'
import {diametralMillimetres, hours} from '../../quantities/named-units.ts'
import {valueIn} from '../../quantities/print-quantity.ts'

/** One clearance of a ring, in hours and millimetres on the diameter. */
export interface WearPoint {
  readonly day: string
  /** Running hours of the component in all. */
  readonly hours: number
  readonly clearance: number
  readonly leastGap?: number
  readonly phase: 'as-found' | 'as-left'
  /** The ring was renewed on that day; stands at the reading as left. */
  readonly renewed: boolean
  /** Uncertainty of the clearance; absent where nobody wrote what it was measured with. */
  readonly uncertainty?: number
  /** A reading that is tried on the page and stands in no record. */
  readonly tried?: boolean
}

/** A limit in millimetres on the diameter, with what is done beyond it. */
export interface WearLimit {
  readonly value: number
  readonly outside: 'RENEW' | 'STOP'
  /** Who says so: "the house rule governs". */
  readonly governs: string
}

/** What a wear chart is drawn from; plain data, so that a page carries it. */
export interface WearData {
  /** "lower wear ring of head H-2408" */
  readonly what: string
  readonly readings: readonly WearPoint[]
  /** Absent where nobody knows it. */
  readonly renewal?: WearLimit
  /** Least gap of a new ring; absent where nobody knows it. */
  readonly minimumNew?: WearLimit
  readonly service: ServiceRule
}

/** How often the rings are measured whatever they show, and how fast hours grow. */
export interface ServiceRule {
  /** Name of the job; blank where none measures the ring. */
  readonly job: string
  readonly hours?: number
  /** Of the calendar, in whole months or in days. */
  readonly every?: {readonly count: number; readonly unit: 'months' | 'days'}
  /** "60 months", as it is written. */
  readonly calendar?: string
  /** Running hours a day, by the first and last reading of the hours. */
  readonly rate?: {readonly perDay: number; readonly from: string; readonly to: string}
  /** The last reading of the hours. */
  readonly last?: {readonly day: string; readonly hours: number}
}

/** One ring from its fitting to its renewal. */
export interface RingLife {
  /** All readings in the order of the hours. */
  readonly readings: readonly WearPoint[]
  /** Those that count: as left only where the ring was fitted. */
  readonly counted: readonly WearPoint[]
  /** From three counted readings on, in hours and millimetres. */
  readonly line?: StraightLine
}

/** What the readings of a ring come to. */
export interface WearTrend {
  readonly lives: readonly RingLife[]
  /** Hours of the renewals. */
  readonly renewals: readonly number[]
  readonly current: RingLife
  readonly last?: WearPoint
  /** Verdict on the last reading. */
  readonly verdict: Verdict
  readonly forecast: WearOutlook
}

/** When the ring reaches its limit, or why nobody can tell. */
export type WearOutlook =
  | {readonly kind: 'not-enough-readings'; readonly count: number}
  | {readonly kind: 'one-place'}
  | {readonly kind: 'no-limit'}
  | {readonly kind: 'no-uncertainty'}
  | {readonly kind: 'no-rise'}
  | {
      readonly kind: 'due'
      readonly due: number
      readonly byLine: number
      readonly byCondition: number
      /** The upper edge of the band meets the limit; from five readings on. */
      readonly byBand?: number
      readonly governs: LimitReached['governs']
      readonly uncertainty: number
      readonly beyondSpan: boolean
      readonly trustedUntil: number
    }

/** Splits readings at renewals, draws a line through each ring and tells when the last one is due. */
export function wearTrend(data: WearData): WearTrend {
  const renewals = [
    ...new Set(data.readings.filter(({renewed}) => renewed).map((reading) => reading.hours)),
  ].sort((a, b) => a - b)
  const readings = data.readings.map(phased)
  const points = new Map<WearReading, WearPoint>()
  for (const [index, point] of data.readings.entries()) {
    const reading = readings[index]
    if (reading) points.set(reading, point)
  }
  const lives = splitAtRenewals(readings, renewals.map(hours)).map((life) =>
    lifeOf(life.flatMap((reading) => points.get(reading) ?? [])),
  )
  const current = lives.at(-1) ?? {readings: [], counted: []}
  const last = current.readings.at(-1)
  return {
    lives,
    renewals,
    current,
    ...(last ? {last} : {}),
    verdict: last ? verdictOf(last, data) : 'CANNOT JUDGE',
    forecast: outlookOf(current, data),
  }
}

function phased({hours: run, clearance, phase}: WearPoint): PhasedWearReading {
  return {hours: hours(run), clearance: diametralMillimetres(clearance), phase}
}

/** What was read as left on a ring that stayed is the reading as found once more. */
function lifeOf(readings: readonly WearPoint[]): RingLife {
  const counted = readings.filter(
    (one) =>
      one.phase === 'as-found' ||
      !readings.some(
        (other) => other.phase === 'as-found' && other.day === one.day && other.hours === one.hours,
      ),
  )
  const places = new Set(counted.map((one) => one.hours))
  return counted.length < 3 || places.size < 2
    ? {readings, counted}
    : {
        readings,
        counted,
        line: straightLine(
          counted.map((one) => one.hours),
          counted.map((one) => one.clearance),
        ),
      }
}

function verdictOf(last: WearPoint, {renewal, minimumNew}: WearData): Verdict {
  const uncertainty = last.uncertainty === undefined ? undefined : diametralMillimetres(last.uncertainty)
  const wear = judgeReading({
    reading: diametralMillimetres(last.clearance),
    uncertainty,
    limits: [limitOf('not-above', renewal)],
    gasFlow: undefined,
  }).verdict
  if (last.phase === 'as-found') return wear
  const gap = judgeReading({
    reading: last.leastGap === undefined ? undefined : diametralMillimetres(last.leastGap),
    uncertainty,
    limits: [limitOf('not-below', minimumNew)],
    gasFlow: undefined,
  }).verdict
  return worse(wear, gap)
}

function limitOf(side: 'not-above' | 'not-below', limit: WearLimit | undefined) {
  return {
    side,
    value: limit && diametralMillimetres(limit.value),
    outside: limit?.outside ?? 'STOP',
    holdsUncertainty: false,
  } as const
}

/** The worse of two verdicts, in the order of the judging. */
export function worse(one: Verdict, other: Verdict): Verdict {
  return verdictsByWeight.find((verdict) => verdict === one || verdict === other) ?? one
}

function outlookOf({counted, line}: RingLife, {renewal}: WearData): WearOutlook {
  if (counted.length < 3) return {kind: 'not-enough-readings', count: counted.length}
  if (!line) return {kind: 'one-place'}
  if (!renewal) return {kind: 'no-limit'}
  const uncertainties = counted.flatMap((one) => one.uncertainty ?? [])
  if (uncertainties.length < counted.length) return {kind: 'no-uncertainty'}
  const uncertainty = Math.max(...uncertainties)
  const {limitReached} = wearForecast({
    readings: counted.map(phased),
    limit: diametralMillimetres(renewal.value),
    instrumentUncertainty: diametralMillimetres(uncertainty),
  })
  if (!limitReached) return {kind: 'no-rise'}
  const first = counted[0]?.hours ?? 0
  const span = (counted.at(-1)?.hours ?? 0) - first
  const {byBand} = limitReached
  return {
    kind: 'due',
    due: valueIn(limitReached.due, 'h'),
    byLine: valueIn(limitReached.byLine, 'h'),
    byCondition: valueIn(limitReached.byCondition, 'h'),
    ...(byBand ? {byBand: valueIn(byBand, 'h')} : {}),
    governs: limitReached.governs,
    uncertainty,
    beyondSpan: limitReached.beyondSpan,
    trustedUntil: first + trustedSpans * span,
  }
}

/** As the forecast flags it. */
const trustedSpans = 1.5
