import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'
import {refuseBelowZero, refuseUnlessAboveZero} from '../refuse-inputs.ts'

export const airToVentNote: CalculationNote = {
  name: 'air-to-vent',
  words: 'air that is still in a pump when less oil was filled than it holds',
  formula: ['V air = V total − V filled'],
  symbols: [
    {symbol: 'V air', meaning: 'air that is still to be vented'},
    {symbol: 'V total', meaning: 'oil content of the pump'},
    {symbol: 'V filled', meaning: 'oil filled so far'},
  ],
  sources: [
    {
      title:
        'fill from the low point, vent at the highest point until no bubble is seen, check the level again after the first run',
      edition: 'none',
      howKnown: 'common-practice',
      status: 'unknown',
    },
  ],
  validFor: 'oil filled at about the temperature at which the content is meant',
}

/**
 * Air that is left after filling.
 *
 * Source: a difference; how to vent is common practice, no source.
 * Valid for: filled volumes up to the content.
 *
 * @throws {RangeError}
 *   When the content is not above zero, the filled volume is below zero, or more was filled than the pump holds.
 */
export function airToVent(input: {
  readonly content: Quantity<'volume'>
  readonly filled: Quantity<'volume'>
}): Quantity<'volume'> {
  refuseUnlessAboveZero('content', input.content, 'l')
  refuseBelowZero('filled volume', input.filled, 'l')
  const air = input.content.si - input.filled.si
  if (air < -1e-12 * input.content.si)
    throw new RangeError(
      'Unexpected filled volume above the content, expected at most the content: look for a valve that lets oil pass',
    )
  return quantityOf('volume', Math.max(0, air))
}
