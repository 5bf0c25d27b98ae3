import {type Quantity, quantityOf} from '../../quantities/quantity.ts'

/**
 * Total indicator reading: greatest less least reading of a dial over one turn.
 *
 * Source: definition of the trade; read in reprints with examples.
 * Valid for: readings of one dial that was not moved or set anew.
 *
 * @throws {RangeError}
 *   When there are fewer than two readings.
 */
export function totalIndicatorReading(
  readings: readonly Quantity<'length-difference'>[],
): Quantity<'length'> {
  if (readings.length < 2)
    throw new RangeError(`Unexpected ${readings.length} readings, expected at least two`)
  const values = readings.map((one) => one.si)
  return quantityOf('length', Math.max(...values) - Math.min(...values))
}

/**
 * Eccentricity that gives a total indicator reading when nothing else is wrong: half of it.
 *
 * Source: definition of the trade; read in a reprint.
 * Valid for: round parts that run out of centre only; the error of the second order is below 0.1 µm for parts of this size.
 */
export function eccentricityOfRoundPart(total: Quantity<'length'>): Quantity<'length'> {
  return quantityOf('length', total.si / 2)
}
