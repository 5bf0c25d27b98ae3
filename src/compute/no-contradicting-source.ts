import type {ComputedValue, PositionValues} from '../handbook-model/computed.ts'
import type {Content} from '../handbook-model/content.ts'
import type {KnownDatum} from '../handbook-model/datum.ts'
import type {AlsoStated, Design} from '../handbook-model/design-content.ts'
import {addMessage, type ContentFiles} from '../messages/add-message.ts'
import {printedText} from '../quantities/print-quantity.ts'
import type {AnyQuantity, QuantityKind} from '../quantities/quantity.ts'

/** Share of the value that governs by which another paper may differ. */
const bound = 0.05

/** What rounding may add to a share. */
const rounding = 1e-9

/**
 * Two papers that state one value agree within 5 %, or the design says why they do not; the value of the design governs.
 *
 * Told once for each entry, at the first pump on which the two disagree.
 *
 * Accepted: a mass of 186 kg that a second paper gives as 180 kg.
 * Rejected: the same given as 170 kg, without a reason; a reason beside the 180 kg.
 */
export function noContradictingSource(
  content: Content,
  vessels: ReadonlyMap<string, ReadonlyMap<string, PositionValues>>,
  files: ContentFiles,
): void {
  for (const design of content.designs.values()) {
    const pumps = [...content.vessels.values()].flatMap(({id, positions}) =>
      positions
        .filter((position) => position.design.id === design.id)
        .flatMap((position) => vessels.get(id)?.get(position.id) ?? []),
    )
    for (const entry of design.alsoStated ?? []) compareEntry(entry, design, pumps, files)
  }
}

function compareEntry(
  {value, says, reason, place}: AlsoStated,
  design: Design,
  pumps: readonly PositionValues[],
  files: ContentFiles,
): void {
  if (says.kind === 'not-known') return
  const own = pumps.flatMap((values) => values.get(value.id) ?? [])
  const apart = own.find((one) => one.result.kind === 'known' && !agrees(says, one.result.quantity))
  if (apart) {
    const message = addMessage(
      files,
      says.place,
      'no-contradicting-source',
      `Unexpected \`${says.figure} ${says.unit}\` for \`${value.id}\` of \`${design.id}\` by \`${says.origin.source}\`, expected at most 5 % from the \`${figureOf(apart)}\` by ${sourcesOf(apart)}, which governs`,
      {
        note: 'Read both papers again: one of the two is wrong; or write `reason:` beside it',
        cause: apart.place,
      },
    )
    if (reason === undefined) return
    message.fatal = undefined
    message.note = `Accepted: ${reason.en}`
  } else if (reason !== undefined && own.some(({result}) => result.kind === 'known'))
    addMessage(
      files,
      place,
      'no-contradicting-source',
      `Unexpected \`reason\` beside \`${value.id}\` of \`${design.id}\`, expected it where two papers disagree`,
      {note: 'Take the reason out: it would hide the next contradiction'},
    )
}

function agrees(says: KnownDatum<QuantityKind>, quantity: AnyQuantity | undefined): boolean {
  if (!quantity) return false
  const [stated, governs] = [diametral(says.quantity), diametral(quantity)]
  return (
    stated.kind === governs.kind &&
    Math.abs(stated.si - governs.si) <= Math.abs(governs.si) * (bound + rounding)
  )
}

/** A clearance on the radius is half of that on the diameter; the two are one quantity. */
function diametral({kind, si}: {readonly kind: QuantityKind; readonly si: number}): {
  readonly kind: QuantityKind
  readonly si: number
} {
  return kind === 'radial-clearance' ? {kind: 'diametral-clearance', si: 2 * si} : {kind, si}
}

function figureOf({result}: ComputedValue): string {
  return result.kind === 'known' ? printedText(result.printed) : ''
}

function sourcesOf({sources}: ComputedValue): string {
  return sources.map(({source}) => `\`${source}\``).join(', ')
}
