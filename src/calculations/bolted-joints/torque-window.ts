import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'
import {torqueForWrench} from './torque-for-wrench.ts'

/** What a wrench is set to and what it may then give. */
export interface TorqueWindow {
  readonly setting: Quantity<'torque'>
  readonly least: Quantity<'torque'>
  readonly most: Quantity<'torque'>
}

export const torqueWindowNote: CalculationNote = {
  name: 'torque-window',
  words:
    'the setting of a torque wrench, rounded once to its graduation, and the torque that its accuracy class may give there; a torque that must not be exceeded is rounded down',
  formula: [
    'T set = T rounded to the graduation, half to even; down where T is the most allowed',
    'T least = T set·(1 − a), T most = T set·(1 + a)',
  ],
  symbols: [
    {symbol: 'T', meaning: 'required torque'},
    {symbol: 'T set', meaning: 'torque that the wrench is set to'},
    {symbol: 'T least', meaning: 'least torque that it gives'},
    {symbol: 'T most', meaning: 'greatest torque that it gives'},
    {symbol: 'a', meaning: 'accuracy of the wrench as a share of the setting'},
  ],
  sources: [
    {
      title: 'ISO 6789, accuracy of torque wrenches: 4 % of the setting',
      edition: 'unknown',
      howKnown: 'memory',
      status: 'unknown',
    },
  ],
  validFor: 'accuracies up to 10 % of the setting',
}

/**
 * Setting of a torque wrench and the window of what it gives.
 *
 * Source: ISO 6789, accuracy class of 4 %; from memory. Rounding: ISO 80000-1 annex B.
 * Valid for: accuracies from 0 to 10 %; a graduation that leaves a setting above zero.
 *
 * @throws {RangeError}
 *   When accuracy is out of range, the torque is not above zero, or the graduation leaves no setting.
 */
export function torqueWindow(input: {
  readonly torque: Quantity<'torque'>
  readonly accuracy: Quantity<'ratio'>
  readonly graduation?: Quantity<'torque'>
  /** True where the torque is the most that is allowed. */
  readonly isMaximum?: boolean
}): TorqueWindow {
  const {torque, accuracy, graduation} = input
  if (torque.si <= 0) throw new RangeError(`Unexpected torque of ${torque.si} N·m, expected one above zero`)
  if (accuracy.si < 0 || accuracy.si > 0.1)
    throw new RangeError(`Unexpected accuracy ${accuracy.si}, expected 0 to 0.1 of the setting`)
  const setting = graduation
    ? torqueForWrench({torque, graduation, meaning: input.isMaximum ? 'maximum' : 'target'}).si
    : torque.si
  return {
    setting: quantityOf('torque', setting),
    least: quantityOf('torque', setting * (1 - accuracy.si)),
    most: quantityOf('torque', setting * (1 + accuracy.si)),
  }
}
