import type {PublishedRows} from './published-rows.ts'

/** One published figure and what the library gives for it. */
export interface Agreement {
  readonly what: string
  readonly found: number
  readonly published: number
  /** How far apart they may be: what the printed digits leave open, or what is said beside it. */
  readonly tolerance: number
}

/** Rows of a source with what the library gives for each of them. */
export interface HeldRows {
  readonly header: PublishedRows
  /** Agreements by row, in the order of the rows. */
  agreements(): readonly (readonly Agreement[])[]
}

/** Holds a calculation against every row of a source. */
export function heldTo<Row>(
  header: PublishedRows<Row>,
  agreementsOf: (row: Row) => readonly Agreement[],
): HeldRows {
  return {header, agreements: () => header.rows.map(agreementsOf)}
}

/** A figure that may differ by the tolerance. */
export function near(what: string, found: number, published: number, tolerance: number): Agreement {
  return {what, found, published, tolerance}
}

/** Words or a row of numbers that agree wholly. */
export function same(what: string, found: string, published: string): Agreement {
  return {
    what: `${what} ${published}, found ${found}`,
    found: found === published ? 0 : 1,
    published: 0,
    tolerance: 0,
  }
}

/** Deviation over tolerance; above one the figure does not agree. */
export function deviationOf({found, published, tolerance}: Agreement): number {
  const apart = Math.abs(found - published)
  if (apart === 0) return 0
  return tolerance > 0 && Number.isFinite(apart) ? apart / tolerance : Number.POSITIVE_INFINITY
}

/** Half a unit of the last printed digit. */
export function halfDigit(printed: string): number {
  return 0.5 * 10 ** -(printed.split('.')[1]?.length ?? 0) + 1e-9
}
