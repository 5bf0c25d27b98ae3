import type {Datum} from '../../handbook-model/datum.ts'
import type {Design, Limit} from '../../handbook-model/design-content.ts'
import {
  type DerivedReading,
  derivations,
  type Procedure,
  type Reading,
} from '../../handbook-model/procedure.ts'
import {addMessage, type ContentFiles} from '../../messages/add-message.ts'
import type {QuantityKind} from '../../quantities/quantity.ts'
import {units} from '../../quantities/units.ts'
import {expectedWord} from '../nearest-word.ts'
import {readingsOf} from './no-unlimited-reading.ts'

/**
 * A reading is held against a limit of its own kind: radial against radial, gauge pressure against gauge pressure.
 *
 * Accepted: a derived reading in `mm diametral` with a limit in `mm diametral`.
 * Rejected: a reading in `mm radial` with a limit in `mm diametral`.
 */
export function noUnitMix(procedure: Procedure, design: Design, files: ContentFiles): void {
  for (const reading of readingsOf(procedure)) {
    const kinds = kindsOfUnit(reading.unit)
    for (const reference of reading.limits) {
      const limit = design.limits.find((one) => one.id === reference.id)
      const kind = limit && kindOfValue(limit, design)
      if (!kind || kinds.length === 0 || kinds.includes(kind)) continue
      addMessage(
        files,
        reading.place,
        'no-unit-mix',
        `Unexpected unit \`${reading.unit}\` of reading \`${reading.id}\`, expected a unit of ${kind} as in limit \`${limit.id}\``,
        {
          note: 'Read and limit in one kind of unit; radial and diametral, gauge and absolute are different kinds',
          cause: limit.place,
        },
      )
    }
  }
}

/**
 * A reading's unit is one of the quantity it says it reads, and a derived reading is computed from the kinds that its
 * calculation takes.
 *
 * A clearance from two pressures is a number all the same: nobody aboard would see what is wrong with it.
 *
 * Accepted: `::reading{… quantity=length unit=mm}` twice, and `::derived{… calculation=clearance unit="mm diametral"}`.
 * Rejected: the same derived reading in `mm radial`, or from a reading in `bar(g)`.
 */
export function noMixedReadings(procedure: Procedure, files: ContentFiles): void {
  const readings = readingsOf(procedure)
  for (const reading of readings) {
    if (reading.kind === 'reading') checkQuantity(reading, files)
    else checkKinds(reading, readings, files)
  }
}

function checkQuantity({id, quantity, unit, place}: Reading, files: ContentFiles): void {
  const kinds = kindsOfUnit(unit)
  const known = new Set(units.map((one): string => one.kind))
  if (!known.has(quantity)) {
    addMessage(
      files,
      place,
      'no-unit-mix',
      `Unexpected quantity \`${quantity}\` of reading \`${id}\`, ${expectedWord(quantity, known, 'a kind of quantity')}`,
      {note: `The kinds are ${[...known].join(', ')}`},
    )
  } else if (kinds.length > 0 && !kinds.some((kind) => kind === quantity)) {
    addMessage(
      files,
      place,
      'no-unit-mix',
      `Unexpected unit \`${unit}\` of reading \`${id}\`, expected a unit of its quantity ${quantity}`,
      {note: 'Change the unit or the quantity'},
    )
  }
}

function checkKinds(
  derived: DerivedReading,
  all: readonly (Reading | DerivedReading)[],
  files: ContentFiles,
): void {
  const kinds = derivations.get(derived.calculation)
  if (!kinds) return
  const hold = (one: Reading | DerivedReading, kind: QuantityKind | undefined): void => {
    const found = kindsOfUnit(one.unit)
    if (!kind || found.length === 0 || found.includes(kind)) return
    addMessage(
      files,
      derived.place,
      'no-unit-mix',
      `Unexpected unit \`${one.unit}\` of \`${one.id}\` in calculation \`${derived.calculation}\`, expected a unit of ${kind}`,
      {note: 'Compute from readings of the kinds that the calculation takes, in its order', cause: one.place},
    )
  }
  hold(derived, kinds.result)
  for (const [index, {id}] of derived.from.entries()) {
    const source = all.find((one) => one.id === id)
    if (source) hold(source, kinds.from[index])
  }
}

function kindsOfUnit(symbol: string): readonly QuantityKind[] {
  return units.filter((unit) => unit.symbol === symbol).map((unit) => unit.kind)
}

function kindOfValue(limit: Limit, design: Design): QuantityKind | undefined {
  const [group = '', name = ''] = limit.value.id.split('.')
  const ring = design.rings.find((one) => one.id === group)
  const ofRing = new Map<string, Datum<QuantityKind>>(
    ring && [
      ['running-diameter', ring.runningDiameter],
      ['new', ring.newClearance],
      ['minimum-new', ring.minimumNew],
      ['renewal', ring.renewal],
    ],
  )
  const datum = ofRing.get(name)
  if (datum?.kind === 'known') return datum.quantity.kind
  const lists = [
    {group: 'setting', values: design.settings},
    {group: 'rating', values: design.ratings},
    {group: 'geometry', values: design.geometry},
    {group: 'mass', values: design.masses},
  ]
  const named = lists.find((one) => one.group === group)?.values.find((one) => one.id === name)
  if (named?.value.kind === 'known') return named.value.quantity.kind
  return group === 'tank' || group === 'cofferdam' || group === 'house' || group === 'hydraulics'
    ? kindsOfNames.get(name)
    : undefined
}

/** Kinds of the values that every pump has, by the name behind the point. */
const kindsOfNames: ReadonlyMap<string, QuantityKind> = new Map([
  ['allowed-drop', 'pressure-difference'],
  ['lip-reverse-limit', 'pressure-difference'],
  ['test-pressure', 'gauge-pressure'],
  ['upper-bound', 'gauge-pressure'],
  ['relief-setting', 'gauge-pressure'],
  ['rating', 'gauge-pressure'],
  ['system-pressure', 'gauge-pressure'],
  ['return-pressure', 'gauge-pressure'],
  ['purge-regulator-maximum', 'gauge-pressure'],
  ['vacuum-valve', 'gauge-pressure'],
  ['pressure-valve', 'gauge-pressure'],
  ['allowed-leak', 'volume-flow'],
  ['smallest-leak', 'volume-flow'],
  ['hold-time', 'time'],
  ['stabilise', 'time'],
  ['isolation-proof', 'time'],
  ['isolation-recheck', 'time'],
  ['hold-least', 'time'],
  ['stack-length', 'length'],
  ['outer-pipe-bore', 'length'],
  ['inner-pipe-outside', 'length'],
  ['height', 'length'],
  ['volume', 'volume'],
  ['head-volume', 'volume'],
])
