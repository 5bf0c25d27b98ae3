import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'

/** A circle of equal bolts that holds a pull and a tilting moment. */
export interface BoltGroupInput {
  readonly bolts: number
  readonly boltCircle: Quantity<'length'>
  /** Force that pulls the joint apart along the axis. */
  readonly pull: Quantity<'force'>
  /** Moment that tilts the joint about a diameter. */
  readonly moment: Quantity<'torque'>
  /** Angle of the first bolt from the direction in which the moment pulls most. */
  readonly firstBoltAt: Quantity<'angle'>
  /** Least preload of one bolt, scatter of the tightening taken off. */
  readonly leastPreload: Quantity<'force'>
}

/** How the load spreads over the bolts, and what clamp is left. */
export interface BoltGroup {
  /** Share of each bolt in the order of the circle; negative where the moment presses more than the pull pulls. */
  readonly shares: readonly Quantity<'force'>[]
  readonly greatestShare: Quantity<'force'>
  /** Clamp left at the bolt that carries most; negative when the joint opens there. */
  readonly leastClamp: Quantity<'force'>
  readonly opens: boolean
  /** Straight distance from one bolt to the next. */
  readonly spacing: Quantity<'length'>
}

export const boltGroupNote: CalculationNote = {
  name: 'bolt-group',
  words:
    'a rigid flange spreads pull and tilting moment over its bolts; the joint stays closed as long as the least preload exceeds the greatest share',
  formula: [
    'Fi = W/n + M·yi/Σy²',
    'yi = D/2·cos(angle of bolt i)',
    'clamp left = FM min − max(Fi)',
    'spacing = D·sin(180°/n)',
  ],
  symbols: [
    {symbol: 'Fi', meaning: 'load of bolt i'},
    {symbol: 'i', meaning: 'number of a bolt'},
    {symbol: 'W', meaning: 'pull'},
    {symbol: 'n', meaning: 'number of bolts'},
    {symbol: 'M', meaning: 'moment'},
    {symbol: 'yi', meaning: 'height of bolt i above the middle'},
    {symbol: 'y', meaning: 'height of a bolt above the middle'},
    {symbol: 'D', meaning: 'bolt circle'},
    {symbol: 'FM min', meaning: 'least preload of one bolt'},
  ],
  sources: [
    {
      title: 'statics of a rigid plate on equal bolts, textbook form',
      edition: 'unknown',
      howKnown: 'memory',
      status: 'unknown',
    },
  ],
  validFor: 'rigid flanges with 3 to 48 equal bolts evenly on one circle',
}

/**
 * Load of each bolt of a circle and the clamp that is left.
 *
 * The flange is rigid and the bolts are equal, so the shares lie on a plane.
 * All of the outer load is put on the bolts, none on the relief of the
 * clamped parts: the clamp left is on the safe side.
 *
 * Source: statics of a rigid plate on equal bolts; from memory.
 * Valid for: 3 to 48 equal bolts evenly on one circle.
 *
 * @throws {RangeError}
 *   When the count is not a whole number from 3 to 48, the circle or preload is not above zero.
 */
export function boltGroup(input: BoltGroupInput): BoltGroup {
  const {bolts} = input
  if (!Number.isInteger(bolts) || bolts < 3 || bolts > 48)
    throw new RangeError(`Unexpected count of ${bolts} bolts, expected a whole number from 3 to 48`)
  if (input.boltCircle.si <= 0)
    throw new RangeError(`Unexpected bolt circle of ${input.boltCircle.si} m, expected one above zero`)
  if (input.leastPreload.si <= 0)
    throw new RangeError(`Unexpected preload of ${input.leastPreload.si} N, expected one above zero`)
  const radius = input.boltCircle.si / 2
  const sumOfSquares = (bolts * radius ** 2) / 2
  const shares = Array.from({length: bolts}, (_, index) => {
    const arm = radius * Math.cos(input.firstBoltAt.si + (2 * Math.PI * index) / bolts)
    return input.pull.si / bolts + (input.moment.si * arm) / sumOfSquares
  })
  const greatest = Math.max(...shares)
  const leastClamp = input.leastPreload.si - greatest
  return {
    shares: shares.map((share) => quantityOf('force', share)),
    greatestShare: quantityOf('force', greatest),
    leastClamp: quantityOf('force', leastClamp),
    opens: leastClamp <= 0,
    spacing: quantityOf('length', input.boltCircle.si * Math.sin(Math.PI / bolts)),
  }
}
