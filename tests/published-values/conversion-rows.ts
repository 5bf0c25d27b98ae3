import {type NoRows, publishedRows} from './published-rows.ts'

/** One converted to another unit, with the relative error that the printed digits allow. */
export interface ConversionRow {
  readonly value: string
  readonly to: string
  readonly expected: number
  readonly tolerance: number
}

/** What 1 to 15 printed digits of a decimal constant leave open is far below this. */
const exact = 1e-12

/**
 * Exact by definition: inch, pound, standard gravity, bar, standard atmosphere, both gallons, hour, Fahrenheit, kelvin.
 *
 * NIST SP 811 appendix B and ISO 80000-1, -3 and -4; from memory.
 */
export const definitionRows: readonly ConversionRow[] = [
  {value: '1 in', to: 'm', expected: 0.0254, tolerance: exact},
  {value: '1 lb', to: 'kg', expected: 0.45359237, tolerance: exact},
  {value: '1 kgf', to: 'N', expected: 9.80665, tolerance: exact},
  {value: '1 bar', to: 'Pa', expected: 1e5, tolerance: exact},
  {value: '1 atm', to: 'Pa', expected: 101_325, tolerance: exact},
  {value: '1 US gal', to: 'l', expected: 3.785411784, tolerance: exact},
  {value: '1 imp gal', to: 'l', expected: 4.54609, tolerance: exact},
  {value: '1 h', to: 's', expected: 3600, tolerance: exact},
  {value: '100 °C', to: '°F', expected: 212, tolerance: exact},
  {value: '0 °C', to: '°F', expected: 32, tolerance: exact},
  {value: '-40 °F', to: '°C', expected: -40, tolerance: exact},
  {value: '20 °C', to: 'K', expected: 293.15, tolerance: exact},
]

/** Factors computed apart from this project by GNU units 2.22, which calculates from the definitions of NIST SP 811. */
export const factorRows: readonly ConversionRow[] = [
  {value: '1 psi', to: 'Pa', expected: 6894.75729316836, tolerance: exact},
  {value: '1 psi', to: 'bar', expected: 0.0689475729316836, tolerance: exact},
  {value: '1 bar', to: 'psi', expected: 14.5037737730209, tolerance: exact},
  {value: '1 bar', to: 'MPa', expected: 0.1, tolerance: exact},
  {value: '1 lbf·ft', to: 'N·m', expected: 1.3558179483314, tolerance: exact},
  {value: '1 lbf·in', to: 'N·m', expected: 0.112984829027617, tolerance: exact},
  {value: '1 kgf·m', to: 'N·m', expected: 9.80665, tolerance: exact},
  {value: '1 kgf/cm²', to: 'bar', expected: 0.980665, tolerance: exact},
  {value: '1 Torr', to: 'Pa', expected: 133.322368421053, tolerance: exact},
  {value: '1 mmHg', to: 'Pa', expected: 133.322387415, tolerance: exact},
  {value: '1 US gal/min', to: 'l/min', expected: 3.785411784, tolerance: exact},
  {value: '1 in³', to: 'cm³', expected: 16.387064, tolerance: exact},
  {value: '1 hp', to: 'W', expected: 745.69987158227, tolerance: exact},
  {value: '1 metric hp', to: 'W', expected: 735.49875, tolerance: exact},
  {value: '1 lb/ft³', to: 'kg/m³', expected: 16.0184633739601, tolerance: exact},
  {value: '1 bbl', to: 'l', expected: 158.987294928, tolerance: exact},
  {value: '1 long ton', to: 'kg', expected: 1016.0469088, tolerance: exact},
  {value: '1 mbar·l/s', to: 'Pa·m³/s', expected: 0.1, tolerance: exact},
  {value: '1 atm·cm³/s', to: 'Pa·m³/s', expected: 0.101325, tolerance: exact},
  {value: '1 kn', to: 'm/s', expected: 0.514444444444, tolerance: exact},
]

/** Half a unit of the last printed digit over the printed number. */
function half(printed: string): number {
  const decimals = printed.split('.')[1]?.length ?? 0
  return (0.5 * 10 ** -decimals) / Number(printed)
}

function printedRow(value: string, to: string, printed: string): ConversionRow {
  return {value, to, expected: Number(printed), tolerance: half(printed)}
}

/**
 * Factors as they are printed rounded.
 *
 * Psi to MPa and the print form of pound-force foot and inch: NIST SP 811 appendix B, from memory. N·m to lb·ft: a
 * page on torque units, read. Kilogram-metres: an old conversion table of a workshop page, read.
 */
export const printedFactorRows: readonly ConversionRow[] = [
  printedRow('1 psi', 'MPa', '0.006894757'),
  printedRow('1 psi', 'kPa', '6.894757'),
  printedRow('1 lbf·ft', 'N·m', '1.355818'),
  printedRow('1 lbf·in', 'N·m', '0.1129848'),
  printedRow('1 lbf·ft', 'N·m', '1.3558'),
  printedRow('1 N·m', 'lbf·ft', '0.7376'),
  printedRow('1 N·m', 'kgf·m', '0.102'),
  printedRow('1 kgf·m', 'N·m', '9.81'),
  printedRow('1 kgf·m', 'lbf·ft', '7.23'),
  printedRow('1 lbf·ft', 'N·m', '1.356'),
]

/** Read in print and wrong: a misprinted digit, and a factor rounded too far. The right value stands beside it. */
export const wrongFactorRows: readonly (ConversionRow & {readonly printed: number; readonly off: number})[] =
  [
    {value: '1 lbf·ft', to: 'kgf·m', printed: 0.1387, expected: 0.1383, tolerance: 4e-4, off: 0.0032},
    {value: '1 lbf·ft', to: 'N·m', printed: 1.36, expected: 1.355818, tolerance: 1e-6, off: 0.0031},
  ]

/** Rows of the print form of NIST SP 811; the others were read on two pages. */
const fromMemory = 4

export const published = {
  definitions: publishedRows({
    calculation: 'convert',
    source: 'NIST SP 811 appendix B and ISO 80000-1, -3 and -4, definitions',
    known: 'memory',
    rows: definitionRows,
  }),
  factors: publishedRows({
    calculation: 'convert',
    source: 'definitions of NIST SP 811, computed apart from this project by GNU units 2.22',
    known: 'computed',
    rows: factorRows,
  }),
  printed: publishedRows({
    calculation: 'convert',
    source: 'NIST SP 811 appendix B, printed factors',
    known: 'memory',
    rows: printedFactorRows.slice(0, fromMemory),
  }),
  readOnPages: publishedRows({
    calculation: 'convert',
    source: 'a page on torque units and an old conversion table of a workshop page',
    known: 'read',
    rows: printedFactorRows.slice(fromMemory),
  }),
}

export const noRows: NoRows = {
  wrongFactorRows: 'printed wrong, and not to be reproduced',
  printedFactorRows: 'counted in two parts by how they are known',
}
