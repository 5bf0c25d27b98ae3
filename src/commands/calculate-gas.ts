import {pressureHold, pressureHoldNote} from '../calculations/gas/pressure-hold.ts'
import {purgeUpperBound, purgeUpperBoundNote} from '../calculations/gas/purge-upper-bound.ts'
import {standardAtmosphere} from '../calculations/gas/standard-air.ts'
import {tightnessHoldTime, tightnessHoldTimeNote} from '../calculations/gas/tightness-hold-time.ts'
import {degreesCelsius, minutes} from '../quantities/named-units.ts'
import {type CalculationRun, quantityLine, type ResultLine, wordLine} from './calculate-result.ts'
import type {CalculationWords} from './calculate-words.ts'

/**
 * Pressure hold from the words of the command line.
 *
 * @throws {RangeError}
 *   When a word is missing, does not read or is out of range, or volume and duration do not come together.
 */
export function runPressureHold(words: CalculationWords): CalculationRun {
  const volume = words.optional('volume', 'volume')
  const duration = words.optional('duration', 'time')
  if (volume && !duration) words.text('duration')
  if (duration && !volume) words.text('volume')
  const startBarometer = words.optional('start-barometer', 'absolute-pressure') ?? standardAtmosphere
  const endBarometer = words.optional('end-barometer', 'absolute-pressure') ?? standardAtmosphere
  const result = pressureHold({
    start: words.quantity('start', 'gauge-pressure'),
    end: words.quantity('end', 'gauge-pressure'),
    startTemperature: words.quantity('start-temperature', 'temperature'),
    endTemperature: words.quantity('end-temperature', 'temperature'),
    startBarometer,
    endBarometer,
    ...(volume && duration ? {volume, duration} : {}),
  })
  return {
    results: [
      quantityLine('expected-end', result.expectedEnd, 'bar(g)', 5),
      quantityLine('corrected-loss', result.correctedLoss, 'bar', 5),
      quantityLine('change-per-kelvin', result.changePerKelvin, 'mbar', 2),
      ...(result.leakRate ? [quantityLine('leak-rate', result.leakRate, 'Pa·m³/s', 5)] : []),
      ...(result.leakFlow ? [quantityLine('leak-flow', result.leakFlow, 'ml/min', 1)] : []),
    ],
    taken: notGiven(words, [
      quantityLine('start-barometer', startBarometer, 'bar(a)', 5),
      quantityLine('end-barometer', endBarometer, 'bar(a)', 5),
    ]),
    note: pressureHoldNote,
  }
}

/**
 * Upper bound of the cofferdam pressure from the words of the command line.
 *
 * @throws {RangeError}
 *   When a word is missing or does not read.
 */
export function runPurgeUpperBound(words: CalculationWords): CalculationRun {
  const lowest = purgeUpperBound({
    cofferdamRating: words.quantity('rating', 'gauge-pressure'),
    lipReverseLimit: words.quantity('lip', 'pressure-difference'),
    lowestTankPressure: words.quantity('tank', 'gauge-pressure'),
    regulatorMaximum: words.quantity('regulator', 'gauge-pressure'),
  })
  return {
    results: [
      quantityLine('upper-bound', lowest.bound, 'bar(g)', 3),
      wordLine('governed-by', lowest.governs),
    ],
    taken: [],
    note: purgeUpperBoundNote,
  }
}

/**
 * Length of a tightness test from the words of the command line.
 *
 * @throws {RangeError}
 *   When a word is missing, does not read or is out of range.
 */
export function runTightnessHoldTime(words: CalculationWords): CalculationRun {
  const barometer = words.optional('barometer', 'absolute-pressure') ?? standardAtmosphere
  const temperature = words.optional('temperature', 'temperature') ?? degreesCelsius(20)
  const least = words.optional('least', 'time') ?? minutes(30)
  const result = tightnessHoldTime({
    volume: words.quantity('volume', 'volume'),
    testPressure: words.quantity('test-pressure', 'gauge-pressure'),
    barometer,
    gaugeResolution: words.quantity('gauge-step', 'pressure-difference'),
    temperature,
    temperatureUncertainty: words.quantity('temperature-uncertainty', 'temperature-difference'),
    allowedLeak: words.quantity('allowed-leak', 'volume-flow'),
    least,
  })
  return {
    results: [
      quantityLine('hold-time', result.holdTime, 'min', 1),
      wordLine('governed-by', result.governs === 'least' ? 'house rule' : 'formula'),
      quantityLine('temperature-effect', result.temperatureEffect, 'mbar', 2),
      quantityLine('smallest-leak', result.smallestLeak, 'ml/min', 2),
    ],
    taken: notGiven(words, [
      quantityLine('temperature', temperature, '°C', 1),
      quantityLine('barometer', barometer, 'bar(a)', 5),
      quantityLine('least', least, 'min', 0),
    ]),
    note: tightnessHoldTimeNote,
  }
}

function notGiven(words: CalculationWords, lines: readonly ResultLine[]): readonly ResultLine[] {
  return lines.filter((one) => !words.has(one.name))
}
