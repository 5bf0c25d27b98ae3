import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'
import {textbookGasLaw} from './gas-sources.ts'

export const fillGasNote: CalculationNote = {
  name: 'fill-gas',
  words: 'free gas that raises a closed space from one pressure to another, at the reference pressure',
  formula: ['V free = V·(p2 − p1)/p ref'],
  symbols: [
    {symbol: 'V free', meaning: 'volume of free gas'},
    {symbol: 'V', meaning: 'volume of the space'},
    {symbol: 'p1', meaning: 'absolute pressure before'},
    {symbol: 'p2', meaning: 'absolute pressure after'},
    {symbol: 'p ref', meaning: 'reference pressure of the free gas'},
  ],
  sources: [textbookGasLaw],
  validFor: 'filling at one temperature; free gas counted at that temperature',
}

/**
 * Free gas that one filling of a closed space takes.
 *
 * Source: ideal gas law; from memory.
 * Valid for: one temperature of space and free gas; pressures up to some ten bar.
 *
 * @throws {RangeError}
 *   When volume or reference pressure is not above zero, or the space is not filled to a higher pressure.
 */
export function fillGas(input: {
  readonly volume: Quantity<'volume'>
  readonly from: Quantity<'absolute-pressure'>
  readonly to: Quantity<'absolute-pressure'>
  readonly reference: Quantity<'absolute-pressure'>
}): Quantity<'volume'> {
  const {volume, from, to, reference} = input
  if (volume.si <= 0 || reference.si <= 0)
    throw new RangeError('Unexpected volume or reference pressure of nothing, expected values above zero')
  if (to.si <= from.si)
    throw new RangeError('Unexpected filling to no higher pressure, expected one above the pressure before')
  return quantityOf('volume', (volume.si * (to.si - from.si)) / reference.si)
}
