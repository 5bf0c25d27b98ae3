import {publishedRows} from './published-rows.ts'

/**
 * Pressure of a sealed gas after a change of temperature, at 1.01325 bar(a).
 *
 * No published example with numbers was found; computed apart from this project by the ideal gas law with absolute
 * pressures and T/K = t/°C + 273.15, which is the pressure-change technique of EN 1779 (from memory).
 */
export const pressureHoldRows: readonly {
  readonly id: string
  readonly start: number
  readonly from: number
  readonly to: number
  readonly expected: number
  readonly change: number
}[] = [
  {id: 'cooling by five kelvin', start: 3, from: 20, to: 15, expected: 2.93155, change: -0.06845},
  {id: 'warming by five kelvin', start: 3, from: 20, to: 25, expected: 3.06845, change: 0.06845},
  {id: 'warming from ten', start: 3, from: 10, to: 12, expected: 3.02835, change: 0.02835},
  {id: 'low pressure', start: 0.5, from: 20, to: 15, expected: 0.47419, change: -0.02581},
  {id: 'one kelvin', start: 3, from: 20, to: 19, expected: 2.98631, change: -0.01369},
]

/** 4 l losing 1 bar in 30 days, printed to two digits in Pa·m³/s; a page on leak testing, read. */
export const monthLongLeakRow = {litres: 4, lossInBar: 1, days: 30, printed: 1.5e-4} as const

export const published = {
  sealed: publishedRows({
    calculation: 'pressure-hold',
    source: 'ideal gas law with absolute pressures, computed apart from this project',
    known: 'computed',
    rows: pressureHoldRows,
  }),
  month: publishedRows({
    calculation: 'pressure-hold',
    source: 'a page on leak testing: 4 l losing 1 bar in 30 days',
    known: 'read',
    rows: [monthLongLeakRow],
  }),
}
