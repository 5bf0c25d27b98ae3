import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'
import {refuseUnlessAboveZero, refuseUnlessShare} from '../refuse-inputs.ts'

export const dutyPressureNote: CalculationNote = {
  name: 'duty-pressure',
  words:
    'pressure drop to be expected over the hydraulic motor when the pump needs so much shaft power at this speed; more than that means a rub, a heavy or thick cargo or a worn motor',
  formula: ['Δp = P/(D·n·ηm)', 'the same by the oil: Δp = P/(ηv·ηm·Q)'],
  symbols: [
    {symbol: 'Δp', meaning: 'pressure drop over the motor'},
    {symbol: 'P', meaning: 'shaft power that the pump needs'},
    {symbol: 'D', meaning: 'displacement for one turn'},
    {symbol: 'n', meaning: 'speed'},
    {symbol: 'ηm', meaning: 'mechanical efficiency'},
    {symbol: 'ηv', meaning: 'volumetric efficiency'},
    {symbol: 'Q', meaning: 'flow into the motor'},
  ],
  sources: [
    {
      title: 'balance of hydraulic power and shaft power; no published example with numbers was found',
      edition: 'none',
      howKnown: 'computed',
      status: 'current',
    },
  ],
  validFor: 'a motor that drives the pump directly, in steady running',
}

/**
 * Pressure drop over the motor to be expected at a shaft power and speed.
 *
 * Source: balance of hydraulic power and shaft power, computed; compared with a second way in the tests.
 * Valid for: a motor that drives the pump directly, in steady running.
 *
 * @throws {RangeError}
 *   When power, displacement or speed is not above zero, or the efficiency is not above 0 % and at most 100 %.
 */
export function dutyPressure(input: {
  readonly shaftPower: Quantity<'power'>
  readonly displacement: Quantity<'displacement'>
  readonly speed: Quantity<'rotational-speed'>
  readonly mechanicalEfficiency: Quantity<'ratio'>
}): Quantity<'pressure-difference'> {
  refuseUnlessAboveZero('shaft power', input.shaftPower, 'kW')
  refuseUnlessAboveZero('displacement', input.displacement, 'cm³/rev')
  refuseUnlessAboveZero('speed', input.speed, 'rpm')
  refuseUnlessShare('mechanical efficiency', input.mechanicalEfficiency)
  return quantityOf(
    'pressure-difference',
    input.shaftPower.si / (input.displacement.si * input.speed.si * input.mechanicalEfficiency.si),
  )
}
