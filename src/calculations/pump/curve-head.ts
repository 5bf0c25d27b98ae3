import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import {refuseBelowZero, refuseUnlessAboveZero} from '../refuse-inputs.ts'

/** A point of the curve of a new pump. */
export interface CurvePoint {
  readonly flow: Quantity<'volume-flow'>
  readonly head: Quantity<'length'>
}

/** A flow that differs from an end of the curve by no more is at the end: scaling to another speed leaves as much. */
const noise = 1e-9

/**
 * Head of the curve at a flow; undefined for a flow beyond the ends of the curve.
 *
 * Between two points the head is taken to change with the square of the flow,
 * so that two points from shut-off on give the usual parabola.
 *
 * Source: common practice, no source (parabola between points); the points are data of the design.
 * Valid for: flows from the first to the last point; nothing is read beyond them.
 *
 * @throws {RangeError}
 *   When there are fewer than two points, a flow does not rise from point to point, or a head is not above zero.
 */
export function curveHead(
  curve: readonly CurvePoint[],
  flow: Quantity<'volume-flow'>,
): Quantity<'length'> | undefined {
  refuseUnfitCurve(curve)
  for (const [index, right] of curve.entries()) {
    const left = curve[index - 1]
    if (!left || flow.si < left.flow.si * (1 - noise) || flow.si > right.flow.si * (1 + noise)) continue
    const share = (flow.si ** 2 - left.flow.si ** 2) / (right.flow.si ** 2 - left.flow.si ** 2)
    return quantityOf('length', left.head.si + share * (right.head.si - left.head.si))
  }
  return undefined
}

function refuseUnfitCurve(curve: readonly CurvePoint[]): void {
  if (curve.length < 2)
    throw new RangeError(`Unexpected curve of ${curve.length} points, expected two or more`)
  for (const [index, point] of curve.entries()) {
    refuseBelowZero('flow of the curve', point.flow, 'm³/h')
    refuseUnlessAboveZero('head of the curve', point.head, 'm')
    const before = curve[index - 1]
    if (before && point.flow.si <= before.flow.si)
      throw new RangeError(
        'Unexpected flow of the curve that does not rise from point to point, expected rising flows',
      )
  }
}
