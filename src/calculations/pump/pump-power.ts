import {standardGravity} from '../../quantities/exact-constants.ts'
import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'
import {refuseUnlessAboveZero, refuseUnlessShare} from '../refuse-inputs.ts'

/** Power of a pump. */
export interface PumpPower {
  /** Power that the liquid takes up. */
  readonly liquidPower: Quantity<'power'>
  /** Power that the pump needs at its shaft. */
  readonly shaftPower: Quantity<'power'>
}

export const pumpPowerNote: CalculationNote = {
  name: 'pump-power',
  words: 'power that a pump gives to the liquid, and needs at its shaft',
  formula: [
    'P liquid = ρ·g·Q·H',
    'P shaft = P liquid/η',
    'in kW, m³/h and metres of a liquid of relative density d: P shaft = Q·H·d/(η·367.098)',
  ],
  symbols: [
    {symbol: 'P liquid', meaning: 'power that the liquid takes up'},
    {symbol: 'P shaft', meaning: 'power at the shaft'},
    {symbol: 'ρ', meaning: 'density of the liquid'},
    {symbol: 'g', meaning: 'standard gravity, 9.80665 m/s²'},
    {symbol: 'Q', meaning: 'flow'},
    {symbol: 'H', meaning: 'head'},
    {symbol: 'η', meaning: 'efficiency of the pump'},
    {symbol: 'd', meaning: 'relative density of the liquid'},
  ],
  sources: [
    {title: 'hydraulics', edition: 'none', howKnown: 'computed', status: 'current'},
    {title: 'pumping handbook, formulas', edition: 'unknown', howKnown: 'read', status: 'unknown'},
  ],
  validFor: 'liquids whose viscosity does not change head and efficiency',
}

/**
 * Power of a pump at its duty.
 *
 * Source: hydraulics; a handbook's constants were read and compared.
 * Valid for: liquids whose viscosity does not change head and efficiency.
 *
 * @throws {RangeError}
 *   When flow, head or density is not above zero, or the efficiency is not above 0 % and at most 100 %.
 */
export function pumpPower(input: {
  readonly flow: Quantity<'volume-flow'>
  readonly head: Quantity<'length'>
  readonly density: Quantity<'density'>
  readonly efficiency: Quantity<'ratio'>
}): PumpPower {
  refuseUnlessAboveZero('flow', input.flow, 'm³/h')
  refuseUnlessAboveZero('head', input.head, 'm')
  refuseUnlessAboveZero('density', input.density, 'kg/m³')
  refuseUnlessShare('efficiency', input.efficiency)
  const liquid = input.density.si * standardGravity * input.flow.si * input.head.si
  return {
    liquidPower: quantityOf('power', liquid),
    shaftPower: quantityOf('power', liquid / input.efficiency.si),
  }
}
