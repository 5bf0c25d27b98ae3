import {publishedRows} from './published-rows.ts'

/** A number, the multiple it is rounded to, and the digits printed by both rules for ties. */
export interface RoundingRow {
  readonly value: number
  readonly step: number
  readonly halfEven: string
  readonly halfUp: string
}

/** ISO 80000-1 annex B, examples of rounding; from memory and reproduced digit by digit. */
export const isoRoundingRows: readonly RoundingRow[] = [
  {value: 12.223, step: 0.1, halfEven: '12.2', halfUp: '12.2'},
  {value: 12.251, step: 0.1, halfEven: '12.3', halfUp: '12.3'},
  {value: 12.275, step: 0.1, halfEven: '12.3', halfUp: '12.3'},
  {value: 1222.3, step: 10, halfEven: '1220', halfUp: '1220'},
  {value: 1225.1, step: 10, halfEven: '1230', halfUp: '1230'},
  {value: 1227.5, step: 10, halfEven: '1230', halfUp: '1230'},
  {value: 12.25, step: 0.1, halfEven: '12.2', halfUp: '12.3'},
  {value: 12.35, step: 0.1, halfEven: '12.4', halfUp: '12.4'},
  {value: 1225.0, step: 10, halfEven: '1220', halfUp: '1230'},
  {value: 1235.0, step: 10, halfEven: '1240', halfUp: '1240'},
]

/** A page on types of rounding, read; the half-up digits of its last two rows do not differ from the half-even ones. */
export const intervalRoundingRows: readonly RoundingRow[] = [
  {value: 123.455, step: 0.01, halfEven: '123.46', halfUp: '123.46'},
  {value: 123.5, step: 1, halfEven: '124', halfUp: '124'},
  {value: 123.325, step: 0.05, halfEven: '123.30', halfUp: '123.35'},
  {value: 123.326, step: 0.05, halfEven: '123.35', halfUp: '123.35'},
  {value: 123.376, step: 0.05, halfEven: '123.40', halfUp: '123.40'},
]

/** A page on significant figures, read. */
export const significantRoundingRow = {value: 60.25132, digits: 3, printed: '60.3'}

export const published = {
  iso: publishedRows({
    calculation: 'rounding',
    source: 'ISO 80000-1 annex B, examples of rounding',
    known: 'memory',
    rows: isoRoundingRows,
  }),
  intervals: publishedRows({
    calculation: 'rounding',
    source: 'a page on types of rounding',
    known: 'read',
    rows: intervalRoundingRows,
  }),
  significant: publishedRows({
    calculation: 'rounding',
    source: 'a page on significant figures',
    known: 'read',
    rows: [significantRoundingRow],
  }),
}
