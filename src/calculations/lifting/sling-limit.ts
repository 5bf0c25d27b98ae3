import {printedText, printQuantity} from '../../quantities/print-quantity.ts'
import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'
import {slingTensionFactor} from './sling-angle.ts'
import {countedLegs, type SlingShare} from './sling-legs.ts'

/** How a single leg holds the load: straight down, choked around it, or as a basket below it. */
export type SlingHitch = 'straight' | 'choke' | 'basket'

/** What the working load limit of a sling is taken from. */
export interface SlingLimitInput {
  /** Working load limit of one leg, straight down. */
  readonly oneLeg: Quantity<'mass'>
  readonly legs: number
  readonly angleFromVertical: Quantity<'angle'>
  readonly share: SlingShare
  readonly hitch: SlingHitch
}

export const slingLimitNote: CalculationNote = {
  name: 'sling-limit',
  words:
    'working load limit of a sling from the limit of one leg and the factor that the standard prints for count of legs, angle and hitch',
  formula: [
    'WLL = WLL1·f',
    '1 leg: f = 1 straight, 0.8 choked, 2 as a basket with upright sides',
    '2 legs: f = 1.4 up to 45° from the vertical, 1 up to 60°',
    '3 and 4 legs: f = 2.1 up to 45°, 1.5 up to 60° where all legs carry; else as 2 legs',
  ],
  symbols: [
    {symbol: 'WLL', meaning: 'working load limit of the sling'},
    {symbol: 'WLL1', meaning: 'working load limit of one leg'},
    {symbol: 'f', meaning: 'mode factor'},
  ],
  sources: [
    {
      title: 'EN 818-4 and EN 1492-1, mode factors of slings',
      edition: 'unknown',
      howKnown: 'reprint',
      status: 'unknown',
    },
    {
      title: 'two of three or four legs count for a rigid load',
      edition: 'none',
      howKnown: 'common-practice',
      status: 'unknown',
    },
  ],
  validFor: 'slings with legs of one kind, at most 60° from the vertical',
}

/** Factors of a sling by how many legs count: up to 45°, and from there up to 60°. Source: EN 818-4; read in a reprint. */
const legFactors: ReadonlyMap<number, readonly [number, number]> = new Map([
  [2, [1.4, 1]],
  [3, [2.1, 1.5]],
])

/** Factors of one leg, upright. Source: EN 1492-1; read in a reprint. */
const hitchFactors: Readonly<Record<SlingHitch, number>> = {straight: 1, choke: 0.8, basket: 2}

/**
 * Mode factor of a sling: the limit of the sling over the limit of one leg.
 *
 * The printed factors are cut off, not rounded: 1.4 stands for 2·cos 45° = 1.414.
 *
 * Source: EN 818-4 and EN 1492-1, mode factors; read in reprints.
 * Valid for: one upright leg in any hitch; two to four straight legs up to 60° from the vertical.
 *
 * @throws {RangeError}
 *   When count of legs, angle or hitch is outside the table.
 */
export function slingModeFactor(input: Omit<SlingLimitInput, 'oneLeg'>): Quantity<'ratio'> {
  const counted = countedLegs(input.legs, input.share)
  slingTensionFactor(input.angleFromVertical)
  const found = printedText(printQuantity(input.angleFromVertical, '°', 1))
  const factors = legFactors.get(counted)
  if (!factors) {
    if (input.angleFromVertical.si !== 0)
      throw new RangeError(`Unexpected single leg at ${found} from the vertical, expected 0°`)
    return quantityOf('ratio', hitchFactors[input.hitch])
  }
  if (input.hitch !== 'straight')
    throw new RangeError(`Unexpected ${input.hitch} hitch of ${input.legs} legs, expected straight legs`)
  const isSteep = input.angleFromVertical.si <= Math.PI / 4 + 1e-9
  return quantityOf('ratio', isSteep ? factors[0] : factors[1])
}

/**
 * Working load limit of a sling.
 *
 * Source: EN 818-4 and EN 1492-1, mode factors; read in reprints.
 * Valid for: as the mode factor; legs of one kind.
 *
 * @throws {RangeError}
 *   When the limit of one leg is not above zero, or the mode is outside the table.
 */
export function slingLimit(input: SlingLimitInput): Quantity<'mass'> {
  if (input.oneLeg.si <= 0)
    throw new RangeError(`Unexpected limit of ${input.oneLeg.si} kg for one leg, expected a limit above zero`)
  return quantityOf('mass', input.oneLeg.si * slingModeFactor(input).si)
}
