import type {HoldHistory, HoldReading} from '../handbook-model/hold-history.ts'
import type {CsvSource, PlacedScalar} from '../handbook-model/sources.ts'
import type {Vessel} from '../handbook-model/vessel-content.ts'
import {addMessage, type ContentFiles} from '../messages/add-message.ts'
import {
  dayOf,
  inOrderOfDays,
  isPump,
  type RecordCell,
  type RecordDesk,
  recordsOf,
  sourceOfRecord,
} from './record-of.ts'
import {cellsOf, type Units, unitsOf} from './shapes/table-cells.ts'
import {columnsFit} from './shapes/table-columns.ts'

const columns = ['day', 'at', 'test', 'minute', 'pressure', 'temperature', 'barometer', 'note']

/** The pressure holds by vessel, each of a pump of hers. */
export function holdsOf(desk: RecordDesk): ReadonlyMap<string, HoldHistory> {
  return recordsOf('tightness', (csv, vessel) => historyOf(csv, vessel, desk.files), desk)
}

function historyOf(csv: CsvSource, vessel: Vessel, files: ContentFiles): HoldHistory {
  const units = unitsOf(csv, files)
  const readings = columnsFit(csv, columns, files)
    ? csv.rows.flatMap((cells) => readingOf(cells, {csv, vessel, units, files}) ?? [])
    : []
  refuseSecondReading(readings, files)
  return {
    vessel: vessel.id,
    source: sourceOfRecord(csv, 'tightness', 'log', files),
    readings: inOrderOfDays([...readings].sort((a, b) => a.minute.si - b.minute.si)),
  }
}

interface Sheet {
  readonly csv: CsvSource
  readonly vessel: Vessel
  readonly units: Units
  readonly files: ContentFiles
}

function readingOf(
  written: readonly PlacedScalar[],
  {csv, vessel, units, files}: Sheet,
): HoldReading | undefined {
  const cells = cellsOf({csv, cells: written, origin: {status: 'measured', source: ''}, units}, files)
  const cell = (column: string): RecordCell => cells.reference(column)
  const day = dayOf(cell('day'), files)
  const isPlaced = isPump(cell('at'), vessel, files)
  const minute = cells.quantity('minute', 'time')
  const pressure = cells.quantity('pressure', 'gauge-pressure')
  const temperature = cells.quantity('temperature', 'temperature')
  const barometer = cells.quantity('barometer', 'absolute-pressure')
  if (!day || !isPlaced || !minute || !pressure || !temperature || !barometer) return undefined
  return {
    day,
    at: cell('at'),
    test: cells.text('test'),
    minute,
    pressure,
    temperature,
    barometer,
    note: cells.text('note'),
    place: cells.place,
  }
}

function refuseSecondReading(readings: readonly HoldReading[], files: ContentFiles): void {
  const first = new Map<string, HoldReading>()
  for (const reading of readings) {
    const key = JSON.stringify([reading.at.id, reading.day, reading.test, reading.minute.si])
    const before = first.get(key)
    if (!before) first.set(key, reading)
    else
      addMessage(
        files,
        reading.place,
        'no-duplicate-id',
        `Unexpected second reading of one minute of hold \`${reading.test}\` of \`${reading.at.id}\` on ${reading.day}, expected one a minute`,
        {
          note: 'Keep the line that is right; a second hold of a day has another number under `test`',
          cause: before.place,
        },
      )
  }
}
