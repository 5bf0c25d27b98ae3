import {publishedRows} from './published-rows.ts'

/**
 * Oil in one metre of pipe, mm to litres.
 *
 * Geometry; computed apart from this project, no published table was found.
 */
export const pipeRows = [
  {bore: 25, litresPerMetre: 0.4909},
  {bore: 50, litresPerMetre: 1.9635},
  {bore: 80, litresPerMetre: 5.0265},
  {bore: 100, litresPerMetre: 7.854},
  {bore: 150, litresPerMetre: 17.6715},
] as const

/** Oil in one metre of annulus, mm to litres. Geometry; computed apart from this project. */
export const oilAnnulusRow = {outer: 150, inner: 100, litresPerMetre: 9.8175} as const

/** Drums for a volume, litres. Arithmetic; computed apart from this project; the second drum is one of 55 US gallons. */
export const drumRows = [
  {volume: 520, drum: 200, fills: 2.6, tolerance: 1e-9, drums: 3},
  {volume: 520, drum: 208.198, fills: 2.498, tolerance: 5e-4, drums: 3},
] as const

/** Growth of hydraulic oil: 0.00046 per °F over 100 °F. A page on hydraulic oil, read. */
export const expansionPerFahrenheitRow = {
  expansion: 0.00046,
  riseFahrenheit: 100,
  share: 0.046,
  expansionPerKelvin: 0.000828,
} as const

/** Compression of hydraulic oil, psi. The same page on hydraulic oil, read. */
export const compressionRow = {bulkModulus: 3.0e5, pressureRise: 3000, share: -0.01} as const

/** Growth of 180 l over 40 K. Computed apart from this project; the expansion is typical of mineral oil, from memory. */
export const expansionRow = {volume: 180, expansion: 0.0007, rise: 40, change: 5.04} as const

/**
 * Trapped mineral oil. The rule in psi and bar was read on a page on trapped oil, which prints 90 for bar as well: wrong.
 * The pressure for one kelvin from 15 000 bar and 0.0007 1/K is computed apart from this project.
 */
export const trappedOilRow = {
  psiPerFahrenheit: 90,
  barPerKelvinOfTheRule: 11.17,
  barPerKelvinRounded: 11,
  wrongBarPerKelvin: 90,
  bulkModulus: 15_000,
  expansion: 0.0007,
  barPerKelvin: 10.5,
} as const

export const published = {
  pipes: publishedRows({
    calculation: 'oil-volume',
    source: 'geometry, computed apart from this project',
    known: 'computed',
    rows: pipeRows,
  }),
  annulus: publishedRows({
    calculation: 'oil-volume',
    source: 'geometry, computed apart from this project',
    known: 'computed',
    rows: [oilAnnulusRow],
  }),
  drums: publishedRows({
    calculation: 'drum-count',
    source: 'arithmetic, computed apart from this project',
    known: 'computed',
    rows: drumRows,
  }),
  expansionPerFahrenheit: publishedRows({
    calculation: 'oil-expansion',
    source: 'a page on hydraulic oil, growth with temperature',
    known: 'read',
    rows: [expansionPerFahrenheitRow],
  }),
  compression: publishedRows({
    calculation: 'oil-compression',
    source: 'a page on hydraulic oil, compression',
    known: 'read',
    rows: [compressionRow],
  }),
  expansion: publishedRows({
    calculation: 'oil-expansion',
    source: 'computed apart from this project; the expansion is typical of mineral oil',
    known: 'computed',
    rows: [expansionRow],
  }),
  trapped: publishedRows({
    calculation: 'trapped-oil-pressure',
    source: 'a page on trapped oil: 90 psi a °F, about 11 bar a kelvin',
    known: 'read',
    rows: [trappedOilRow],
  }),
}
