import {dayNumber} from '../calculations/planning/calendar-day.ts'
import type {Content} from '../handbook-model/content.ts'
import {addMessage, type ContentFiles} from '../messages/add-message.ts'

/** From how many days before its end an urgent revision is told. */
const daysBefore = 30

/**
 * Tells each urgent revision that ends soon after the day that dates are compared with, or has ended before it.
 *
 * Accepted: one that is valid for more than thirty days yet.
 * Told: one that ends on a day within them; one that is over.
 */
export function noEndingUrgent(content: Content, day: string | undefined, files: ContentFiles): void {
  if (day === undefined) return
  for (const {number, validTo} of content.urgent) {
    const left = dayNumber(validTo.id) - dayNumber(day)
    if (left > daysBefore) continue
    const ends =
      left < 0
        ? `that was valid to ${validTo.id}`
        : `that ends on ${validTo.id}, ${left === 1 ? '1 day' : `${left} days`} after ${day}`
    addMessage(
      files,
      validTo.place,
      'no-ending-urgent',
      `Unexpected urgent revision \`${number}\` ${ends}, expected one that counts for more than ${daysBefore} days from ${day}`,
      {note: 'Take it into the page and end it in changes.yaml, or let another one supersede it'},
    )
  }
}
