import type {Place} from '../messages/place.ts'
import type {Quantity} from '../quantities/quantity.ts'
import type {Reference} from './datum.ts'
import type {VesselRecord} from './record-files.ts'

/** One look at gauge, thermometer and barometer during a pressure hold. */
export interface HoldReading {
  readonly day: string
  readonly at: Reference
  /** Number or name of the hold: `1`, where a day saw more than one. */
  readonly test: string
  readonly minute: Quantity<'time'>
  readonly pressure: Quantity<'gauge-pressure'>
  /** Of the gas. */
  readonly temperature: Quantity<'temperature'>
  readonly barometer: Quantity<'absolute-pressure'>
  readonly note: string
  readonly place: Place
}

/** Pressure holds of the cofferdams of a vessel, from wherever they come: a record that nobody signs. */
export interface HoldHistory extends VesselRecord {
  /** In the order of their days, those of one hold in the order of the minutes. */
  readonly readings: readonly HoldReading[]
}

/** The readings of the last hold of a pump; none where there is none. */
export function lastHold(history: HoldHistory | undefined, position: string): readonly HoldReading[] {
  const own = (history?.readings ?? []).filter((one) => one.at.id === position)
  const last = own.at(-1)
  return own.filter((one) => one.day === last?.day && one.test === last.test)
}
