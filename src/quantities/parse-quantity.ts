import {type Quantity, type QuantityKind, quantityOf} from './quantity.ts'
import {type Unit, units} from './units.ts'

/** A quantity read from text, with what is needed to print it as it was written. */
export interface WrittenQuantity<K extends QuantityKind> {
  readonly quantity: Quantity<K>
  /** Digits as the author wrote them, minus sign made proper. */
  readonly figure: string
  /** Proper symbol of the unit that was written. */
  readonly unit: string
}

/** What came of reading a quantity: the quantity, or a reason in the form "Unexpected X, expected Y". */
export type ParsedQuantity<K extends QuantityKind> =
  | {readonly ok: true; readonly written: WrittenQuantity<K>}
  | {readonly ok: false; readonly reason: string}

const numberThenUnit = /^([−+-]?)(\d+(?:\.\d+)?)\s*(.*)$/u

/**
 * Reads a number with its unit: `0.30 mm`, `3 bar(g)`, `48 N·m`.
 *
 * Blank-free forms and the spellings of the unit table are read too. Decimal
 * point only; no thousands separator, no exponent, no `NaN`, no infinity. A
 * longer table of units than that of the project may be given.
 */
export function parseQuantity<K extends QuantityKind>(
  text: string,
  kinds: readonly K[],
  known: readonly Unit[] = units,
): ParsedQuantity<K> {
  const expected = expectationOf(kinds, known)
  const match = numberThenUnit.exec(text.trim())
  if (!match) return {ok: false, reason: `Unexpected \`${text}\`, expected ${expected}`}
  const [, sign = '', digits = '', spelling = ''] = match
  const unit = findUnit(spelling, kinds, known)
  if (!unit) {
    const what = spelling === '' ? `\`${text}\` without a unit` : `unit \`${spelling}\``
    return {ok: false, reason: `Unexpected ${what}, expected ${expected}`}
  }
  const negative = sign === '-' || sign === '−'
  const value = Number(digits) * (negative ? -1 : 1)
  if (negative && unit.neverNegative && value !== 0) {
    return {ok: false, reason: `Unexpected negative value \`${text}\`, expected zero or more`}
  }
  const si = value * unit.factor + unit.offset
  if (!Number.isFinite(si)) return {ok: false, reason: `Unexpected \`${text}\`, expected a finite number`}
  if (unit.kind === 'temperature' && si < 0) {
    return {ok: false, reason: `Unexpected \`${text}\` below absolute zero, expected a temperature above it`}
  }
  return {
    ok: true,
    written: {
      quantity: quantityOf(unit.kind, si),
      figure: `${negative && value !== 0 ? '−' : ''}${digits}`,
      unit: unit.symbol,
    },
  }
}

function findUnit<K extends QuantityKind>(
  spelling: string,
  kinds: readonly K[],
  known: readonly Unit[],
): Unit<K> | undefined {
  for (const kind of kinds) {
    for (const unit of known) {
      const read: readonly string[] = unit.alsoRead
      if (unit.kind === kind && (unit.symbol === spelling || read.includes(spelling))) return {...unit, kind}
    }
  }
  return undefined
}

function expectationOf(kinds: readonly QuantityKind[], known: readonly Unit[]): string {
  const symbols = known.filter((unit) => kinds.includes(unit.kind)).map((unit) => unit.symbol)
  const named = symbols.map((symbol) => (symbol === '' ? 'no unit' : `\`${symbol}\``))
  return `a number such as \`3.5\` with one of the units ${named.join(', ')}`
}
