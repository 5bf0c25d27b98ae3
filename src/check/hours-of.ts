import {
  countedBy,
  type FittedOnce,
  type HoursReading,
  type HoursRecord,
} from '../handbook-model/hours-content.ts'
import type {ContentSources, CsvSource, PlacedScalar} from '../handbook-model/sources.ts'
import {type Component, componentKinds, type Vessel} from '../handbook-model/vessel-content.ts'
import {addMessage, type ContentFiles} from '../messages/add-message.ts'
import {expectedWord} from './nearest-word.ts'
import {
  dayOf,
  inOrderOfDays,
  isPump,
  type RecordCell,
  recordsOf,
  sourceOfRecord,
  tenthsOf,
} from './record-of.ts'
import {noFallingHours} from './rules/no-falling-hours.ts'
import {cellsOf} from './shapes/table-cells.ts'
import {columnsFit} from './shapes/table-columns.ts'

const columns = ['day', 'component', 'serial', 'at', 'hours', 'counted', 'new-counter-from', 'note']

/** The records of running hours by vessel; a file below a folder without a vessel is told. */
export function hoursOf(
  sources: ContentSources,
  vessels: ReadonlyMap<string, Vessel>,
  files: ContentFiles,
): ReadonlyMap<string, HoursRecord> {
  return recordsOf('hours', (csv, vessel) => recordOf(csv, vessel, files), {sources, vessels, files})
}

function recordOf(csv: CsvSource, vessel: Vessel, files: ContentFiles): HoursRecord {
  const source = sourceOfRecord(csv, 'hours', 'log', files)
  const removed = removedOf(csv, files)
  const readings = columnsFit(csv, columns, files)
    ? csv.rows.flatMap((cells) => readingOf(cells, csv, {vessel, removed, files}) ?? [])
    : []
  const record: HoursRecord = {
    vessel: vessel.id,
    source,
    removed,
    readings: inOrderOfDays(readings),
    place: {path: csv.place.path, line: 1, column: 1},
  }
  noFallingHours(record, files)
  return record
}

/** A vessel, and what was taken out of her pumps. */
export interface FittingDesk {
  readonly vessel: Vessel
  readonly removed: readonly FittedOnce[]
  readonly files: ContentFiles
}

function readingOf(
  written: readonly PlacedScalar[],
  csv: CsvSource,
  desk: FittingDesk,
): HoursReading | undefined {
  const {vessel, files} = desk
  const cells = cellsOf(
    {csv, cells: written, origin: {status: 'measured', source: ''}, units: {of: () => undefined}},
    files,
  )
  const cell = (column: string): RecordCell => cells.reference(column)
  const day = dayOf(cell('day'), files)
  const component = cells.oneOf('component', componentKinds)
  const tenths = tenthsOf(cell('hours'), files)
  const counted = cells.oneOf('counted', countedBy)
  const start = cell('new-counter-from')
  const newCounterTenths = start.id === '' ? undefined : tenthsOf(start, files)
  if (start.id !== '' && newCounterTenths === undefined) return undefined
  const at = cell('at')
  const isPlaced = at.id === '' || isPump(at, vessel, files)
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
    note: cells.text('note'),
    place: cells.place,
  }
}

/** Hours belong to something that a pump of the vessel has, or had. */
function isFitted(kind: Component['kind'], serial: RecordCell, desk: FittingDesk): boolean {
  return isOfVessel(kind, serial, desk, 'stands above the header')
}

/** A component that a pump of the vessel has, or had by its record of running hours. */
export function isOfVessel(
  kind: Component['kind'],
  serial: RecordCell,
  {vessel, removed, files}: FittingDesk,
  where: string,
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
      note: `Read the nameplate again; what is fitted nowhere any more ${where}: \`# removed: motor M-7\``,
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
