import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'

export const wrenchExtensionNote: CalculationNote = {
  name: 'wrench-extension',
  words:
    'with an extension in line the bolt gets more than the wrench shows: the setting is lowered in the ratio of the lengths',
  formula: ['T set = T·L1/L2'],
  symbols: [
    {symbol: 'T', meaning: 'torque at the bolt'},
    {symbol: 'T set', meaning: 'torque that the wrench is set to'},
    {symbol: 'L1', meaning: 'length from the hand to the square drive'},
    {symbol: 'L2', meaning: 'length from the hand to the bolt'},
  ],
  sources: [
    {
      title: 'tightening guide, torque with an extension',
      edition: 'unknown',
      howKnown: 'reprint',
      status: 'unknown',
    },
  ],
  validFor: 'extensions in line with the wrench; one at a right angle changes nothing',
}

/**
 * Setting of a torque wrench with an extension in line.
 *
 * Source: lever rule; a worked example of a tightening guide, read in a reprint.
 * Valid for: extensions in line with the wrench, pulled by the hand at one place.
 *
 * @throws {RangeError}
 *   When torque or length is not above zero, or the extended length is shorter than the wrench.
 */
export function wrenchExtensionSetting(input: {
  readonly torque: Quantity<'torque'>
  readonly wrenchLength: Quantity<'length'>
  readonly extendedLength: Quantity<'length'>
}): Quantity<'torque'> {
  const {torque, wrenchLength, extendedLength} = input
  if (torque.si <= 0) throw new RangeError(`Unexpected torque of ${torque.si} N·m, expected one above zero`)
  if (wrenchLength.si <= 0 || extendedLength.si < wrenchLength.si)
    throw new RangeError(
      `Unexpected length of ${extendedLength.si} m with the extension, expected at least the ${wrenchLength.si} m of the wrench`,
    )
  return quantityOf('torque', (torque.si * wrenchLength.si) / extendedLength.si)
}
