import type {Place} from '../messages/place.ts'
import type {Reference} from './datum.ts'
import type {VesselRecord} from './record-files.ts'
import type {Component} from './vessel-content.ts'

/** How hours were counted: by a meter, from the log of the pump, or by an estimate. */
export const countedBy = ['meter', 'log', 'estimate'] as const

export type CountedBy = (typeof countedBy)[number]

/** One line of vessels/<id>/hours.csv: what one component had run on a day. */
export interface HoursReading {
  readonly day: string
  readonly component: Component['kind']
  readonly serial: Reference
  /** The pump that it was fitted in on that day, where somebody wrote it. */
  readonly at?: Reference
  /** In tenths of an hour, so that differences are exact. */
  readonly tenths: number
  readonly counted: CountedBy
  /** With what a new counter began, in tenths, where it was exchanged since the reading before. */
  readonly newCounterTenths?: number
  readonly note: string
  readonly place: Place
}

/** vessels/<id>/hours.csv: a record that nobody signs and no page with a revision shows. */
export interface HoursRecord extends VesselRecord {
  /** Components that have lines and are fitted in no pump of the vessel any more. */
  readonly removed: readonly FittedOnce[]
  /** In the order of their days. */
  readonly readings: readonly HoursReading[]
  readonly place: Place
}

/** A component that is gone, by kind and serial number. */
export interface FittedOnce {
  readonly kind: Component['kind']
  readonly serial: string
}

/** Hours as they are written: `4120`, `4120.5`. */
export function writtenHours(tenths: number): string {
  const sign = tenths < 0 ? '-' : ''
  const whole = Math.floor(Math.abs(tenths) / 10)
  const rest = Math.abs(tenths) % 10
  return `${sign}${whole}${rest === 0 ? '' : `.${rest}`}`
}

/** Days from one day to a later one. */
export function daysBetween(before: string, after: string): number {
  return Math.round((Date.parse(`${after}T00:00:00Z`) - Date.parse(`${before}T00:00:00Z`)) / 86_400_000)
}

/** What a component ran between two readings, in tenths; across an exchanged counter nobody knows. */
export function stepBetween(before: HoursReading, after: HoursReading): number | undefined {
  return after.newCounterTenths === undefined ? after.tenths - before.tenths : undefined
}

/** What a component has run by its readings, in tenths; where a counter was exchanged it is the least that it can be. */
export function totalOf(readings: readonly HoursReading[]): {
  readonly tenths: number
  readonly isLeast: boolean
} {
  const [first, ...rest] = readings
  let before = first
  let tenths = (first?.tenths ?? 0) - (first?.newCounterTenths ?? 0)
  for (const reading of rest) {
    tenths += reading.tenths - (reading.newCounterTenths ?? before?.tenths ?? 0)
    before = reading
  }
  return {tenths, isLeast: readings.some((one) => one.newCounterTenths !== undefined)}
}

/** Readings of one component in the order of their days. */
export function readingsOf(
  record: HoursRecord | undefined,
  kind: Component['kind'],
  serial: string,
): readonly HoursReading[] {
  return (record?.readings ?? []).filter((one) => one.component === kind && one.serial.id === serial)
}
