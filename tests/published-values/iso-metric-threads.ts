import {publishedRows} from './published-rows.ts'

/**
 * Coarse threads: pitch, pitch diameter d2, minor diameter d1, core diameter d3 in mm and nominal stress area in mm².
 *
 * d2 and the stress area: read in a reprint of a university table and of ISO 898-1, except M14 and M18 (from memory, recomputed);
 * d1 and d3: read for M10, computed by the formulas of ISO 724 for the others.
 */
export const coarseThreads: readonly {
  readonly size: string
  readonly diameter: number
  readonly pitch: number
  readonly d2: number
  readonly d1: number
  readonly d3: number
  readonly nominalArea: number
}[] = [
  {size: 'M6', diameter: 6, pitch: 1, d2: 5.35, d1: 4.917, d3: 4.773, nominalArea: 20.1},
  {size: 'M8', diameter: 8, pitch: 1.25, d2: 7.188, d1: 6.647, d3: 6.466, nominalArea: 36.6},
  {size: 'M10', diameter: 10, pitch: 1.5, d2: 9.026, d1: 8.376, d3: 8.16, nominalArea: 58.0},
  {size: 'M12', diameter: 12, pitch: 1.75, d2: 10.863, d1: 10.106, d3: 9.853, nominalArea: 84.3},
  {size: 'M14', diameter: 14, pitch: 2, d2: 12.701, d1: 11.835, d3: 11.546, nominalArea: 115},
  {size: 'M16', diameter: 16, pitch: 2, d2: 14.701, d1: 13.835, d3: 13.546, nominalArea: 157},
  {size: 'M18', diameter: 18, pitch: 2.5, d2: 16.376, d1: 15.294, d3: 14.933, nominalArea: 192},
  {size: 'M20', diameter: 20, pitch: 2.5, d2: 18.376, d1: 17.294, d3: 16.933, nominalArea: 245},
  {size: 'M22', diameter: 22, pitch: 2.5, d2: 20.376, d1: 19.294, d3: 18.933, nominalArea: 303},
  {size: 'M24', diameter: 24, pitch: 3, d2: 22.051, d1: 20.752, d3: 20.319, nominalArea: 353},
  {size: 'M27', diameter: 27, pitch: 3, d2: 25.051, d1: 23.752, d3: 23.319, nominalArea: 459},
  {size: 'M30', diameter: 30, pitch: 3.5, d2: 27.727, d1: 26.211, d3: 25.706, nominalArea: 561},
  {size: 'M33', diameter: 33, pitch: 3.5, d2: 30.727, d1: 29.211, d3: 28.706, nominalArea: 694},
  {size: 'M36', diameter: 36, pitch: 4, d2: 33.402, d1: 31.67, d3: 31.093, nominalArea: 817},
]

/** Fine threads: d2, d3 and nut minor diameter D1 in mm; read in a reprint of ISO 724. Its stress areas are partly wrong and left out. */
export const fineThreads: readonly (readonly [string, number, number, number, number, number])[] = [
  ['M8×1', 8, 1, 7.35, 6.773, 6.917],
  ['M10×1.25', 10, 1.25, 9.188, 8.466, 8.647],
  ['M12×1.5', 12, 1.5, 11.026, 10.16, 10.376],
  ['M16×1.5', 16, 1.5, 15.026, 14.16, 14.376],
  ['M20×1.5', 20, 1.5, 19.026, 18.16, 18.376],
  ['M20×2', 20, 2, 18.701, 17.546, 17.835],
]

/** Stress areas of A3 = π/4·d3² in mm²; read in a reprint of a university table. */
export const coreAreas: readonly (readonly [string, number])[] = [
  ['M6', 17.894],
  ['M8', 32.841],
  ['M10', 52.292],
  ['M12', 76.247],
  ['M16', 144.12],
  ['M20', 225.19],
  ['M24', 324.27],
  ['M30', 518.99],
  ['M36', 759.28],
]

export const published = {
  coarse: publishedRows({
    calculation: 'thread-geometry',
    source: 'ISO 724 and ISO 898-1, coarse threads',
    known: ({size}) => (size === 'M14' || size === 'M18' ? 'memory' : 'reprint'),
    rows: coarseThreads,
  }),
  fine: publishedRows({
    calculation: 'thread-geometry',
    source: 'ISO 724, fine threads',
    known: 'reprint',
    rows: fineThreads,
  }),
  coreAreas: publishedRows({
    calculation: 'thread-geometry',
    source: 'university table of bolt threads',
    known: 'reprint',
    rows: coreAreas,
  }),
}
