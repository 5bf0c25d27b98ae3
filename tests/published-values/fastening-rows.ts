import {publishedRows} from './published-rows.ts'

/** Greatest preload in kN, tightening factor and least preload in kN; worked example with the torque tables, read. */
export const leastPreloadRow = {preload: 41.9, tighteningFactor: 1.8, least: 23.3} as const

/** Torque at the bolt in N·m, lengths in mm and setting of the wrench in N·m; a guide on wrench extensions, read. */
export const extensionRow = {torque: 130, wrench: 500, extended: 650, setting: 100} as const

/**
 * M16 at 80.97 kN and 205.9 N·m; equations of ISO 16047 from memory, computed apart from this project.
 *
 * The friction of 0.12 that was put in comes back 0.3 % high, as the equations take the sum of angles for their tangent.
 */
export const torqueTestRow = {clampForce: 80.97, torque: 205.9, friction: 0.1204} as const

/** M16 at friction 0.12: divisor of the yield force by JIS B 1083; computed apart from this project. */
export const yieldDivisorRow = {friction: 0.12, divisor: 1.196} as const

/** M12 8.8 set for friction 0.14 and applied at 0.08, in N·m and kN; computed apart from this project from the printed table. */
export const lubricantSwapRow = {torque: 93, preload: 67.1, shareOfAllowed: 1.48, yieldForce: 53.9} as const

/** Loads in N of bolts on a circle, diameter in m, moment arm 0.05 m; statics, computed apart from this project. */
export const boltGroupRows = [
  {bolts: 4, circle: 0.4 * Math.SQRT2, firstBoltAt: 45, mass: 800, loads: [2451.7, 1471, 1471, 2451.7]},
  {bolts: 3, circle: 0.5, firstBoltAt: 0, mass: 600, loads: [2745.9, 1569.1, 1569.1]},
] as const

export const published = {
  leastPreload: publishedRows({
    calculation: 'least-preload',
    source: 'worked example with the torque tables, M12 8.8',
    known: 'read',
    rows: [leastPreloadRow],
  }),
  extension: publishedRows({
    calculation: 'wrench-extension',
    source: 'a guide on wrench extensions',
    known: 'read',
    rows: [extensionRow],
  }),
  torqueTest: publishedRows({
    calculation: 'friction-from-torque-test',
    source: 'equations of ISO 16047, computed apart from this project',
    known: 'computed',
    rows: [torqueTestRow],
  }),
  yieldDivisor: publishedRows({
    calculation: 'yield-clamp-force',
    source:
      'JIS B 1083, computed apart from this project, as the page that was read leaves the square root out',
    known: 'computed',
    rows: [yieldDivisorRow],
  }),
  lubricantSwap: publishedRows({
    calculation: 'lubricant-swap',
    source: 'computed apart from this project from the printed coarse-thread table',
    known: 'computed',
    rows: [lubricantSwapRow],
  }),
  boltGroups: publishedRows({
    calculation: 'bolt-group',
    source: 'statics, computed apart from this project',
    known: 'computed',
    rows: boltGroupRows,
  }),
}
