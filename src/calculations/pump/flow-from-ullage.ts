import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'
import {refuseUnlessAboveZero} from '../refuse-inputs.ts'

export const flowFromUllageNote: CalculationNote = {
  name: 'flow-from-ullage',
  words: 'mean flow of a pump from the volumes that the ullage table gives at the start and at the end',
  formula: ['Q = (V start − V end)/t'],
  symbols: [
    {symbol: 'Q', meaning: 'mean flow'},
    {symbol: 'V start', meaning: 'volume in the tank at the first reading, by the ullage table'},
    {symbol: 'V end', meaning: 'volume in the tank at the second reading'},
    {symbol: 't', meaning: 'time between the two readings'},
  ],
  sources: [{title: 'definition of a mean flow', edition: 'none', howKnown: 'computed', status: 'current'}],
  validFor: 'a tank that only this pump empties, read at the same trim and list',
}

/**
 * Mean flow of a pump from ullage and time.
 *
 * Source: definition of a mean flow.
 * Valid for: a tank that only this pump empties.
 *
 * @throws {RangeError}
 *   When the time is not above zero, or the tank holds no less at the end.
 */
export function flowFromUllage(input: {
  readonly startVolume: Quantity<'volume'>
  readonly endVolume: Quantity<'volume'>
  readonly duration: Quantity<'time'>
}): Quantity<'volume-flow'> {
  refuseUnlessAboveZero('duration', input.duration, 'min')
  const pumped = input.startVolume.si - input.endVolume.si
  if (pumped <= 0)
    throw new RangeError(
      'Unexpected volume at the end as large as at the start, expected a smaller one: the tank is being emptied',
    )
  return quantityOf('volume-flow', pumped / input.duration.si)
}
