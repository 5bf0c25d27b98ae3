import {type NoRows, publishedRows, type RowKnown} from './published-rows.ts'

/** A leak of gas with what was printed about it. */
export interface GasLeakRow {
  readonly what: string
  readonly litres: number
  readonly dropPascal: number
  readonly seconds: number
  /** Figure in Pa·m³/s. */
  readonly rate: number
  readonly tolerance: number
  readonly known: RowKnown
}

/**
 * Leak rates.
 *
 * The 4 l and 30 l examples were read in excerpts of public pages on leak testing; the others were computed apart from
 * this project, as no published figure was found.
 */
export const gasLeakRows: readonly GasLeakRow[] = [
  {
    what: '4 l losing 1 bar in 30 days, printed to two digits',
    litres: 4,
    dropPascal: 1e5,
    seconds: 30 * 86_400,
    rate: 1.5e-4,
    tolerance: 0.03 * 1.5e-4,
    known: 'read',
  },
  {
    what: '30 l losing 0.136092 atm in 60 days, printed as 7.8757e-4 atm·cm³/s',
    litres: 30,
    dropPascal: 0.136092 * 101_325,
    seconds: 60 * 86_400,
    rate: 7.8757e-4 * 0.101325,
    tolerance: 0.00005e-4 * 0.101325,
    known: 'read',
  },
  {
    what: '50 l losing 0.022775 bar after correction in 30 min',
    litres: 50,
    dropPascal: 2277.5,
    seconds: 1800,
    rate: 0.06326,
    tolerance: 0.000005,
    known: 'computed',
  },
]

/**
 * Leak rate that a page on leak testing prints beside 7.8757e-4 atm·cm³/s, in mbar·l/s; it is 0.4 % too low: the exact
 * figure is 7.980e-4. Read, and not to be reproduced.
 */
export const misprintedLeakRate = 7.95e-4

/** Leak units in Pa·m³/s. Read: a table of leak units in an excerpt (atm·cm³/s is 1.013 mbar·l/s); the others by definition. */
export const leakUnitRows = [
  {text: '1 mbar·l/s', pascalCubicMetres: 0.1, tolerance: 1e-15},
  {text: '1 atm·cm³/s', pascalCubicMetres: 0.101325, tolerance: 1e-15},
  {text: '1 atm·cm³/s', pascalCubicMetres: 1.013 * 0.1, tolerance: 0.0005 * 0.1},
] as const

/**
 * Example of 40 CFR 1065.644, vacuum-decay leak rate, in mol/s: inputs read in an excerpt; the result recalled from
 * memory to two digits, and computed apart from this project with R = 8.314472 J/(mol·K), which is 1.1e-6 high.
 */
export const vacuumDecay = {
  litres: 2,
  startPascal: 25_300,
  endPascal: 50_600,
  kelvin: 293.15,
  seconds: 70,
  recalled: 0.0003,
  recalledTolerance: 0.000005,
  computed: 2.9657e-4,
  computedTolerance: 1e-9,
} as const

/**
 * Gas of 102 g/mol: a page on leak testing, read in an excerpt, prints that 10 g are about 224 Pa·m³ and names no
 * temperature; 222.7 at 0 °C and 239.0 at 20 °C were computed apart from this project.
 */
export const tenGrams = {
  gramsPerMole: 102,
  printed: 224,
  computed: [
    {celsius: 0, pascalCubicMetres: 222.7},
    {celsius: 20, pascalCubicMetres: 239.0},
  ],
} as const

export const published = {
  leaks: publishedRows({
    calculation: 'gas-leak-rate',
    source: 'public pages on leak testing',
    known: (row) => row.known,
    rows: gasLeakRows,
  }),
  units: publishedRows({
    calculation: 'convert',
    source: 'table of leak units; definitions',
    known: (row) => (row.tolerance > 1e-9 ? 'read' : 'computed'),
    rows: leakUnitRows,
  }),
  vacuumDecay: publishedRows({
    calculation: 'molar-leak-rate',
    source: '40 CFR 1065.644, vacuum-decay leak rate',
    known: 'memory',
    rows: [vacuumDecay],
  }),
  tenGrams: publishedRows({
    calculation: 'gas-mass',
    source: 'a page on leak testing, mass of a gas of 102 g/mol',
    known: 'read',
    rows: [tenGrams],
  }),
  tenGramsAtTemperatures: publishedRows({
    calculation: 'gas-mass',
    source: 'ideal gas law, computed apart from this project',
    known: 'computed',
    rows: tenGrams.computed,
  }),
}

export const noRows: NoRows = {misprintedLeakRate: 'printed wrong, and not to be reproduced'}
