import {deviationOf, type HeldRows} from '../published-values/agreement.ts'
import type {PublishedRows, RowKnown} from '../published-values/published-rows.ts'

/** Ways in which rows are known, in the order of the columns. */
export const waysKnown: readonly RowKnown[] = ['read', 'reprint', 'memory', 'computed', 'common-practice']

/** What one calculation is held against. */
export interface ReportLine {
  readonly calculation: string
  readonly rows: Readonly<Record<RowKnown, number>>
  /** Figures compared; a row may print several. */
  readonly figures: number
  /** Largest deviation as a share of its tolerance. */
  readonly worst: number
  readonly sources: readonly string[]
}

/** One line for each calculation that has rows, sorted by name. */
export function reportLines(held: readonly HeldRows[]): readonly ReportLine[] {
  const names = [...new Set(held.map(({header}) => header.calculation))].sort()
  return names.map((calculation) => {
    const own = held.filter(({header}) => header.calculation === calculation)
    const known = own.flatMap(({header}) => header.known)
    const agreements = own.flatMap((one) => one.agreements().flat())
    return {
      calculation,
      rows: countsOf(known),
      figures: agreements.length,
      worst: Math.max(0, ...agreements.map(deviationOf)),
      sources: [...new Set(own.map(({header}) => header.source))],
    }
  })
}

/** Counts of rows by how they are known. */
export function countsOf(known: readonly RowKnown[]): Readonly<Record<RowKnown, number>> {
  const count = (way: RowKnown): number => known.filter((one) => one === way).length
  return {
    read: count('read'),
    reprint: count('reprint'),
    memory: count('memory'),
    computed: count('computed'),
    'common-practice': count('common-practice'),
  }
}

/** Rows that are known in one of the ways, each once, also where two calculations are held against it. */
export function distinctRows(headers: readonly PublishedRows[], ways: readonly RowKnown[]): number {
  const rows = headers.flatMap(({rows: own, known}) =>
    own.filter((_, index) => ways.some((way) => way === known[index])),
  )
  return new Set(rows).size
}

/** The table as text: a line for each calculation, a line of sums, then what has no published row and why. */
export function reportText(
  lines: readonly ReportLine[],
  headers: readonly PublishedRows[],
  withoutRows: ReadonlyMap<string, string>,
  listed: readonly string[],
): string {
  const names = [...new Set([...listed, ...lines.map((one) => one.calculation)])].sort()
  const wide = Math.max(...names.map((name) => name.length))
  const row = (cells: readonly string[]): string =>
    cells.map((cell, index) => (index === 0 ? cell.padEnd(wide) : cell.padStart(9))).join(' ')
  const sums = waysKnown.map((way) => lines.reduce((sum, {rows}) => sum + rows[way], 0))
  const figures = lines.reduce((sum, one) => sum + one.figures, 0)
  return [
    row([
      'published rows asserted',
      ...waysKnown.map((way) => way.replace('common-practice', 'practice')),
      'figures',
      'worst',
    ]),
    ...names.map((name) => {
      const line = lines.find((one) => one.calculation === name)
      return row([
        name,
        ...waysKnown.map((way) => (line?.rows[way] ? String(line.rows[way]) : '·')),
        String(line?.figures ?? 0),
        line ? line.worst.toFixed(2) : '·',
      ])
    }),
    row(['sum', ...sums.map(String), String(figures), '']),
    '',
    'worst: largest deviation as a share of its tolerance',
    `rows once each, where two calculations are held against one: ${distinctRows(headers, ['read', 'reprint'])} read, here or in a reprint; ${distinctRows(headers, ['memory'])} from memory`,
    '',
    'No published figure was found for these; invariants and a second implementation stand in',
    ...[...withoutRows].map(([name, file]) => `${name.padEnd(wide)}  ${file}`),
    '',
  ].join('\n')
}
