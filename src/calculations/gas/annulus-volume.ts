import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'

export const annulusVolumeNote: CalculationNote = {
  name: 'annulus-volume',
  words: 'space between two concentric pipes over a length',
  formula: ['V = π/4·(D² − d²)·L'],
  symbols: [
    {symbol: 'V', meaning: 'volume between the two walls'},
    {symbol: 'D', meaning: 'inside diameter of the outer wall'},
    {symbol: 'd', meaning: 'outside diameter of the inner wall'},
    {symbol: 'L', meaning: 'length'},
  ],
  sources: [{title: 'geometry', edition: 'none', howKnown: 'computed', status: 'current'}],
  validFor: 'straight concentric pipes',
}

/**
 * Volume between two concentric pipes.
 *
 * Source: geometry.
 * Valid for: straight pipes, the outer bore larger than the inner outside diameter.
 *
 * @throws {RangeError}
 *   When the pipes do not nest or the length is not above zero.
 */
export function annulusVolume(input: {
  readonly outerDiameter: Quantity<'length'>
  readonly innerDiameter: Quantity<'length'>
  readonly length: Quantity<'length'>
}): Quantity<'volume'> {
  if (input.outerDiameter.si <= input.innerDiameter.si || input.innerDiameter.si < 0) {
    throw new RangeError('Unexpected inner pipe as large as the outer bore, expected pipes that nest')
  }
  if (input.length.si <= 0) throw new RangeError('Unexpected length of nothing, expected a length above zero')
  return quantityOf(
    'volume',
    (Math.PI / 4) * (input.outerDiameter.si ** 2 - input.innerDiameter.si ** 2) * input.length.si,
  )
}
