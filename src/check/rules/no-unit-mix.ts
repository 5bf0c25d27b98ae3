import type {Procedure} from '../../handbook-model/procedure.ts'
import type {Design, Limit} from '../../handbook-model/vessel-content.ts'
import {addMessage, type ContentFiles} from '../../messages/add-message.ts'
import type {QuantityKind} from '../../quantities/quantity.ts'
import {units} from '../../quantities/units.ts'
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

function kindsOfUnit(symbol: string): readonly QuantityKind[] {
  return units.filter((unit) => unit.symbol === symbol).map((unit) => unit.kind)
}

function kindOfValue(limit: Limit, design: Design): QuantityKind | undefined {
  const [group = '', name = ''] = limit.value.id.split('.')
  const ring = design.rings.find((one) => one.id === group)
  const datum =
    ring &&
    (name === 'renewal'
      ? ring.renewal
      : name === 'minimum-new'
        ? ring.minimumNew
        : name === 'new'
          ? ring.newClearance
          : undefined)
  if (datum?.kind === 'known') return datum.quantity.kind
  const lists = [
    {group: 'setting', values: design.settings},
    {group: 'rating', values: design.ratings},
  ]
  const named = lists.find((one) => one.group === group)?.values.find((one) => one.id === name)
  if (named?.value.kind === 'known') return named.value.quantity.kind
  if (group === 'cofferdam') return cofferdamKinds.get(name)
  return undefined
}

const cofferdamKinds: ReadonlyMap<string, QuantityKind> = new Map([
  ['allowed-drop', 'pressure-difference'],
  ['test-pressure', 'gauge-pressure'],
  ['allowed-leak', 'volume-flow'],
])
