import type {CalculationNote} from '../calculations/calculation-note.ts'
import {printQuantity, valueIn} from '../quantities/print-quantity.ts'
import type {AnyQuantity} from '../quantities/quantity.ts'

/** One figure of a result, or of an input that was taken without being given. */
export interface ResultLine {
  readonly name: string
  /** The number that stands before the unit, not rounded; for a result that is no quantity, the word or the row of numbers. */
  readonly value: number | string | readonly number[]
  readonly figure: string
  readonly unit: string
}

/** What came of one calculation on the command line. */
export interface CalculationRun {
  readonly results: readonly ResultLine[]
  /** Inputs that were not given and what was taken for them, so that every figure can be computed again by hand. */
  readonly taken: readonly ResultLine[]
  readonly note: CalculationNote
}

/** A quantity as a figure of a result. */
export function quantityLine(
  name: string,
  quantity: AnyQuantity,
  unit: string,
  decimals: number,
): ResultLine {
  return {name, value: valueIn(quantity, unit), ...printQuantity(quantity, unit, decimals)}
}

/** A word as a figure of a result. */
export function wordLine(name: string, word: string): ResultLine {
  return {name, value: word, figure: word, unit: ''}
}
