import {deckGear, depthBreak, surroundings} from './deck-gear.ts'
import type {Piece, View} from './piece.ts'
import type {PortableGeometry} from './portable-geometry.ts'
import {rightHalf} from './pump-cut.ts'
import {leftHalf, pumpOutside} from './pump-outside.ts'
import {rigPieces} from './rig.ts'
import {rigPlaces} from './rig-places.ts'

/** Fifteen centimetres on paper. */
export const width = 1500
export const margin = 40
/** Where the chain hangs, and the middle of the larger view. */
export const chain = 400
export const larger = 1080

/** Both views: the rig with the pump in the tank, and the pump in half section. */
export function arrangementViews(g: PortableGeometry): {
  readonly rig: View
  readonly pump: View
  readonly inTank: View
  readonly height: number
} {
  const scale = Math.min(0.2, 640 / g.headHeight, 480 / g.footCircle)
  const at = rigPlaces(g)
  const deck = margin + g.headHeight * scale
  const rig = {x: chain, y: deck, scale}
  const pumpScale = Math.min(0.66, 620 / g.pumpLength, 250 / g.pumpDiameter)
  const foot = Math.max(deck - at.bottom * scale, deck + 90 + g.pumpLength * pumpScale)
  return {
    rig,
    pump: {x: larger, y: foot, scale: pumpScale},
    inTank: {x: chain + at.pump * scale, y: deck - at.foot * scale, scale},
    height: Math.ceil(foot + 84),
  }
}

/** Everything that is drawn of a pump, by view. */
export function arrangementPieces(g: PortableGeometry): {
  readonly rig: readonly Piece[]
  readonly inTank: readonly Piece[]
  readonly pump: readonly Piece[]
} {
  return {
    rig: [...surroundings(g), ...rigPieces(g), ...deckGear(g), ...depthBreak(g)],
    inTank: pumpOutside(g),
    pump: [...leftHalf(g), ...rightHalf(g)],
  }
}
