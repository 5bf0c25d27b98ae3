import type {AnyQuantity} from './quantity.ts'
import {roundDecimal} from './round-decimal.ts'
import {unitOf} from './units.ts'

/** A quantity made ready for a page: digits and unit apart, so that both can be set in their own size. */
export interface Printed {
  readonly figure: string
  readonly unit: string
}

/**
 * Prints a quantity in a unit of its kind, rounded once, half to even.
 *
 * @throws {RangeError}
 *   When the unit is not one of the kind's units.
 */
export function printQuantity(quantity: AnyQuantity, unitSymbol: string, decimals: number): Printed {
  return {figure: printFigure(valueIn(quantity, unitSymbol), decimals), unit: unitSymbol}
}

/** The number that stands before the given unit, not rounded. */
export function valueIn(quantity: AnyQuantity, unitSymbol: string): number {
  const unit = unitOf(quantity.kind, unitSymbol)
  return (quantity.si - unit.offset) / unit.factor
}

/** Prints a bare number with a true minus sign. */
export function printFigure(value: number, decimals: number): string {
  return roundDecimal(value, decimals).replace('-', '−')
}

/** Figure and unit as one text: `48 N·m`, `0.30 mm`, `12` where the unit is blank, `65 %`. */
export function printedText(printed: Printed): string {
  return printed.unit === '' || printed.unit === '1' ? printed.figure : `${printed.figure} ${printed.unit}`
}
