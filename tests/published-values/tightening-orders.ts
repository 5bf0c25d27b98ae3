import {publishedRows} from './published-rows.ts'

/**
 * Cross patterns by count of bolts, numbered clockwise.
 *
 * ASME PCC-1 of 2010 and 2013, legacy cross-pattern table; from memory, the page was not read.
 */
export const crossPatterns: readonly (readonly [number, string])[] = [
  [4, '1-3-2-4'],
  [8, '1-5-3-7 2-6-4-8'],
  [12, '1-7-4-10 2-8-5-11 3-9-6-12'],
  [16, '1-9-5-13 3-11-7-15 2-10-6-14 4-12-8-16'],
  [24, '1-13-7-19 4-16-10-22 2-14-8-20 5-17-11-23 3-15-9-21 6-18-12-24'],
  [32, '1-17-9-25 5-21-13-29 3-19-11-27 7-23-15-31 2-18-10-26 6-22-14-30 4-20-12-28 8-24-16-32'],
]

/** Rules for the passes: shares of the full torque in percent, and how each is known. */
export const passRules: readonly {
  readonly source: string
  readonly shares: readonly number[]
}[] = [
  {source: 'three rounds of at most 30 and 60 %, then 100 %; bolting page, read', shares: [30, 60, 100]},
  {source: '30, 60 and 100 % crosswise, then around; second bolting page, read', shares: [30, 60, 100]},
  {source: 'four and eight bolts start at 30 %; third bolting page, read', shares: [30, 60, 80, 100]},
  {source: 'twelve bolts and more start at 20 %; third bolting page, read', shares: [20, 60, 80, 100]},
  {source: '30, 70 and 100 %; common practice, no source', shares: [30, 70, 100]},
]

/** Torque of passes in N·m: full torque, share in percent, torque as printed; computed apart from this project. */
export const passTorques: readonly (readonly [number, number, string])[] = [
  [205.8, 30, '61.7'],
  [205.8, 60, '123.5'],
  [205.8, 70, '144.1'],
  [205.8, 100, '205.8'],
  [83.6, 30, '25.1'],
  [83.6, 60, '50.2'],
  [83.6, 70, '58.5'],
  [83.6, 100, '83.6'],
]

export const published = {
  crossPatterns: publishedRows({
    calculation: 'tightening-order',
    source: 'ASME PCC-1 of 2010 and 2013, legacy cross-pattern table',
    known: 'memory',
    rows: crossPatterns,
  }),
  passRules: publishedRows({
    calculation: 'tightening-passes',
    source: 'three bolting pages; one rule of common practice',
    known: ({source}) => (source.endsWith('common practice, no source') ? 'common-practice' : 'read'),
    rows: passRules,
  }),
  passTorques: publishedRows({
    calculation: 'tightening-passes',
    source: 'arithmetic, computed apart from this project',
    known: 'computed',
    rows: passTorques,
  }),
}
