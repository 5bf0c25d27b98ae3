import {serves} from '../../conditions/serves.ts'
import type {Datum} from '../../handbook-model/datum.ts'
import type {JobInterval} from '../../handbook-model/job-interval.ts'
import type {Job} from '../../handbook-model/office-content.ts'
import type {FactValue, IsolationPoint, IsolationRole} from '../../handbook-model/vessel-content.ts'
import type {Place} from '../../messages/place.ts'
import type {QuantityKind} from '../../quantities/quantity.ts'
import type {Pump} from '../pump.ts'

/** One thing that the content states of a pump, of its tank or of its ship. */
export interface SisterItem {
  /** `fact.backstop`, `isolation.heating`, `supply.bottle-pressure`, `spare.hub-plates`. */
  readonly id: string
  /** As it is shown; a place in the ship is said by `{tag}`. */
  readonly text: string
  /** What two pumps are held equal by; quantities by their size, whatever their unit. */
  readonly same: string
  /** Only pumps of the same group are held against each other. */
  readonly group: string
  /** Why it is so, where the thing itself says: why nobody knows it, why there is no point. */
  readonly reason?: string
  readonly place: Place
}

/** What no pump of a list has, in words. */
export const notListed = 'not listed'

/**
 * What the content states of one pump beside what its sisters cannot share: serial numbers, tags, volumes of tanks, and
 * stack lengths with all that follows from them.
 */
export function sisterItems(pump: Pump, jobs: Iterable<Job>): readonly SisterItem[] {
  const {vessel, position, facts} = pump
  const tank = vessel.tanks.find(({id}) => id === position.tank?.id)
  const {hydraulics, supplies} = vessel
  const length = position.stackLength
  return [
    plain('role', position.role, position.place),
    plain('critical', position.critical ? 'yes' : 'no', position.place),
    ...position.facts.map((one) => factItem('fact', one)),
    ...vessel.facts.map((one) => factItem('ship-fact', one)),
    ...position.components.map(({kind, place}) => plain(`component.${kind}`, 'with a serial number', place)),
    ...(length && position.stackSections.length > 0
      ? [sectionsItem(position.stackSections, measured('', length).same)]
      : []),
    ...(length && position.stackSupports
      ? [supportsItem(position.stackSupports, `${vessel.id} ${measured('', length).same}`, length.place)]
      : []),
    ...position.isolation.flatMap((one) => isolationItems(one, position.tag)),
    ...(tank
      ? [
          measured('tank.vacuum-valve', tank.vacuumValveSetting),
          measured('tank.pressure-valve', tank.pressureValveSetting),
        ]
      : []),
    measured('hydraulics.system-pressure', hydraulics.systemPressure),
    measured('hydraulics.return-pressure', hydraulics.returnPressure),
    measured('hydraulics.purge-regulator-maximum', hydraulics.purgeRegulatorMaximum),
    plain('hydraulics.oil', hydraulics.oil.en, hydraulics.systemPressure.place),
    measured('supply.purge-gas-flow', supplies.purgeGasFlow),
    measured('supply.bottle-volume', supplies.bottleVolume),
    measured('supply.bottle-pressure', supplies.bottlePressure),
    measured('supply.flush-flow', supplies.flushFlow),
    measured('supply.drum-volume', supplies.drumVolume),
    measured('supply.oil-bulk-modulus', supplies.oilBulkModulus),
    measured('supply.oil-expansion', supplies.oilExpansion),
    measured('supply.ventilator-flow', supplies.ventilatorFlow),
    ...spareItems(pump),
    ...[...jobs]
      .filter((job) => serves(job, facts))
      .map((job) => plain(`interval.${job.id}`, statedInterval(job.interval), job.place)),
  ]
}

/** What an interval states, piece by piece: times, events, what brings it forward. */
function statedInterval({hours, hoursMost, calendar, events, trigger}: JobInterval): string {
  const times = [hours, hoursMost, ...calendar.map(({every}) => every)].flatMap((one) =>
    one ? [`${one.figure} ${one.unit}`] : [],
  )
  return [...times, ...[...events, ...(trigger ? [trigger] : [])].map(({en}) => en)].join('; ')
}

function plain(id: string, text: string, place: Place): SisterItem {
  return {id, text, same: text, group: '', place}
}

/** A quantity; one that nobody knows says so and why. */
function measured(id: string, datum: Datum<QuantityKind>): SisterItem {
  const {place} = datum
  if (datum.kind === 'not-known') return {...plain(id, 'NOT KNOWN', place), reason: datum.reason}
  const {kind, si} = datum.quantity
  return {
    id,
    text: `${datum.figure} ${datum.unit}`,
    same: `${kind} ${si.toPrecision(12)}`,
    group: '',
    place,
  }
}

function factItem(kind: string, {fact, value, reason, place}: FactValue): SisterItem {
  const item = plain(`${kind}.${fact.id}`, value ?? 'NOT KNOWN', place)
  return reason === undefined ? item : {...item, reason}
}

/** Stacks of one length are made of the same sections, or a spare section does not fit. */
function sectionsItem(sections: Pump['position']['stackSections'], group: string): SisterItem {
  const lengths = sections.map(({length}) => measured('', length))
  return {
    id: 'stack-sections',
    text: lengths.map(({text}) => text).join(', '),
    same: lengths.map(({same}) => same).join(', '),
    group,
    place: sections[0]?.place ?? {path: '', line: 1, column: 1},
  }
}

/** How many supports a stack has: a matter of the tank, so that stacks of one length in one ship alone are compared. */
function supportsItem(
  supports: NonNullable<Pump['position']['stackSupports']>,
  group: string,
  place: Place,
): SisterItem {
  const text = `${supports.length} supports`
  return {...plain('stack-supports', text, supports[0]?.place ?? place), group}
}

const pointFields = ['medium', 'normal', 'isolated', 'where', 'lock', 'proof', 'restoredWith'] as const

/** The points of a role by kind and tag, and each of their texts; among pumps with the same points alone. */
function isolationItems(
  {role, points, noneBecause, place}: IsolationRole,
  tag: string,
): readonly SisterItem[] {
  const id = `isolation.${role}`
  const open = (words: string): string => withoutTag(words, tag)
  if (points.length === 0)
    return [{...plain(id, 'none', place), ...(noneBecause ? {reason: noneBecause.en} : {})}]
  const text = points.map((point) => `${point.kind} ${open(point.tag)}`).join(', ')
  const joined = (field: (typeof pointFields)[number]): string =>
    points.map((point: IsolationPoint) => open(point[field].en)).join(' | ')
  return [
    plain(id, text, place),
    ...pointFields.map((field) => ({
      ...plain(
        `${id}.${field === 'restoredWith' ? 'restored-with' : field}`,
        joined(field),
        points[0]?.place ?? place,
      ),
      group: text,
    })),
  ]
}

/** `HP 4S` reads `HP {tag}`: a tag in a longer word stays. */
function withoutTag(words: string, tag: string): string {
  const literal = tag.replace(/[.*+?^${}()|[\]\\]/gu, '\\$&')
  return words.replace(new RegExp(`(?<![\\p{L}\\p{N}])${literal}(?![\\p{L}\\p{N}])`, 'gu'), '{tag}')
}

/** How many of each part the ship has, over all places where they lie. */
function spareItems({vessel}: Pump): readonly SisterItem[] {
  const parts = new Map<string, {quantity: number; place: Place}>()
  for (const {part, quantity, place} of vessel.sparesAboard) {
    const known = parts.get(part.id)
    parts.set(part.id, {quantity: (known?.quantity ?? 0) + quantity, place: known?.place ?? place})
  }
  return [...parts].map(([part, {quantity, place}]) => plain(`spare.${part}`, `${quantity} aboard`, place))
}
