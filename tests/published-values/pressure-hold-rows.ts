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
