import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'
import {refuseUnlessAboveZero} from '../refuse-inputs.ts'

/** What warming does to oil shut in between closed valves. */
export interface TrappedOilPressure {
  /** Rise of the pressure for one kelvin. */
  readonly risePerKelvin: Quantity<'pressure-difference'>
  /** Rise of the pressure for the warming given; below zero when the oil cools. */
  readonly rise: Quantity<'pressure-difference'>
}

export const trappedOilPressureNote: CalculationNote = {
  name: 'trapped-oil-pressure',
  words:
    'pressure by which oil shut in between closed valves rises when it warms: about 11 bar for each kelvin, so that a pipe in the sun bursts what it was isolated for',
  formula: ['Δp = K·α·ΔT'],
  symbols: [
    {symbol: 'Δp', meaning: 'rise of the pressure'},
    {symbol: 'K', meaning: 'bulk modulus of the oil'},
    {symbol: 'α', meaning: 'volume expansion of the oil'},
    {symbol: 'ΔT', meaning: 'rise of the temperature'},
  ],
  sources: [
    {
      title:
        'page on trapped hydraulic oil with the rule of 11 bar/°C (90 psi/°F); its metric form prints 90 and is wrong',
      edition: 'unknown',
      howKnown: 'read',
      status: 'unknown',
    },
  ],
  validFor: 'oil without air in a rigid space: walls that give and air in the oil make the rise smaller',
}

/**
 * Rise of the pressure of trapped oil with its temperature.
 *
 * The wall is taken as rigid, which gives the highest rise.
 *
 * Source: definitions of bulk modulus and volume expansion; compared with a rule of thumb that was read.
 * Valid for: oil without air in a rigid space.
 *
 * @throws {RangeError}
 *   When bulk modulus or expansion is not above zero.
 */
export function trappedOilPressure(input: {
  readonly bulkModulus: Quantity<'pressure-difference'>
  readonly expansion: Quantity<'thermal-expansion'>
  readonly warming: Quantity<'temperature-difference'>
}): TrappedOilPressure {
  refuseUnlessAboveZero('bulk modulus', input.bulkModulus, 'bar')
  refuseUnlessAboveZero('expansion', input.expansion, '1/K')
  const perKelvin = input.bulkModulus.si * input.expansion.si
  return {
    risePerKelvin: quantityOf('pressure-difference', perKelvin),
    rise: quantityOf('pressure-difference', perKelvin * input.warming.si),
  }
}
