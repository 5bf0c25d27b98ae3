import type {Quantity} from '../../quantities/quantity.ts'

/** Clearance of a ring read at a count of running hours. */
export interface WearReading {
  readonly hours: Quantity<'time'>
  readonly clearance: Quantity<'diametral-clearance'>
}

/** A reading that says whether it was taken before or after the work of its day. */
export interface PhasedWearReading extends WearReading {
  readonly phase: 'as-found' | 'as-left'
}

/**
 * Splits readings at each renewal of the ring: what was read as left at a renewal is the first of the new ring.
 *
 * A reading taken as found at the hours of a renewal is the last of the old
 * ring. A line through both rings would show wear where there was none.
 *
 * Source: none; the rule by which histories are read.
 * Valid for: readings and renewals counted by the same hour meter.
 *
 * @returns
 *   One list per ring, oldest ring first, each in the order of the hours; rings without a reading have an empty list.
 */
export function splitAtRenewals(
  readings: readonly PhasedWearReading[],
  renewals: readonly Quantity<'time'>[],
): readonly (readonly WearReading[])[] {
  const ends = renewals.map((one) => one.si)
  const inOrder = [...readings].sort(
    (one, other) => one.hours.si - other.hours.si || turnOf(one) - turnOf(other),
  )
  const ringOf = (reading: PhasedWearReading): number =>
    ends.filter((end) => reading.hours.si > end || (reading.hours.si === end && reading.phase === 'as-left'))
      .length
  return Array.from({length: ends.length + 1}, (_, ring) =>
    inOrder.filter((reading) => ringOf(reading) === ring),
  )
}

/** Found before left. */
function turnOf(reading: PhasedWearReading): number {
  return reading.phase === 'as-found' ? 0 : 1
}
