import {printedText, printQuantity} from '../../quantities/print-quantity.ts'
import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'

/** How a shackle is pulled: by one leg at an angle off its line, or by two legs in its bow with an angle between them. */
export type ShacklePull =
  | {readonly kind: 'one-leg'; readonly sideAngle: Quantity<'angle'>}
  | {readonly kind: 'two-legs'; readonly includedAngle: Quantity<'angle'>}

export const shackleLimitNote: CalculationNote = {
  name: 'shackle-limit',
  words:
    'what is left of the working load limit of a shackle when it is pulled sideways; two legs in the bow with up to 120° between them leave it whole',
  formula: [
    'WLL left = WLL·f',
    'f = 1 in line, 0.7 up to 45° off the line, 0.5 up to 90° off the line; 1 for two legs with up to 120° between them',
  ],
  symbols: [
    {symbol: 'WLL', meaning: 'working load limit marked on the shackle'},
    {symbol: 'WLL left', meaning: 'working load limit that is left'},
    {symbol: 'f', meaning: 'share that is left'},
  ],
  sources: [
    {
      title: 'side load of shackles, trade guidance on ASME B30.26',
      edition: 'unknown',
      howKnown: 'reprint',
      status: 'unknown',
    },
  ],
  validFor: 'bow shackles with a screw pin or bolt, pulled in the plane of the bow',
}

const rounding = 1e-9

/**
 * Share of its working load limit that a shackle keeps when it is pulled sideways.
 *
 * A pull a little off the line takes the share of 45° already: there is nothing in between.
 *
 * Source: trade guidance on ASME B30.26; read in three reprints that agree.
 * Valid for: side angles from 0° to 90°; two legs in the bow with up to 120° between them.
 *
 * @throws {RangeError}
 *   When the angle is outside the range.
 */
export function shackleShare(pull: ShacklePull): Quantity<'ratio'> {
  if (pull.kind === 'two-legs') {
    const between = pull.includedAngle.si
    if (between < 0 || between > (2 / 3) * Math.PI + rounding)
      throw new RangeError(
        `Unexpected ${inDegrees(pull.includedAngle)} between two legs in a shackle, expected 0° to 120°`,
      )
    return quantityOf('ratio', 1)
  }
  const angle = pull.sideAngle.si
  if (angle < 0 || angle > Math.PI / 2 + rounding)
    throw new RangeError(
      `Unexpected pull at ${inDegrees(pull.sideAngle)} off the line of a shackle, expected 0° to 90°`,
    )
  if (angle === 0) return quantityOf('ratio', 1)
  return quantityOf('ratio', angle <= Math.PI / 4 + rounding ? 0.7 : 0.5)
}

/**
 * Working load limit that is left of a shackle.
 *
 * Source: trade guidance on ASME B30.26; read in three reprints that agree.
 * Valid for: as the share that is left.
 *
 * @throws {RangeError}
 *   When the marked limit is not above zero or the angle is outside the range.
 */
export function shackleLimit(marked: Quantity<'mass'>, pull: ShacklePull): Quantity<'mass'> {
  if (marked.si <= 0)
    throw new RangeError(`Unexpected marked limit of ${marked.si} kg, expected a limit above zero`)
  return quantityOf('mass', marked.si * shackleShare(pull).si)
}

function inDegrees(angle: Quantity<'angle'>): string {
  return printedText(printQuantity(angle, '°', 1))
}
