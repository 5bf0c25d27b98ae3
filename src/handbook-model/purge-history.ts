import type {Place} from '../messages/place.ts'
import type {Quantity} from '../quantities/quantity.ts'
import type {Reference} from './datum.ts'
import type {VesselRecord} from './record-files.ts'

/** What came out of a cofferdam; `mixture` is oil and cargo together, or what nobody can tell. */
export const purgeLiquids = ['oil', 'cargo', 'water', 'mixture', 'none'] as const

/** One purge of a cofferdam. */
export interface PurgeResult {
  readonly day: string
  readonly at: Reference
  /** Running hours since the purge before, in tenths; zero where the pump did not run. */
  readonly tenths: number
  /** Gas was seen to flow at the outlet. */
  readonly gas: boolean
  readonly volume: Quantity<'volume'>
  readonly liquid: (typeof purgeLiquids)[number]
  /** What it was measured with; none where nobody wrote it. */
  readonly instruments: readonly Reference[]
  readonly note: string
  readonly place: Place
}

/** Purges of the cofferdams of a vessel, from wherever they come: a record that nobody signs. */
export interface PurgeHistory extends VesselRecord {
  /** In the order of their days; those of one day as they were written. */
  readonly results: readonly PurgeResult[]
}
