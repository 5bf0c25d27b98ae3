import type {Quantity} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'
import {refuseBelowZero} from '../refuse-inputs.ts'
import {dateOfDay, dayNumber} from './calendar-day.ts'

export const orderByDateNote: CalculationNote = {
  name: 'order-by-date',
  words: 'last day to order a part: the day it is needed less the lead time, a begun day counted whole',
  formula: ['order by = needed on − lead time in days, rounded up'],
  symbols: [],
  sources: [{title: 'calendar', edition: 'none', howKnown: 'computed', status: 'current'}],
  validFor: 'dates from 1900 to 2199; lead times that include the way aboard',
}

const secondsPerDay = 86_400

/**
 * Last day on which a part is ordered to be there when it is needed.
 *
 * Source: Gregorian calendar.
 * Valid for: dates from 1900 to 2199, written `2031-02-14`.
 *
 * @throws {RangeError}
 *   When the date does not exist or the lead time is negative.
 */
export function orderByDate(input: {readonly neededOn: string; readonly leadTime: Quantity<'time'>}): string {
  refuseBelowZero('lead time', input.leadTime, 'd')
  const days = Math.ceil(Number((input.leadTime.si / secondsPerDay).toPrecision(12)))
  return dateOfDay(dayNumber(input.neededOn) - days)
}
