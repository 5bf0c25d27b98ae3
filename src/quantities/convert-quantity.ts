import {conversionUnits} from './conversion-units.ts'
import {parseQuantity} from './parse-quantity.ts'
import type {QuantityKind} from './quantity.ts'
import type {Unit} from './units.ts'

/** A number brought from one unit to another of the same kind. */
export interface Conversion {
  readonly kind: QuantityKind
  /** The number that stands before the asked unit, not rounded. */
  readonly value: number
  readonly from: Unit
  readonly to: Unit
}

/**
 * Converts a written quantity, such as `1 psi`, to a unit of the same kind, such as `Pa`.
 *
 * Gauge and absolute pressure, temperature and its difference, radial and diametral clearance are kinds of their own
 * and are not converted into each other.
 *
 * Source: definitions of NIST SP 811 appendix B and ISO 80000; from memory, compared in tests with units computed
 * apart from this project.
 *
 * @throws {RangeError}
 *   When the text is no quantity, the unit is not known, or the two are of different kinds.
 */
export function convertQuantity(text: string, spelling: string): Conversion {
  const targets = unitsSpelled(spelling)
  if (targets.length === 0) throw new RangeError(unknownTarget(text, spelling))
  const parsed = parseQuantity(
    text,
    targets.map((one) => one.kind),
    conversionUnits,
  )
  if (!parsed.ok) throw new RangeError(`${parsed.reason} for a conversion to \`${spelling}\``)
  const {quantity, unit} = parsed.written
  const to = targets.find((one) => one.kind === quantity.kind)
  const from = conversionUnits.find((one) => one.kind === quantity.kind && one.symbol === unit)
  if (!to || !from)
    throw new Error(`Unexpected unit \`${unit}\` that was read, expected it in the unit table`)
  return {kind: quantity.kind, value: (quantity.si - to.offset) / to.factor, from, to}
}

/** Units of all kinds that the spelling stands for, those whose proper form it is first. */
function unitsSpelled(spelling: string): readonly Unit[] {
  return [
    ...conversionUnits.filter((one) => one.symbol === spelling),
    ...conversionUnits.filter((one) => one.symbol !== spelling && one.alsoRead.includes(spelling)),
  ]
}

function unknownTarget(text: string, spelling: string): string {
  const kinds = [...new Set(conversionUnits.map((one) => one.kind))].filter(
    (kind) => parseQuantity(text, [kind], conversionUnits).ok,
  )
  const symbols = conversionUnits
    .filter((one) => one.symbol !== '' && (kinds.length === 0 || kinds.includes(one.kind)))
    .map((one) => `\`${one.symbol}\``)
  return `Unexpected unit \`${spelling}\`, expected one of ${[...new Set(symbols)].join(', ')}`
}
