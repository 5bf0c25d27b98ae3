import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'

export const lipSpeedNote: CalculationNote = {
  name: 'lip-speed',
  words: 'speed at which the surface of shaft or sleeve passes below the seal lip',
  formula: ['v = π·d·n'],
  symbols: [
    {symbol: 'v', meaning: 'speed at the lip'},
    {symbol: 'd', meaning: 'diameter below the lip'},
    {symbol: 'n', meaning: 'turns in a unit of time'},
  ],
  sources: [{title: 'geometry', edition: 'none', howKnown: 'computed', status: 'current'}],
  validFor: 'shafts and sleeves that turn at a steady speed',
}

/**
 * Speed of the surface below a seal lip.
 *
 * Source: geometry.
 * Valid for: shafts and sleeves that turn at a steady speed.
 *
 * @throws {RangeError}
 *   When the diameter is not above zero or the speed is negative.
 */
export function lipSpeed(
  diameter: Quantity<'length'>,
  speed: Quantity<'rotational-speed'>,
): Quantity<'speed'> {
  if (diameter.si <= 0) throw new RangeError('Unexpected diameter of nothing, expected one above zero')
  if (speed.si < 0) throw new RangeError('Unexpected speed below zero, expected zero or more')
  return quantityOf('speed', Math.PI * diameter.si * speed.si)
}
