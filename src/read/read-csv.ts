import {parse} from 'csv-parse/sync'
import type {CsvSource, PlacedScalar} from '../handbook-model/sources.ts'
import {addMessage, type ContentFiles} from '../messages/add-message.ts'

/**
 * Reads a table: `# key: value` lines on top, then a header row, then rows of cells, each with its place.
 *
 * CRLF line ends are accepted. A row with more or fewer
 * cells than the header is a message at that row.
 */
export function readCsv(path: string, text: string, files: ContentFiles): CsvSource | undefined {
  const lines = text.split(/\r?\n/u)
  const head = new Map<string, PlacedScalar>()
  let first = 0
  for (; first < lines.length; first += 1) {
    const line = lines[first] ?? ''
    const match = /^#\s*([^:]+):\s*(.*)$/u.exec(line)
    if (match) {
      const [, key = '', value = ''] = match
      head.set(key.trim(), {kind: 'scalar', text: value.trim(), place: {path, line: first + 1, column: 1}})
    } else if (line.trim() !== '' && !line.startsWith('#')) break
  }
  const rows = lines.slice(first).flatMap((line, index) => cellsOf(path, line, first + index + 1, files))
  const [header, ...body] = rows
  const place = {path, line: Math.min(first + 1, lines.length), column: 1}
  if (!header) {
    addMessage(files, place, 'no-csv-fault', 'Unexpected end of table, expected a header row', {
      note: 'Write the column names in one line below the # lines',
    })
    return undefined
  }
  for (const row of body) {
    if (row.length === header.length) continue
    addMessage(
      files,
      row[0]?.place ?? place,
      'no-csv-fault',
      `Unexpected row of ${row.length} cells, expected ${header.length} as in the header`,
      {note: 'Give the row one cell for each column; put a cell that holds a comma in quotes', cause: place},
    )
  }
  return {head, header, rows: body.filter((row) => row.length === header.length), place}
}

function cellsOf(
  path: string,
  line: string,
  number: number,
  files: ContentFiles,
): readonly (readonly PlacedScalar[])[] {
  if (line.trim() === '') return []
  const place = {path, line: number, column: 1}
  let cells: readonly string[]
  try {
    const parsed: string[][] = parse(line, {trim: true, relax_column_count: true})
    cells = parsed[0] ?? []
  } catch {
    addMessage(
      files,
      place,
      'no-csv-fault',
      'Unexpected quotes in the row, expected quotes around a whole cell',
      {
        note: 'Put the whole cell in quotes and double the quotes inside it',
      },
    )
    return []
  }
  let column = 1
  return [
    cells.map((text) => {
      const found = line.indexOf(text, column - 1)
      const at = found === -1 ? column : found + 1
      const end = at + text.length
      column = end + 1
      return {
        kind: 'scalar',
        text,
        place: {path, line: number, column: at, endLine: number, endColumn: end},
      }
    }),
  ]
}
