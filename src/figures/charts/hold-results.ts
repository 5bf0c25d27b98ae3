import {type PressureHold, pressureHold} from '../../calculations/gas/pressure-hold.ts'
import {absoluteFromGauge} from '../../calculations/gas/standard-air.ts'
import {judgeReading, type Verdict} from '../../calculations/verdicts/judge-reading.ts'
import {
  bar,
  barGauge,
  degreesCelsius,
  litres,
  millibarAbsolute,
  minutes,
} from '../../quantities/named-units.ts'
import {valueIn} from '../../quantities/print-quantity.ts'
import {worse} from './wear-trend.ts'

/** One look at gauge, thermometer and barometer during a pressure hold. */
export interface HoldPoint {
  readonly minute: number
  /** In bar above the air. */
  readonly gauge: number
  /** Of the gas, in degrees Celsius. */
  readonly temperature: number
  /** In millibar absolute. */
  readonly barometer: number
  readonly tried?: boolean
}

/** What a chart of a pressure hold is drawn from; plain data, so that a page carries it. */
export interface HoldData {
  /** "cofferdam of pump 4S" */
  readonly what: string
  /** "2019-03-02, test 1"; blank where there is none. */
  readonly test: string
  /** In the order of the minutes. */
  readonly readings: readonly HoldPoint[]
  /** In minutes; absent where nobody knows it. */
  readonly holdTime?: number
  /** Over the hold time, in millibar; absent where nobody knows it. */
  readonly allowedDrop?: number
  readonly outside: 'RENEW' | 'STOP'
  /** Of the gas, in litres; absent where nobody knows it. */
  readonly volume?: number
}

/** A reading with its pressures, absolute, in bar. */
export interface CorrectedPoint {
  readonly point: HoldPoint
  /** Minutes since the first reading. */
  readonly after: number
  readonly measured: number
  /** What it would be at the temperature of the start. */
  readonly corrected: number
}

/** What a pressure hold comes to. */
export interface JudgedHold {
  readonly points: readonly CorrectedPoint[]
  readonly verdict: Verdict
  /** Absent with fewer than two readings. */
  readonly end?: HoldEnd
}

/** The end of a hold against its start. */
export interface HoldEnd {
  readonly minutes: number
  /** Drop after correction, in millibar; below zero where nothing was lost. */
  readonly drop: number
  /** Drop of the gauge alone, in millibar. */
  readonly gaugeDrop: number
  readonly warming: number
  /** In millibar. */
  readonly barometerRise: number
  /** Leak of free gas in millilitres a minute; absent where the volume is not known. */
  readonly leak?: number
  readonly isShort: boolean
}

/** Judges a hold by its first and its last reading, corrected for temperature and barometer with absolute pressures. */
export function judgeHold(data: HoldData): JudgedHold {
  const [first] = data.readings
  const last = data.readings.at(-1)
  if (!first || !last) return {points: [], verdict: 'CANNOT JUDGE'}
  const points = data.readings.map((point) => correctedPoint(first, point))
  const run = last.minute - first.minute
  if (run <= 0) return {points, verdict: 'CANNOT JUDGE'}
  const hold = holdOf(first, last, data.volume)
  const isShort = data.holdTime !== undefined && run < data.holdTime
  const end: HoldEnd = {
    minutes: run,
    drop: valueIn(hold.correctedLoss, 'mbar'),
    gaugeDrop: (first.gauge - last.gauge) * 1000,
    warming: last.temperature - first.temperature,
    barometerRise: last.barometer - first.barometer,
    ...(hold.leakFlow ? {leak: valueIn(hold.leakFlow, 'ml/min')} : {}),
    isShort,
  }
  const byDrop = judgeReading({
    reading: hold.correctedLoss,
    uncertainty: undefined,
    limits: [
      {
        side: 'not-above',
        value: data.allowedDrop === undefined ? undefined : bar(data.allowedDrop / 1000),
        outside: data.outside,
        // The hold time is chosen so that the allowed drop holds what gauge and thermometer can hide.
        holdsUncertainty: true,
      },
    ],
    gasFlow: undefined,
  }).verdict
  return {
    points,
    end,
    verdict: isShort || data.holdTime === undefined ? worse(byDrop, 'CANNOT JUDGE') : byDrop,
  }
}

function correctedPoint(first: HoldPoint, point: HoldPoint): CorrectedPoint {
  const {correctedLoss} = holdOf(first, point, undefined)
  const start = absoluteBar(first)
  return {
    point,
    after: point.minute - first.minute,
    measured: absoluteBar(point),
    corrected: start - valueIn(correctedLoss, 'bar'),
  }
}

function absoluteBar({gauge, barometer}: HoldPoint): number {
  return valueIn(absoluteFromGauge(barGauge(gauge), millibarAbsolute(barometer)), 'bar(a)')
}

function holdOf(start: HoldPoint, end: HoldPoint, volume: number | undefined): PressureHold {
  const run = end.minute - start.minute
  return pressureHold({
    start: barGauge(start.gauge),
    end: barGauge(end.gauge),
    startTemperature: degreesCelsius(start.temperature),
    endTemperature: degreesCelsius(end.temperature),
    startBarometer: millibarAbsolute(start.barometer),
    endBarometer: millibarAbsolute(end.barometer),
    ...(volume !== undefined && run > 0 ? {volume: litres(volume), duration: minutes(run)} : {}),
  })
}
