import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'

/** Which of several limits is the lowest, in words. */
export interface LowestPressure {
  readonly bound: Quantity<'gauge-pressure'>
  readonly governs: string
}

export const purgeUpperBoundNote: CalculationNote = {
  name: 'purge-upper-bound',
  words:
    'highest pressure the cofferdam may see: the lowest of its rating, what the seal lip holds from behind against the lowest tank pressure, and the regulator',
  formula: ['p upper = min(p rating, p lip + p tank lowest, p regulator)'],
  symbols: [
    {symbol: 'p upper', meaning: 'highest gauge pressure in the cofferdam'},
    {symbol: 'p rating', meaning: 'rating of the cofferdam'},
    {symbol: 'p lip', meaning: 'what the seal lip holds from behind'},
    {symbol: 'p tank lowest', meaning: 'empty tank at the setting of its vacuum valve, below zero'},
    {symbol: 'p regulator', meaning: 'highest pressure of the purge regulator'},
  ],
  sources: [
    {title: 'design data and house rules', edition: 'none', howKnown: 'common-practice', status: 'unknown'},
  ],
  validFor: 'an empty tank with its vacuum valve at the set pressure',
}

/**
 * Upper bound of the pressure in the cofferdam, with the limit that governs.
 *
 * Source: common practice, no source; the limits themselves are data of the design.
 * Valid for: an empty tank at its lowest pressure.
 */
export function purgeUpperBound(input: {
  readonly cofferdamRating: Quantity<'gauge-pressure'>
  readonly lipReverseLimit: Quantity<'pressure-difference'>
  readonly lowestTankPressure: Quantity<'gauge-pressure'>
  readonly regulatorMaximum: Quantity<'gauge-pressure'>
}): LowestPressure {
  return lowestOf([
    {bound: input.cofferdamRating, governs: 'cofferdam rating'},
    {
      bound: quantityOf('gauge-pressure', input.lipReverseLimit.si + input.lowestTankPressure.si),
      governs: 'seal lip',
    },
    {bound: input.regulatorMaximum, governs: 'regulator'},
  ])
}

/**
 * Test pressure: the house maximum, unless the upper bound lies lower.
 *
 * Source: common practice, no source.
 * Valid for: gas tests of the cofferdam.
 */
export function tightnessTestPressure(
  houseMaximum: Quantity<'gauge-pressure'>,
  upperBound: LowestPressure,
): LowestPressure {
  return lowestOf([{bound: houseMaximum, governs: 'house rule'}, upperBound])
}

function lowestOf(bounds: readonly [LowestPressure, ...LowestPressure[]]): LowestPressure {
  return bounds.reduce((lowest, one) => (one.bound.si < lowest.bound.si ? one : lowest))
}
