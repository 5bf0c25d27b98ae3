import {type GasContent, nothingInSupply} from '../calculations/gas/well-mixed.ts'
import {parseQuantity} from '../quantities/parse-quantity.ts'
import {valueIn} from '../quantities/print-quantity.ts'
import {quantityOf} from '../quantities/quantity.ts'
import {decimalsFor} from '../quantities/round-decimal.ts'
import {quantityLine, type ResultLine} from './calculate-result.ts'
import type {CalculationWords} from './calculate-words.ts'

/**
 * Content of a gas, in % or ppm.
 *
 * @throws {RangeError}
 *   When the word is missing or does not read.
 */
export function contentWord(words: CalculationWords, key: string): GasContent {
  const parsed = parseQuantity(words.text(key), ['ratio', 'concentration'])
  if (!parsed.ok) throw new RangeError(`${parsed.reason} for \`${key}\``)
  return parsed.written.quantity
}

/** Content of the gas in what is let in: as given, or none. */
export function supplyOf(words: CalculationWords): GasContent {
  return words.has('supply') ? contentWord(words, 'supply') : nothingInSupply
}

/** A content as a figure of a result, in the unit of another one: ppm when that was given in ppm. */
export function contentLine(name: string, content: GasContent, like: GasContent): ResultLine {
  const [kind, unit] = like.kind === 'ratio' ? (['ratio', '%'] as const) : (['concentration', 'ppm'] as const)
  const converted = quantityOf(kind, content.si)
  return quantityLine(name, converted, unit, decimalsFor(valueIn(converted, unit), 4))
}
