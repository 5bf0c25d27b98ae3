import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'
import {commonPractice, textbookGasLaw} from './gas-sources.ts'

export const purgeGasNote: CalculationNote = {
  name: 'purge-gas',
  words: 'free gas of one purge, how many purges a bottle gives and how many bottles the purges take',
  formula: [
    'V free = n·V·p/p ref',
    'purges per bottle = V bottle/V free, whole purges',
    'bottles = purges·V free/V bottle, next whole bottle',
  ],
  symbols: [
    {symbol: 'V free', meaning: 'free gas of one purge'},
    {symbol: 'n', meaning: 'changes of the gas in the space'},
    {symbol: 'V', meaning: 'volume of the space'},
    {symbol: 'p', meaning: 'absolute pressure while purging'},
    {symbol: 'p ref', meaning: 'reference pressure of the free gas'},
    {symbol: 'V bottle', meaning: 'free gas that can be drawn from a bottle'},
  ],
  sources: [textbookGasLaw, commonPractice],
  validFor:
    'a steady flow through the space at one pressure and temperature; the count of changes is a house rule',
}

/**
 * Free gas of one purge.
 *
 * Source: ideal gas law; from memory. The count of changes is common practice, no source.
 * Valid for: a steady flow through the space at one pressure and temperature.
 *
 * @throws {RangeError}
 *   When a figure is not above zero.
 */
export function purgeGas(input: {
  readonly volume: Quantity<'volume'>
  readonly pressure: Quantity<'absolute-pressure'>
  readonly changes: Quantity<'count'>
  readonly reference: Quantity<'absolute-pressure'>
}): Quantity<'volume'> {
  const {volume, pressure, changes, reference} = input
  if (Math.min(volume.si, pressure.si, changes.si, reference.si) <= 0)
    throw new RangeError(
      'Unexpected volume, pressure or count of changes of nothing, expected values above zero',
    )
  return quantityOf('volume', (changes.si * volume.si * pressure.si) / reference.si)
}
