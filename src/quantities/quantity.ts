/** What a number with a unit measures. Gauge and absolute pressure, and radial and diametral clearance, are kinds of their own: they never mix. */
export type QuantityKind =
  | 'length'
  | 'length-difference'
  | 'radial-clearance'
  | 'diametral-clearance'
  | 'diametral-wear'
  | 'area'
  | 'volume'
  | 'angle'
  | 'mass'
  | 'density'
  | 'force'
  | 'torque'
  | 'stress'
  | 'hardness'
  | 'gauge-pressure'
  | 'absolute-pressure'
  | 'pressure-difference'
  | 'temperature'
  | 'temperature-difference'
  | 'linear-expansion'
  | 'time'
  | 'speed'
  | 'rotational-speed'
  | 'volume-flow'
  | 'displacement'
  | 'gas-leak-rate'
  | 'molar-mass'
  | 'molar-flow'
  | 'kinematic-viscosity'
  | 'thermal-expansion'
  | 'power'
  | 'concentration'
  | 'ratio'
  | 'count'

/** A number held in the SI base unit of its kind. Only the constructors named for a unit, and `parseQuantity`, make one. */
export interface Quantity<K extends QuantityKind> {
  readonly kind: K
  readonly si: number
}

/** A quantity of any kind, told apart by `kind`. */
export type AnyQuantity = {[K in QuantityKind]: Quantity<K>}[QuantityKind]

/**
 * Makes a quantity from a number in the SI base unit of its kind.
 *
 * @throws {RangeError}
 *   When the number is not finite.
 */
export function quantityOf<K extends QuantityKind>(kind: K, si: number): Quantity<K> {
  if (!Number.isFinite(si)) throw new RangeError(`Unexpected ${kind} of \`${si}\`, expected a finite number`)
  return {kind, si}
}
