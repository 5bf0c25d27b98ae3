import {massHeldBy} from '../calculations/lifting/weight.ts'
import {conversionUnits} from '../quantities/conversion-units.ts'
import {parseQuantity} from '../quantities/parse-quantity.ts'
import {type Quantity, quantityOf} from '../quantities/quantity.ts'
import type {CalculationWords} from './calculate-words.ts'

/**
 * A load, written as a mass or as the force of its weight: `1.2 t` or `5 kN`.
 *
 * @throws {RangeError}
 *   When the word is missing or does not read.
 */
export function loadWord(words: CalculationWords, key: string): Quantity<'mass'> {
  const parsed = parseQuantity(words.text(key), ['mass', 'force'], conversionUnits)
  if (!parsed.ok) throw new RangeError(`${parsed.reason} for \`${key}\``)
  const {kind, si} = parsed.written.quantity
  return kind === 'force' ? massHeldBy(quantityOf('force', si)) : quantityOf('mass', si)
}
