import {publishedRows} from './published-rows.ts'

/** Loads in N of the supports of a rigid plate; places in m, mass in kg. Statics, computed apart from this project. */
export const loadShareRows: readonly {
  readonly id: string
  readonly mass: number
  readonly supports: readonly (readonly [number, number])[]
  readonly centre: readonly [number, number]
  readonly loads: readonly number[]
}[] = [
  {
    id: 'four supports, centred',
    mass: 800,
    supports: [
      [-0.2, -0.2],
      [0.2, -0.2],
      [0.2, 0.2],
      [-0.2, 0.2],
    ],
    centre: [0, 0],
    loads: [1961.3, 1961.3, 1961.3, 1961.3],
  },
  {
    id: 'four supports, 50 mm off centre',
    mass: 800,
    supports: [
      [-0.2, -0.2],
      [0.2, -0.2],
      [0.2, 0.2],
      [-0.2, 0.2],
    ],
    centre: [0.05, 0],
    loads: [1471, 2451.7, 2451.7, 1471],
  },
  {
    id: 'three supports on a circle of 0.25 m, 50 mm off centre',
    mass: 600,
    supports: [0, 120, 240].map((angle) => [
      0.25 * Math.cos((angle * Math.PI) / 180),
      0.25 * Math.sin((angle * Math.PI) / 180),
    ]),
    centre: [0.05, 0],
    loads: [2745.9, 1569.1, 1569.1],
  },
]

export const published = {
  plates: publishedRows({
    calculation: 'load-share',
    source: 'statics, computed apart from this project',
    known: 'computed',
    rows: loadShareRows,
  }),
}
