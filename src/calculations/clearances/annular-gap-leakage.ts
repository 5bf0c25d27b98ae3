import {standardGravity} from '../../quantities/exact-constants.ts'
import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'

/** A concentric gap around a running ring. */
export interface AnnularGap {
  readonly diameter: Quantity<'length'>
  readonly gap: Quantity<'radial-clearance'>
  readonly length: Quantity<'length'>
  /** Head of the pumped liquid across the gap. */
  readonly head: Quantity<'length'>
  /** Loss of inlet and outlet together, in velocity heads; 1.5 is usual. */
  readonly endLoss: Quantity<'ratio'>
}

/** Friction of the gap: stated, or of a smooth wall by the viscosity. */
export type GapFriction =
  | {readonly kind: 'stated'; readonly friction: Quantity<'ratio'>}
  | {readonly kind: 'smooth'; readonly viscosity: Quantity<'kinematic-viscosity'>}

/** Leakage through the gap with what explains it. */
export interface AnnularGapLeakage {
  readonly leakage: Quantity<'volume-flow'>
  readonly velocity: Quantity<'speed'>
  readonly friction: Quantity<'ratio'>
  /** Only where the friction follows from the viscosity. */
  readonly reynoldsNumber: Quantity<'ratio'> | undefined
}

export const annularGapLeakageNote: CalculationNote = {
  name: 'annular-gap-leakage',
  words:
    'leakage of a concentric wear ring that does not turn: the head is lost at inlet and outlet and by friction along the gap; with a smooth wall the friction follows from the velocity and both are found together',
  formula: ['v = √(2·g·ΔH/(ζ + λ·L/(2·s)))', 'Q = π·D·s·v', 'λ smooth = 0.316/Re^0.25, Re = 2·s·v/ν'],
  symbols: [
    {symbol: 'v', meaning: 'velocity in the gap'},
    {symbol: 'Q', meaning: 'leakage'},
    {symbol: 'D', meaning: 'diameter'},
    {symbol: 's', meaning: 'radial gap'},
    {symbol: 'L', meaning: 'length of the gap'},
    {symbol: 'ΔH', meaning: 'head over the gap'},
    {symbol: 'ζ', meaning: 'loss of inlet and outlet'},
    {symbol: 'λ', meaning: 'friction'},
    {symbol: 'λ smooth', meaning: 'friction of a smooth wall'},
    {symbol: 'Re', meaning: 'Reynolds number'},
    {symbol: 'ν', meaning: 'viscosity'},
    {symbol: 'g', meaning: 'standard gravity, 9.80665 m/s²'},
  ],
  sources: [
    {
      title: 'pump handbook, loss of inlet and outlet of 0.5 + 1.0',
      edition: 'unknown',
      howKnown: 'reprint',
      status: 'unknown',
    },
    {
      title: 'monographs on centrifugal pumps, gap leakage; smooth-wall friction by Blasius',
      edition: 'unknown',
      howKnown: 'memory',
      status: 'unknown',
    },
  ],
  validFor:
    'concentric gaps much narrower than the ring; smooth-wall friction for Reynolds numbers from 3000 to 100 000',
}

const leastReynolds = 3000
const greatestReynolds = 100_000

/**
 * Leakage through a concentric annular gap.
 *
 * The turning of the ring is left out, which gives a little more leakage than there is.
 *
 * Source: pump handbook (end losses, read in a reprint); monographs on centrifugal pumps and Blasius (from memory). No
 * published example with numbers was found.
 * Valid for: concentric gaps, radial gap at most a twentieth of the diameter; smooth-wall friction for Reynolds numbers from 3000 to 100 000.
 *
 * @throws {RangeError}
 *   When a length or the head is not above zero, the gap is wide, a loss is negative or nothing resists, or the Reynolds
 *   number is out of range.
 */
export function annularGapLeakage(gap: AnnularGap, friction: GapFriction): AnnularGapLeakage {
  refuseOutOfRange(gap)
  const flow =
    friction.kind === 'stated'
      ? statedFlow(gap, friction.friction.si)
      : smoothFlow(gap, friction.viscosity.si)
  return {
    leakage: quantityOf('volume-flow', Math.PI * gap.diameter.si * gap.gap.si * flow.velocity),
    velocity: quantityOf('speed', flow.velocity),
    friction: quantityOf('ratio', flow.friction),
    reynoldsNumber: flow.reynolds === undefined ? undefined : quantityOf('ratio', flow.reynolds),
  }
}

/**
 * Friction of a smooth wall by the Reynolds number.
 *
 * Source: Blasius, 0.316/Re^0.25; from memory.
 * Valid for: Reynolds numbers from 3000 to 100 000.
 *
 * @throws {RangeError}
 *   When the Reynolds number is out of range.
 */
export function smoothWallFriction(reynoldsNumber: Quantity<'ratio'>): Quantity<'ratio'> {
  const {si} = reynoldsNumber
  if (si < leastReynolds || si > greatestReynolds)
    throw new RangeError(
      `Unexpected Reynolds number of ${Math.round(si)}, expected ${leastReynolds} to ${greatestReynolds}: state the friction of the gap`,
    )
  return quantityOf('ratio', blasius(si))
}

interface GapFlow {
  readonly velocity: number
  readonly friction: number
  readonly reynolds?: number
}

function statedFlow(gap: AnnularGap, friction: number): GapFlow {
  if (friction < 0) throw new RangeError(`Unexpected friction ${friction}, expected zero or more`)
  return {velocity: velocityOf(gap, friction), friction}
}

/** Friction and velocity found by turns; each turn shortens the error to an eighth or less, so forty turns reach the last digit. */
function smoothFlow(gap: AnnularGap, viscosity: number): GapFlow {
  if (viscosity <= 0)
    throw new RangeError(`Unexpected viscosity of ${viscosity} m²/s, expected one above zero`)
  const reynoldsOf = (velocity: number): number => (2 * gap.gap.si * velocity) / viscosity
  let velocity = velocityOf(gap, 0.03)
  for (let turn = 0; turn < 40; turn += 1) velocity = velocityOf(gap, blasius(reynoldsOf(velocity)))
  const reynolds = reynoldsOf(velocity)
  const friction = smoothWallFriction(quantityOf('ratio', reynolds)).si
  return {velocity, friction, reynolds}
}

function blasius(reynolds: number): number {
  return 0.316 / reynolds ** 0.25
}

function velocityOf(gap: AnnularGap, friction: number): number {
  const resistance = gap.endLoss.si + (friction * gap.length.si) / (2 * gap.gap.si)
  if (resistance <= 0)
    throw new RangeError('Unexpected gap that nothing resists, expected an end loss or a friction above zero')
  return Math.sqrt((2 * standardGravity * gap.head.si) / resistance)
}

function refuseOutOfRange(gap: AnnularGap): void {
  for (const [what, {si}] of [
    ['diameter', gap.diameter],
    ['gap', gap.gap],
    ['length', gap.length],
    ['head', gap.head],
  ] as const)
    if (si <= 0) throw new RangeError(`Unexpected ${what} of ${si} m, expected one above zero`)
  if (gap.gap.si > gap.diameter.si / 20)
    throw new RangeError(
      `Unexpected radial gap of ${gap.gap.si} m at a diameter of ${gap.diameter.si} m, expected at most a twentieth of it`,
    )
  if (gap.endLoss.si < 0) throw new RangeError(`Unexpected end loss ${gap.endLoss.si}, expected zero or more`)
}
