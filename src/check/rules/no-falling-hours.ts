import {
  daysBetween,
  type HoursReading,
  type HoursRecord,
  writtenHours,
} from '../../handbook-model/hours-content.ts'
import {addMessage, type ContentFiles} from '../../messages/add-message.ts'

/** Hours are counted in tenths. */
const tenthsOfDay = 240

/** Share of the hours of the calendar that a cargo pump runs at most: common practice, no source. */
const usualShare = 0.35

/**
 * Hours of one component never fall unless its counter was exchanged, and it runs no longer than the calendar.
 *
 * A reading that steps back is a slip of the pen or another component: the service would come too late.
 *
 * Accepted: `2019-03-01,motor,M-1,1p,4180,meter,,` behind 4120 hours on 2019-02-01.
 * Rejected: 4020 hours there without `new-counter-from`; two lines of one day; 900 hours in those 28 days.
 */
export function noFallingHours({readings}: HoursRecord, files: ContentFiles): void {
  const last = new Map<string, HoursReading>()
  for (const reading of readings) {
    const key = `${reading.component} ${reading.serial.id}`
    const before = last.get(key)
    if (!before || !isSecondOfDay(before, reading, files)) last.set(key, reading)
    if (before && before.day !== reading.day) holdStep(before, reading, files)
  }
}

function isSecondOfDay(before: HoursReading, reading: HoursReading, files: ContentFiles): boolean {
  if (before.day !== reading.day) return false
  addMessage(
    files,
    reading.place,
    'no-duplicate-id',
    `Unexpected second line of ${nameOf(reading)} on ${reading.day}, expected one a day`,
    {note: 'Keep the line that is right', cause: before.place},
  )
  return true
}

function holdStep(before: HoursReading, after: HoursReading, files: ContentFiles): void {
  const start = after.newCounterTenths ?? before.tenths
  const step = after.tenths - start
  const cause = before.place
  if (step < 0) {
    const from = after.newCounterTenths === undefined ? '' : ' of the new counter'
    addMessage(
      files,
      after.place,
      'no-falling-hours',
      `Unexpected fall from \`${writtenHours(start)}\`${from} to \`${writtenHours(after.tenths)}\` hours of ${nameOf(after)}, expected hours that never fall`,
      {
        note: 'Read counter and nameplate again; where the counter was exchanged, write what the new one began with under `new-counter-from`',
        cause,
      },
    )
    return
  }
  const days = daysBetween(before.day, after.day)
  const ran = `Unexpected \`${writtenHours(step)}\` hours of ${nameOf(after)} in ${days} days`
  if (step > (days + 1) * tenthsOfDay)
    addMessage(
      files,
      after.place,
      'no-impossible-value',
      `${ran}, expected at most the \`${(days + 1) * 24}\` of both days and those between`,
      {note: 'Read both days and both counters again', cause},
    )
  else if (step > days * tenthsOfDay * usualShare)
    addMessage(
      files,
      after.place,
      'no-implausible-value',
      `${ran}, expected at most \`${writtenHours(Math.floor(days * tenthsOfDay * usualShare))}\`: ${usualShare} of the calendar`,
      {note: 'Read both days and both counters again', cause},
    )
}

function nameOf({component, serial}: HoursReading): string {
  return `${component} \`${serial.id}\``
}
