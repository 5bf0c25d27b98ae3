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
      if (!kind || kinds.length === 0) continue
      if (kinds.includes(kind)) {
        refuseOtherSystem(reading, limit, design, files)
        continue
      }
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

/** A gauge in psi beside a limit in bar is misread once a year. */
function refuseOtherSystem(
  reading: Reading | DerivedReading,
  limit: Limit,
  design: Design,
  files: ContentFiles,
): void {
  const stated = statedValue(limit, design)
  const ofLimit = stated?.kind === 'known' ? stated.unit : undefined
  const limitInPounds = ofLimit !== undefined && inchPound.has(ofLimit)
  if (inchPound.has(reading.unit) === limitInPounds) return
  addMessage(
    files,
    reading.place,
    'no-unit-mix',
    `Unexpected unit \`${reading.unit}\` of reading \`${reading.id}\`, expected ${ofLimit === undefined ? 'a metric unit' : `\`${ofLimit}\``} as in limit \`${limit.id}\``,
    {note: 'Read and limit in one system of units', cause: limit.place},
  )
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
  const stated = statedValue(limit, design)
  if (stated) return stated.kind === 'known' ? stated.quantity.kind : undefined
  return kindsOfNames.get(limit.value.id.split('.')[1] ?? '')
}

/** The value of a limit where the design states it; a computed one has no unit of the author's. */
function statedValue(limit: Limit, design: Design): Datum<QuantityKind> | undefined {
  const [group = '', name = ''] = limit.value.id.split('.')
  const ring = design.rings.find((one) => one.id === group)
  if (ring) {
    return new Map<string, Datum<QuantityKind>>([
      ['running-diameter', ring.runningDiameter],
      ['new', ring.newClearance],
      ['minimum-new', ring.minimumNew],
      ['renewal', ring.renewal],
    ]).get(name)
  }
  const lists = [
    {group: 'setting', values: design.settings},
    {group: 'rating', values: design.ratings},
    {group: 'geometry', values: design.geometry},
    {group: 'mass', values: design.masses},
  ]
  return lists.find((one) => one.group === group)?.values.find((one) => one.id === name)?.value
}

/** Units of the inch and pound system; the two systems do not meet on one sheet. */
const inchPound = new Set(['psi', 'psi(g)', 'in', 'lb', 'lbf·ft'])

/** Kinds of the values that a design does not state itself, by the name behind the point; a name is of one kind in every group. */
const kindsOfNames: ReadonlyMap<string, QuantityKind> = new Map([
  ['allowed-drop', 'pressure-difference'],
  ['trapped-pressure', 'pressure-difference'],
  ['pressure-difference', 'pressure-difference'],
  ['lower-bound', 'gauge-pressure'],
  ['bottle-pressure', 'gauge-pressure'],
  ['least', 'volume'],
  ['most', 'volume'],
  ['free-gas', 'volume'],
  ['motor-casing', 'volume'],
  ['control-valve', 'volume'],
  ['flush-time', 'time'],
  ['ventilation-time', 'time'],
  ['time', 'time'],
  ['purge-least', 'time'],
  ['entry-retest', 'time'],
  ['speed', 'rotational-speed'],
  ['flow', 'volume-flow'],
  ['oil-flow', 'volume-flow'],
  ['head', 'length'],
  ['shut-off-head', 'length'],
  ['watch-head', 'length'],
  ['act-head', 'length'],
  ['efficiency', 'ratio'],
  ['test-run-watch', 'ratio'],
  ['test-run-act', 'ratio'],
  ['oil-tolerance', 'ratio'],
  ['lifting-reserve', 'ratio'],
  ['torque', 'torque'],
  ['raising-torque', 'torque'],
  ['lowering-torque', 'torque'],
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
  ['pressure-per-kelvin', 'pressure-difference'],
  ['preload', 'force'],
  ['bolt-load', 'force'],
  ['mass', 'mass'],
  ['leg-load', 'mass'],
  ['rated-load', 'mass'],
  ['angle', 'angle'],
  ['travel', 'length'],
  ['running-diameter', 'length'],
  ['seat-depth', 'length'],
  ['pressure-pipe-bore', 'length'],
  ['pressure-pipe-outside', 'length'],
  ['return-pipe-bore', 'length'],
  ['squeeze', 'ratio'],
  ['stretch', 'ratio'],
  ['pressure', 'pressure-difference'],

  ['recorded', 'volume'],
  ['ceiling', 'volume'],
  ['gas-pressure', 'gauge-pressure'],
  ['back-pressure', 'gauge-pressure'],
  ['foot-below-stack', 'length'],
  ['top-above-deck', 'length'],
  ['volumetric-efficiency', 'ratio'],
  ['mechanical-efficiency', 'ratio'],
  ['lip-speed', 'speed'],
  ['displacement', 'displacement'],
  ['purge-gas-flow', 'volume-flow'],
  ['flush-flow', 'volume-flow'],
  ['ventilator-flow', 'volume-flow'],
  ['bottle-volume', 'volume'],
  ['drum-volume', 'volume'],
  ['count', 'count'],
  ['turns', 'count'],
  ['per-bottle', 'count'],
  ['drums', 'count'],
  ['purge-changes', 'count'],
  ['entry-air-changes', 'count'],
  ['flush-changes', 'count'],
  ['portable-rig-time', 'time'],
  ['rubber-life', 'time'],
  ['store-warmest', 'temperature'],
])
