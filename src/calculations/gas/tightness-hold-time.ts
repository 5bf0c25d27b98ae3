import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'
import {idealGasLaw} from './gas-sources.ts'
import {absoluteFromGauge} from './standard-air.ts'

/** What the length of a tightness test is computed from. */
export interface HoldTimeInput {
  readonly volume: Quantity<'volume'>
  readonly testPressure: Quantity<'gauge-pressure'>
  readonly barometer: Quantity<'absolute-pressure'>
  /** Smallest step that the test gauge shows. */
  readonly gaugeResolution: Quantity<'pressure-difference'>
  readonly temperature: Quantity<'temperature'>
  readonly temperatureUncertainty: Quantity<'temperature-difference'>
  readonly allowedLeak: Quantity<'volume-flow'>
  /** House rule: never shorter than this. */
  readonly least: Quantity<'time'>
}

/** How long a tightness test lasts and what it can show. */
export interface HoldTime {
  readonly holdTime: Quantity<'time'>
  /** Pressure that the uncertainty of the thermometer is worth. */
  readonly temperatureEffect: Quantity<'pressure-difference'>
  readonly governs: 'formula' | 'least'
  /** Smallest leak that shows within the hold time, as a flow at standard atmosphere. */
  readonly smallestLeak: Quantity<'volume-flow'>
}

export const tightnessHoldTimeNote: CalculationNote = {
  name: 'tightness-hold-time',
  words:
    'the test lasts so long that the allowed leak lowers the pressure by more than gauge and thermometer can hide, and never shorter than the house rule',
  formula: [
    'Δp T = (p test + p atm)/T·uT',
    't = V·(gauge step + Δp T)/(p atm·q allowed), at least the house rule',
    'q smallest = V·(gauge step + Δp T)/(p atm·t)',
  ],
  symbols: [
    {symbol: 'Δp T', meaning: 'pressure that the thermometer can hide'},
    {symbol: 'p test', meaning: 'test pressure'},
    {symbol: 'p atm', meaning: 'standard atmosphere'},
    {symbol: 'T', meaning: 'temperature in kelvin'},
    {symbol: 'uT', meaning: 'uncertainty of the thermometer'},
    {symbol: 't', meaning: 'hold time'},
    {symbol: 'V', meaning: 'volume of the space'},
    {symbol: 'gauge step', meaning: 'smallest step of the gauge'},
    {symbol: 'q allowed', meaning: 'allowed leak, as flow of free gas'},
    {symbol: 'q smallest', meaning: 'smallest leak that the test can show'},
  ],
  sources: [idealGasLaw],
  validFor: 'pressure tests with gas in a closed space',
}

/**
 * How long a pressure hold must last to show the allowed leak, and the smallest leak it can show.
 *
 * Source: ideal gas law; EN 1779, pressure-change technique; from memory. The least time is a house rule.
 * Valid for: gas tests of a closed volume.
 *
 * @throws {RangeError}
 *   When volume, allowed leak or temperature is not above zero.
 */
export function tightnessHoldTime(input: HoldTimeInput): HoldTime {
  if (input.volume.si <= 0 || input.allowedLeak.si <= 0 || input.temperature.si <= 0) {
    throw new RangeError(
      'Unexpected volume, allowed leak or temperature of nothing, expected values above zero',
    )
  }
  const absolute = absoluteFromGauge(input.testPressure, input.barometer).si
  const effect = (absolute / input.temperature.si) * input.temperatureUncertainty.si
  const hidden = input.volume.si * (input.gaugeResolution.si + effect)
  const byFormula = hidden / (input.barometer.si * input.allowedLeak.si)
  const holdTime = Math.max(byFormula, input.least.si)
  return {
    holdTime: quantityOf('time', holdTime),
    temperatureEffect: quantityOf('pressure-difference', effect),
    governs: byFormula > input.least.si ? 'formula' : 'least',
    smallestLeak: quantityOf('volume-flow', hidden / (input.barometer.si * holdTime)),
  }
}
