import type {Design} from '../handbook-model/design-content.ts'
import type {HoursRecord} from '../handbook-model/hours-content.ts'
import type {Tool} from '../handbook-model/office-content.ts'
import type {CsvSource, PlacedScalar} from '../handbook-model/sources.ts'
import type {Vessel} from '../handbook-model/vessel-content.ts'
import {type WearHistory, type WearReading, wearPhases} from '../handbook-model/wear-history.ts'
import {addMessage} from '../messages/add-message.ts'
import {isOfVessel} from './hours-of.ts'
import {refersTo} from './identity.ts'
import {instrumentsOf} from './instruments-of.ts'
import {
  dayOf,
  inOrderOfDays,
  isPump,
  type RecordCell,
  type RecordDesk,
  recordsOf,
  sourceOfRecord,
  tenthsOf,
} from './record-of.ts'
import {noTornWear} from './rules/no-unmeasured-renewal.ts'
import {type Cells, cellsOf, type Units, unitsOf} from './shapes/table-cells.ts'
import {columnsFit} from './shapes/table-columns.ts'

const columns = [
  'day',
  'at',
  'head',
  'ring',
  'hours',
  'phase',
  'clearance',
  'least-gap',
  'renewed',
  'instrument',
  'note',
]

/** What readings of pumps refer to. */
export interface ReadingsDesk extends RecordDesk {
  readonly designs: ReadonlyMap<string, Design>
  readonly tools: ReadonlyMap<string, Tool>
  readonly hours: ReadonlyMap<string, HoursRecord>
  readonly faulty: ReadonlySet<string>
}

/** The clearances by vessel, each of a ring of a head that is hers or was. */
export function wearOf(desk: ReadingsDesk): ReadonlyMap<string, WearHistory> {
  return recordsOf('wear', (csv, vessel) => historyOf(csv, vessel, desk), desk)
}

function historyOf(csv: CsvSource, vessel: Vessel, desk: ReadingsDesk): WearHistory {
  const units = unitsOf(csv, desk.files)
  const readings = columnsFit(csv, columns, desk.files)
    ? csv.rows.flatMap((cells) => readingOf(cells, {csv, vessel, units, desk}) ?? [])
    : []
  const history: WearHistory = {
    vessel: vessel.id,
    source: sourceOfRecord(csv, 'wear', 'log', desk.files),
    readings: inOrderOfDays(readings),
  }
  noTornWear(history, desk.hours.get(vessel.id), desk.files)
  return history
}

interface Sheet {
  readonly csv: CsvSource
  readonly vessel: Vessel
  readonly units: Units
  readonly desk: ReadingsDesk
}

function readingOf(
  written: readonly PlacedScalar[],
  {csv, vessel, units, desk}: Sheet,
): WearReading | undefined {
  const {files} = desk
  const cells = cellsOf({csv, cells: written, origin: {status: 'measured', source: ''}, units}, files)
  const cell = (column: string): RecordCell => cells.reference(column)
  const day = dayOf(cell('day'), files)
  const isPlaced = isPump(cell('at'), vessel, files)
  const removed = desk.hours.get(vessel.id)?.removed ?? []
  const isHead = isOfVessel('head', cell('head'), {vessel, removed, files}, 'stands in hours.csv')
  const isRing = isPlaced && isRingOf(cell('at'), cell('ring'), vessel, desk)
  const tenths = tenthsOf(cell('hours'), files)
  const phase = cells.oneOf('phase', wearPhases)
  const clearance = cells.quantity('clearance', 'diametral-clearance')
  const hasGap = cell('least-gap').id !== ''
  const leastGap = hasGap ? cells.quantity('least-gap', 'diametral-clearance') : undefined
  const renewed = renewedOf(cells)
  const instruments = instrumentsOf(cell('instrument'), 'length', desk)
  if (!day || !isHead || !isRing || tenths === undefined || !phase || !clearance) return undefined
  if ((hasGap && !leastGap) || renewed === undefined || !instruments) return undefined
  if (leastGap && leastGap.si > clearance.si) {
    addMessage(
      files,
      cell('least-gap').place,
      'no-impossible-value',
      `Unexpected least gap \`${cell('least-gap').id}\` above the clearance \`${cell('clearance').id}\`, expected the smallest of the gaps whose mean the clearance is`,
      {note: 'Read both on the sheet again'},
    )
    return undefined
  }
  return {
    day,
    at: cell('at'),
    head: cell('head'),
    ring: cell('ring'),
    tenths,
    phase,
    clearance,
    ...(leastGap ? {leastGap} : {}),
    renewed,
    instruments,
    note: cells.text('note'),
    place: cells.place,
  }
}

/** Blank is no. */
function renewedOf(cells: Cells): boolean | undefined {
  return cells.text('renewed') === '' ? false : cells.oneOf('renewed', ['yes', 'no']) === 'yes'
}

/** The ring stands in the design of the pump; where that could not be read, every ring counts as known. */
function isRingOf(
  at: RecordCell,
  ring: RecordCell,
  {positions}: Vessel,
  {designs, files}: ReadingsDesk,
): boolean {
  const design = designs.get(positions.find(({id}) => id === at.id)?.design.id ?? '')
  if (!design) return true
  return refersTo(ring, new Map(design.rings.map((one) => [one.id, one])), 'wear ring of this pump', files)
}
