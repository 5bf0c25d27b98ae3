import {publishedRows} from './published-rows.ts'

/**
 * Proof loads in N of coarse threads with the nominal stress area in mm²: classes 8.8, 10.9, 12.9.
 *
 * ISO 898-1; read in two reprints up to M16 and in one up to M27. Structural bolts have other values.
 */
export const publishedProofLoads: readonly (readonly [string, number, number, number, number])[] = [
  ['M5', 14.2, 8230, 11_800, 13_800],
  ['M6', 20.1, 11_600, 16_700, 19_500],
  ['M8', 36.6, 21_200, 30_400, 35_500],
  ['M10', 58, 33_700, 48_100, 56_300],
  ['M12', 84.3, 48_900, 70_000, 81_800],
  ['M14', 115, 66_700, 95_500, 112_000],
  ['M16', 157, 91_000, 130_000, 152_000],
  ['M18', 192, 115_000, 159_000, 186_000],
  ['M20', 245, 147_000, 203_000, 238_000],
  ['M22', 303, 182_000, 252_000, 294_000],
  ['M24', 353, 212_000, 293_000, 342_000],
  ['M27', 459, 275_000, 381_000, 445_000],
]

/**
 * Least tensile loads in N of coarse threads: classes 8.8, 10.9, 12.9.
 *
 * ISO 898-1; read in two reprints. One of them misprints M4 in class 10.9 as 91130, see below.
 */
export const publishedTensileLoads: readonly (readonly [string, number, number, number])[] = [
  ['M6', 16_100, 20_900, 24_500],
  ['M8', 29_200, 38_100, 44_600],
  ['M10', 46_400, 60_300, 70_800],
  ['M12', 67_400, 87_700, 103_000],
  ['M14', 92_000, 120_000, 140_000],
  ['M16', 125_000, 163_000, 192_000],
  ['M18', 159_000, 200_000, 234_000],
  ['M20', 203_000, 255_000, 299_000],
  ['M22', 252_000, 315_000, 370_000],
  ['M24', 293_000, 367_000, 431_000],
  ['M27', 381_000, 477_000, 560_000],
  ['M30', 466_000, 583_000, 684_000],
  ['M33', 576_000, 722_000, 847_000],
  ['M36', 678_000, 850_000, 997_000],
]

/** M4 in class 10.9, least tensile load in N: printed right in one reprint and wrong in the other. */
export const tensileLoadOfM4 = {right: 9130, misprint: 91_130} as const

/**
 * Strength of classes in N/mm²: class, diameter in mm, tensile strength, yield or 0.2 % proof stress, proof stress.
 *
 * ISO 898-1: 8.8 above 16 mm, 10.9 and 12.9 read in a reprint of the edition of 1999; 8.8 up to 16 mm from memory, implied by the printed loads.
 */
export const publishedClasses: readonly (readonly [string, number, number, number, number])[] = [
  ['8.8', 16, 800, 640, 580],
  ['8.8', 18, 830, 660, 600],
  ['10.9', 16, 1040, 940, 830],
  ['12.9', 16, 1220, 1100, 970],
]

/**
 * Stainless classes in N/mm²: class, tensile strength, 0.2 % proof stress.
 *
 * ISO 3506-1: 70 and 80 read in a reprint of the edition of 1979; 50 from memory, its 210 implied by a read torque table.
 */
export const publishedStainlessClasses: readonly (readonly [string, number, number])[] = [
  ['A1-50', 500, 210],
  ['A2-50', 500, 210],
  ['A4-50', 500, 210],
  ['A2-70', 700, 450],
  ['A4-70', 700, 450],
  ['A2-80', 800, 600],
  ['A4-80', 800, 600],
]

/**
 * Force in N at the 0.2 % proof stress of A2-70 and A4-70 by diameter and pitch in mm.
 *
 * ISO 3506-1 of 1979 and DIN 267-11; read in a reprint.
 */
export const stainlessYieldForces: readonly (readonly [string, number, number, number])[] = [
  ['M3', 3, 0.5, 2250],
  ['M4', 4, 0.7, 3960],
  ['M5', 5, 0.8, 6390],
  ['M6', 6, 1, 9040],
  ['M8', 8, 1.25, 16_470],
]

export const published = {
  proofLoads: publishedRows({
    calculation: 'bolt-strength',
    source: 'ISO 898-1, proof loads',
    known: 'reprint',
    rows: publishedProofLoads,
  }),
  tensileLoads: publishedRows({
    calculation: 'bolt-strength',
    source: 'ISO 898-1, least tensile loads',
    known: 'reprint',
    rows: publishedTensileLoads,
  }),
  classes: publishedRows({
    calculation: 'bolt-strength',
    source: 'ISO 898-1, strength of property classes',
    known: ([propertyClass, diameter]) => (propertyClass === '8.8' && diameter <= 16 ? 'memory' : 'reprint'),
    rows: publishedClasses,
  }),
  stainlessClasses: publishedRows({
    calculation: 'bolt-strength',
    source: 'ISO 3506-1, strength of stainless classes',
    known: ([propertyClass]) => (propertyClass.endsWith('-50') ? 'memory' : 'reprint'),
    rows: publishedStainlessClasses,
  }),
  stainlessYieldForces: publishedRows({
    calculation: 'bolt-strength',
    source: 'ISO 3506-1 of 1979 and DIN 267-11, forces at the 0.2 % proof stress',
    known: 'reprint',
    rows: stainlessYieldForces,
  }),
  tensileLoadOfM4: publishedRows({
    calculation: 'bolt-strength',
    source: 'ISO 898-1, least tensile load of M4 in class 10.9',
    known: 'reprint',
    rows: [tensileLoadOfM4],
  }),
}
