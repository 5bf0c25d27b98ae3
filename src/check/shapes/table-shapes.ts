import type {TableOf, Tables} from '../../handbook-model/content.ts'
import {type Origin, valueStatuses} from '../../handbook-model/datum.ts'
import type {ContentSources, CsvSource, PlacedScalar} from '../../handbook-model/sources.ts'
import {addMessage, type ContentFiles} from '../../messages/add-message.ts'
import type {Place} from '../../messages/place.ts'
import {expectedWord} from '../nearest-word.ts'
import {type Cells, cellsOf, unitsOf} from './table-cells.ts'
import {columnsFit} from './table-columns.ts'
import {rangeOfClass, rangeOfClearance, refuseOverlaps} from './table-ranges.ts'
import {
  boltHeadRow,
  cargoRow,
  clearanceHoleRow,
  frictionRow,
  materialRow,
  propertyClassRow,
  runningClearanceRow,
  suitabilityRow,
  threadRow,
} from './table-rows.ts'

/** The tables that there are, each with the columns that tell its rows apart. */
export const keyColumns = {
  threads: ['size'],
  'bolt-heads': ['size', 'head'],
  'clearance-holes': ['size'],
  'property-classes': ['class', 'above-diameter'],
  friction: ['id'],
  'running-clearances': ['from'],
  cargoes: ['id'],
  materials: ['id'],
  suitability: ['material', 'cargo'],
} as const

type TableName = keyof typeof keyColumns

/** Tables that an office does without: what they would say is then not known. */
const optionalTables: readonly TableName[] = ['materials', 'suitability']

/**
 * Reads the tables of content/tables; columns that are missing or not known are messages at the header.
 *
 * @param nothing
 *   True when there is no content at all, which has been told: then no missing table is told.
 */
export function checkTables(sources: ContentSources, files: ContentFiles, nothing = false): Tables {
  const read = <Row>(
    name: TableName,
    columns: readonly string[],
    row: (cells: Cells) => Row | undefined,
  ): TableOf<Row> => readTable(sources.csv.get(`tables/${name}.csv`), name, columns, row, files, nothing)
  return {
    threads: read('threads', ['size', 'diameter', 'pitch'], threadRow),
    boltHeads: read('bolt-heads', ['size', 'head', 'bearing-diameter', 'wrench'], boltHeadRow),
    clearanceHoles: read('clearance-holes', ['size', 'fine', 'medium', 'coarse'], clearanceHoleRow),
    propertyClasses: refuseOverlaps(
      read(
        'property-classes',
        ['class', 'above-diameter', 'up-to-diameter', 'yield', 'tensile'],
        propertyClassRow,
      ),
      rangeOfClass,
      files,
    ),
    friction: read(
      'friction',
      ['id', 'title', 'class', 'thread-friction', 'head-friction', 'source'],
      frictionRow,
    ),
    runningClearances: refuseOverlaps(
      read('running-clearances', ['from', 'below', 'clearance'], runningClearanceRow),
      rangeOfClearance,
      files,
    ),
    cargoes: read(
      'cargoes',
      [
        'id',
        'title',
        'density',
        'flammable',
        'water-reactive',
        'toxic',
        'purge-medium',
        'word',
        'protection',
      ],
      cargoRow,
    ),
    materials: read('materials', ['id', 'title'], materialRow),
    suitability: read('suitability', ['material', 'cargo', 'word', 'note'], suitabilityRow),
  }
}

function readTable<Row>(
  csv: CsvSource | undefined,
  name: TableName,
  columns: readonly string[],
  row: (cells: Cells) => Row | undefined,
  files: ContentFiles,
  nothing: boolean,
): TableOf<Row> {
  const path = `tables/${name}.csv`
  if (!csv) {
    if (!files.has(path) && !nothing && !optionalTables.includes(name)) {
      addMessage(
        files,
        {path: 'tables', line: 1, column: 1},
        'no-missing-content',
        `Unexpected content without \`tables/${name}.csv\`, expected the table`,
        {note: `Write the table with the columns ${columns.join(',')}`},
      )
    }
    return {origin: {status: 'assumed', source: ''}, rows: []}
  }
  const origin = originOfTable(csv, files)
  if (!columnsFit(csv, columns, files)) return {origin, rows: []}
  const units = unitsOf(csv, files)
  const first = new Map<string, Place>()
  const rows = csv.rows.flatMap((written) => {
    const cells = cellsOf({csv, cells: written, origin, units}, files)
    const key = keyColumns[name].map((column) => cells.text(column)).join(' ')
    const earlier = first.get(key)
    if (earlier) {
      addMessage(
        files,
        cells.place,
        'no-duplicate-id',
        `Unexpected second row \`${key}\`, expected each row once`,
        {
          cause: earlier,
          note: 'Keep the row that the source prints',
        },
      )
      return []
    }
    first.set(key, cells.place)
    if (hasBlank(csv, written, files)) return []
    const made = row(cells)
    return made === undefined ? [] : [made]
  })
  return {origin, rows}
}

function hasBlank(csv: CsvSource, written: readonly PlacedScalar[], files: ContentFiles): boolean {
  const blanks = written.flatMap(({text, place}, index) => (text === '' ? [{place, index}] : []))
  for (const {place, index} of blanks)
    addMessage(
      files,
      place,
      'no-wrong-shape',
      `Unexpected blank in column \`${csv.header[index]?.text ?? ''}\`, expected a value`,
      {note: 'Fill the cell, or take the row out'},
    )
  return blanks.length > 0
}

function originOfTable(csv: CsvSource, files: ContentFiles): Origin {
  for (const key of ['title', 'source', 'edition', 'status']) {
    if (!csv.head.has(key)) {
      addMessage(
        files,
        csv.place,
        'no-missing-key',
        `Unexpected table without a line \`# ${key}: …\`, expected it above the header`,
        {note: `Add \`# ${key}: …\` on top of the file`},
      )
    }
  }
  const status = csv.head.get('status')
  const known = valueStatuses.find((one) => one === status?.text)
  if (status && !known) {
    addMessage(
      files,
      status.place,
      'no-wrong-shape',
      `Unexpected status \`${status.text}\`, ${expectedWord(status.text, valueStatuses, 'a word')}`,
      {note: `Write one of ${valueStatuses.join(', ')}`},
    )
  }
  return {
    status: known ?? 'assumed',
    source: csv.head.get('source')?.text ?? '',
    where: csv.head.get('edition')?.text ?? '',
  }
}
