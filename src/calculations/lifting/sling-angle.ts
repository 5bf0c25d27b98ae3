import {printedText, printQuantity} from '../../quantities/print-quantity.ts'
import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'

/** Angle of a sling leg, seen from both sides, and what the angle makes of the load. */
export interface SlingAngle {
  readonly fromVertical: Quantity<'angle'>
  readonly fromHorizontal: Quantity<'angle'>
  /** Tension of a leg over the tension of the same leg hanging straight. */
  readonly tensionFactor: Quantity<'ratio'>
}

export const slingAngleNote: CalculationNote = {
  name: 'sling-angle',
  words:
    'angle of a sling leg from its length and the height of the hook above the lifting points, and the factor by which the angle raises the tension',
  formula: ['cos β = h/l', 'k = 1/cos β = l/h'],
  symbols: [
    {symbol: 'β', meaning: 'angle of the leg from the vertical'},
    {symbol: 'l', meaning: 'length of the leg'},
    {symbol: 'h', meaning: 'height of the hook above the lifting points'},
    {symbol: 'k', meaning: 'tension factor'},
  ],
  sources: [
    {
      title: 'tension factors of slings by angle, trade tables; ASME B30.9 for the greatest angle',
      edition: 'unknown',
      howKnown: 'reprint',
      status: 'unknown',
    },
  ],
  validFor: 'legs of equal length, at most 60° from the vertical',
}

/** Greatest angle of a leg from the vertical. Source: EN 818-4 and ASME B30.9 (not below 30° from the horizontal); read in reprints. */
export const greatestSlingAngle: Quantity<'angle'> = quantityOf('angle', Math.PI / 3)

/** Rounding of an angle that was computed from lengths, in radians. */
const rounding = 1e-9

/**
 * Factor by which the angle of a leg raises its tension.
 *
 * Source: statics; trade tables of tension factors, read in a reprint.
 * Valid for: legs from 0° to 60° from the vertical.
 *
 * @throws {RangeError}
 *   When the leg lies flatter, or the angle is negative.
 */
export function slingTensionFactor(fromVertical: Quantity<'angle'>): Quantity<'ratio'> {
  if (fromVertical.si < 0 || fromVertical.si > greatestSlingAngle.si + rounding) {
    const found = printedText(printQuantity(fromVertical, '°', 1))
    throw new RangeError(`Unexpected leg at ${found} from the vertical, expected 0° to 60°`)
  }
  return quantityOf('ratio', 1 / Math.cos(fromVertical.si))
}

/**
 * Angle of a sling leg from two lengths that can be measured on the spot.
 *
 * Source: geometry; trade tables of tension factors, read in a reprint.
 * Valid for: legs of equal length, at most 60° from the vertical.
 *
 * @throws {RangeError}
 *   When the hook stands higher than the leg is long, or the leg lies flatter than 60° from the vertical.
 */
export function slingAngle(input: {
  readonly length: Quantity<'length'>
  readonly height: Quantity<'length'>
}): SlingAngle {
  if (input.height.si <= 0 || input.height.si > input.length.si) {
    throw new RangeError(
      `Unexpected height of ${inMetres(input.height)} over a leg of ${inMetres(input.length)}, expected a height above zero and at most the length`,
    )
  }
  const fromVertical = quantityOf('angle', Math.acos(input.height.si / input.length.si))
  return {
    fromVertical,
    fromHorizontal: quantityOf('angle', Math.PI / 2 - fromVertical.si),
    tensionFactor: slingTensionFactor(fromVertical),
  }
}

function inMetres(length: Quantity<'length'>): string {
  return printedText(printQuantity(length, 'm', 3))
}
