import type {Place} from '../messages/place.ts'
import type {Quantity} from '../quantities/quantity.ts'
import type {Reference} from './datum.ts'
import type {VesselRecord} from './record-files.ts'

/** When a clearance was read: before the work of its day or after it. */
export const wearPhases = ['as-found', 'as-left'] as const

/** One clearance of a wear ring. */
export interface WearReading {
  readonly day: string
  /** The pump that the head was fitted in. */
  readonly at: Reference
  /** Serial of the head: trends belong to the component. */
  readonly head: Reference
  readonly ring: Reference
  /** What the head had run in all, in tenths of an hour. */
  readonly tenths: number
  readonly phase: (typeof wearPhases)[number]
  /** Mean of all stations. */
  readonly clearance: Quantity<'diametral-clearance'>
  /** The smallest gap of all stations, where it was written. */
  readonly leastGap?: Quantity<'diametral-clearance'>
  /** The ring was renewed on that day; stands at the reading as left. */
  readonly renewed: boolean
  /** What it was measured with; none where nobody wrote it. */
  readonly instruments: readonly Reference[]
  readonly note: string
  readonly place: Place
}

/** Clearances of the wear rings of a vessel, from wherever they come: a record that nobody signs. */
export interface WearHistory extends VesselRecord {
  /** In the order of their days. */
  readonly readings: readonly WearReading[]
}
