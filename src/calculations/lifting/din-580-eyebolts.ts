import {kilograms} from '../../quantities/named-units.ts'
import {printedText, printQuantity} from '../../quantities/print-quantity.ts'
import type {Quantity} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'

/**
 * What one eyebolt holds, in kg: pulled along its axis, up to 45° off it, and up to 90° off it.
 *
 * Source: DIN 580, table of working loads of eyebolts; read in two reprints that agree, the third column in one of them.
 */
const limits: ReadonlyMap<string, readonly [number, number, number]> = new Map([
  ['M8', [140, 100, 70]],
  ['M10', [230, 170, 115]],
  ['M12', [340, 240, 170]],
  ['M16', [700, 500, 350]],
  ['M20', [1200, 860, 600]],
  ['M24', [1800, 1290, 900]],
  ['M30', [3200, 2300, 1600]],
  ['M36', [4600, 3300, 2300]],
  ['M42', [6300, 4500, 3150]],
  ['M48', [8600, 6100, 4300]],
])

/** Sizes of eyebolts that the library holds. */
export const eyeboltSizes: readonly string[] = [...limits.keys()]

export const eyeboltLimitNote: CalculationNote = {
  name: 'eyebolt-limit',
  words:
    'working load of one eyebolt by its size and the angle of pull off its axis, read from the table by row and column; eyebolts are never added up: several count as the legs of a sling',
  formula: ['WLL = column of the table: along the axis, up to 45° off the axis, up to 90° off the axis'],
  symbols: [{symbol: 'WLL', meaning: 'working load limit of one eyebolt'}],
  sources: [
    {
      title: 'DIN 580, working loads of eyebolts; clause 8: loads of several eyebolts are not added',
      edition: '2018',
      howKnown: 'reprint',
      status: 'unknown',
    },
  ],
  validFor:
    'eyebolts screwed down to the collar, pulled in the plane of the ring, −20 to +200 °C; axial loads of 1972 (M30, M36, M42) are higher and do not hold',
}

/**
 * Working load limit of one eyebolt.
 *
 * A pull a little off the axis takes the column of 45° already: there is nothing in between.
 *
 * Source: DIN 580, table of working loads; read in two reprints that agree.
 * Valid for: M8 to M48, screwed down to the collar, pulled in the plane of the ring, −20 to +200 °C.
 *
 * @throws {RangeError}
 *   When the size is not in the table or the angle is not from 0° to 90°.
 */
export function eyeboltLimit(size: string, angleFromAxis: Quantity<'angle'>): Quantity<'mass'> {
  const found = limits.get(size)
  if (!found) throw new RangeError(`Unexpected size \`${size}\`, expected one of ${eyeboltSizes.join(', ')}`)
  const [axial, slanted, across] = found
  const angle = angleFromAxis.si
  const rounding = 1e-9
  if (angle < 0 || angle > Math.PI / 2 + rounding) {
    const told = printedText(printQuantity(angleFromAxis, '°', 1))
    throw new RangeError(`Unexpected pull at ${told} off the axis of the eyebolt, expected 0° to 90°`)
  }
  if (angle === 0) return kilograms(axial)
  return kilograms(angle <= Math.PI / 4 + rounding ? slanted : across)
}
