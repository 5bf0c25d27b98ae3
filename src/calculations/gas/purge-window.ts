import type {Quantity} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'
import {commonPractice, hydrostatics} from './gas-sources.ts'
import type {LowestPressure} from './purge-upper-bound.ts'

/** Between which pressures a cofferdam may be purged. */
export interface PurgeWindow {
  readonly lower: Quantity<'gauge-pressure'>
  readonly upper: Quantity<'gauge-pressure'>
  /** Which limit the upper bound comes from. */
  readonly governs: string
  /** False when the lower bound lies above the upper one: the liquid is not lifted by pressure. */
  readonly safe: boolean
}

export const purgeWindowNote: CalculationNote = {
  name: 'purge-window',
  words:
    'pressures between which a cofferdam may be purged: high enough to lift leaked liquid, and below the lowest of rating, seal lip and regulator',
  formula: [
    'p lower = ρ·g·L + margin',
    'p upper = min(p rating, p lip + p tank lowest, p regulator)',
    'safe when p lower is not above p upper',
  ],
  symbols: [
    {symbol: 'p lower', meaning: 'least gauge pressure'},
    {symbol: 'p upper', meaning: 'highest gauge pressure'},
    {symbol: 'ρ', meaning: 'density of the heaviest liquid that can stand in the cofferdam'},
    {symbol: 'g', meaning: 'standard gravity, 9.80665 m/s²'},
    {symbol: 'L', meaning: 'height of the lift'},
    {symbol: 'margin', meaning: 'house rule'},
    {symbol: 'p rating', meaning: 'rating of the cofferdam'},
    {symbol: 'p lip', meaning: 'what the seal lip holds from behind'},
    {symbol: 'p tank lowest', meaning: 'empty tank at the setting of its vacuum valve, below zero'},
    {symbol: 'p regulator', meaning: 'highest pressure of the purge regulator'},
  ],
  sources: [hydrostatics, commonPractice],
  validFor: 'an outlet open to the air, an empty tank, the heaviest cargo of the list',
}

/**
 * Window of the purge pressure. A lower bound above the upper one is a result, not a mistake: do not lift by pressure.
 *
 * Source: hydrostatics, from memory; limits and margin are data of the design and common practice, no source.
 * Valid for: bounds of the same cofferdam.
 */
export function purgeWindow(lower: Quantity<'gauge-pressure'>, upper: LowestPressure): PurgeWindow {
  return {lower, upper: upper.bound, governs: upper.governs, safe: lower.si <= upper.bound.si}
}
