import {daysBetween, writtenHours} from '../handbook-model/hours-content.ts'
import {type PurgeHistory, type PurgeResult, purgeLiquids} from '../handbook-model/purge-history.ts'
import type {CsvSource, PlacedScalar} from '../handbook-model/sources.ts'
import type {Vessel} from '../handbook-model/vessel-content.ts'
import {addMessage, type ContentFiles} from '../messages/add-message.ts'
import {instrumentsOf} from './instruments-of.ts'
import {
  dayOf,
  inOrderOfDays,
  isPump,
  type RecordCell,
  recordsOf,
  sourceOfRecord,
  tenthsOf,
} from './record-of.ts'
import {cellsOf, type Units, unitsOf} from './shapes/table-cells.ts'
import {columnsFit} from './shapes/table-columns.ts'
import type {ReadingsDesk} from './wear-of.ts'

const columns = ['day', 'at', 'hours', 'gas', 'volume', 'liquid', 'instrument', 'note']

/** The purges by vessel, each of a pump of hers. */
export function purgesOf(desk: ReadingsDesk): ReadonlyMap<string, PurgeHistory> {
  return recordsOf('purges', (csv, vessel) => historyOf(csv, vessel, desk), desk)
}

function historyOf(csv: CsvSource, vessel: Vessel, desk: ReadingsDesk): PurgeHistory {
  const units = unitsOf(csv, desk.files)
  const results = inOrderOfDays(
    columnsFit(csv, columns, desk.files)
      ? csv.rows.flatMap((cells) => resultOf(cells, {csv, vessel, units, desk}) ?? [])
      : [],
  )
  for (const {id} of vessel.positions)
    refuseLongRuns(
      results.filter((one) => one.at.id === id),
      desk.files,
    )
  return {vessel: vessel.id, source: sourceOfRecord(csv, 'purges', 'log', desk.files), results}
}

interface Sheet {
  readonly csv: CsvSource
  readonly vessel: Vessel
  readonly units: Units
  readonly desk: ReadingsDesk
}

function resultOf(
  written: readonly PlacedScalar[],
  {csv, vessel, units, desk}: Sheet,
): PurgeResult | undefined {
  const {files} = desk
  const cells = cellsOf({csv, cells: written, origin: {status: 'measured', source: ''}, units}, files)
  const cell = (column: string): RecordCell => cells.reference(column)
  const day = dayOf(cell('day'), files)
  const isPlaced = isPump(cell('at'), vessel, files)
  const tenths = tenthsOf(cell('hours'), files)
  const gas = cells.oneOf('gas', ['yes', 'no'])
  const volume = cells.quantity('volume', 'volume')
  const liquid = cells.oneOf('liquid', purgeLiquids)
  const instruments = instrumentsOf(cell('instrument'), 'volume', desk)
  if (!day || !isPlaced || tenths === undefined || !gas || !volume || !liquid || !instruments)
    return undefined
  if ((volume.si === 0) !== (liquid === 'none')) {
    addMessage(
      files,
      cell('volume').place,
      'no-impossible-value',
      liquid === 'none'
        ? `Unexpected volume \`${cell('volume').id}\` of no liquid, expected \`0\``
        : `Unexpected volume \`0\` of ${liquid}, expected more than zero`,
      {note: 'Write what came and how much; a dry purge is `0` and `none`'},
    )
    return undefined
  }
  return {
    day,
    at: cell('at'),
    tenths,
    gas: gas === 'yes',
    volume,
    liquid,
    instruments,
    note: cells.text('note'),
    place: cells.place,
  }
}

/** A pump runs no longer between two purges than the calendar has hours. */
function refuseLongRuns(results: readonly PurgeResult[], files: ContentFiles): void {
  for (const [index, result] of results.entries()) {
    const before = results[index - 1]
    if (!before) continue
    const days = daysBetween(before.day, result.day)
    if (result.tenths > (days + 1) * 240)
      addMessage(
        files,
        result.place,
        'no-impossible-value',
        `Unexpected \`${writtenHours(result.tenths)}\` running hours since the purge of ${before.day}, expected at most the \`${(days + 1) * 24}\` of both days and those between`,
        {note: 'Read both days and the hour counter again', cause: before.place},
      )
  }
}
