import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'
import {hydrostatics} from './gas-sources.ts'
import {liquidColumn} from './liquid-column.ts'

export const riserPurgePressureNote: CalculationNote = {
  name: 'riser-purge-pressure',
  words: 'gas pressure that blows the liquid of a riser out against the back pressure at the manifold',
  formula: ['p = ρ·g·H + p back'],
  symbols: [
    {symbol: 'p', meaning: 'gauge pressure of the gas'},
    {symbol: 'ρ', meaning: 'density of the liquid'},
    {symbol: 'g', meaning: 'standard gravity, 9.80665 m/s²'},
    {symbol: 'H', meaning: 'height of the riser'},
    {symbol: 'p back', meaning: 'back pressure at the manifold'},
  ],
  sources: [
    hydrostatics,
    {
      title: 'MARPOL Annex II appendix 5, water test: back pressure of at least 100 kPa at the manifold',
      edition: 'section 3, excerpt',
      howKnown: 'read',
      status: 'unknown',
    },
  ],
  validFor:
    'a riser full of liquid, without friction; the pressure of the stripping gas supply has to be above it',
}

/**
 * Gas pressure that clears a riser while stripping.
 *
 * Source: hydrostatics, from memory; back pressure of MARPOL Annex II appendix 5, excerpt read.
 * Valid for: a riser full of liquid, without friction.
 *
 * @throws {RangeError}
 *   When the density is not above zero, or height or back pressure is below zero.
 */
export function riserPurgePressure(input: {
  readonly density: Quantity<'density'>
  readonly height: Quantity<'length'>
  readonly backPressure: Quantity<'gauge-pressure'>
}): Quantity<'gauge-pressure'> {
  if (input.backPressure.si < 0)
    throw new RangeError('Unexpected back pressure below zero, expected none or more')
  return quantityOf('gauge-pressure', liquidColumn(input.density, input.height).si + input.backPressure.si)
}
