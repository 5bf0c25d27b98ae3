import type {z} from 'zod'
import type {Datum, KnownDatum} from '../../handbook-model/datum.ts'
import type {CalendarInterval, JobInterval} from '../../handbook-model/job-interval.ts'
import type {Place} from '../../messages/place.ts'
import {
  fields,
  type IssueFacts,
  identifier,
  list,
  localised,
  originShape,
  quantity,
  reference,
  refuse,
} from './placed-shape.ts'

type Context = z.core.$RefinementCtx

const calendarUnits = ['d', 'months']

const calendarTime = fields({every: quantity('time'), note: localised.optional()}).transform(
  ({every, note}, context): CalendarInterval => ({
    every: timeIn(every, calendarUnits, context),
    ...(note ? {note} : {}),
  }),
)

const interval = fields({
  origin: originShape,
  hours: quantity('time').optional(),
  'hours-most': quantity('time').optional(),
  calendar: list(calendarTime).optional(),
  events: list(localised).optional(),
  trigger: localised.optional(),
  reason: localised,
}).transform((written, context): JobInterval => {
  const {hours, hoursMost, calendar = [], events = [], trigger, ...rest} = written
  if (!hours && calendar.length === 0 && events.length === 0 && !trigger)
    return refuse(
      context,
      'Unexpected interval that says nothing, expected one of `hours:`, `calendar:`, `events:`, `trigger:`',
      missing(rest.place, 'Say how often the job is done, or what it is done on'),
    )
  const least = hours && timeIn(hours, ['h'], context)
  const most = hoursMost && timeIn(hoursMost, ['h'], context)
  if (hoursMost && !isRange(hours, hoursMost))
    return refuse(
      context,
      'Unexpected `hours-most`, expected it above `hours`',
      wrong(hoursMost.place, 'Write the least hours as `hours:` and the most as `hours-most:`'),
    )
  return {
    ...rest,
    ...(least ? {hours: least} : {}),
    ...(most ? {hoursMost: most} : {}),
    calendar,
    events,
    ...(trigger ? {trigger} : {}),
  }
})

/** Whether the most lies above the least; what nobody knows is refused by itself. */
function isRange(least: Datum<'time'> | undefined, most: Datum<'time'>): boolean {
  if (least?.kind === 'not-known' || most.kind === 'not-known') return true
  return least !== undefined && least.quantity.si < most.quantity.si
}

/** A known time above zero in one of these units: an interval that nobody knows is left out, and its reason says so. */
function timeIn(datum: Datum<'time'>, units: readonly string[], context: Context): KnownDatum<'time'> {
  const words = units.map((unit) => `\`${unit}\``).join(' or ')
  if (datum.kind === 'not-known')
    return refuse(
      context,
      `Unexpected \`not known\` in an interval, expected a time in ${words}`,
      wrong(datum.place, 'Leave the line out and write into `reason:` what nobody knows'),
    )
  if (datum.quantity.si > 0 && units.includes(datum.unit)) return datum
  return refuse(
    context,
    `Unexpected interval of ${datum.figure} ${datum.unit}, expected a time above zero in ${words}`,
    wrong(datum.place, `Write it in ${words}`),
  )
}

function wrong(place: Place, note: string): IssueFacts {
  return {ruleId: 'no-wrong-shape', place, note}
}

function missing(place: Place, note: string): IssueFacts {
  return {ruleId: 'no-missing-key', place, note}
}

/** jobs/<id>.yaml; `when` is still a text with its place. */
export const jobShape = fields({
  id: identifier,
  title: localised,
  when: reference.optional(),
  purpose: localised,
  interval,
  procedures: list(reference),
  'as-found': list(localised),
  'as-left': list(localised),
})
