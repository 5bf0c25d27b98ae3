import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'
import {refuseBelowZero, refuseUnlessAboveZero} from '../refuse-inputs.ts'

/** A point of a pump: flow, head and power at the shaft. */
export interface PumpPoint {
  readonly flow: Quantity<'volume-flow'>
  readonly head: Quantity<'length'>
  readonly power: Quantity<'power'>
}

/** From what to what a point is scaled: another speed, or an impeller turned down to another diameter. */
export type AffinityChange =
  | {
      readonly kind: 'speed'
      readonly from: Quantity<'rotational-speed'>
      readonly to: Quantity<'rotational-speed'>
    }
  | {readonly kind: 'diameter'; readonly from: Quantity<'length'>; readonly to: Quantity<'length'>}

/** A point after scaling, with the ratio that scaled it. */
export interface ScaledPoint extends PumpPoint {
  readonly ratio: Quantity<'ratio'>
}

export const affinityNote: CalculationNote = {
  name: 'affinity',
  words: 'flow, head and power of a pump at another speed, or with its impeller turned to another diameter',
  formula: ['r = n2/n1, or D2/D1', 'Q2 = Q1·r', 'H2 = H1·r²', 'P2 = P1·r³'],
  symbols: [
    {symbol: 'r', meaning: 'ratio of the speeds, or of the diameters'},
    {symbol: 'n1', meaning: 'speed before'},
    {symbol: 'n2', meaning: 'speed after'},
    {symbol: 'D1', meaning: 'diameter of the impeller before'},
    {symbol: 'D2', meaning: 'diameter of the impeller after'},
    {symbol: 'Q1', meaning: 'flow before'},
    {symbol: 'Q2', meaning: 'flow after'},
    {symbol: 'H1', meaning: 'head before'},
    {symbol: 'H2', meaning: 'head after'},
    {symbol: 'P1', meaning: 'power at the shaft before'},
    {symbol: 'P2', meaning: 'power at the shaft after'},
  ],
  sources: [
    {
      title: 'affinity laws; page with a worked example',
      edition: 'unknown',
      howKnown: 'read',
      status: 'unknown',
    },
  ],
  validFor:
    'the same liquid, speeds at which the efficiency hardly changes; by diameter from 75 to 133 % (common practice, no source)',
}

/** Share of the diameter below which, or above the inverse of which, the law no longer holds. Source: common practice, no source. */
const leastDiameterRatio = 0.75

/**
 * Flow, head and power of a pump by the affinity laws.
 *
 * The point moves along a parabola through the origin; its efficiency is taken to stay.
 *
 * Source: affinity laws; read with a worked example (10 % more speed, 21 % more head).
 * Valid for: the same liquid; by diameter from 75 to 133 % (common practice, no source).
 *
 * @throws {RangeError}
 *   When a speed or diameter is not above zero, a value of the point is below zero, or the diameters are too far apart.
 */
export function affinity(point: PumpPoint, change: AffinityChange): ScaledPoint {
  refuseBelowZero('flow', point.flow, 'm³/h')
  refuseBelowZero('head', point.head, 'm')
  refuseBelowZero('power', point.power, 'kW')
  const unit = change.kind === 'speed' ? 'rpm' : 'mm'
  refuseUnlessAboveZero(`${change.kind} before`, change.from, unit)
  refuseUnlessAboveZero(`${change.kind} after`, change.to, unit)
  const ratio = change.to.si / change.from.si
  if (change.kind === 'diameter' && Math.abs(Math.log(ratio)) > -Math.log(leastDiameterRatio) + 1e-9)
    throw new RangeError(
      `Unexpected diameter of ${(ratio * 100).toFixed(1)} % of the one before, expected 75 to 133 %`,
    )
  return {
    flow: quantityOf('volume-flow', point.flow.si * ratio),
    head: quantityOf('length', point.head.si * ratio ** 2),
    power: quantityOf('power', point.power.si * ratio ** 3),
    ratio: quantityOf('ratio', ratio),
  }
}
