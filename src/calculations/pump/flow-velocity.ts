import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'
import {refuseBelowZero, refuseUnlessAboveZero} from '../refuse-inputs.ts'

export const flowVelocityNote: CalculationNote = {
  name: 'flow-velocity',
  words: 'mean velocity of a flow in a round pipe',
  formula: ['v = 4·Q/(π·d²)'],
  symbols: [
    {symbol: 'v', meaning: 'mean velocity'},
    {symbol: 'Q', meaning: 'flow'},
    {symbol: 'd', meaning: 'bore of the pipe'},
  ],
  sources: [{title: 'geometry', edition: 'none', howKnown: 'computed', status: 'current'}],
  validFor: 'round pipes that run full',
}

/**
 * Mean velocity of a flow in a round pipe.
 *
 * Source: geometry.
 * Valid for: round pipes that run full.
 *
 * @throws {RangeError}
 *   When the bore is not above zero or the flow is below zero.
 */
export function flowVelocity(input: {
  readonly flow: Quantity<'volume-flow'>
  readonly bore: Quantity<'length'>
}): Quantity<'speed'> {
  refuseBelowZero('flow', input.flow, 'm³/h')
  refuseUnlessAboveZero('bore', input.bore, 'mm')
  return quantityOf('speed', (4 * input.flow.si) / (Math.PI * input.bore.si ** 2))
}
