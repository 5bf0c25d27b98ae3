import type {Figure} from '../figure.ts'
import type {Point} from '../section/shape.ts'
import type {Circle} from './cut.ts'

/** A station of a view: its name as the box on the sheet has it, and where it lies. */
export interface ViewStation {
  readonly name: string
  /** The plane that it lies in; blank where there is one alone. */
  readonly plane: string
  /** Degrees from the zero mark; undefined where a dial finds it. */
  readonly direction?: number
  readonly side?: 'highest' | 'lowest' | 'port' | 'starboard'
}

export type ViewKind = 'bore' | 'outside' | 'groove' | 'gap' | 'depth' | 'dial'

/** What the view along the axis shows of one reading. */
export interface StationView {
  readonly kind: ViewKind
  readonly title: string
  readonly stations: readonly ViewStation[]
  readonly circles: readonly Circle[]
  /** Radius at which is measured, and the one that the dimension below names, in millimetres. */
  readonly r: number
  readonly dimension: {readonly r: number; readonly text: string} | undefined
  /** With the clock or against it. */
  readonly way: 1 | -1
  /** Lines below the view. */
  readonly notes: readonly string[]
}

/** A station as it is drawn, in units of the view box. */
export interface PlacedStation {
  readonly name: string
  readonly number: number
  readonly at: Point
  /** The outline that it lies on: a circle, or an upright line. */
  readonly outline: {readonly middle: Point; readonly radius: number} | {readonly x: number}
}

/** A figure of stations with the places of its stations, reading by reading. */
export interface StationsFigure extends Figure {
  readonly placed: readonly (readonly PlacedStation[])[]
}

/** A view as it is drawn, with the height that it takes up. */
export interface DrawnView {
  readonly svg: string
  readonly bottom: number
  readonly middle: number
  readonly placed: readonly PlacedStation[]
}
