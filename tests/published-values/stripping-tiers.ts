import {publishedRows} from './published-rows.ts'

/**
 * Greatest residue in litres by the day the ship was built: for X and Y, for Z, tolerance of the water test.
 *
 * MARPOL annex II regulation 12; from memory. An older national text, read, states 100 and 300 l, before 300 and 900 l, for
 * the former categories B and C. A public calculator page states other figures and is not followed.
 */
export const strippingTiers: readonly (readonly [string, string, number, number, number])[] = [
  ['1986-06-30', '12.1', 300, 900, 50],
  ['1975-01-01', '12.1', 300, 900, 50],
  ['1986-07-01', '12.2', 100, 300, 50],
  ['2006-12-31', '12.2', 100, 300, 50],
  ['2007-01-01', '12.3', 75, 75, 0],
  ['2031-02-14', '12.3', 75, 75, 0],
]

export const published = {
  tiers: publishedRows({
    calculation: 'stripping-ceiling',
    source: 'MARPOL annex II regulation 12',
    known: 'memory',
    rows: strippingTiers,
  }),
}
