import {type NoRows, publishedRows, type RowKnown} from './published-rows.ts'

/** A limit of a gas by volume, in ppm, the share of it, and the content that results, in ppm. */
export interface EntryLimitRow {
  readonly what: string
  readonly limit: number
  readonly share: number
  readonly content: number
  readonly known: RowKnown
}

/**
 * Shares of limits.
 *
 * Chlorine and the first two of methane were read in an excerpt of a safety programme; the limits of hydrogen sulphide
 * and carbon monoxide are from memory, the last row was computed apart from this project.
 */
export const entryLimitRows: readonly EntryLimitRow[] = [
  {what: 'chlorine, half of 1.0 ppm', limit: 1, share: 0.5, content: 0.5, known: 'read'},
  {what: 'hydrogen sulphide, half of 5 ppm', limit: 5, share: 0.5, content: 2.5, known: 'memory'},
  {what: 'hydrogen sulphide, half of 10 ppm', limit: 10, share: 0.5, content: 5, known: 'memory'},
  {what: 'carbon monoxide, half of 20 ppm', limit: 20, share: 0.5, content: 10, known: 'memory'},
  {what: 'methane, 10 % of its lower limit', limit: 50_000, share: 0.1, content: 5000, known: 'read'},
  {what: 'methane, half of 10 % of its lower limit', limit: 5000, share: 0.5, content: 2500, known: 'read'},
  {what: 'methane, 1 % of its lower limit', limit: 50_000, share: 0.01, content: 500, known: 'computed'},
]

/**
 * What is printed about the atmosphere of an enclosed space before entry.
 *
 * IMO resolution A.1050(27) 7.2.1 to 7.2.3, read, superseded by MSC.581(110); carbon dioxide below 0.5 % by volume
 * read in a secondary page on MSC.581(110), paragraph 7.
 */
export const printedEntryLimits = {
  oxygenPercent: 21,
  lowerFlammableLimitPercent: 1,
  exposureLimitPercent: 50,
  carbonDioxidePartsPerMillion: 5000,
} as const

export const published = {
  shares: publishedRows({
    calculation: 'entry-limit',
    source: 'excerpt of a safety programme; limits of hydrogen sulphide and carbon monoxide in common use',
    known: (row) => row.known,
    rows: entryLimitRows,
  }),
}

export const noRows: NoRows = {
  printedEntryLimits: 'held against the house rules of the demonstration, not against a calculation',
}
