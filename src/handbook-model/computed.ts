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
  /** The value that it prints in place of, where an urgent revision replaces it. */
  readonly replaces?: ComputedValue
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
  /** Symbols of the formula that neither inputs nor steps name. */
  readonly symbols: readonly {readonly symbol: string; readonly meaning: string}[]
  readonly inputs: readonly TracedInput[]
  /** Constants and intermediate results, so that a pocket calculator gets the printed figure. */
  readonly steps: readonly TracedInput[]
}

export interface TracedInput {
  readonly symbol: string
  readonly title: string
  readonly printed: string
  /** How it is known and where in its source, in words. */
  readonly origin: string
  /** Id of the source that states it. */
  readonly source?: string
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

/** First words of value ids that are no thing of the design; no joint, ring, lift or seal may be called so. */
export const valueGroups = [
  'cofferdam',
  'purge',
  'oil',
  'lowering',
  'curve',
  'motor',
  'stripping',
  'mass',
  'setting',
  'rating',
  'geometry',
  'house',
  'supply',
  'hydraulics',
  'tank',
] as const

/** Names of the values of a lift: `unit-lift.leg-load`. */
export const liftValueNames = ['mass', 'legs', 'angle', 'leg-load', 'rated-load'] as const

/** Names of the values of the lowering screws. */
export const loweringValueNames = [
  'bolt-load',
  'turns',
  'raising-torque',
  'lowering-torque',
  'travel',
] as const

/** Names of the values of a seal: `cargo-seal.pressure`. */
export const sealValueNames = ['running-diameter', 'seat-depth', 'lips', 'pressure', 'lip-speed'] as const

/** Names of the values of an O-ring: `sleeve-ring.squeeze`. */
export const oRingValueNames = ['size', 'squeeze', 'stretch'] as const

/** Names of the values of the oil spaces. */
export const oilValueNames = [
  'pressure-pipe-bore',
  'pressure-pipe-outside',
  'return-pipe-bore',
  'motor-casing',
  'control-valve',
  'volume',
  'least',
  'most',
  'drums',
  'flush-time',
  'trapped-pressure',
] as const

/** Names of the values of curve and motor; `both` needs curve and motor. */
export const pumpValueNames = {
  curve: ['speed', 'shut-off-head', 'flow', 'head', 'efficiency', 'watch-head', 'act-head'],
  motor: ['displacement', 'volumetric-efficiency', 'mechanical-efficiency'],
  both: ['oil-flow', 'torque', 'pressure-difference'],
} as const

/** Names of the values of a purge. */
export const purgeValueNames = ['lower-bound', 'free-gas', 'time', 'per-bottle'] as const

/** Names of the values of stripping, where the design states its riser. */
export const strippingValueNames = [
  'recorded',
  'ceiling',
  'gas-pressure',
  'foot-below-stack',
  'top-above-deck',
  'back-pressure',
] as const

/** Names of the house rules that are values. */
export const houseValueNames = [
  'stabilise',
  'isolation-proof',
  'isolation-recheck',
  'hold-least',
  'purge-changes',
  'purge-least',
  'entry-air-changes',
  'entry-retest',
  'lifting-reserve',
  'test-run-watch',
  'test-run-act',
  'oil-tolerance',
  'flush-changes',
  'portable-rig-time',
  'rubber-life',
  'store-warmest',
] as const

/** Names of what the ship supplies. */
export const supplyValueNames = [
  'purge-gas-flow',
  'bottle-volume',
  'bottle-pressure',
  'flush-flow',
  'drum-volume',
  'ventilator-flow',
] as const

/** What a crew member reads where a value is not known. */
export const notKnownWords = 'NOT KNOWN - MEASURE AND REPORT'
