import {parse} from 'csv-parse/sync'
import type {CsvSource, PlacedScalar} from '../handbook-model/sources.ts'
import {addMessage, type ContentFiles} from '../messages/add-message.ts'
import type {Place} from '../messages/place.ts'

/**
 * Reads a table: `# key: value` lines on top, then a header row, then rows of cells, each with its place.
 *
 * Every kind of line end is accepted. A row with more or fewer cells than the
 * header is a message at that row. A cell ends in its line: quotes hold no line end.
 */
export function readCsv(path: string, text: string, files: ContentFiles): CsvSource | undefined {
  const lines = text.split(/\r\n|\n|\r/u)
  const head = new Map<string, PlacedScalar>()
  let first = 0
  for (; first < lines.length; first += 1) {
    const line = lines[first] ?? ''
    const match = /^#\s*([^:]+):\s*(.*)$/u.exec(line)
    if (match) addToHead(match, {path, line: first + 1, column: 1}, head, files)
    else if (line.trim() !== '' && !line.startsWith('#')) break
  }
  const place = {path, line: Math.min(first + 1, lines.length), column: 1}
  if (first === lines.length) {
    addMessage(files, place, 'no-csv-fault', 'Unexpected end of table, expected a header row', {
      note: 'Write the column names in one line below the # lines',
    })
    return undefined
  }
  const header = cellsOf(path, lines[first] ?? '', first + 1, files)
  if (!header) return undefined
  const rows = lines.slice(first + 1).flatMap((line, index) => {
    if (line.trim() === '') return []
    const cells = cellsOf(path, line, first + index + 2, files)
    return cells ? [cells] : []
  })
  for (const row of rows) {
    if (row.length === header.length) continue
    addMessage(
      files,
      row[0]?.place ?? place,
      'no-csv-fault',
      `Unexpected row of ${row.length} cells, expected ${header.length} as in the header`,
      {note: 'Give the row one cell for each column; put a cell that holds a comma in quotes', cause: place},
    )
  }
  return {head, header, rows: rows.filter((row) => row.length === header.length), place}
}

function addToHead(
  [, written = '', value = '']: RegExpExecArray,
  place: Place,
  head: Map<string, PlacedScalar>,
  files: ContentFiles,
): void {
  const key = written.trim()
  const first = head.get(key)
  if (first)
    addMessage(
      files,
      place,
      'no-duplicate-id',
      `Unexpected second line \`# ${key}: …\`, expected each key once`,
      {note: 'Remove one of the two', cause: first.place},
    )
  else head.set(key, {kind: 'scalar', text: value.trim(), place})
}

function cellsOf(
  path: string,
  line: string,
  number: number,
  files: ContentFiles,
): readonly PlacedScalar[] | undefined {
  let cells: readonly string[]
  try {
    const parsed: string[][] = parse(line, {trim: true, relax_column_count: true, record_delimiter: '\n'})
    cells = parsed[0] ?? []
  } catch {
    addMessage(
      files,
      {path, line: number, column: 1},
      'no-csv-fault',
      'Unexpected quotes in the row, expected quotes around a whole cell',
      {note: 'Put the whole cell in quotes and double the quotes inside it'},
    )
    return undefined
  }
  const written = writtenCells(line)
  return cells.map((text, index) => {
    const {start, end} = written[index] ?? {start: 0, end: line.length}
    return {
      kind: 'scalar',
      text,
      place: {path, line: number, column: start + 1, endLine: number, endColumn: end + 1},
    }
  })
}

/** Where each cell of a well-formed row stands in its line, quotes with it and blanks around it left out. */
function writtenCells(line: string): readonly {readonly start: number; readonly end: number}[] {
  const commas = [...line.matchAll(/"(?:[^"]|"")*"|,/gu)]
    .filter(([one]) => one === ',')
    .map(({index}) => index)
  return [...commas, line.length].map((end, index) => {
    const start = index === 0 ? 0 : (commas[index - 1] ?? 0) + 1
    const cell = line.slice(start, end)
    const blanks = cell.length - cell.trimStart().length
    return blanks === cell.length
      ? {start, end: start}
      : {start: start + blanks, end: start + cell.trimEnd().length}
  })
}
