import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'
import {textbookGasLaw} from './gas-sources.ts'
import {absoluteTemperature, molarGasConstant} from './molar-gas.ts'

export const molarLeakRateNote: CalculationNote = {
  name: 'molar-leak-rate',
  words:
    'gas that enters or leaves a closed space, counted in moles from absolute pressure and temperature at both ends',
  formula: ['n = V/R·(p2/T2 − p1/T1)/t'],
  symbols: [
    {symbol: 'n', meaning: 'flow in moles, positive when gas comes in'},
    {symbol: 'V', meaning: 'volume'},
    {symbol: 'R', meaning: 'molar gas constant, 8.314463 J/(mol·K)'},
    {symbol: 'p1', meaning: 'absolute pressure at the start'},
    {symbol: 'p2', meaning: 'absolute pressure at the end'},
    {symbol: 'T1', meaning: 'temperature in kelvin at the start'},
    {symbol: 'T2', meaning: 'temperature in kelvin at the end'},
    {symbol: 't', meaning: 'time'},
  ],
  sources: [
    textbookGasLaw,
    {
      title: '40 CFR 1065.644, vacuum-decay leak rate',
      edition: 'inputs of its example read, its result recalled',
      howKnown: 'memory',
      status: 'unknown',
    },
  ],
  validFor: 'closed spaces of fixed volume, gas without condensation',
}

/**
 * Flow of moles into a closed space; negative when gas leaves.
 *
 * Source: ideal gas law; 40 CFR 1065.644, vacuum-decay leak rate; from memory.
 * Valid for: a closed space of fixed volume.
 *
 * @throws {RangeError}
 *   When volume or duration is not above zero, or a temperature is not above absolute zero.
 */
export function molarLeakRate(input: {
  readonly volume: Quantity<'volume'>
  readonly start: Quantity<'absolute-pressure'>
  readonly end: Quantity<'absolute-pressure'>
  readonly startTemperature: Quantity<'temperature'>
  readonly endTemperature: Quantity<'temperature'>
  readonly duration: Quantity<'time'>
}): Quantity<'molar-flow'> {
  const {volume, start, end, startTemperature, endTemperature, duration} = input
  if (volume.si <= 0 || duration.si <= 0)
    throw new RangeError('Unexpected volume or duration of nothing, expected values above zero')
  const pressurePerKelvin =
    end.si / absoluteTemperature(endTemperature) - start.si / absoluteTemperature(startTemperature)
  return quantityOf('molar-flow', (volume.si * pressurePerKelvin) / (molarGasConstant * duration.si))
}
