import {publishedRows} from './published-rows.ts'

/** One screw under load: sizes in mm, load in kN, torques in N·m, with the digits that were printed or computed. */
export interface ScrewRow {
  readonly id: string
  readonly pitchDiameter: number
  readonly lead: number
  readonly flank: number
  readonly load: number
  readonly friction: number
  readonly collar?: {readonly diameter: number; readonly friction: number}
  readonly raising: number
  readonly lowering: number
  readonly efficiency: number
  /** How the expected figures are known. */
  readonly known: string
  readonly tolerance: number
}

export const screwRows: readonly ScrewRow[] = [
  {
    id: 'square thread 32 mm, double start of 4 mm',
    pitchDiameter: 30,
    lead: 8,
    flank: 0,
    load: 6.4,
    friction: 0.08,
    collar: {diameter: 40, friction: 0.08},
    raising: 26.18,
    lowering: 9.77,
    efficiency: 0.311,
    known: 'Mechanical Engineering Design, example 8-1; from memory, reproduced',
    tolerance: 0.005,
  },
  {
    id: 'square thread 20 mm, pitch 4 mm',
    pitchDiameter: 18,
    lead: 4,
    flank: 0,
    load: 5,
    friction: 0.09,
    collar: {diameter: 30, friction: 0.09},
    raising: 14.03,
    lowering: 7.61,
    efficiency: 0.227,
    known:
      'inputs of an exercise on power screws read in a reprint; results computed apart from this project',
    tolerance: 0.005,
  },
  {
    id: 'M20 without collar',
    pitchDiameter: 18.376,
    lead: 2.5,
    flank: 30,
    load: 5,
    friction: 0.15,
    raising: 10.02,
    lowering: 5.92,
    efficiency: 0.199,
    known: 'computed apart from this project',
    tolerance: 0.005,
  },
  {
    id: 'M20 with a collar of 25 mm',
    pitchDiameter: 18.376,
    lead: 2.5,
    flank: 30,
    load: 5,
    friction: 0.15,
    collar: {diameter: 25, friction: 0.15},
    raising: 19.4,
    lowering: 15.3,
    efficiency: 0.103,
    known: 'computed apart from this project',
    tolerance: 0.005,
  },
  {
    id: 'trapezoidal thread 30 x 6',
    pitchDiameter: 27,
    lead: 6,
    flank: 15,
    load: 20,
    friction: 0.15,
    raising: 61.71,
    lowering: 22.58,
    efficiency: 0.31,
    known: 'computed apart from this project',
    tolerance: 0.005,
  },
]

export const published = {
  screws: publishedRows({
    calculation: 'screw-torque',
    source: 'Mechanical Engineering Design, example 8-1; the others computed apart from this project',
    known: (row) => (row.known.includes('from memory') ? 'memory' : 'computed'),
    rows: screwRows,
  }),
  loweringBolts: publishedRows({
    calculation: 'lowering-bolts',
    source: 'screws of M20, computed apart from this project',
    known: 'computed',
    rows: screwRows.filter((row) => row.id.startsWith('M20')),
  }),
}
