import {type Quantity, quantityOf} from '../../quantities/quantity.ts'

/**
 * Diametral clearance of a concentric ring from its radial clearance: twice as much.
 *
 * Source: geometry.
 * Valid for: concentric rings.
 */
export function diametralFromRadial(
  clearance: Quantity<'radial-clearance'>,
): Quantity<'diametral-clearance'> {
  return quantityOf('diametral-clearance', clearance.si * 2)
}

/**
 * Radial clearance of a concentric ring from its diametral clearance: half.
 *
 * Source: geometry.
 * Valid for: concentric rings.
 */
export function radialFromDiametral(
  clearance: Quantity<'diametral-clearance'>,
): Quantity<'radial-clearance'> {
  return quantityOf('radial-clearance', clearance.si / 2)
}
