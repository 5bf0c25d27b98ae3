import {isDay} from '../handbook-model/comparison-date.ts'
import {type RecordName, recordAt} from '../handbook-model/record-files.ts'
import type {ContentSources, CsvSource} from '../handbook-model/sources.ts'
import type {Vessel} from '../handbook-model/vessel-content.ts'
import {addMessage, type ContentFiles} from '../messages/add-message.ts'
import type {Place} from '../messages/place.ts'
import {refersTo} from './identity.ts'

/** A cell with the place where it is written. */
export interface RecordCell {
  readonly id: string
  readonly place: Place
}

/** The records of one name by vessel; a file below a folder without a vessel is told. */
export function recordsOf<T>(
  name: RecordName,
  read: (csv: CsvSource, vessel: Vessel) => T,
  {sources, vessels, files}: RecordDesk,
): ReadonlyMap<string, T> {
  const records = new Map<string, T>()
  for (const [path, csv] of sources.csv) {
    const at = recordAt(path)
    if (at?.name !== name) continue
    const vessel = vessels.get(at.vessel)
    const file = `vessels/${at.vessel}/vessel.yaml`
    if (vessel) records.set(at.vessel, read(csv, vessel))
    else if (!sources.yaml.has(file) && !files.has(file))
      addMessage(
        files,
        {path, line: 1, column: 1},
        'no-stray-file',
        `Unexpected ${name} of \`${at.vessel}\`, expected a vessel beside them`,
        {note: 'Move the file to the folder of its vessel'},
      )
  }
  return records
}

/** Where records are read from, and which vessels there are. */
export interface RecordDesk {
  readonly sources: ContentSources
  readonly vessels: ReadonlyMap<string, Vessel>
  readonly files: ContentFiles
}

/** The source that stands above the header; a record without one is told. */
export function sourceOfRecord(csv: CsvSource, name: RecordName, paper: string, files: ContentFiles): string {
  const source = csv.head.get('source')
  if (!source)
    addMessage(
      files,
      csv.place,
      'no-missing-key',
      `Unexpected ${name} without a line \`# source: …\`, expected it above the header`,
      {note: `Add \`# source: …\` on top of the file with the id of the ${paper} that they were read from`},
    )
  return source?.text ?? ''
}

/** A cell as a day of the calendar. */
export function dayOf({id, place}: RecordCell, files: ContentFiles): string | undefined {
  if (isDay(id)) return id
  addMessage(files, place, 'no-bad-date', `Unexpected date \`${id}\`, expected a day like \`2031-02-14\``, {
    note: 'Write year, month and day of a day that exists',
  })
  return undefined
}

/** A cell that names a pump of the vessel. */
export function isPump(cell: RecordCell, {positions}: Vessel, files: ContentFiles): boolean {
  return refersTo(cell, new Map(positions.map((one) => [one.id, one])), 'pump of this vessel', files)
}

/** Running hours as they are written, in tenths. */
export function tenthsOf({id, place}: RecordCell, files: ContentFiles): number | undefined {
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

/** Lines in the order of their days; those of one day stay as they are written. */
export function inOrderOfDays<T extends {readonly day: string}>(lines: readonly T[]): readonly T[] {
  return [...lines].sort((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0))
}
