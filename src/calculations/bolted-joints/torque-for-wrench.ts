import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import {roundToStep} from '../../quantities/round-decimal.ts'
import {refuseUnlessAboveZero} from '../refuse-inputs.ts'

/**
 * What a torque wrench is to be set to: a whole step of its scale.
 *
 * A target is rounded to the nearest step, half to even; a maximum goes down, so that the scale never asks for more. It is
 * rounded once, from the computed torque, in steps of the scale itself, whatever unit the scale has.
 *
 * Source: ISO 80000-1 annex B (rounding range), from memory; a maximum rounded down is common practice, no source.
 * Valid for: wrenches with an even scale.
 *
 * @throws {RangeError}
 *   When torque or graduation is not above zero, or no step of the scale is small enough.
 */
export function torqueForWrench(input: {
  readonly torque: Quantity<'torque'>
  /** Smallest step of the scale of the wrench. */
  readonly graduation: Quantity<'torque'>
  readonly meaning: 'target' | 'maximum'
}): Quantity<'torque'> {
  const {torque, graduation, meaning} = input
  refuseUnlessAboveZero('torque', torque, 'N·m')
  refuseUnlessAboveZero('graduation', graduation, 'N·m')
  const steps = Number(
    roundToStep(torque.si / graduation.si, 1, meaning === 'maximum' ? 'down' : 'half-even'),
  )
  if (steps === 0)
    throw new RangeError(
      `Unexpected graduation of ${graduation.si} N·m for ${torque.si} N·m, expected a finer one`,
    )
  return quantityOf('torque', steps * graduation.si)
}
