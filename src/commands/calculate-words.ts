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
    list: (key, kind) =>
      text(key)
        .split(',')
        .map((one) => parse(key, one.trim(), kind)),
  }
}
