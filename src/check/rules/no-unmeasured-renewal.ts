import {type HoursRecord, readingsOf, totalOf, writtenHours} from '../../handbook-model/hours-content.ts'
import type {WearHistory, WearReading} from '../../handbook-model/wear-history.ts'
import {addMessage, type ContentFiles} from '../../messages/add-message.ts'
import type {Place} from '../../messages/place.ts'

/** Clearances of a vessel follow from each other and from the record of her running hours. */
export function noTornWear(
  {readings}: WearHistory,
  hours: HoursRecord | undefined,
  files: ContentFiles,
): void {
  refuseSecondReading(readings, files)
  noUnmeasuredRenewal(readings, files)
  for (const head of new Set(readings.map((one) => one.head.id)))
    noFallingHead(
      head,
      readings.filter((one) => one.head.id === head),
      hours,
      files,
    )
}

/**
 * A ring is renewed behind a reading as found of the same day, and the reading as left says so.
 *
 * What the old ring had worn to is the best reading of its life; without it the line ends too early.
 *
 * Accepted: `as-found` and `as-left` of one ring on one day, `yes` at the second.
 * Rejected: `yes` at a reading as left alone; `yes` at a reading as found.
 */
export function noUnmeasuredRenewal(readings: readonly WearReading[], files: ContentFiles): void {
  for (const reading of readings) {
    if (!reading.renewed) continue
    const found = readings.find(
      (one) => one.phase === 'as-found' && one.day === reading.day && isSameRing(one, reading),
    )
    if (reading.phase === 'as-left' && found) continue
    const name = nameOf(reading)
    addMessage(
      files,
      reading.place,
      'no-unmeasured-renewal',
      reading.phase === 'as-found'
        ? `Unexpected renewal of ${name} at its reading as found, expected it at the reading as left`
        : `Unexpected renewal of ${name} on ${reading.day} without its reading as found, expected one of that day`,
      {
        note:
          reading.phase === 'as-found'
            ? 'Write `yes` at the reading as left of that day'
            : 'Add the clearance that the old ring was found with; where nobody read it, leave the renewal to the note',
      },
    )
  }
}

function refuseSecondReading(readings: readonly WearReading[], files: ContentFiles): void {
  const first = new Map<string, WearReading>()
  for (const reading of readings) {
    const key = JSON.stringify([reading.head.id, reading.ring.id, reading.day, reading.phase])
    const before = first.get(key)
    if (!before) first.set(key, reading)
    else
      addMessage(
        files,
        reading.place,
        'no-duplicate-id',
        `Unexpected second line of ${nameOf(reading)} ${reading.phase} on ${reading.day}, expected one a day`,
        {note: 'Keep the line that is right', cause: before.place},
      )
  }
}

/** What a head had run on a day, by either record. */
interface RunSoFar {
  readonly day: string
  readonly tenths: number
  /** The least that it can be: a counter was exchanged. */
  readonly isLeast: boolean
  readonly place: Place
}

/** Hours of one head never fall, nor differ on one day, over its clearances and the record of running hours. */
function noFallingHead(
  head: string,
  wear: readonly WearReading[],
  record: HoursRecord | undefined,
  files: ContentFiles,
): void {
  const counted = readingsOf(record, 'head', head)
  const others: RunSoFar[] = counted.map(({day, place}, index) => ({
    day,
    place,
    ...totalOf(counted.slice(0, index + 1)),
  }))
  for (const reading of wear) {
    const torn = others.find(
      (one) =>
        (one.day < reading.day && reading.tenths < one.tenths) ||
        (one.day > reading.day && reading.tenths > one.tenths && !one.isLeast) ||
        (one.day === reading.day &&
          (reading.tenths < one.tenths || (reading.tenths > one.tenths && !one.isLeast))),
    )
    if (torn)
      addMessage(
        files,
        reading.place,
        'no-falling-hours',
        `Unexpected \`${writtenHours(reading.tenths)}\` hours of head \`${head}\` on ${reading.day} beside \`${writtenHours(torn.tenths)}\` on ${torn.day}, expected hours that never fall`,
        {note: 'Write what the head had run in all; read counter and nameplate again', cause: torn.place},
      )
    else others.push({day: reading.day, tenths: reading.tenths, isLeast: false, place: reading.place})
  }
}

function isSameRing(one: WearReading, other: WearReading): boolean {
  return one.head.id === other.head.id && one.ring.id === other.ring.id
}

function nameOf({head, ring}: WearReading): string {
  return `\`${ring.id}\` of head \`${head.id}\``
}
