import {type NoRows, publishedRows} from './published-rows.ts'

/**
 * Working loads of one eyebolt in kg: along the axis, up to 45° and up to 90° off it.
 *
 * DIN 580, table A.1; read in two reprints that agree, the third column in the second of them. Typed from the reprints apart
 * from the rows that the calculation holds.
 */
export const eyeboltRows: readonly (readonly [string, number, number, number])[] = [
  ['M8', 140, 100, 70],
  ['M10', 230, 170, 115],
  ['M12', 340, 240, 170],
  ['M16', 700, 500, 350],
  ['M20', 1200, 860, 600],
  ['M24', 1800, 1290, 900],
  ['M30', 3200, 2300, 1600],
  ['M36', 4600, 3300, 2300],
  ['M42', 6300, 4500, 3150],
  ['M48', 8600, 6100, 4300],
]

/** Axial loads in kg of the edition of 1972 that still circulate; from memory. They are too high. */
export const axialLoadsOf1972: readonly (readonly [string, number])[] = [
  ['M30', 3600],
  ['M36', 5100],
  ['M42', 7000],
]

/** What a page on machinery eyebolts of another standard leaves at 45°: 30 %, another 25 %; read in reprints, not for DIN 580. */
export const otherStandardSharesAt45: readonly number[] = [0.3, 0.25]

/** Share that a shackle keeps by its angle of side load; trade guidance on ASME B30.26, read in three reprints that agree. */
export const shackleRows: readonly {readonly angle: number; readonly share: number}[] = [
  {angle: 0, share: 1},
  {angle: 45, share: 0.7},
  {angle: 90, share: 0.5},
]

export const published = {
  eyebolts: publishedRows({
    calculation: 'eyebolt-limit',
    source: 'DIN 580, table A.1',
    known: 'reprint',
    rows: eyeboltRows,
  }),
  shackles: publishedRows({
    calculation: 'shackle-limit',
    source: 'trade guidance on ASME B30.26',
    known: 'reprint',
    rows: shackleRows,
  }),
}

export const noRows: NoRows = {
  axialLoadsOf1972: 'an older edition, not to be reproduced',
  otherStandardSharesAt45: 'another standard, not to be mixed in',
}
