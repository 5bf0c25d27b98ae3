import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'

export const gearLimitNote: CalculationNote = {
  name: 'gear-limit',
  words:
    'working load that an item of lifting gear must be marked with, for the load that it carries at its angle',
  formula: ['SWL required = r·m'],
  symbols: [
    {symbol: 'SWL required', meaning: 'safe working load that the item must be marked with'},
    {symbol: 'r', meaning: 'reserve'},
    {symbol: 'm', meaning: 'load that the item carries at its angle, as a mass'},
  ],
  sources: [
    {
      title: 'reserve of a quarter over the load carried',
      edition: 'none',
      howKnown: 'common-practice',
      status: 'unknown',
    },
  ],
  validFor: 'each item of the gear by itself: hoist, sling leg, shackle, eyebolt; the reserve never below 1',
}

/** Reserve of lifting gear where the house states none. Source: common practice, no source. */
export const usualReserve: Quantity<'ratio'> = quantityOf('ratio', 1.25)

/**
 * Working load that an item of lifting gear must be marked with.
 *
 * Source: common practice, no source.
 * Valid for: each item by itself, with the load that it carries at its angle; a reserve of at least 1.
 *
 * @throws {RangeError}
 *   When the load is not above zero or the reserve is below 1.
 */
export function requiredGearLimit(
  carried: Quantity<'mass'>,
  reserve: Quantity<'ratio'> = usualReserve,
): Quantity<'mass'> {
  if (carried.si <= 0) throw new RangeError(`Unexpected load of ${carried.si} kg, expected a load above zero`)
  if (reserve.si < 1) throw new RangeError(`Unexpected reserve of ${reserve.si}, expected at least 1`)
  return quantityOf('mass', carried.si * reserve.si)
}
