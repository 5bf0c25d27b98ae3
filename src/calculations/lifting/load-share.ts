import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'
import {weightOf} from './weight.ts'

/** A place in the plane of the supports, measured from any fixed point. */
export interface PlanPosition {
  readonly x: Quantity<'length-difference'>
  readonly y: Quantity<'length-difference'>
}

/** What the share of each support is computed from. */
export interface LoadShareInput {
  readonly mass: Quantity<'mass'>
  readonly supports: readonly PlanPosition[]
  readonly centreOfMass: PlanPosition
}

export const loadShareNote: CalculationNote = {
  name: 'load-share',
  words:
    'share of each support of a rigid plate: an even part of the weight, more on the side where the centre of mass lies',
  formula: ['Fi = W/n + p·xi + q·yi', 'p·Σx² + q·Σxy = W·xs', 'p·Σxy + q·Σy² = W·ys'],
  symbols: [
    {symbol: 'Fi', meaning: 'load of support i'},
    {symbol: 'W', meaning: 'weight, mass times 9.80665 m/s²'},
    {symbol: 'n', meaning: 'number of supports'},
    {symbol: 'xi', meaning: 'place of support i along x, from the middle of the supports'},
    {symbol: 'yi', meaning: 'place of support i along y, from the middle of the supports'},
    {symbol: 'x', meaning: 'place of a support along x, from the middle'},
    {symbol: 'y', meaning: 'place of a support along y, from the middle'},
    {symbol: 'xy', meaning: 'product of both places of a support'},
    {symbol: 'xs', meaning: 'place of the centre of mass along x'},
    {symbol: 'ys', meaning: 'place of the centre of mass along y'},
    {symbol: 'p', meaning: 'slope of the load along x'},
    {symbol: 'q', meaning: 'slope of the load along y'},
  ],
  sources: [
    {
      title: 'statics of a rigid plate on equal springs',
      edition: 'none',
      howKnown: 'computed',
      status: 'current',
    },
  ],
  validFor: 'rigid plates on supports of equal stiffness that can only push; the centre of mass between them',
}

interface Point {
  readonly x: number
  readonly y: number
}

/**
 * Load of each support of a rigid plate.
 *
 * The supports give way alike, so that their loads lie in one plane over the plate.
 *
 * Source: statics of a rigid plate on equal springs; computed apart from this project.
 * Valid for: one support below the centre of mass, two or more with it between them.
 *
 * @throws {RangeError}
 *   When the mass is not above zero, there is no support, or a support would have to pull.
 */
export function loadShare(input: LoadShareInput): readonly Quantity<'force'>[] {
  const weight = weightOf(input.mass).si
  const places = input.supports.map(({x, y}): Point => ({x: x.si, y: y.si}))
  if (places.length === 0) throw new RangeError('Unexpected plate without support, expected at least one')
  const middle = {x: mean(places.map((one) => one.x)), y: mean(places.map((one) => one.y))}
  const from = (one: Point): Point => ({x: one.x - middle.x, y: one.y - middle.y})
  const spread = places.map(from)
  const centre = from({x: input.centreOfMass.x.si, y: input.centreOfMass.y.si})
  const slope = slopeOf(spread, centre)
  const shares = spread.map((one) => 1 / places.length + slope.x * one.x + slope.y * one.y)
  if (shares.some((share) => share < -1e-9))
    throw new RangeError(
      'Unexpected centre of mass that lifts a support, expected it where every support carries',
    )
  return shares.map((share) => quantityOf('force', weight * Math.max(0, share)))
}

/** How the share of a support rises along both directions, per metre. */
function slopeOf(spread: readonly Point[], centre: Point): Point {
  const sum = (of: (one: Point) => number): number => spread.reduce((total, one) => total + of(one), 0)
  const [xx, yy, xy] = [sum((one) => one.x ** 2), sum((one) => one.y ** 2), sum((one) => one.x * one.y)]
  const determinant = xx * yy - xy ** 2
  const size = xx + yy
  if (determinant > 1e-9 * size ** 2)
    return {
      x: (centre.x * yy - centre.y * xy) / determinant,
      y: (centre.y * xx - centre.x * xy) / determinant,
    }
  return slopeAlongLine(spread, centre, size)
}

/** The same where all supports stand in one line or in one place: nothing holds a centre of mass beside the line. */
function slopeAlongLine(spread: readonly Point[], centre: Point, size: number): Point {
  const end = spread.reduce((far, one) => (lengthOf(one) > lengthOf(far) ? one : far), {x: 0, y: 0})
  const reach = lengthOf(end)
  if (reach === 0) {
    refuseBeside(lengthOf(centre), reach)
    return {x: 0, y: 0}
  }
  const line = {x: end.x / reach, y: end.y / reach}
  refuseBeside(Math.abs(centre.y * line.x - centre.x * line.y), reach)
  const along = centre.x * line.x + centre.y * line.y
  return {x: (along / size) * line.x, y: (along / size) * line.y}
}

function refuseBeside(distance: number, reach: number): void {
  if (distance > 1e-9 + 1e-6 * reach)
    throw new RangeError(
      'Unexpected centre of mass beside the line of the supports, expected it on their line',
    )
}

function lengthOf(one: Point): number {
  return Math.hypot(one.x, one.y)
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length
}
