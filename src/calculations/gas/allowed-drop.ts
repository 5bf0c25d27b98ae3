import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'
import {idealGasLaw} from './gas-sources.ts'

export const allowedDropNote: CalculationNote = {
  name: 'allowed-drop',
  words: 'pressure that the allowed leak takes out of the space within the hold time',
  formula: ['Δp = q allowed·p atm·t/V'],
  symbols: [
    {symbol: 'Δp', meaning: 'allowed drop of the pressure'},
    {symbol: 'q allowed', meaning: 'allowed leak, as flow of free gas'},
    {symbol: 'p atm', meaning: 'standard atmosphere'},
    {symbol: 't', meaning: 'hold time'},
    {symbol: 'V', meaning: 'volume of the space'},
  ],
  sources: [idealGasLaw],
  validFor: 'pressure tests with gas in a closed space',
}

/**
 * Allowed drop of a pressure hold, after correction for temperature and barometer.
 *
 * Source: ideal gas law; EN 1779, pressure-change technique; from memory.
 * Valid for: gas tests of a closed volume.
 *
 * @throws {RangeError}
 *   When the volume is not above zero.
 */
export function allowedDrop(input: {
  readonly volume: Quantity<'volume'>
  readonly barometer: Quantity<'absolute-pressure'>
  readonly allowedLeak: Quantity<'volume-flow'>
  readonly duration: Quantity<'time'>
}): Quantity<'pressure-difference'> {
  if (input.volume.si <= 0) throw new RangeError('Unexpected volume of nothing, expected a volume above zero')
  return quantityOf(
    'pressure-difference',
    (input.allowedLeak.si * input.barometer.si * input.duration.si) / input.volume.si,
  )
}
