import {Decimal} from 'decimal.js'

/**
 * Which of two neighbours is taken.
 *
 * - `half-even`: the nearer one, of a tie the even one; the rule of the project
 * - `half-up`: the nearer one, of a tie the one farther from zero
 * - `down`: the lower one, for what must not be exceeded
 * - `up`: the higher one, for what must at least be
 */
export type RoundingRule = 'half-even' | 'half-up' | 'down' | 'up'

const modes = {
  'half-even': Decimal.ROUND_HALF_EVEN,
  'half-up': Decimal.ROUND_HALF_UP,
  down: Decimal.ROUND_FLOOR,
  up: Decimal.ROUND_CEIL,
} as const satisfies Record<RoundingRule, number>

/**
 * Rounds a number to a count of decimals, half to even, in decimal arithmetic; −1 rounds to tens.
 *
 * The number is first taken to twelve significant digits: the thirteenth and
 * later digits of a value held in SI are noise of the binary conversion, and a
 * tie such as 12.35 would otherwise fall to the wrong side.
 *
 * Source: ISO 80000-1 annex B, rule A (half to even) and rule B (half up); from memory.
 *
 * @returns
 *   The digits as text, with exactly the asked count of decimals.
 * @throws {RangeError}
 *   When the number is not finite.
 */
export function roundDecimal(value: number, decimals: number, rule: RoundingRule = 'half-even'): string {
  return roundedText(value, new Decimal(10).pow(-decimals), rule)
}

/**
 * Rounds a number to a whole multiple of a step, such as 0.05, 0.5 or 10, in one go.
 *
 * Source: ISO 80000-1 annex B, rounding range; from memory.
 *
 * @returns
 *   The digits as text, with as many decimals as the step has.
 * @throws {RangeError}
 *   When the number is not finite or the step is not above zero.
 */
export function roundToStep(value: number, step: number, rule: RoundingRule = 'half-even'): string {
  if (!(step > 0) || !Number.isFinite(step))
    throw new RangeError(`Unexpected step of \`${step}\`, expected a step above zero`)
  return roundedText(value, new Decimal(step), rule)
}

/**
 * Rounds a number to a count of significant digits, without an exponent: 60.25132 to three is 60.3.
 *
 * @throws {RangeError}
 *   When the number is not finite or the count of digits is no whole number from 1 to 12.
 */
export function roundSignificant(value: number, digits: number, rule: RoundingRule = 'half-even'): string {
  if (!Number.isInteger(digits) || digits < 1 || digits > 12)
    throw new RangeError(`Unexpected count of ${digits} significant digits, expected 1 to 12`)
  const number = cleaned(value)
  const rounded = number.toSignificantDigits(digits, modes[rule])
  return rounded.isZero() ? '0' : rounded.toFixed(Math.max(0, digits - 1 - rounded.e))
}

function roundedText(value: number, step: Decimal, rule: RoundingRule): string {
  const rounded = cleaned(value).div(step).toDecimalPlaces(0, modes[rule]).times(step)
  return (rounded.isZero() ? new Decimal(0) : rounded).toFixed(Math.max(0, step.decimalPlaces()))
}

function cleaned(value: number): Decimal {
  if (!Number.isFinite(value))
    throw new RangeError(`Unexpected number \`${value}\` to be rounded, expected a finite number`)
  return new Decimal(value).toSignificantDigits(12)
}

/** How many decimals show a value with at least the asked count of significant digits; at most six. */
export function decimalsFor(value: number, significantDigits: number): number {
  if (value === 0) return 0
  const exponent = Math.floor(Math.log10(Math.abs(value)))
  return Math.min(6, Math.max(0, significantDigits - 1 - exponent))
}
