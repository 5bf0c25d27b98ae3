import {
  type Calibration,
  type CalibrationRecord,
  isMeasuring,
  numbersOf,
} from '../handbook-model/calibration-content.ts'
import type {Tool} from '../handbook-model/office-content.ts'
import type {CsvSource, PlacedScalar} from '../handbook-model/sources.ts'
import type {Vessel} from '../handbook-model/vessel-content.ts'
import {addMessage, type ContentFiles} from '../messages/add-message.ts'
import {refersTo} from './identity.ts'
import {knownIds} from './known-ids.ts'
import {expectedWord} from './nearest-word.ts'
import {
  dayOf,
  inOrderOfDays,
  type RecordCell,
  type RecordDesk,
  recordsOf,
  sourceOfRecord,
} from './record-of.ts'
import {cellsOf} from './shapes/table-cells.ts'
import {columnsFit} from './shapes/table-columns.ts'

const columns = ['day', 'tool', 'number', 'certificate', 'valid-to', 'note']

/** The tools of the office, and the files whose definitions could not be used. */
interface ToolDesk extends RecordDesk {
  readonly tools: ReadonlyMap<string, Tool>
  readonly faulty: ReadonlySet<string>
}

/** The days of calibration by vessel, each of a measuring tool that lies aboard under this number. */
export function calibrationsOf(desk: ToolDesk): ReadonlyMap<string, CalibrationRecord> {
  return recordsOf('calibrations', (csv, vessel) => recordOf(csv, vessel, desk), desk)
}

function recordOf(csv: CsvSource, vessel: Vessel, desk: ToolDesk): CalibrationRecord {
  const {files} = desk
  const lines = columnsFit(csv, columns, files)
    ? csv.rows.flatMap((cells) => calibrationOf(cells, csv, vessel, desk) ?? [])
    : []
  refuseSecondOfDay(lines, files)
  return {
    vessel: vessel.id,
    source: sourceOfRecord(csv, 'calibrations', 'paper', files),
    calibrations: inOrderOfDays(lines),
  }
}

function calibrationOf(
  written: readonly PlacedScalar[],
  csv: CsvSource,
  vessel: Vessel,
  desk: ToolDesk,
): Calibration | undefined {
  const {files} = desk
  const cells = cellsOf(
    {csv, cells: written, origin: {status: 'measured', source: ''}, units: {of: () => undefined}},
    files,
  )
  const day = dayOf(cells.reference('day'), files)
  const tool = cells.reference('tool')
  const number = cells.reference('number')
  const last = cells.reference('valid-to')
  const validTo = last.id === '' ? undefined : dayOf(last, files)
  const isAboard = isMeasuringTool(tool, desk) && liesAboard(tool.id, number, vessel, files)
  if (day === undefined || !isAboard || (last.id !== '' && validTo === undefined)) return undefined
  if (validTo !== undefined && validTo < day) {
    addMessage(
      files,
      last.place,
      'no-impossible-value',
      `Unexpected \`${validTo}\` before the calibration on ${day}, expected a later day`,
      {note: 'Read both days of the certificate again'},
    )
    return undefined
  }
  return {
    day,
    tool,
    number: number.id,
    certificate: cells.text('certificate'),
    ...(validTo === undefined ? {} : {validTo}),
    note: cells.text('note'),
    place: cells.place,
  }
}

/** A tool of the office that measures. */
function isMeasuringTool(reference: RecordCell, {tools, faulty, files}: ToolDesk): boolean {
  if (!refersTo(reference, knownIds(tools, 'tools.yaml', faulty), 'tool', files)) return false
  const tool = tools.get(reference.id)
  if (!tool || isMeasuring(tool)) return true
  const measuring = [...tools.values()].filter(isMeasuring).map(({id}) => id)
  addMessage(
    files,
    reference.place,
    'no-undefined-reference',
    `Unexpected \`${reference.id}\` that measures nothing, ${expectedWord(reference.id, measuring, 'a tool with `torque-range:` or `instrument:`')}`,
    {note: 'Name the tool that was calibrated, or state its class in tools.yaml', cause: tool.place},
  )
  return false
}

/** The tool lies aboard under this number. */
function liesAboard(tool: string, number: RecordCell, vessel: Vessel, files: ContentFiles): boolean {
  const known = vessel.toolsAboard.filter((one) => one.tool.id === tool).flatMap(numbersOf)
  if (known.includes(number.id)) return true
  addMessage(
    files,
    number.place,
    'no-undefined-reference',
    `Unexpected number \`${number.id}\`, ${expectedWord(number.id, known, `a number of \`${tool}\` aboard \`${vessel.id}\``)}`,
    {
      note: 'Read the number on the tool again and write one; lines of a tool that has left the ship are taken out',
    },
  )
  return false
}

function refuseSecondOfDay(lines: readonly Calibration[], files: ContentFiles): void {
  const first = new Map<string, Calibration>()
  for (const line of lines) {
    const key = JSON.stringify([line.tool.id, line.number, line.day])
    const before = first.get(key)
    if (!before) first.set(key, line)
    else
      addMessage(
        files,
        line.place,
        'no-duplicate-id',
        `Unexpected second line of \`${line.tool.id}\` \`${line.number}\` on ${line.day}, expected one a day`,
        {note: 'Keep the line that is right', cause: before.place},
      )
  }
}
