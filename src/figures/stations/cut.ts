import type {Levels} from '../section/levels.ts'
import type {SectionGeometry} from '../section/section-geometry.ts'
import {type Box, mirrored, type Outline, type Point} from '../section/shape.ts'

/** A circle of the view along the axis, by its radius in millimetres. */
export interface Circle {
  readonly r: number
  /** It lies behind something else. */
  readonly hidden?: true
}

/** The part of a pump at which stations lie: what its section shows, and what is held in it. */
export interface StationCut {
  /** Places of one part share its section. */
  readonly part: string
  /** Outlines of the right half, in millimetres of the section of the pump. */
  readonly outlines: readonly Outline[]
  /** The piece of the section that is drawn. */
  readonly box: Box
  /** Drawn with the suction side up: the part lies turned over. */
  readonly turned: boolean
  /** The side from which the view along the axis looks at it. */
  readonly seenFrom: 'suction' | 'motor'
  /** The radius at which is measured, and the heights between which planes or a gap lie, the suction side first; a depth from its foot on. */
  readonly surface: {readonly r: number; readonly from: number; readonly to: number}
  readonly circles: readonly Circle[]
  /** Radius of the circle that the dimension names, where it is not the one at which is measured. */
  readonly dimension?: number
}

/** What cuts are made from. */
export interface CutDesk {
  readonly g: SectionGeometry
  readonly at: Levels
  /** Outlines of the whole section, on both sides of the centre line. */
  readonly outlines: readonly Outline[]
}

/** Pieces of the section by the part and the words of each, `motor: shaft`; a piece of the left half alone is turned over to the right. */
export function pieces({outlines}: CutDesk, ...names: readonly string[]): readonly Outline[] {
  return names.map((name) => {
    const piece = outlines.find((one) => `${one.part}: ${one.piece}` === name)
    if (!piece) throw new Error(`Unexpected piece \`${name}\`, expected one of the section`)
    const left = piece.points.every(([r]) => r <= 0)
    return left ? {...piece, points: mirrored(piece.points)} : piece
  })
}

/** Moves outlines along the axis: a gap is drawn wider than it is. */
export function moved(outlines: readonly Outline[], by: number): readonly Outline[] {
  return outlines.map((one) => ({...one, points: one.points.map(([r, z]): Point => [r, z + by])}))
}
