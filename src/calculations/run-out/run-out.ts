import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'
import {totalIndicatorReading} from './total-indicator-reading.ts'

/** Run-out of a turned part from dial readings at even steps. */
export interface RunOut {
  readonly totalIndicatorReading: Quantity<'length'>
  /** Distance of the centre of the part from the axis that it turns about. */
  readonly eccentricity: Quantity<'length'>
  /** Where the part stands out most, from the first station in the order of the readings; missing where no side stands out. */
  readonly phase?: Quantity<'angle'>
  readonly mean: Quantity<'length-difference'>
  /** Greatest less least of what eccentricity does not explain: ovality, dents, dirt. */
  readonly residualRange: Quantity<'length'>
}

export const runOutNote: CalculationNote = {
  name: 'run-out',
  words:
    'dial readings at even steps of one turn: greatest less least, and the eccentricity and its direction by the best fitting circle out of centre',
  formula: [
    'TIR = max(ri) − min(ri)',
    'r0 = (1/n)·Σri',
    'a = (2/n)·Σri·cos θi, b = (2/n)·Σri·sin θi, θi = 360°·i/n',
    'e = √(a² + b²)',
    'phase = atan2(b, a), undefined where e is nothing beside TIR',
    'residual range = max − min of ri − r0 − a·cos θi − b·sin θi',
  ],
  symbols: [
    {symbol: 'TIR', meaning: 'total indicator reading'},
    {symbol: 'ri', meaning: 'reading at station i'},
    {symbol: 'i', meaning: 'number of a station, from 0 to n − 1'},
    {symbol: 'n', meaning: 'number of stations'},
    {symbol: 'r0', meaning: 'mean of the readings'},
    {symbol: 'a', meaning: 'part of the once-a-turn wave towards station 0'},
    {symbol: 'b', meaning: 'part of that wave a quarter turn on'},
    {symbol: 'θi', meaning: 'angle of station i'},
    {symbol: 'e', meaning: 'eccentricity'},
  ],
  sources: [
    {
      title: 'total indicator reading, definition of the trade',
      edition: 'unknown',
      howKnown: 'reprint',
      status: 'unknown',
    },
    {
      title: 'least squares with one harmonic; no published example with numbers was found',
      edition: 'none',
      howKnown: 'computed',
      status: 'current',
    },
  ],
  validFor: 'three or more readings at even steps of one full turn, the last one a step before the first',
}

/** Shares of the total indicator reading and of the greatest reading below which an eccentricity is rounding. */
const nothingBeside = {total: 1e-9, reading: 1e-12} as const

/**
 * Run-out of a turned part from dial readings.
 *
 * The readings are taken as a mean, one wave per turn (the eccentricity), and a rest. The total indicator reading of a few
 * stations may lie below twice the eccentricity, because no station need stand at the peak.
 *
 * Source: definition of the trade (total indicator reading); least squares with one harmonic, computed apart from this project.
 * Valid for: three or more readings at even steps of one full turn.
 *
 * @throws {RangeError}
 *   When there are fewer than three readings.
 */
export function runOut(readings: readonly Quantity<'length-difference'>[]): RunOut {
  const count = readings.length
  if (count < 3)
    throw new RangeError(`Unexpected ${count} readings, expected at least three at even steps of one turn`)
  const values = readings.map((one) => one.si)
  const mean = values.reduce((sum, value) => sum + value, 0) / count
  const angles = values.map((_, index) => (2 * Math.PI * index) / count)
  const wave = (of: (angle: number) => number): number =>
    (2 / count) * values.reduce((sum, value, index) => sum + (value - mean) * of(angles[index] ?? 0), 0)
  const [cosine, sine] = [wave(Math.cos), wave(Math.sin)]
  const eccentricity = Math.hypot(cosine, sine)
  const residuals = values.map((value, index) => {
    const angle = angles[index] ?? 0
    return value - mean - cosine * Math.cos(angle) - sine * Math.sin(angle)
  })
  const total = totalIndicatorReading(readings)
  const result: RunOut = {
    totalIndicatorReading: total,
    eccentricity: quantityOf('length', eccentricity),
    mean: quantityOf('length-difference', mean),
    residualRange: quantityOf('length', Math.max(...residuals) - Math.min(...residuals)),
  }
  const greatest = Math.max(...values.map(Math.abs))
  if (eccentricity <= nothingBeside.total * total.si + nothingBeside.reading * greatest) return result
  return {...result, phase: quantityOf('angle', withinOneTurn(Math.atan2(sine, cosine)))}
}

/** The same angle from 0 to below one turn; one that is below zero by rounding is zero. */
function withinOneTurn(angle: number): number {
  if (angle >= 0) return angle
  return angle > -1e-9 ? 0 : angle + 2 * Math.PI
}
