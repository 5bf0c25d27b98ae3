import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'
import {refuseUnlessAboveZero} from '../refuse-inputs.ts'
import {hydraulicMotor} from './hydraulic-motor.ts'

/** What motor and pump are said to do at the same speed. */
export interface PowerBalanceInput {
  readonly displacement: Quantity<'displacement'>
  readonly pressureDrop: Quantity<'pressure-difference'>
  readonly volumetricEfficiency: Quantity<'ratio'>
  readonly mechanicalEfficiency: Quantity<'ratio'>
  /** Speed for which the shaft power of the pump is stated. */
  readonly speed: Quantity<'rotational-speed'>
  /** Oil that the system gives the motor; with it the speed is checked too. */
  readonly oilFlow?: Quantity<'volume-flow'>
  /** Shaft power that the pump needs at this speed. */
  readonly pumpShaftPower: Quantity<'power'>
  /** Largest share by which two figures may differ and still agree. */
  readonly tolerance: Quantity<'ratio'>
}

/** A figure by the motor beside the same figure by the pump. */
export interface Comparison<K extends 'torque' | 'power' | 'rotational-speed'> {
  readonly byMotor: Quantity<K>
  readonly byPump: Quantity<K>
  /** By the motor over by the pump, less one. */
  readonly difference: Quantity<'ratio'>
  readonly agrees: boolean
}

/** Whether hydraulic data and pump data can both be true. */
export interface PowerBalance {
  readonly torque: Comparison<'torque'>
  readonly power: Comparison<'power'>
  readonly speed?: Comparison<'rotational-speed'>
  readonly agrees: boolean
}

export const powerBalanceNote: CalculationNote = {
  name: 'power-balance',
  words:
    'torque, power and speed of the hydraulic motor beside those that the pump needs at the same speed: figures that differ by more than the tolerance cannot both be right',
  formula: [
    'T motor = D·Δp·ηm/(2π), T pump = P pump/(2π·n)',
    'P motor = ηm·Δp·D·n',
    'n motor = Q·ηv/D',
    'difference = by the motor/by the pump − 1',
  ],
  symbols: [
    {symbol: 'T motor', meaning: 'torque that the motor gives'},
    {symbol: 'T pump', meaning: 'torque that the pump takes'},
    {symbol: 'D', meaning: 'displacement for one turn'},
    {symbol: 'Δp', meaning: 'pressure drop'},
    {symbol: 'ηm', meaning: 'mechanical efficiency'},
    {symbol: 'ηv', meaning: 'volumetric efficiency'},
    {symbol: 'P motor', meaning: 'power that the motor gives'},
    {symbol: 'P pump', meaning: 'power that the pump takes at the shaft'},
    {symbol: 'n', meaning: 'speed'},
    {symbol: 'n motor', meaning: 'speed by the flow of oil'},
    {symbol: 'Q', meaning: 'flow of oil into the motor'},
  ],
  sources: [
    {
      title: 'balance of hydraulic power and shaft power; no published example with numbers was found',
      edition: 'none',
      howKnown: 'computed',
      status: 'current',
    },
    {
      title: 'tolerance of 15 %, common practice',
      edition: 'none',
      howKnown: 'common-practice',
      status: 'unknown',
    },
  ],
  validFor: 'data for one duty: the pressure drop at which the pump needs this power',
}

/**
 * Hydraulic data and pump data of one duty held against each other.
 *
 * Torque and power differ by the same share when both are taken at the stated
 * speed; the speed by the oil flow is a check of its own, and with an oil flow
 * the power is that of the flow.
 *
 * Source: balance of hydraulic power and shaft power, computed; compared with a second way in the tests.
 * Valid for: a motor that drives the pump directly.
 *
 * @throws {RangeError}
 *   When an input is not above zero or an efficiency is out of range.
 */
export function powerBalance(input: PowerBalanceInput): PowerBalance {
  refuseUnlessAboveZero('shaft power of the pump', input.pumpShaftPower, 'kW')
  refuseUnlessAboveZero('speed', input.speed, 'rpm')
  refuseUnlessAboveZero('tolerance', input.tolerance, '%')
  const {displacement, pressureDrop, volumetricEfficiency, mechanicalEfficiency, oilFlow} = input
  const motor = hydraulicMotor({
    displacement,
    pressureDrop,
    volumetricEfficiency,
    mechanicalEfficiency,
    ...(oilFlow ? {flow: oilFlow} : {speed: input.speed}),
  })
  const {running} = motor
  if (!running) throw new Error('Unexpected motor at rest, expected one that runs by its flow or speed')
  const torquePump = quantityOf('torque', input.pumpShaftPower.si / (2 * Math.PI * input.speed.si))
  const torque = compared(motor.torque, torquePump, input.tolerance)
  const power = compared(running.shaftPower, input.pumpShaftPower, input.tolerance)
  if (!oilFlow) return {torque, power, agrees: torque.agrees && power.agrees}
  const speed = compared(running.speed, input.speed, input.tolerance)
  return {torque, power, speed, agrees: torque.agrees && power.agrees && speed.agrees}
}

function compared<K extends 'torque' | 'power' | 'rotational-speed'>(
  byMotor: Quantity<K>,
  byPump: Quantity<K>,
  tolerance: Quantity<'ratio'>,
): Comparison<K> {
  const difference = byMotor.si / byPump.si - 1
  return {
    byMotor,
    byPump,
    difference: quantityOf('ratio', difference),
    agrees: Math.abs(difference) <= tolerance.si + 1e-12,
  }
}
