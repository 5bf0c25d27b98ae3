import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'
import {textbookGasLaw} from './gas-sources.ts'

export const bottleContentNote: CalculationNote = {
  name: 'bottle-content',
  words:
    'free gas that can be drawn from a bottle between its pressure and the least pressure that is still of use',
  formula: ['V free = V bottle·(p full/Z − p least)/p ref'],
  symbols: [
    {symbol: 'V free', meaning: 'free gas that can be drawn'},
    {symbol: 'V bottle', meaning: 'volume of the bottle'},
    {symbol: 'p full', meaning: 'absolute pressure of the full bottle'},
    {symbol: 'p least', meaning: 'absolute pressure at which it is taken off'},
    {symbol: 'Z', meaning: 'compressibility of the gas at full pressure, 1 for an ideal gas'},
    {symbol: 'p ref', meaning: 'reference pressure of the free gas'},
  ],
  sources: [textbookGasLaw],
  validFor:
    'bottles up to 200 bar(g); above 100 bar a compressibility of 1 counts some per cent too much, and that of nitrogen is to be read from a table',
}

/**
 * Free gas that can be drawn from a bottle.
 *
 * The pressure is taken as absolute: a gauge reading of 2000 psi taken for an absolute one loses one atmosphere.
 *
 * Source: ideal gas law with compressibility; from memory.
 * Valid for: a bottle at one temperature, emptied to a pressure at which the gas is nearly ideal.
 *
 * @throws {RangeError}
 *   When volume, compressibility or reference pressure is not above zero, or nothing is left to draw.
 */
export function bottleContent(input: {
  readonly volume: Quantity<'volume'>
  readonly full: Quantity<'absolute-pressure'>
  readonly least: Quantity<'absolute-pressure'>
  readonly compressibility: Quantity<'ratio'>
  readonly reference: Quantity<'absolute-pressure'>
}): Quantity<'volume'> {
  const {volume, full, least, compressibility, reference} = input
  if (volume.si <= 0 || reference.si <= 0 || compressibility.si <= 0)
    throw new RangeError(
      'Unexpected volume, compressibility or reference pressure of nothing, expected values above zero',
    )
  const drawn = full.si / compressibility.si - least.si
  if (least.si < 0 || drawn <= 0)
    throw new RangeError('Unexpected bottle with nothing to draw, expected it above the least pressure')
  return quantityOf('volume', (volume.si * drawn) / reference.si)
}
