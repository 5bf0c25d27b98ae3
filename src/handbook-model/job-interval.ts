import type {Place} from '../messages/place.ts'
import type {KnownDatum, Localised, Origin} from './datum.ts'

/** How often a job is done: by running hours, by the calendar, with an event, or when something shows; at least one of them. */
export interface JobInterval {
  readonly origin: Origin
  /** Running hours; with `hoursMost` a range. */
  readonly hours?: KnownDatum<'time'>
  readonly hoursMost?: KnownDatum<'time'>
  /** Days or months; the first goes with the hours, whichever comes first. */
  readonly calendar: readonly CalendarInterval[]
  /** "before loading", "at survey". */
  readonly events: readonly Localised[]
  /** What is seen or measured that brings it forward, a clause behind "when". */
  readonly trigger?: Localised
  readonly reason: Localised
  readonly place: Place
}

/** A time of the calendar, and what it is for: "with the dry dock". */
export interface CalendarInterval {
  readonly every: KnownDatum<'time'>
  readonly note?: Localised
}
