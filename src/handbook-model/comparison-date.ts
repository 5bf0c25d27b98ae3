/** The day that dates are compared with. It is never taken from the clock of the machine. */
export interface ComparisonDate {
  /** `2031-02-14`: days as texts are compared as they are sorted. */
  readonly day: string
  /** Named on the command line, or the newest day that the content holds. */
  readonly origin: 'option' | 'content'
}

/**
 * True for a day of the calendar as it is written: `2031-02-14`, not `2031-02-30`.
 *
 * Years run from 1900 to 2199: a day of another is a slip of the pen, and one far ahead would be the newest of all.
 */
export function isDay(text: string): boolean {
  if (!/^(19|20|21)\d{2}-\d{2}-\d{2}$/u.test(text)) return false
  const day = new Date(`${text}T00:00:00Z`)
  return !Number.isNaN(day.getTime()) && day.toISOString().startsWith(text)
}

/** The later of two days; the other one where one is missing. */
export function laterDay(one: string | undefined, other: string | undefined): string | undefined {
  if (one === undefined || other === undefined) return one ?? other
  return one < other ? other : one
}
