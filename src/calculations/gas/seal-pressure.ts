import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'
import {hydrostatics} from './gas-sources.ts'
import {liquidColumn} from './liquid-column.ts'

export const sealPressureNote: CalculationNote = {
  name: 'seal-pressure',
  words: 'pressure by which the cargo presses on the cargo seal more than the cofferdam does',
  formula: ['Δp = ρ·g·h + p tank − p cofferdam'],
  symbols: [
    {symbol: 'Δp', meaning: 'pressure over the seal, positive from the cargo side'},
    {symbol: 'ρ', meaning: 'density of the cargo'},
    {symbol: 'g', meaning: 'standard gravity, 9.80665 m/s²'},
    {symbol: 'h', meaning: 'level above the seal'},
    {symbol: 'p tank', meaning: 'gauge pressure above the cargo'},
    {symbol: 'p cofferdam', meaning: 'gauge pressure in the cofferdam'},
  ],
  sources: [hydrostatics],
  validFor: 'a tank at rest; both gauge pressures against the same air',
}

/**
 * Pressure over the cargo seal; below zero when the cofferdam presses from behind.
 *
 * Source: hydrostatics; from memory.
 * Valid for: a tank at rest, pump standing.
 *
 * @throws {RangeError}
 *   When the density is not above zero or the level is below zero.
 */
export function sealPressure(input: {
  readonly density: Quantity<'density'>
  readonly level: Quantity<'length'>
  readonly tankPressure: Quantity<'gauge-pressure'>
  readonly cofferdamPressure: Quantity<'gauge-pressure'>
}): Quantity<'pressure-difference'> {
  const column = liquidColumn(input.density, input.level).si
  return quantityOf('pressure-difference', column + input.tankPressure.si - input.cofferdamPressure.si)
}
