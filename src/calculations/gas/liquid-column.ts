import {standardGravity} from '../../quantities/exact-constants.ts'
import {type Quantity, quantityOf} from '../../quantities/quantity.ts'

/**
 * Pressure below a column of liquid.
 *
 * Source: hydrostatics, ρ·g·h with standard gravity; from memory.
 * Valid for: a liquid of one density at rest.
 *
 * @throws {RangeError}
 *   When the density is not above zero or the height is below zero.
 */
export function liquidColumn(
  density: Quantity<'density'>,
  height: Quantity<'length'>,
): Quantity<'pressure-difference'> {
  if (density.si <= 0) throw new RangeError('Unexpected density of nothing, expected a density above zero')
  if (height.si < 0)
    throw new RangeError(`Unexpected height of ${height.si} m, expected a height of zero or more`)
  return quantityOf('pressure-difference', density.si * standardGravity * height.si)
}
