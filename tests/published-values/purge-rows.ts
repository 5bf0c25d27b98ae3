import {publishedRows} from './published-rows.ts'

/**
 * Sweep of a well mixed vessel from 21 % to 1 % of oxygen, in vessel volumes.
 *
 * 3.1 was read off a purge chart in an excerpt of a page on inerting, tolerance 2 %; 3.045 computed apart from this
 * project.
 */
export const sweepToOnePercent = {printed: 3.1, printedTolerance: 0.02 * 3.1, computed: 3.045} as const

/**
 * Vacuum purge from 21 % to 5 ppm of oxygen between 6 mmHg and the air.
 *
 * 2.20 cycles, taken as 3, and 2.976 volumes were read in an excerpt of a page on inerting, which rounds 6/760 to
 * 0.008; 2.199 and 2.205 computed apart from this project.
 */
export const vacuumPurge = {
  lowOfAtmosphere: 6 / 760,
  roundedLowOfAtmosphere: 0.008,
  printedExact: 2.2,
  cycles: 3,
  volumes: 2.976,
  exact: 2.199,
  roundedExact: 2.205,
} as const

/** Content in % after 1, 2, 3 and 4 cycles between 0 and 3 bar(g) from 20.9 %; computed apart from this project. */
export const pressureCycleContents = [5.277, 1.332, 0.3364, 0.0849] as const

/**
 * Pressures of columns of liquid, computed apart from this project with standard gravity: relative density, height
 * in m, pressure added in bar, result in bar.
 */
export const columnRows = [
  {density: 1850, height: 14, added: 0.2, bar: 2.74, tolerance: 0.005},
  {density: 800, height: 16, added: 0, bar: 1.3, tolerance: 0.05},
  {density: 1850, height: 16, added: 0, bar: 2.9, tolerance: 0.05},
] as const

export const published = {
  sweep: publishedRows({
    calculation: 'purge-sweep',
    source: 'purge chart of a page on inerting',
    known: 'read',
    rows: [sweepToOnePercent],
  }),
  vacuum: publishedRows({
    calculation: 'purge-cycles',
    source: 'a page on inerting, vacuum purge',
    known: 'read',
    rows: [vacuumPurge],
  }),
  cycles: publishedRows({
    calculation: 'purge-cycles',
    source: 'ideal gas law, computed apart from this project',
    known: 'computed',
    rows: pressureCycleContents,
  }),
  columns: publishedRows({
    calculation: 'seal-pressure',
    source: 'hydrostatics, computed apart from this project',
    known: 'computed',
    rows: columnRows,
  }),
}
