import {ratio} from '../../quantities/named-units.ts'
import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'
import {refuseBelowZero, refuseUnlessAboveZero} from '../refuse-inputs.ts'
import {type CurvePoint, curveHead} from './curve-head.ts'

/** What a test run gives: the head, and the point at which it was read. */
export interface TestRunInput {
  readonly head: Quantity<'length'>
  /** Measured speed; without it the head cannot be scaled. */
  readonly speed?: Quantity<'rotational-speed'>
  /** Measured flow, nothing at shut-off; without it the head cannot be placed on the curve. */
  readonly flow?: Quantity<'volume-flow'>
  readonly curveSpeed: Quantity<'rotational-speed'>
  /** Curve of the new pump at its speed, by rising flow, the first point at shut-off where there is one. */
  readonly curve: readonly CurvePoint[]
}

/** The measured head held against the curve, or why it cannot be. */
export type TestRun =
  | {
      readonly canBeJudged: true
      /** Scaled head over head of the curve. */
      readonly share: Quantity<'ratio'>
      readonly scaledHead: Quantity<'length'>
      readonly scaledFlow: Quantity<'volume-flow'>
      readonly curveHead: Quantity<'length'>
    }
  | {readonly canBeJudged: false; readonly reason: string}

/** Shares of the curve below which a pump is watched, and below which it is opened. Source: common practice, no source. */
export const testRunBands = {watchBelow: ratio(0.95), actBelow: ratio(0.9)} as const

export const testRunNote: CalculationNote = {
  name: 'test-run',
  words:
    'measured head brought to the speed of the curve, as a share of the head of the curve at the same flow; without a speed, or without a flow unless at shut-off, it cannot be judged',
  formula: [
    'Q scaled = Q·n curve/n',
    'H scaled = H·(n curve/n)²',
    'share = H scaled/H curve at Q scaled',
    'between two points of the curve H curve changes with the square of the flow',
  ],
  symbols: [
    {symbol: 'Q', meaning: 'measured flow'},
    {symbol: 'H', meaning: 'measured head'},
    {symbol: 'n', meaning: 'measured speed'},
    {symbol: 'Q scaled', meaning: 'flow at the speed of the curve'},
    {symbol: 'H scaled', meaning: 'head at the speed of the curve'},
    {symbol: 'n curve', meaning: 'speed of the curve'},
    {symbol: 'H curve', meaning: 'head of the curve'},
  ],
  sources: [
    {
      title: 'affinity laws; page with a worked example',
      edition: 'unknown',
      howKnown: 'read',
      status: 'unknown',
    },
    {
      title: 'watch below 95 %, act below 90 % of the curve',
      edition: 'none',
      howKnown: 'common-practice',
      status: 'unknown',
    },
  ],
  validFor: 'water or cargo thin enough not to change the curve; flows within the curve',
}

/**
 * Head of a test run as a share of the curve of the new pump.
 *
 * Gives the share and whether it can be judged; the verdict words come from the limits of the office.
 *
 * Source: affinity laws, read with a worked example; the bands are common practice, no source.
 * Valid for: flows within the curve, after scaling to its speed.
 *
 * @throws {RangeError}
 *   When head or a speed is not above zero, the flow is below zero, or the curve is unfit.
 */
export function testRun(input: TestRunInput): TestRun {
  const {head, speed, flow, curveSpeed, curve} = input
  refuseUnlessAboveZero('measured head', head, 'm')
  refuseUnlessAboveZero('speed of the curve', curveSpeed, 'rpm')
  if (speed) refuseUnlessAboveZero('measured speed', speed, 'rpm')
  if (flow) refuseBelowZero('measured flow', flow, 'm³/h')
  if (!speed) return {canBeJudged: false, reason: 'the speed was not measured'}
  if (!flow) return {canBeJudged: false, reason: 'the flow is not known and the pump was not run at shut-off'}
  const faster = curveSpeed.si / speed.si
  const scaledFlow = quantityOf('volume-flow', flow.si * faster)
  const expected = curveHead(curve, scaledFlow)
  if (!expected) return {canBeJudged: false, reason: 'the flow lies beyond the curve'}
  const scaledHead = quantityOf('length', head.si * faster ** 2)
  return {
    canBeJudged: true,
    share: quantityOf('ratio', scaledHead.si / expected.si),
    scaledHead,
    scaledFlow,
    curveHead: expected,
  }
}
