import {publishedRows} from './published-rows.ts'

/** One gap with velocity and leakage, computed apart from this project; no published example with numbers was found. */
export interface GapLeakageRow {
  readonly name: string
  readonly diameter: number
  readonly gap: number
  readonly length: number
  readonly head: number
  readonly friction: number
  readonly velocity: number
  readonly leakage: number
}

/** Metres, stated friction; velocity in m/s and leakage in m³/h. Inlet and outlet lose 1.5 velocity heads. */
export const gapLeakageRows: readonly GapLeakageRow[] = [
  {
    name: 'ring of 200 mm',
    diameter: 0.2,
    gap: 0.25e-3,
    length: 0.02,
    head: 60,
    friction: 0.04,
    velocity: 19.484,
    leakage: 11.018,
  },
  {
    name: 'the same, twice the gap',
    diameter: 0.2,
    gap: 0.5e-3,
    length: 0.02,
    head: 60,
    friction: 0.04,
    velocity: 22.62,
    leakage: 25.582,
  },
  {
    name: 'ring of 300 mm',
    diameter: 0.3,
    gap: 0.3e-3,
    length: 0.025,
    head: 80,
    friction: 0.03,
    velocity: 23.887,
    leakage: 24.314,
  },
  {
    name: 'ring of 150 mm',
    diameter: 0.15,
    gap: 0.225e-3,
    length: 0.015,
    head: 50,
    friction: 0.04,
    velocity: 18.604,
    leakage: 7.101,
  },
]

/** The first gap with a smooth wall and water of 1 mm²/s; computed apart from this project. */
export const smoothGapRow = {velocity: 20.673, friction: 0.03134, reynolds: 10_336, leakage: 11.69} as const

/** Friction of a smooth wall by Reynolds number: Blasius, values of textbook charts, from memory and recomputed. */
export const smoothWallRows: readonly (readonly [number, number])[] = [
  [4000, 0.0397],
  [10_000, 0.0316],
  [20_000, 0.0266],
  [100_000, 0.0178],
]

export const published = {
  stated: publishedRows({
    calculation: 'annular-gap-leakage',
    source: 'computed apart from this project; no published example with numbers was found',
    known: 'computed',
    rows: gapLeakageRows,
  }),
  smooth: publishedRows({
    calculation: 'annular-gap-leakage',
    source: 'computed apart from this project',
    known: 'computed',
    rows: [smoothGapRow],
  }),
  smoothWall: publishedRows({
    calculation: 'annular-gap-leakage',
    source: 'textbook charts of pipe friction, law of Blasius',
    known: 'memory',
    rows: smoothWallRows,
  }),
}
