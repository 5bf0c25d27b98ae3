import {gramsPerMole} from '../../quantities/named-units.ts'
import type {Quantity} from '../../quantities/quantity.ts'

/** Molar gas constant in J/(mol·K), exact. Source: SI of 2019, product of Boltzmann and Avogadro constants; from memory. */
export const molarGasConstant = 8.31446261815324

/** Molar mass of nitrogen gas. Source: standard atomic weights; from memory. */
export const nitrogenMolarMass: Quantity<'molar-mass'> = gramsPerMole(28.0134)

/**
 * Temperature in kelvin as the gas law needs it.
 *
 * Source: ideal gas law.
 * Valid for: temperatures above absolute zero.
 *
 * @throws {RangeError}
 *   When the temperature is not above absolute zero.
 */
export function absoluteTemperature(temperature: Quantity<'temperature'>): number {
  if (temperature.si <= 0)
    throw new RangeError('Unexpected temperature at or below absolute zero, expected one above it')
  return temperature.si
}
