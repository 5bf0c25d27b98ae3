import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'
import {textbookGasLaw} from './gas-sources.ts'
import {absoluteTemperature, molarGasConstant} from './molar-gas.ts'

export const gasMassNote: CalculationNote = {
  name: 'gas-mass',
  words: 'mass of the gas that raises a space of given volume by a given pressure',
  formula: ['m = M·V·Δp/(R·T)'],
  symbols: [
    {symbol: 'm', meaning: 'mass'},
    {symbol: 'M', meaning: 'molar mass'},
    {symbol: 'V', meaning: 'volume'},
    {symbol: 'Δp', meaning: 'rise of pressure'},
    {symbol: 'R', meaning: 'molar gas constant, 8.314463 J/(mol·K)'},
    {symbol: 'T', meaning: 'temperature in kelvin'},
  ],
  sources: [textbookGasLaw],
  validFor: 'gases near room temperature up to some ten bar; the temperature of the gas must be stated',
}

/**
 * Mass of an amount of gas that is known as pressure times volume.
 *
 * Source: ideal gas law; from memory.
 * Valid for: gases that behave as ideal ones. The same pressure times volume weighs 7 % less at 20 than at 0 °C.
 *
 * @throws {RangeError}
 *   When volume or molar mass is not above zero, the rise is below zero, or the temperature not above absolute zero.
 */
export function gasMass(input: {
  readonly volume: Quantity<'volume'>
  readonly rise: Quantity<'pressure-difference'>
  readonly molarMass: Quantity<'molar-mass'>
  readonly temperature: Quantity<'temperature'>
}): Quantity<'mass'> {
  const {volume, rise, molarMass, temperature} = input
  if (volume.si <= 0 || molarMass.si <= 0)
    throw new RangeError('Unexpected volume or molar mass of nothing, expected values above zero')
  if (rise.si < 0) throw new RangeError('Unexpected fall of pressure, expected a rise')
  const moles = (volume.si * rise.si) / (molarGasConstant * absoluteTemperature(temperature))
  return quantityOf('mass', molarMass.si * moles)
}
