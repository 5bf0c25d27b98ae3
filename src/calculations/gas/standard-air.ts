import {type Quantity, quantityOf} from '../../quantities/quantity.ts'

/** Standard atmosphere, 101 325 Pa exactly. Source: definition; NIST SP 811. A barometer reading replaces it. */
export const standardAtmosphere: Quantity<'absolute-pressure'> = quantityOf('absolute-pressure', 101_325)

/**
 * Absolute from gauge pressure.
 *
 * Source: definition of gauge pressure.
 * Valid for: results above zero.
 *
 * @throws {RangeError}
 *   When the gauge pressure is below a vacuum.
 */
export function absoluteFromGauge(
  gauge: Quantity<'gauge-pressure'>,
  barometer: Quantity<'absolute-pressure'>,
): Quantity<'absolute-pressure'> {
  if (gauge.si + barometer.si <= 0)
    throw new RangeError('Unexpected gauge pressure below a vacuum, expected a pressure above it')
  return quantityOf('absolute-pressure', gauge.si + barometer.si)
}
