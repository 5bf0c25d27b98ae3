import {conversionUnits} from '../quantities/conversion-units.ts'
import {parseQuantity} from '../quantities/parse-quantity.ts'
import type {Quantity, QuantityKind} from '../quantities/quantity.ts'

/** Words `key=value` of one calculation, asked for by key, in any unit that can be converted; a wrong word throws a `RangeError` that says what is expected. */
export interface CalculationWords {
  has(key: string): boolean
  text(key: string): string
  optionalText(key: string, otherwise: string): string
  quantity<K extends QuantityKind>(key: string, kind: K): Quantity<K>
  optional<K extends QuantityKind>(key: string, kind: K): Quantity<K> | undefined
  /** A comma list; a unit written once, behind the last number, counts for all. */
  list<K extends QuantityKind>(key: string, kind: K): readonly Quantity<K>[]
}

/** Makes the words of a calculation readable by key. */
export function calculationWords(words: ReadonlyMap<string, string>): CalculationWords {
  const text = (key: string): string => {
    const value = words.get(key)
    if (value === undefined) throw new RangeError(`Unexpected call without \`${key}=\`, expected it`)
    return value
  }
  const parse = <K extends QuantityKind>(key: string, value: string, kind: K): Quantity<K> => {
    const parsed = parseQuantity(value, [kind], conversionUnits)
    if (!parsed.ok) throw new RangeError(`${parsed.reason} for \`${key}\``)
    return parsed.written.quantity
  }
  return {
    has: (key) => words.has(key),
    text,
    optionalText: (key, otherwise) => words.get(key) ?? otherwise,
    quantity: (key, kind) => parse(key, text(key), kind),
    optional: (key, kind) => {
      const value = words.get(key)
      return value === undefined ? undefined : parse(key, value, kind)
    },
    list: (key, kind) => withUnits(text(key)).map((one) => parse(key, one, kind)),
  }
}

/** The parts of a comma list; where only the last one has a unit, all have it: `0,2100,4300 h`. */
function withUnits(list: string): readonly string[] {
  const parts = list.split(',').map((one) => one.trim())
  const last = parts.at(-1) ?? ''
  const unit = last.replace(/^[−+-]?[\d.]+/u, '')
  const isBare = (one: string): boolean => /^[−+-]?\d+(?:\.\d+)?$/u.test(one)
  return parts.slice(0, -1).every(isBare) ? [...parts.slice(0, -1).map((one) => one + unit), last] : parts
}
