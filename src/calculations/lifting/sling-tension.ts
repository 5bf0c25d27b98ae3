import {printedText, printQuantity} from '../../quantities/print-quantity.ts'
import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'
import {slingTensionFactor} from './sling-angle.ts'
import {countedLegs, type SlingShare} from './sling-legs.ts'
import {massHeldBy, weightOf} from './weight.ts'

/** What the tension of a sling leg is computed from. */
export interface SlingTensionInput {
  readonly mass: Quantity<'mass'>
  readonly legs: number
  readonly angleFromVertical: Quantity<'angle'>
  readonly share: SlingShare
}

/** Tension of one leg. */
export interface SlingTension {
  readonly tension: Quantity<'force'>
  /** The tension as a mass, to be compared with the marking of the gear. */
  readonly carried: Quantity<'mass'>
  readonly tensionFactor: Quantity<'ratio'>
  /** How many legs were taken to carry. */
  readonly counted: number
}

export const slingTensionNote: CalculationNote = {
  name: 'sling-tension',
  words:
    'tension of one leg: the weight is shared by the legs that count, and a leg that stands off the vertical pulls more; of three or four legs of a rigid load two count',
  formula: ['T = W/(n·cos β)', 'm leg = T/g'],
  symbols: [
    {symbol: 'T', meaning: 'tension of one leg'},
    {symbol: 'W', meaning: 'weight of the load, mass times g'},
    {symbol: 'g', meaning: 'standard gravity, 9.80665 m/s²'},
    {symbol: 'n', meaning: 'legs that count'},
    {symbol: 'β', meaning: 'angle of a leg from the vertical'},
    {symbol: 'm leg', meaning: 'the tension as a mass'},
  ],
  sources: [
    {
      title: 'EN 818-4, legs that count and greatest angle',
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
  validFor: 'legs at one angle of at most 60° from the vertical, hook above the centre of mass, load at rest',
}

/**
 * Tension of one leg of a sling.
 *
 * The centre of mass is taken to hang below the hook, and all legs to stand at one angle.
 *
 * Source: statics; EN 818-4 (legs that count), read in a reprint; common practice, no source (two legs of a rigid load).
 * Valid for: one to four legs, at most 60° from the vertical; one leg hangs straight.
 *
 * @throws {RangeError}
 *   When mass, count of legs or angle is outside the range, or a single leg does not hang straight.
 */
export function slingTension(input: SlingTensionInput): SlingTension {
  const counted = countedLegs(input.legs, input.share)
  const tensionFactor = slingTensionFactor(input.angleFromVertical)
  if (input.legs === 1 && input.angleFromVertical.si !== 0) {
    const found = printedText(printQuantity(input.angleFromVertical, '°', 1))
    throw new RangeError(`Unexpected single leg at ${found} from the vertical, expected 0°`)
  }
  const tension = quantityOf('force', (weightOf(input.mass).si / counted) * tensionFactor.si)
  return {tension, carried: massHeldBy(tension), tensionFactor, counted}
}
