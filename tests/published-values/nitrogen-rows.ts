import {type NoRows, publishedRows, type RowKnown} from './published-rows.ts'

/** What can be drawn from a bottle of gas. Pressures in Pa absolute. */
export interface BottleRow {
  readonly what: string
  readonly litres: number
  readonly full: number
  readonly least: number
  readonly compressibility: number
  readonly reference: number
  readonly cubicMetres: number
  readonly tolerance: number
  readonly known: RowKnown
}

const atmosphere = 101_325
const psi = 6894.757293168

/**
 * Content of bottles as free gas.
 *
 * The 29.5 l row was read in an excerpt of a page on gas cylinders, which takes 2000 psi as an absolute pressure. The
 * others were computed apart from this project; the compressibility 1.05 of nitrogen at 200 bar is from memory.
 */
export const bottleRows: readonly BottleRow[] = [
  {
    what: '29.5 l at 2000 psi taken as absolute',
    litres: 29.5,
    full: 2000 * psi,
    least: 0,
    compressibility: 1,
    reference: 14.7 * psi,
    cubicMetres: 4.013,
    tolerance: 0.001,
    known: 'read',
  },
  {
    what: '29.5 l at 2000 psi on the gauge',
    litres: 29.5,
    full: 2014.7 * psi,
    least: 0,
    compressibility: 1,
    reference: 14.7 * psi,
    cubicMetres: 4.0431,
    tolerance: 0.00005,
    known: 'computed',
  },
  {
    what: '50 l from 200 to 8 bar(g), ideal gas',
    litres: 50,
    full: 2e7 + atmosphere,
    least: 8e5 + atmosphere,
    compressibility: 1,
    reference: atmosphere,
    cubicMetres: 9.474,
    tolerance: 0.0005,
    known: 'computed',
  },
  {
    what: '50 l from 200 to 8 bar(g), compressibility 1.05',
    litres: 50,
    full: 2e7 + atmosphere,
    least: 8e5 + atmosphere,
    compressibility: 1.05,
    reference: atmosphere,
    cubicMetres: 9.002,
    tolerance: 0.0005,
    known: 'computed',
  },
  {
    what: '50 l at 200 bar(g) counted at 1 bar, ideal gas',
    litres: 50,
    full: 2e7 + atmosphere,
    least: 0,
    compressibility: 1,
    reference: 1e5,
    cubicMetres: 10.05,
    tolerance: 0.005,
    known: 'computed',
  },
  {
    what: '50 l at 200 bar(g) counted at 1 bar, compressibility 1.05',
    litres: 50,
    full: 2e7 + atmosphere,
    least: 0,
    compressibility: 1.05,
    reference: 1e5,
    cubicMetres: 9.57,
    tolerance: 0.005,
    known: 'computed',
  },
]

/** Nominal content that the trade names for a bottle of 50 l at 200 bar, in m³; from memory. */
export const nominalBottle = 10

/** 250 l filled from 0 to 3 bar(g): free gas in m³ by reference pressure in Pa; computed apart from this project. */
export const fillRows = [
  {reference: atmosphere, cubicMetres: 0.7402, tolerance: 0.00005},
  {reference: 1e5, cubicMetres: 0.75, tolerance: 0.0005},
] as const

/** Nitrogen of the same filling at 20 °C in kg; computed apart from this project. */
export const fillMass = 0.862

/** Bottles of the third and fourth bottle row that twenty such fillings take; computed apart from this project. */
export const bottleCountRows = [
  {bottleCubicMetres: 9.474, exact: 1.56, bottles: 2},
  {bottleCubicMetres: 9.002, exact: 1.64, bottles: 2},
] as const

export const published = {
  bottles: publishedRows({
    calculation: 'bottle-content',
    source: 'a page on gas cylinders; the others computed apart from this project',
    known: (row) => row.known,
    rows: bottleRows,
  }),
  fills: publishedRows({
    calculation: 'fill-gas',
    source: 'ideal gas law, computed apart from this project',
    known: 'computed',
    rows: fillRows,
  }),
  fillMass: publishedRows({
    calculation: 'gas-mass',
    source: 'ideal gas law, computed apart from this project',
    known: 'computed',
    rows: [fillMass],
  }),
  bottleCounts: publishedRows({
    calculation: 'purge-gas',
    source: 'computed apart from this project',
    known: 'computed',
    rows: bottleCountRows,
  }),
}

export const noRows: NoRows = {
  nominalBottle: 'a round figure of the trade that two rows lie on either side of',
}
