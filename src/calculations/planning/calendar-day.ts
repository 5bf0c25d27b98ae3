const written = /^(\d{4})-(\d{2})-(\d{2})$/u
const millisecondsPerDay = 86_400_000

/**
 * Number of a day, counted from 1970-01-01, from its date.
 *
 * Source: Gregorian calendar.
 * Valid for: dates from 1900 to 2199, written `2031-02-14`.
 *
 * @throws {RangeError}
 *   When the text is no such date or the day does not exist.
 */
export function dayNumber(date: string): number {
  const [, year = '', month = '', day = ''] = written.exec(date) ?? []
  const number = Date.UTC(Number(year), Number(month) - 1, Number(day)) / millisecondsPerDay
  if (year < '1900' || year > '2199' || dateOfDay(number) !== date)
    throw new RangeError(`Unexpected date \`${date}\`, expected a day such as \`2031-02-14\``)
  return number
}

/**
 * Date of a day by its number.
 *
 * Source: Gregorian calendar.
 * Valid for: whole numbers of days.
 */
export function dateOfDay(number: number): string {
  return new Date(number * millisecondsPerDay).toISOString().slice(0, 10)
}
