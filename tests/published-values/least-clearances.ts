import {publishedRows} from './published-rows.ts'

/**
 * Least diametral running clearances: from mm (the step ends where the next begins, the last at 650 mm), mils, mils
 * converted to mm, metric column in mm.
 *
 * API 610, minimum internal running clearances. Mils and converted figures: read in two secondary documents that agree.
 * Metric column: from memory, thirteen of its figures seen in a third document.
 */
export const leastClearanceTable: readonly (readonly [number, number, number, number])[] = [
  [0, 10, 0.25, 0.25],
  [50, 11, 0.28, 0.28],
  [65, 12, 0.3, 0.3],
  [80, 13, 0.33, 0.33],
  [90, 14, 0.36, 0.35],
  [100, 15, 0.38, 0.38],
  [115, 16, 0.41, 0.4],
  [125, 17, 0.43, 0.43],
  [150, 18, 0.46, 0.45],
  [175, 19, 0.48, 0.48],
  [200, 20, 0.51, 0.5],
  [225, 21, 0.53, 0.53],
  [250, 22, 0.56, 0.55],
  [275, 23, 0.58, 0.58],
  [300, 24, 0.61, 0.6],
  [325, 25, 0.63, 0.63],
  [350, 26, 0.66, 0.65],
  [375, 27, 0.69, 0.68],
  [400, 28, 0.71, 0.7],
  [425, 29, 0.74, 0.73],
  [450, 30, 0.76, 0.75],
  [475, 31, 0.79, 0.78],
  [500, 32, 0.81, 0.8],
  [525, 33, 0.84, 0.83],
  [550, 34, 0.86, 0.85],
  [575, 35, 0.89, 0.88],
  [600, 36, 0.91, 0.9],
  [625, 37, 0.94, 0.93],
]

/**
 * Diametral clearances in inches of a process-pump textbook: from and below in inches, below and above 500 °F.
 *
 * Textbook on process pumps, table 1-2; read in a reprint. From 4.5 in on it agrees with API 610, below it is 1 to 2 mils larger.
 */
export const textbookClearances: readonly (readonly [number, number, number, number])[] = [
  [3.5, 5, 0.016, 0.018],
  [5, 6, 0.017, 0.019],
  [6, 7, 0.018, 0.02],
  [7, 8, 0.019, 0.021],
  [8, 9, 0.02, 0.022],
  [9, 10, 0.021, 0.023],
  [10, 11, 0.022, 0.024],
  [11, 12, 0.023, 0.025],
]

export const published = {
  least: publishedRows({
    calculation: 'least-running-clearance',
    source: 'API 610, minimum internal running clearances',
    known: 'reprint',
    rows: leastClearanceTable,
  }),
  textbook: publishedRows({
    calculation: 'least-running-clearance',
    source: 'textbook on process pumps, table 1-2',
    known: 'reprint',
    rows: textbookClearances,
  }),
}
