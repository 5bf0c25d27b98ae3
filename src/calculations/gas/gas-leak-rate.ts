import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'
import {idealGasLaw} from './gas-sources.ts'
import {standardAtmosphere} from './standard-air.ts'

/** A leak of gas, as pressure times volume and as a flow of free gas. */
export interface GasLeak {
  readonly rate: Quantity<'gas-leak-rate'>
  /** The same as a flow of gas at standard atmosphere. */
  readonly flow: Quantity<'volume-flow'>
}

export const gasLeakRateNote: CalculationNote = {
  name: 'gas-leak-rate',
  words:
    'gas that leaves or enters a closed space, from its change of pressure after correction for temperature',
  formula: ['Q = V·Δp/t', 'q = Q/p atm'],
  symbols: [
    {symbol: 'Q', meaning: 'leak rate'},
    {symbol: 'V', meaning: 'volume'},
    {symbol: 'Δp', meaning: 'corrected change of pressure'},
    {symbol: 't', meaning: 'time'},
    {symbol: 'q', meaning: 'flow of free gas'},
    {symbol: 'p atm', meaning: 'standard atmosphere'},
  ],
  sources: [idealGasLaw],
  validFor: 'closed spaces of fixed volume; a drop already corrected for temperature and barometer',
}

/**
 * Leak of gas from the corrected drop of pressure in a closed space; negative when gas comes in.
 *
 * Source: ideal gas law; EN 1779, pressure-change technique; from memory.
 * Valid for: a closed space of fixed volume at one temperature.
 *
 * @throws {RangeError}
 *   When volume or duration is not above zero.
 */
export function gasLeakRate(input: {
  readonly volume: Quantity<'volume'>
  readonly drop: Quantity<'pressure-difference'>
  readonly duration: Quantity<'time'>
}): GasLeak {
  if (input.volume.si <= 0) throw new RangeError('Unexpected volume of nothing, expected a volume above zero')
  if (input.duration.si <= 0)
    throw new RangeError('Unexpected duration of nothing, expected a time above zero')
  const rate = (input.volume.si * input.drop.si) / input.duration.si
  return {
    rate: quantityOf('gas-leak-rate', rate),
    flow: quantityOf('volume-flow', rate / standardAtmosphere.si),
  }
}
