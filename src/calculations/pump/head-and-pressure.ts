import {standardGravity} from '../../quantities/exact-constants.ts'
import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'
import {refuseUnlessAboveZero} from '../refuse-inputs.ts'

export const pressureFromHeadNote: CalculationNote = {
  name: 'pressure-from-head',
  words: 'pressure of a column of liquid of this height',
  formula: [
    'Δp = ρ·g·H',
    'in bar and metres of water of 1000 kg/m³: Δp = H/10.197; with kgf/cm² the figure is 10.000, and a handbook that prints 10.2 for kg/cm² means bar',
  ],
  symbols: [
    {symbol: 'Δp', meaning: 'pressure difference'},
    {symbol: 'ρ', meaning: 'density of the liquid'},
    {symbol: 'g', meaning: 'standard gravity, 9.80665 m/s²'},
    {symbol: 'H', meaning: 'head'},
  ],
  sources: [
    {title: 'hydrostatics', edition: 'none', howKnown: 'computed', status: 'current'},
    {title: 'pumping handbook, formulas', edition: 'unknown', howKnown: 'read', status: 'unknown'},
  ],
  validFor: 'liquids of one density over the whole height',
}

export const headFromPressureNote: CalculationNote = {
  ...pressureFromHeadNote,
  name: 'head-from-pressure',
  words: 'height of the column of liquid that gives this pressure',
  formula: ['H = Δp/(ρ·g)'],
}

/**
 * Pressure of a column of liquid.
 *
 * Source: hydrostatics; a handbook's constants were read and compared.
 * Valid for: liquids of one density over the whole height.
 *
 * @throws {RangeError}
 *   When the density is not above zero.
 */
export function pressureFromHead(input: {
  readonly head: Quantity<'length'>
  readonly density: Quantity<'density'>
}): Quantity<'pressure-difference'> {
  refuseUnlessAboveZero('density', input.density, 'kg/m³')
  return quantityOf('pressure-difference', input.density.si * standardGravity * input.head.si)
}

/**
 * Height of a column of liquid from its pressure.
 *
 * Source: hydrostatics; a handbook's constants were read and compared.
 * Valid for: liquids of one density over the whole height.
 *
 * @throws {RangeError}
 *   When the density is not above zero.
 */
export function headFromPressure(input: {
  readonly pressure: Quantity<'pressure-difference'>
  readonly density: Quantity<'density'>
}): Quantity<'length'> {
  refuseUnlessAboveZero('density', input.density, 'kg/m³')
  return quantityOf('length', input.pressure.si / (input.density.si * standardGravity))
}
