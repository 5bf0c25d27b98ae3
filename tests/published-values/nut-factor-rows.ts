import {type NoRows, publishedRows} from './published-rows.ts'

/** Pound-force in newton and inch in metre, exact by definition. */
export const poundForceInNewtons = 4.4482216152605
export const inchInMetres = 0.0254

/**
 * Torque from nut factor for a diameter of 0.190 in and a preload of 1275 lbf: nut factor, torque in lbf·in as printed.
 *
 * Textbook on fastening, p. 85; read in a reprint.
 */
export const nutFactorRows: readonly (readonly [number, string])[] = [
  [0.3, '72.7'],
  [0.25, '60.6'],
  [0.2, '48.5'],
  [0.15, '36.3'],
  [0.1, '24.2'],
]

/** Nut factor of the printed coarse-thread table at friction 0.12, class 8.8; computed apart from this project from the table. */
export const nutFactorsOfTable: readonly (readonly [string, number])[] = [
  ['M8', 0.165],
  ['M12', 0.162],
  ['M16', 0.159],
  ['M20', 0.159],
  ['M24', 0.159],
  ['M30', 0.159],
]

/** Nut factor of M16 by friction, hexagon head and medium hole; computed apart from this project. */
export const nutFactorsOfM16: readonly (readonly [number, number])[] = [
  [0.08, 0.113],
  [0.1, 0.136],
  [0.14, 0.182],
  [0.16, 0.205],
  [0.2, 0.252],
]

/** Nut factor of M10 by one friction of thread and face, face 15.2 mm, hole 11 mm, by the equations of JIS B 1083; computed apart from this project. */
export const nutFactorsOfM10: readonly (readonly [number, number])[] = [
  [0.08, 0.1184],
  [0.1, 0.142],
  [0.12, 0.1657],
  [0.15, 0.2011],
  [0.2, 0.2602],
]

/** Three quarters of the proof load in kN of class 8.8, and the torque in N·m for nut factors 0.20 and 0.15; computed apart from this project. */
export const reusableJointRows: readonly (readonly [string, number, number, number])[] = [
  ['M8', 15.9, 25.5, 19.1],
  ['M12', 36.7, 88.0, 66.0],
  ['M16', 68.3, 218.5, 163.9],
  ['M20', 110.3, 441.0, 330.8],
  ['M24', 158.9, 762.5, 571.9],
]

/** Torque of phosphated bolt and nut as a share of that of plain ones, by their nut factors; a page on torque tables, read in a reprint. */
export const otherNutFactorRow = {plain: 0.2, phosphated: 0.15, share: 0.75} as const

export const published = {
  torques: publishedRows({
    calculation: 'nut-factor-torque',
    source: 'textbook on fastening, p. 85',
    known: 'reprint',
    rows: nutFactorRows,
  }),
  preloads: publishedRows({
    calculation: 'nut-factor-preload',
    source: 'textbook on fastening, p. 85, read backwards',
    known: 'reprint',
    rows: nutFactorRows,
  }),
  ofTable: publishedRows({
    calculation: 'tightening-torque',
    source: 'nut factor of the printed coarse-thread table, computed apart from this project',
    known: 'computed',
    rows: nutFactorsOfTable,
  }),
  ofM16: publishedRows({
    calculation: 'tightening-torque',
    source: 'nut factor of M16 by friction, computed apart from this project',
    known: 'computed',
    rows: nutFactorsOfM16,
  }),
  ofM10: publishedRows({
    calculation: 'nut-factor-from-friction',
    source: 'equations of JIS B 1083, computed apart from this project',
    known: 'computed',
    rows: nutFactorsOfM10,
  }),
  reusable: publishedRows({
    calculation: 'nut-factor-torque',
    source: 'three quarters of the proof load, computed apart from this project',
    known: 'computed',
    rows: reusableJointRows,
  }),
  otherFactor: publishedRows({
    calculation: 'nut-factor-torque',
    source: 'a page on torque tables: phosphated bolt and nut take 0.75 of the torque of plain ones',
    known: 'reprint',
    rows: [otherNutFactorRow],
  }),
}

export const noRows: NoRows = {poundForceInNewtons: 'a unit', inchInMetres: 'a unit'}
