import {standardGravity} from '../../quantities/exact-constants.ts'
import {type Quantity, quantityOf} from '../../quantities/quantity.ts'

/**
 * Weight of a mass, by the standard acceleration of free fall.
 *
 * Source: definition of standard gravity, 9.80665 m/s²; ISO 80000-3; from memory.
 * Valid for: loads at rest; a jerk of the hoist adds to it.
 *
 * @throws {RangeError}
 *   When the mass is not above zero.
 */
export function weightOf(mass: Quantity<'mass'>): Quantity<'force'> {
  if (mass.si <= 0) throw new RangeError(`Unexpected mass of ${mass.si} kg, expected a mass above zero`)
  return quantityOf('force', mass.si * standardGravity)
}

/**
 * Mass whose weight is a force: what a marking in kilograms or tonnes is compared with.
 *
 * Source: definition of standard gravity, 9.80665 m/s²; ISO 80000-3; from memory.
 * Valid for: loads at rest.
 *
 * @throws {RangeError}
 *   When the force is not above zero.
 */
export function massHeldBy(force: Quantity<'force'>): Quantity<'mass'> {
  if (force.si <= 0) throw new RangeError(`Unexpected force of ${force.si} N, expected a force above zero`)
  return quantityOf('mass', force.si / standardGravity)
}
