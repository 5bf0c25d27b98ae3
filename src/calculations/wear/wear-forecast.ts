import {printedText, printQuantity} from '../../quantities/print-quantity.ts'
import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'
import {refuseBelowZero} from '../refuse-inputs.ts'
import type {WearReading} from './split-at-renewals.ts'
import {lineAt, predictionHalfWidth, type StraightLine, straightLine} from './straight-line.ts'

/** Readings of one ring since its renewal, and the limit it wears towards. */
export interface WearForecastInput {
  readonly readings: readonly WearReading[]
  readonly limit: Quantity<'diametral-clearance'>
  /** Uncertainty of one measured clearance. */
  readonly instrumentUncertainty: Quantity<'diametral-clearance'>
  /** Running hours at which the clearance is asked for. */
  readonly at?: Quantity<'time'>
}

/** Clearance expected at given hours, with the band in which one more reading is expected. */
export interface ExpectedClearance {
  readonly clearance: Quantity<'diametral-clearance'>
  readonly lower: Quantity<'diametral-clearance'>
  readonly upper: Quantity<'diametral-clearance'>
  readonly beyondSpan: boolean
}

/** When the limit is reached. */
export interface LimitReached {
  /** The line meets the limit. */
  readonly byLine: Quantity<'time'>
  /** The line meets the limit less the uncertainty of the instrument. */
  readonly byCondition: Quantity<'time'>
  /** The upper edge of the band meets the limit, not before the last reading; only from five readings on. */
  readonly byBand: Quantity<'time'> | undefined
  /** The earlier of condition and band. */
  readonly due: Quantity<'time'>
  readonly governs: 'line less uncertainty' | 'prediction band'
  /** True when the due hours lie more than one and a half times the observed span after the first reading. */
  readonly beyondSpan: boolean
}

/** Wear of a ring by its readings. */
export interface WearForecast {
  readonly wear: Quantity<'diametral-wear'>
  /** Clearance of the line at zero hours. */
  readonly start: Quantity<'diametral-clearance'>
  readonly residualDeviation: Quantity<'diametral-clearance'>
  /** Undefined when the line does not rise. */
  readonly limitReached: LimitReached | undefined
  /** Undefined when no hours were asked for. */
  readonly expected: ExpectedClearance | undefined
}

export const wearForecastNote: CalculationNote = {
  name: 'wear-forecast',
  words:
    'least-squares line through the clearances of one ring over its running hours; due where the line comes within the uncertainty of the instrument of the limit, or, from five readings on, where the 95 % band for one more reading meets the limit',
  formula: [
    'b = Sxy/Sxx, a = ȳ − b·x̄',
    'h line = (limit − a)/b',
    'h condition = (limit − u − a)/b',
    's² = Σ(y − a − b·x)²/(n − 2)',
    'band at x = a + b·x ± t(0.975; n − 2)·s·√(1 + 1/n + (x − x̄)²/Sxx)',
    'flagged where h > h first + 1.5·(h last − h first)',
  ],
  symbols: [
    {symbol: 'x', meaning: 'hours'},
    {symbol: 'x̄', meaning: 'mean of the hours'},
    {symbol: 'y', meaning: 'clearance'},
    {symbol: 'ȳ', meaning: 'mean of the clearances'},
    {symbol: 'a', meaning: 'clearance of the line at no hours'},
    {symbol: 'b', meaning: 'growth of the line with each hour'},
    {symbol: 'Sxx', meaning: 'sum of squares of the hours about their mean'},
    {symbol: 'Sxy', meaning: 'sum of products of hours and clearances about their means'},
    {symbol: 'h line', meaning: 'hours at which the line meets the limit'},
    {symbol: 'h condition', meaning: 'hours at which the line meets the limit less the uncertainty'},
    {symbol: 'u', meaning: 'uncertainty of the instrument'},
    {symbol: 's', meaning: 'standard deviation about the line'},
    {symbol: 'n', meaning: 'number of readings'},
    {symbol: 't(0.975; n − 2)', meaning: 'quantile of Student’s t'},
    {symbol: 'h', meaning: 'hours forecast'},
    {symbol: 'h first', meaning: 'hours of the first reading'},
    {symbol: 'h last', meaning: 'hours of the last reading'},
  ],
  sources: [
    {
      title: 'textbooks of statistics, simple regression and prediction interval',
      edition: 'unknown',
      howKnown: 'reprint',
      status: 'unknown',
    },
    {
      title:
        'at least three readings, the band from five on, flag beyond one and a half times the span: house rule',
      edition: 'none',
      howKnown: 'common-practice',
      status: 'unknown',
    },
  ],
  validFor: 'three readings or more of one ring since its renewal, with steady service',
}

const confidence = 0.95
const readingsForBand = 5
const trustedSpans = 1.5

/**
 * Forecast of the wear of a ring from its readings since renewal.
 *
 * Source: textbooks of statistics (regression and prediction interval; formula read in a reprint); the rules on the
 * number of readings and the span are house rules.
 * Valid for: three readings or more of one ring, in the order of the hours, steady service.
 *
 * @throws {RangeError}
 *   When there are fewer than three readings, they are not in the order of the hours or all at one time, or the
 *   uncertainty is negative.
 */
export function wearForecast(input: WearForecastInput): WearForecast {
  refuseReadings(input)
  const hours = input.readings.map((reading) => reading.hours.si)
  const line = straightLine(
    hours,
    input.readings.map((reading) => reading.clearance.si),
  )
  const first = Math.min(...hours)
  const last = Math.max(...hours)
  const trustedUntil = first + trustedSpans * (last - first)
  return {
    wear: quantityOf('diametral-wear', line.slope),
    start: quantityOf('diametral-clearance', line.intercept),
    residualDeviation: quantityOf('diametral-clearance', line.residualDeviation),
    limitReached: line.slope > 0 ? limitReached(input, line, last, trustedUntil) : undefined,
    expected: input.at && expectedAt(line, input.at.si, trustedUntil),
  }
}

function limitReached(
  input: WearForecastInput,
  line: StraightLine,
  last: number,
  trustedUntil: number,
): LimitReached {
  const byLine = (input.limit.si - line.intercept) / line.slope
  const byCondition = (input.limit.si - input.instrumentUncertainty.si - line.intercept) / line.slope
  const byBand = line.count >= readingsForBand ? bandMeets(line, input.limit.si, last, byLine) : undefined
  const bandGoverns = byBand !== undefined && byBand < byCondition
  const due = bandGoverns ? byBand : byCondition
  return {
    byLine: quantityOf('time', byLine),
    byCondition: quantityOf('time', byCondition),
    byBand: byBand === undefined ? undefined : quantityOf('time', byBand),
    due: quantityOf('time', due),
    governs: bandGoverns ? 'prediction band' : 'line less uncertainty',
    beyondSpan: due > trustedUntil,
  }
}

/** First time from the last reading on at which the upper edge reaches the limit: between that reading and the line, above which the edge lies; the reading itself where the edge has met the limit by then. */
function bandMeets(line: StraightLine, limit: number, last: number, byLine: number): number {
  let low = last
  let high = byLine
  for (let turn = 0; turn < 200; turn += 1) {
    const middle = (low + high) / 2
    if (upperEdge(line, middle) < limit) low = middle
    else high = middle
  }
  return high
}

function upperEdge(line: StraightLine, hours: number): number {
  return lineAt(line, hours) + predictionHalfWidth(line, hours, confidence)
}

function expectedAt(line: StraightLine, hours: number, trustedUntil: number): ExpectedClearance {
  const clearance = lineAt(line, hours)
  const half = predictionHalfWidth(line, hours, confidence)
  return {
    clearance: quantityOf('diametral-clearance', clearance),
    lower: quantityOf('diametral-clearance', clearance - half),
    upper: quantityOf('diametral-clearance', clearance + half),
    beyondSpan: hours > trustedUntil,
  }
}

function refuseReadings({readings, instrumentUncertainty}: WearForecastInput): void {
  if (readings.length < 3)
    throw new RangeError(
      `Unexpected ${readings.length} readings since the renewal, expected at least 3: two points always lie on a line`,
    )
  readings.forEach((reading, index) => {
    const before = readings[index - 1]
    if (before && reading.hours.si < before.hours.si)
      throw new RangeError(
        `Unexpected reading at ${inHours(reading.hours)} after one at ${inHours(before.hours)}, expected readings in the order of the hours`,
      )
  })
  refuseBelowZero('uncertainty', instrumentUncertainty, 'mm diametral')
}

function inHours(time: Quantity<'time'>): string {
  return printedText(printQuantity(time, 'h', 0))
}
