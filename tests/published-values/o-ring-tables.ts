import {publishedRows} from './published-rows.ts'

/** One row of a gland table in inches: least and greatest depth, and the printed squeeze that goes with them. */
export interface GlandRow {
  readonly gland: 'static radial' | 'static axial' | 'dynamic radial'
  readonly section: number
  /** AS568 and ISO 3601-1; from memory, they reproduce every printed limit. */
  readonly tolerance: number
  readonly depth: readonly [number, number]
  /** Inches, least and greatest. */
  readonly squeeze: readonly [number, number]
  /** Percent of the section, least and greatest, rounded to whole numbers but for one half. */
  readonly percent: readonly [number, number]
}

/** Gland table for O-rings in inches; read in a reprint. */
export const glandRows: readonly GlandRow[] = [
  {
    gland: 'static radial',
    section: 0.07,
    tolerance: 0.003,
    depth: [0.05, 0.055],
    squeeze: [0.012, 0.023],
    percent: [18, 32],
  },
  {
    gland: 'static radial',
    section: 0.103,
    tolerance: 0.003,
    depth: [0.08, 0.086],
    squeeze: [0.014, 0.026],
    percent: [14, 25],
  },
  {
    gland: 'static radial',
    section: 0.139,
    tolerance: 0.004,
    depth: [0.11, 0.116],
    squeeze: [0.019, 0.033],
    percent: [14, 23],
  },
  {
    gland: 'static radial',
    section: 0.275,
    tolerance: 0.006,
    depth: [0.225, 0.235],
    squeeze: [0.034, 0.056],
    percent: [13, 20],
  },
  {
    gland: 'static axial',
    section: 0.07,
    tolerance: 0.003,
    depth: [0.049, 0.054],
    squeeze: [0.013, 0.024],
    percent: [19, 33],
  },
  {
    gland: 'static axial',
    section: 0.103,
    tolerance: 0.003,
    depth: [0.075, 0.081],
    squeeze: [0.019, 0.031],
    percent: [19, 29],
  },
  {
    gland: 'static axial',
    section: 0.139,
    tolerance: 0.004,
    depth: [0.1, 0.108],
    squeeze: [0.027, 0.043],
    percent: [20, 30],
  },
  {
    gland: 'static axial',
    section: 0.275,
    tolerance: 0.006,
    depth: [0.205, 0.215],
    squeeze: [0.054, 0.076],
    percent: [20, 27],
  },
  {
    gland: 'dynamic radial',
    section: 0.07,
    tolerance: 0.003,
    depth: [0.055, 0.057],
    squeeze: [0.01, 0.018],
    percent: [15, 25],
  },
  {
    gland: 'dynamic radial',
    section: 0.103,
    tolerance: 0.003,
    depth: [0.087, 0.09],
    squeeze: [0.01, 0.019],
    percent: [10, 18],
  },
  {
    gland: 'dynamic radial',
    section: 0.139,
    tolerance: 0.004,
    depth: [0.119, 0.123],
    squeeze: [0.012, 0.024],
    percent: [9, 17],
  },
  {
    gland: 'dynamic radial',
    section: 0.275,
    tolerance: 0.006,
    depth: [0.234, 0.24],
    squeeze: [0.029, 0.047],
    percent: [10.5, 17],
  },
]

/** Sections of ISO 3601-1 and AS568, in mm and inches; read in a reprint. */
export const sectionRows: readonly {readonly millimetres: number; readonly inches: number}[] = [
  {millimetres: 1.78, inches: 0.07},
  {millimetres: 2.62, inches: 0.103},
  {millimetres: 3.53, inches: 0.139},
  {millimetres: 5.33, inches: 0.21},
  {millimetres: 6.99, inches: 0.275},
]

/** Depth in mm for a section and a squeeze of 12 %: printed by a trade page, read in a reprint, and with more digits computed apart from this project. */
export const glandDepthRow = {section: 3.53, squeezePercent: 12, printed: 3.11, computed: 3.1064} as const

export const published = {
  glands: publishedRows({
    calculation: 'o-ring-gland',
    source: 'gland table for O-rings in inches',
    known: 'reprint',
    rows: glandRows,
  }),
  sections: publishedRows({
    calculation: 'o-ring-gland',
    source: 'ISO 3601-1 and AS568, sections',
    known: 'reprint',
    rows: sectionRows,
  }),
  depth: publishedRows({
    calculation: 'o-ring-depth',
    source: 'example of a trade page on glands',
    known: 'reprint',
    rows: [glandDepthRow],
  }),
}
