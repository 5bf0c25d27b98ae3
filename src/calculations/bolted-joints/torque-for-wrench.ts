import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import {roundToStep} from '../../quantities/round-decimal.ts'
import type {CalculationNote} from '../calculation-note.ts'
import {refuseUnlessAboveZero} from '../refuse-inputs.ts'

/** What a wrench is to be set to. */
export interface WrenchTorqueInput {
  /** Computed torque. */
  readonly torque: Quantity<'torque'>
  /** Smallest step of the scale of the wrench. */
  readonly graduation: Quantity<'torque'>
  /** A target is rounded to the nearest step, a maximum never above itself. */
  readonly meaning: 'target' | 'maximum'
  /** Largest error of the wrench as a share of its setting. */
  readonly accuracy: Quantity<'ratio'>
}

/** Setting of a wrench, and the torque that it then gives. */
export interface WrenchTorque {
  readonly setting: Quantity<'torque'>
  /** Setting over computed torque, less one: what rounding to the scale costs. */
  readonly deviation: Quantity<'ratio'>
  readonly leastApplied: Quantity<'torque'>
  readonly mostApplied: Quantity<'torque'>
}

export const torqueForWrenchNote: CalculationNote = {
  name: 'torque-for-wrench',
  words:
    'setting of a torque wrench for a computed torque: a whole step of its scale, the nearest one for a target, the one below for a maximum, and the range that the wrench then gives',
  formula: [
    'T set = step·(T/step rounded once: half to even for a target, down for a maximum)',
    'deviation = T set/T − 1',
    'T applied = T set·(1 ± accuracy)',
    'T computed torque, T set setting of the wrench, step graduation of its scale, accuracy largest error of the wrench as a share of its setting',
  ],
  sources: [
    {
      title: 'ISO 80000-1 annex B, rounding range; round once, and a maximum down',
      edition: '2009',
      howKnown: 'memory',
      status: 'unknown',
    },
    {
      title: 'ISO 6789, torque wrenches, permissible error of 4 %',
      edition: 'unknown',
      howKnown: 'memory',
      status: 'unknown',
    },
  ],
  validFor: 'wrenches with an even scale; the setting must lie within the range of the wrench',
}

/**
 * Setting of a torque wrench for a computed torque.
 *
 * A maximum is rounded down, so that the scale never asks for more; the error of the wrench comes on top and is told.
 *
 * Source: ISO 80000-1 annex B (rounding range) and ISO 6789 (error of the wrench), both from memory; rounding a maximum
 * down is common practice.
 * Valid for: wrenches with an even scale.
 *
 * @throws {RangeError}
 *   When torque or graduation is not above zero, the accuracy is not from 0 to 50 %, or the setting would be nothing.
 */
export function torqueForWrench(input: WrenchTorqueInput): WrenchTorque {
  refuseUnlessAboveZero('torque', input.torque, 'N·m')
  refuseUnlessAboveZero('graduation', input.graduation, 'N·m')
  if (input.accuracy.si < 0 || input.accuracy.si > 0.5)
    throw new RangeError(
      `Unexpected accuracy of ${(input.accuracy.si * 100).toFixed(1)} %, expected from 0 to 50 %`,
    )
  const steps = Number(
    roundToStep(input.torque.si / input.graduation.si, 1, input.meaning === 'maximum' ? 'down' : 'half-even'),
  )
  if (steps === 0)
    throw new RangeError(
      `Unexpected torque of ${input.torque.si.toPrecision(3)} N·m for a wrench with steps of ${input.graduation.si.toPrecision(3)} N·m, expected a wrench with a finer scale`,
    )
  const setting = steps * input.graduation.si
  return {
    setting: quantityOf('torque', setting),
    deviation: quantityOf('ratio', setting / input.torque.si - 1),
    leastApplied: quantityOf('torque', setting * (1 - input.accuracy.si)),
    mostApplied: quantityOf('torque', setting * (1 + input.accuracy.si)),
  }
}
