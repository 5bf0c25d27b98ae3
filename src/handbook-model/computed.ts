import type {Place} from '../messages/place.ts'
import type {Printed} from '../quantities/print-quantity.ts'
import type {AnyQuantity} from '../quantities/quantity.ts'

/** Product of `compute`: every value of every pump position, by value id such as `hub-bolts.torque`. */
export interface ComputedValues {
  /** Vessel id, then position id. */
  readonly vessels: ReadonlyMap<string, ReadonlyMap<string, PositionValues>>
}

export type PositionValues = ReadonlyMap<string, ComputedValue>

/** A value with its kin: enough to print it, to explain it and to recompute it with a pocket calculator. */
export interface ComputedValue {
  readonly id: string
  /** What it is, in words: "tightening torque of the hub bolts". */
  readonly title: string
  /** True when the same for every pump of the design, so that it stands on the wall sheet. */
  readonly ofDesign: boolean
  readonly result: KnownResult | UnknownResult
  /** The lubrication state, the temperature or whatever else the figure holds for; printed beside it. */
  readonly condition?: string
  /** Absent for a value that is stated, not computed. */
  readonly calculation?: CalculationTrace
  readonly sources: readonly SourceUse[]
  readonly rounding: string
  /** Content line that states it, or whose entry asks for it. */
  readonly place: Place
}

export interface KnownResult {
  readonly kind: 'known'
  readonly quantity?: AnyQuantity
  readonly printed: Printed
  /** More figures that belong to it: passes of a torque, numbers of an order. Printed in order. */
  readonly more?: readonly string[]
}

/** Prints NOT KNOWN - MEASURE AND REPORT and what is missing. */
export interface UnknownResult {
  readonly kind: 'not-known'
  readonly missing: readonly string[]
}

export interface CalculationTrace {
  /** Name on the command line: `tightening-torque`. */
  readonly name: string
  readonly words: string
  /** Formula in symbols, one line a step. */
  readonly formula: readonly string[]
  readonly inputs: readonly TracedInput[]
  /** Constants and intermediate results, so that a pocket calculator gets the printed figure. */
  readonly steps: readonly TracedInput[]
}

export interface TracedInput {
  readonly symbol: string
  readonly title: string
  readonly printed: string
  /** Where it came from: a source title and, in the office, the content line. */
  readonly origin: string
  readonly place?: Place
}

export interface SourceUse {
  readonly source: string
  readonly where?: string
}

/** Names of the values that every bolted joint has, behind its id: `hub-bolts.torque`. */
export const jointValueNames = [
  'torque',
  'preload',
  'passes',
  'order',
  'count',
  'fastener',
  'wrench',
  'lubrication',
  'locking',
] as const

/** What a crew member reads where a value is not known. */
export const notKnownWords = 'NOT KNOWN - MEASURE AND REPORT'
