import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'
import {commonPractice, hydrostatics} from './gas-sources.ts'
import {liquidColumn} from './liquid-column.ts'

export const purgeLowerBoundNote: CalculationNote = {
  name: 'purge-lower-bound',
  words: 'lowest pressure that lifts leaked liquid out of the cofferdam, with a margin',
  formula: ['p lower = ρ·g·L + margin'],
  symbols: [
    {symbol: 'p lower', meaning: 'least gauge pressure'},
    {symbol: 'ρ', meaning: 'density of the heaviest liquid that can stand in the cofferdam'},
    {symbol: 'g', meaning: 'standard gravity, 9.80665 m/s²'},
    {symbol: 'L', meaning: 'height of the lift'},
    {symbol: 'margin', meaning: 'house rule'},
  ],
  sources: [hydrostatics, commonPractice],
  validFor: 'an outlet open to the air at the height of the lift; the margin is a house rule',
}

/**
 * Lowest purge pressure that still lifts the liquid.
 *
 * Source: hydrostatics; from memory. The margin is common practice, no source.
 * Valid for: a purge outlet open to the air; the density of the heaviest cargo.
 *
 * @throws {RangeError}
 *   When the density is not above zero, or height or margin is below zero.
 */
export function purgeLowerBound(input: {
  readonly density: Quantity<'density'>
  readonly lift: Quantity<'length'>
  readonly margin: Quantity<'pressure-difference'>
}): Quantity<'gauge-pressure'> {
  if (input.margin.si < 0)
    throw new RangeError('Unexpected margin below zero, expected a margin of zero or more')
  return quantityOf('gauge-pressure', liquidColumn(input.density, input.lift).si + input.margin.si)
}
