import type {Point} from '../section/shape.ts'
import {type PortableGeometry, placesOf} from './portable-geometry.ts'

/** Heights above the deck and places across, in millimetres from the chain, that texts and dimensions use too. */
export interface RigPlaces {
  readonly coaming: number
  readonly head: number
  readonly left: number
  readonly right: number
  readonly winch: Point
  readonly claw: Point
  readonly saddle: Point
  /** Where each hose hangs, and where it comes down from the saddle. */
  readonly cargo: {readonly up: number; readonly down: number}
  readonly oil: readonly {readonly up: number; readonly down: number; readonly outside: number}[]
  readonly band: {readonly low: number; readonly high: number}
  readonly bottom: number
  /** Lower end of the strainer. */
  readonly foot: number
  readonly pump: number
}

/** Height of a coaming as it is drawn, and depth of the tank that the drawing keeps. */
export const coaming = 300
const kept = 2350

/** Where the rig stands. */
export function rigPlaces(g: PortableGeometry): RigPlaces {
  const at = placesOf(g)
  const circle = g.footCircle / 2
  const cargo = at.flange - at.eye
  const bend = g.bendRadius
  // Low: no higher than the hoses need to bend once more, down on the deck.
  const height = bend + Math.max(g.hoseOutside / 2 + 10, 105) + 40
  const middle = cargo + bend
  const bottom = -kept - g.pumpLength - g.footDistance
  const oil = [at.returnCoupling, at.pressureCoupling].map((x, index) => ({
    up: x - at.eye,
    down: middle + (middle - (x - at.eye)),
    outside: (index === 0 ? g.returnBore : g.pressureBore) * 1.5,
  }))
  return {
    coaming,
    head: g.headHeight,
    left: -circle * 0.94,
    right: circle * 0.77,
    winch: [-circle * 0.94 * (1 - 1150 / g.headHeight), 1150],
    claw: [0, g.headHeight - 350],
    saddle: [middle, height],
    cargo: {up: cargo, down: cargo + 2 * bend},
    oil,
    band: {low: -1350, high: -1180},
    bottom,
    foot: bottom + g.footDistance,
    pump: -at.eye,
  }
}
