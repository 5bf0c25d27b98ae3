import {standardGravity} from '../../quantities/exact-constants.ts'
import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'
import {refuseBelowZero} from '../refuse-inputs.ts'
import {headFromPressure} from './head-and-pressure.ts'

/** What is read and known when the head of a submerged pump is taken from the gauge at deck. */
export interface HeadFromGaugeInput {
  /** Reading of the discharge gauge. */
  readonly gauge: Quantity<'gauge-pressure'>
  /** Pressure of the gas above the liquid in the tank. */
  readonly tankPressure: Quantity<'gauge-pressure'>
  readonly density: Quantity<'density'>
  /** Height of the gauge above the liquid in the tank. */
  readonly gaugeHeight: Quantity<'length'>
  /** Velocity in the pipe where the gauge sits. */
  readonly velocity: Quantity<'speed'>
  /** Loss in the riser between pump and gauge, as head. */
  readonly riserLoss: Quantity<'length'>
}

/** Head of the pump and what it is made of. */
export interface HeadFromGauge {
  readonly head: Quantity<'length'>
  readonly pressureHead: Quantity<'length'>
  readonly velocityHead: Quantity<'length'>
}

export const headFromGaugeNote: CalculationNote = {
  name: 'head-from-gauge',
  words:
    'head of a submerged pump from the gauge at deck: the pressure that the gauge shows above the tank, the height up to the gauge, the velocity there and the loss on the way',
  formula: ['H = (p gauge − p tank)/(ρ·g) + z + v²/(2·g) + h loss'],
  symbols: [
    {symbol: 'H', meaning: 'head'},
    {symbol: 'p gauge', meaning: 'reading of the gauge'},
    {symbol: 'p tank', meaning: 'pressure above the liquid'},
    {symbol: 'ρ', meaning: 'density of the liquid'},
    {symbol: 'g', meaning: 'standard gravity, 9.80665 m/s²'},
    {symbol: 'z', meaning: 'height of the gauge above the liquid'},
    {symbol: 'v', meaning: 'velocity at the gauge'},
    {symbol: 'h loss', meaning: 'loss in the riser as head'},
  ],
  sources: [
    {
      title: 'Bernoulli equation; no published example with numbers was found',
      edition: 'none',
      howKnown: 'computed',
      status: 'current',
    },
  ],
  validFor: 'steady running, liquid of one density, gauge line filled with the same liquid up to the gauge',
}

/**
 * Head of a submerged pump from the gauge at deck.
 *
 * Both pressures are gauge pressures, so the barometer cancels. The liquid in
 * the tank is taken as still.
 *
 * Source: Bernoulli equation; computed, compared with a second way in the tests.
 * Valid for: steady running; a gauge at or above the level of the liquid.
 *
 * @throws {RangeError}
 *   When the density is not above zero, or height, velocity or loss is below zero.
 */
export function headFromGauge(input: HeadFromGaugeInput): HeadFromGauge {
  refuseBelowZero('height of the gauge', input.gaugeHeight, 'm')
  refuseBelowZero('velocity', input.velocity, 'm/s')
  refuseBelowZero('riser loss', input.riserLoss, 'm')
  const pressureHead = headFromPressure({
    pressure: quantityOf('pressure-difference', input.gauge.si - input.tankPressure.si),
    density: input.density,
  })
  const velocityHead = quantityOf('length', input.velocity.si ** 2 / (2 * standardGravity))
  return {
    head: quantityOf('length', pressureHead.si + input.gaugeHeight.si + velocityHead.si + input.riserLoss.si),
    pressureHead,
    velocityHead,
  }
}
