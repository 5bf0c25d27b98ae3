import {isDay} from '../handbook-model/comparison-date.ts'
import {
  countedBy,
  type FittedOnce,
  type HoursReading,
  type HoursRecord,
} from '../handbook-model/hours-content.ts'
import type {ContentSources, CsvSource, PlacedScalar} from '../handbook-model/sources.ts'
import {type Component, componentKinds, type Vessel} from '../handbook-model/vessel-content.ts'
import {addMessage, type ContentFiles} from '../messages/add-message.ts'
import type {Place} from '../messages/place.ts'
import {refersTo} from './identity.ts'
import {expectedWord} from './nearest-word.ts'
import {noFallingHours} from './rules/no-falling-hours.ts'
import {type Cells, cellsOf} from './shapes/table-cells.ts'
import {columnsFit} from './shapes/table-columns.ts'

const columns = ['day', 'component', 'serial', 'at', 'hours', 'counted', 'new-counter-from', 'note']

const hoursFile = /^vessels\/([^/]+)\/hours\.csv$/u

/** The records of running hours by vessel; a file below a folder without a vessel is told. */
export function hoursOf(
  sources: ContentSources,
  vessels: ReadonlyMap<string, Vessel>,
  files: ContentFiles,
): ReadonlyMap<string, HoursRecord> {
  const records = new Map<string, HoursRecord>()
  for (const [path, csv] of sources.csv) {
    const id = hoursFile.exec(path)?.[1]
    if (id === undefined) continue
    const vessel = vessels.get(id)
    if (vessel) records.set(id, recordOf(csv, vessel, files))
    else if (!sources.yaml.has(`vessels/${id}/vessel.yaml`) && !files.has(`vessels/${id}/vessel.yaml`))
      addMessage(
        files,
        {path, line: 1, column: 1},
        'no-stray-file',
        `Unexpected hours of \`${id}\`, expected a vessel beside them`,
        {
          note: 'Move the file to the folder of its vessel',
        },
      )
  }
  return records
}

function recordOf(csv: CsvSource, vessel: Vessel, files: ContentFiles): HoursRecord {
  const source = csv.head.get('source')
  if (!source)
    addMessage(
      files,
      csv.place,
      'no-missing-key',
      'Unexpected hours without a line `# source: …`, expected it above the header',
      {note: 'Add `# source: …` on top of the file with the id of the log that they were read from'},
    )
  const removed = removedOf(csv, files)
  const readings = columnsFit(csv, columns, files)
    ? csv.rows.flatMap((cells) => readingOf(cells, csv, {vessel, removed, files}) ?? [])
    : []
  const record: HoursRecord = {
    vessel: vessel.id,
    source: source?.text ?? '',
    removed,
    readings: [...readings].sort((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0)),
    place: {path: csv.place.path, line: 1, column: 1},
  }
  noFallingHours(record, files)
  return record
}

interface Desk {
  readonly vessel: Vessel
  readonly removed: readonly FittedOnce[]
  readonly files: ContentFiles
}

function readingOf(written: readonly PlacedScalar[], csv: CsvSource, desk: Desk): HoursReading | undefined {
  const {vessel, files} = desk
  const cells = cellsOf(
    {csv, cells: written, origin: {status: 'measured', source: ''}, units: {of: () => undefined}},
    files,
  )
  const cell = (column: string): {readonly id: string; readonly place: Place} => cells.reference(column)
  const day = dayOf(cell('day'), files)
  const component = cells.oneOf('component', componentKinds)
  const tenths = tenthsOf(cell('hours'), files)
  const counted = cells.oneOf('counted', countedBy)
  const start = cell('new-counter-from')
  const newCounterTenths = start.id === '' ? undefined : tenthsOf(start, files)
  if (start.id !== '' && newCounterTenths === undefined) return undefined
  const at = cell('at')
  const isPlaced =
    at.id === '' ||
    refersTo(at, new Map(vessel.positions.map((one) => [one.id, one])), 'pump of this vessel', files)
  if (
    !component ||
    !isFitted(component, cell('serial'), desk) ||
    !day ||
    tenths === undefined ||
    !counted ||
    !isPlaced
  )
    return undefined
  return {
    day,
    component,
    serial: cell('serial'),
    ...(at.id === '' ? {} : {at}),
    tenths,
    counted,
    ...(newCounterTenths === undefined ? {} : {newCounterTenths}),
    note: noteOf(cells),
    place: cells.place,
  }
}

function noteOf(cells: Cells): string {
  return cells.text('note')
}

function dayOf(
  {id, place}: {readonly id: string; readonly place: Place},
  files: ContentFiles,
): string | undefined {
  if (isDay(id)) return id
  addMessage(files, place, 'no-bad-date', `Unexpected date \`${id}\`, expected a day like \`2031-02-14\``, {
    note: 'Write year, month and day of a day that exists',
  })
  return undefined
}

function tenthsOf(
  {id, place}: {readonly id: string; readonly place: Place},
  files: ContentFiles,
): number | undefined {
  const [, whole = '', tenth = '0'] = /^(\d{1,6})(?:\.(\d))?$/u.exec(id) ?? []
  if (whole !== '') return Number(whole) * 10 + Number(tenth)
  addMessage(
    files,
    place,
    'no-bad-quantity',
    `Unexpected hours \`${id}\`, expected a number such as \`4120\` or \`4120.5\``,
    {
      note: 'Write the hours in digits, without a unit; leave the line out where nobody read them',
    },
  )
  return undefined
}

/** Hours belong to something that a pump of the vessel has, or had. */
function isFitted(
  kind: Component['kind'],
  serial: {readonly id: string; readonly place: Place},
  {vessel, removed, files}: Desk,
): boolean {
  const fitted = vessel.positions.flatMap(({components}) => components)
  const known = [...fitted, ...removed].flatMap((one) => (one.kind === kind ? [one.serial] : []))
  if (known.includes(serial.id)) return true
  addMessage(
    files,
    serial.place,
    'no-undefined-reference',
    `Unexpected ${kind} \`${serial.id}\`, ${expectedWord(serial.id, known, `the serial of a ${kind} of \`${vessel.id}\``)}`,
    {
      note: 'Read the nameplate again; what is fitted nowhere any more stands above the header: `# removed: motor M-7`',
    },
  )
  return false
}

/** `# removed: motor M-7, head H-3`. */
function removedOf(csv: CsvSource, files: ContentFiles): readonly FittedOnce[] {
  const written = csv.head.get('removed')
  if (!written) return []
  return written.text.split(',').flatMap((one): readonly FittedOnce[] => {
    const [kind = '', ...serial] = one.trim().split(/\s+/u)
    const known = componentKinds.find((word) => word === kind)
    if (known && serial.length > 0) return [{kind: known, serial: serial.join(' ')}]
    addMessage(
      files,
      written.place,
      'no-wrong-shape',
      `Unexpected \`${one.trim()}\`, expected a component and its serial such as \`motor M-7\``,
      {
        note: `Write one of ${componentKinds.join(', ')} and the serial, with commas between`,
      },
    )
    return []
  })
}
