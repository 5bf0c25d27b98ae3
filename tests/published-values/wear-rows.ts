import {publishedRows} from './published-rows.ts'

/** Quantile of Student's t at 97.5 % by degrees of freedom: standard tables, from memory and recomputed apart from this project. */
export const studentTRows: readonly (readonly [number, number])[] = [
  [1, 12.7062],
  [2, 4.3027],
  [3, 3.1824],
  [5, 2.5706],
  [8, 2.306],
  [10, 2.2281],
  [13, 2.1604],
  [28, 2.0484],
]

/**
 * Prediction interval at the mean: expected 50, deviation 5, 30 points, t of 2.048.
 *
 * Page on prediction intervals with its numbers; read.
 */
export const intervalAtMean = {
  expected: 50,
  deviation: 5,
  points: 30,
  half: 10.41,
  lower: 39.59,
  upper: 60.41,
} as const

/** Five readings of one ring in h and mm, limit 0.90 mm, and what follows; computed apart from this project. */
export const fiveReadings = {
  hours: [0, 4000, 8000, 12_000, 16_000],
  clearances: [0.5, 0.56, 0.61, 0.69, 0.74],
  limit: 0.9,
  intercept: 0.498,
  slopePerHour: 1.525e-5,
  deviation: 0.007958,
  lineMeetsLimit: 26_361,
  at: 20_000,
  lower: 0.7663,
  upper: 0.8397,
  bandMeetsLimit: 23_619,
} as const

/** Four readings of one ring in h and mm, limit 0.96 mm, instrument 0.03 mm, and what follows; computed apart from this project. */
export const fourReadings = {
  hours: [0, 2100, 4300, 6500],
  clearances: [0.48, 0.56, 0.66, 0.74],
  limit: 0.96,
  uncertainty: 0.03,
  perThousandHours: 0.041,
  lineMeetsLimit: 11_850,
  due: 11_100,
} as const

export const published = {
  studentT: publishedRows({
    calculation: 'wear-forecast',
    source: 'standard tables of Student’s t',
    known: 'memory',
    rows: studentTRows,
  }),
  intervalAtMean: publishedRows({
    calculation: 'wear-forecast',
    source: 'a page on prediction intervals with its numbers',
    known: 'read',
    rows: [intervalAtMean],
  }),
  fiveReadings: publishedRows({
    calculation: 'wear-forecast',
    source: 'regression of five readings, computed apart from this project',
    known: 'computed',
    rows: [fiveReadings],
  }),
  fourReadings: publishedRows({
    calculation: 'wear-forecast',
    source: 'regression of four readings, computed apart from this project',
    known: 'computed',
    rows: [fourReadings],
  }),
}
