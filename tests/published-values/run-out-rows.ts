import {publishedRows} from './published-rows.ts'

/** Readings in mm at even steps and what they amount to; phase in degrees, missing where no side stands out. */
export interface RunOutRow {
  readonly id: string
  readonly readings: readonly number[]
  readonly total: number
  readonly eccentricity: number
  readonly phase?: number
  readonly mean?: number
  readonly residualRange?: number
  /** Half a unit of the last digits of eccentricity and total. */
  readonly tolerance: number
  readonly phaseTolerance: number
}

/** No published example of a least-squares fit was found; computed apart from this project. */
export const runOutRows: readonly RunOutRow[] = [
  {
    id: 'eccentricity 0.05 mm at 30°, to four decimals',
    readings: [0.0433, 0.0483, 0.025, -0.0129, -0.0433, -0.0483, -0.025, 0.0129],
    total: 0.0966,
    eccentricity: 0.05,
    phase: 30,
    tolerance: 5e-5,
    phaseTolerance: 0.05,
  },
  {
    id: 'the same read to 0.01 mm',
    readings: [0.04, 0.05, 0.03, -0.01, -0.04, -0.05, -0.03, 0.01],
    total: 0.1,
    eccentricity: 0.05048,
    phase: 35.26,
    residualRange: 0.0029,
    tolerance: 5e-6,
    phaseTolerance: 0.005,
  },
  {
    id: 'readings with an offset',
    readings: [0, 0.03, 0.05, 0.04, 0.01, -0.02, -0.04, -0.03],
    total: 0.09,
    eccentricity: 0.04413,
    phase: 97.86,
    mean: 0.005,
    tolerance: 5e-6,
    phaseTolerance: 0.005,
  },
  {
    id: 'four stations',
    readings: [0, 2, 4, 2],
    total: 4,
    eccentricity: 2,
    phase: 180,
    tolerance: 5e-4,
    phaseTolerance: 0.05,
  },
  {
    id: 'pure ovality',
    readings: [0.02, 0, -0.02, 0, 0.02, 0, -0.02, 0],
    total: 0.04,
    eccentricity: 0,
    tolerance: 1e-12,
    phaseTolerance: 0,
  },
]

/** Total indicator readings of two readings each; read in reprints: an example in inches (shown here in its own unit) and one of ±0.10 mm. */
export const totalReadingRows: readonly {
  readonly id: string
  readonly unit: 'mm' | 'in'
  readonly readings: readonly [number, number]
  readonly total: number
}[] = [
  {id: 'plus three and minus one thousandth of an inch', unit: 'in', readings: [0.003, -0.001], total: 0.004},
  {id: 'plus and minus a tenth of a millimetre', unit: 'mm', readings: [0.1, -0.1], total: 0.2},
]

/** Eccentricity in mm of a round part that shows this total reading; encyclopedia text, read in a reprint. */
export const roundPartRow = {total: 0.1, eccentricity: 0.05} as const

export const published = {
  fits: publishedRows({
    calculation: 'run-out',
    source: 'least squares, computed apart from this project; no published example was found',
    known: 'computed',
    rows: runOutRows,
  }),
  totals: publishedRows({
    calculation: 'run-out',
    source: 'pages on total indicator reading',
    known: 'reprint',
    rows: totalReadingRows,
  }),
  roundPart: publishedRows({
    calculation: 'run-out',
    source: 'encyclopedia text on total indicator reading',
    known: 'reprint',
    rows: [roundPartRow],
  }),
}
