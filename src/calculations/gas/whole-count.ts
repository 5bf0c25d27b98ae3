import {type Quantity, quantityOf} from '../../quantities/quantity.ts'

/** Noise of binary arithmetic: 4.000000000000001 cycles are four. */
const noise = 1e-9

/**
 * Smallest whole count that is enough.
 *
 * Source: arithmetic.
 * Valid for: counts below a thousand million.
 */
export function wholeUp(count: number): Quantity<'count'> {
  return quantityOf('count', Math.ceil(count - noise))
}

/**
 * Largest whole count that is covered.
 *
 * Source: arithmetic.
 * Valid for: counts below a thousand million.
 */
export function wholeDown(count: number): Quantity<'count'> {
  return quantityOf('count', Math.floor(count + noise))
}
