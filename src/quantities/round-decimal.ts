import {Decimal} from 'decimal.js'

/**
 * Rounds a number to a count of decimals, half to even, in decimal arithmetic.
 *
 * The number is first taken to twelve significant digits: the thirteenth and
 * later digits of a value held in SI are noise of the binary conversion, and a
 * tie such as 12.35 would otherwise fall to the wrong side.
 *
 * Source: ISO 80000-1 annex B, rule A (half to even); from memory.
 *
 * @returns
 *   The digits as text, with exactly the asked count of decimals.
 */
export function roundDecimal(value: number, decimals: number): string {
  const rounded = new Decimal(value)
    .toSignificantDigits(12)
    .toDecimalPlaces(decimals, Decimal.ROUND_HALF_EVEN)
  return (rounded.isZero() ? new Decimal(0) : rounded).toFixed(decimals)
}

/** How many decimals show a value with at least the asked count of significant digits; at most six. */
export function decimalsFor(value: number, significantDigits: number): number {
  if (value === 0) return 0
  const exponent = Math.floor(Math.log10(Math.abs(value)))
  return Math.min(6, Math.max(0, significantDigits - 1 - exponent))
}
