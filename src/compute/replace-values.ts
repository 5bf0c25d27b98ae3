import {decideCondition} from '../conditions/decide-condition.ts'
import {factsOfPosition} from '../conditions/facts-of-position.ts'
import type {ComputedValue, ComputedValues, PositionValues} from '../handbook-model/computed.ts'
import type {Content} from '../handbook-model/content.ts'
import type {ReplacedValue, UrgentRevision} from '../handbook-model/urgent-content.ts'
import type {Position, Vessel} from '../handbook-model/vessel-content.ts'
import {addMessage, type ContentFiles} from '../messages/add-message.ts'
import type {Place} from '../messages/place.ts'
import {parseQuantity} from '../quantities/parse-quantity.ts'
import {type AnyQuantity, type QuantityKind, quantityOf} from '../quantities/quantity.ts'
import {units} from '../quantities/units.ts'

/**
 * Puts the figures of urgent revisions in place of the values that they replace, on the pumps that they count for.
 *
 * A value that all pumps of a design on a vessel have replaced stays one of the design; else it becomes one of the pump,
 * and the pages that its pumps share keep the figure of the others.
 */
export function replaceValues(
  vessels: ComputedValues['vessels'],
  content: Content,
  files: ContentFiles,
): ComputedValues['vessels'] {
  if (content.urgent.length === 0) return vessels
  const told = new Set<string>()
  return new Map(
    [...vessels].map(([id, positions]) => {
      const vessel = content.vessels.get(id)
      return [
        id,
        vessel
          ? new Map(
              [...positions].map(([position, values]) => [
                position,
                replacedOnPump(position, values, {vessel, content, files, told}),
              ]),
            )
          : positions,
      ]
    }),
  )
}

interface ReplaceDesk {
  readonly vessel: Vessel
  readonly content: Content
  readonly files: ContentFiles
  /** Faults that have been told for another pump. */
  readonly told: Set<string>
}

function replacedOnPump(id: string, values: PositionValues, desk: ReplaceDesk): PositionValues {
  const {vessel, content} = desk
  const position = vessel.positions.find((one) => one.id === id)
  if (!position) return values
  const counting = content.urgent.filter((one) => replacesOn(one, vessel, position, content))
  const fresh = new Map<string, ComputedValue>()
  for (const revision of counting)
    for (const replaced of revision.values) {
      const value = values.get(replaced.value.id)
      const made = value && replacement(value, replaced, revision, position, desk)
      if (made) fresh.set(made.id, made)
    }
  if (fresh.size === 0) return values
  refuseHalf(values, fresh, desk)
  return new Map([...values].map(([name, value]) => [name, fresh.get(name) ?? value]))
}

/** True where a revision replaces values on a pump: its condition holds there by facts that are known. */
function replacesOn(
  {vessels, positions, when, values}: UrgentRevision,
  vessel: Vessel,
  position: Position,
  {designs, office}: Content,
): boolean {
  const design = designs.get(position.design.id)
  return (
    values.length > 0 &&
    design !== undefined &&
    vessels.some((one) => one.id === vessel.id) &&
    (positions.length === 0 || positions.some((one) => one.id === position.id)) &&
    (!when ||
      decideCondition(when.condition, factsOfPosition(vessel, design, position, office.facts)) === 'true')
  )
}

function replacement(
  value: ComputedValue,
  {instead, condition, source, where, place}: ReplacedValue,
  revision: UrgentRevision,
  position: Position,
  desk: ReplaceDesk,
): ComputedValue | undefined {
  const {number, validTo} = revision
  const {result} = value
  const kind = result.kind === 'known' ? result.quantity?.kind : undefined
  const kinds: readonly QuantityKind[] = kind ? [kind] : [...new Set(units.map((unit) => unit.kind))]
  const parsed = parseQuantity(instead.id, kinds)
  if (!parsed.ok && (kind !== undefined || result.kind === 'not-known')) {
    tell(
      `${instead.place.line} ${number}`,
      desk,
      instead.place,
      `${parsed.reason}, to replace \`${value.id}\``,
      {
        note: 'Write number, blank and unit, of the kind that the value has',
      },
    )
    return undefined
  }
  const written =
    parsed.ok && (kind !== undefined || result.kind === 'not-known') ? parsed.written : undefined
  const quantity = written && anyQuantity(written.quantity)
  const holdsFor = condition?.en ?? value.condition
  return {
    id: value.id,
    title: value.title,
    ofDesign: value.ofDesign && isOfAll(value.id, position, desk),
    result: {
      kind: 'known',
      ...(quantity ? {quantity} : {}),
      printed: written ? {figure: written.figure, unit: written.unit} : {figure: instead.id, unit: ''},
    },
    condition: `${holdsFor === undefined ? '' : `${holdsFor}; `}by urgent revision ${number}, valid to ${validTo.id}`,
    sources: [{source, ...(where === undefined ? {} : {where})}],
    rounding: `as written in urgent revision ${number}`,
    place,
    replaces: value,
  }
}

/** True where every pump of the design on this vessel has the value replaced. */
function isOfAll(value: string, {design}: Position, {vessel, content}: ReplaceDesk): boolean {
  return vessel.positions
    .filter((one) => one.design.id === design.id)
    .every((one) =>
      content.urgent.some(
        (revision) =>
          revision.values.some((replaced) => replaced.value.id === value) &&
          replacesOn(revision, vessel, one, content),
      ),
    )
}

/** Tells each value that is computed from a replaced one and is not replaced itself. */
function refuseHalf(
  values: PositionValues,
  fresh: ReadonlyMap<string, ComputedValue>,
  desk: ReplaceDesk,
): void {
  for (const value of values.values()) {
    if (fresh.has(value.id)) continue
    for (const replaced of fresh.values()) {
      const old = replaced.replaces
      if (!old || !isComputedFrom(value, old)) continue
      tell(
        `${replaced.place.path} ${replaced.id} ${value.id}`,
        desk,
        replaced.place,
        `Unexpected replacement of \`${replaced.id}\` without \`${value.id}\` that is computed from it, expected both`,
        {note: `Add \`${value.id}\` to \`values:\` of the urgent revision`},
      )
    }
  }
}

function isComputedFrom({calculation}: ComputedValue, old: ComputedValue): boolean {
  return [...(calculation?.inputs ?? []), ...(calculation?.steps ?? [])].some(
    ({origin, place}) =>
      origin === `computed: ${old.id}` ||
      (old.calculation === undefined && place !== undefined && isSamePlace(place, old.place)),
  )
}

function isSamePlace(one: Place, other: Place): boolean {
  return one.path === other.path && one.line === other.line && one.column === other.column
}

function tell(
  key: string,
  {told, files}: ReplaceDesk,
  place: Place,
  reason: string,
  details: {readonly note: string},
): void {
  if (told.has(key)) return
  told.add(key)
  addMessage(files, place, 'no-half-replacement', reason, details)
}

function anyQuantity({
  kind,
  si,
}: {
  readonly kind: QuantityKind
  readonly si: number
}): AnyQuantity | undefined {
  const any: {kind: QuantityKind; si: number} = quantityOf(kind, si)
  return isAny(any) ? any : undefined
}

function isAny(value: {kind: QuantityKind; si: number}): value is AnyQuantity {
  return Number.isFinite(value.si)
}
