/** How a published figure is known. */
export type RowKnown = 'read' | 'reprint' | 'memory' | 'computed' | 'common-practice'

/** Rows of one source that a calculation is held against. */
export interface PublishedRows<Row = unknown> {
  /** Name on the command line, or `rounding`, which has none. */
  readonly calculation: string
  /** Standard, book or page in words. */
  readonly source: string
  readonly rows: readonly Row[]
  /** How each row is known, in the order of the rows. */
  readonly known: readonly RowKnown[]
}

/** Rows with their header; where rows of one table are known in different ways, each says its own. */
export function publishedRows<Row>(header: {
  readonly calculation: string
  readonly source: string
  readonly known: RowKnown | ((row: Row) => RowKnown)
  readonly rows: readonly Row[]
}): PublishedRows<Row> {
  const {calculation, source, rows, known} = header
  return {
    calculation,
    source,
    rows,
    known: rows.map((row) => (typeof known === 'string' ? known : known(row))),
  }
}

/** Exports of a file of rows that are no rows, by name, with the reason. */
export type NoRows = Readonly<Record<string, string>>
