import {dateOfDay, dayNumber} from '../../calculations/planning/calendar-day.ts'
import type {ServiceRule, WearTrend} from './wear-trend.ts'

/** One rule by which the rings are measured or renewed next. */
export interface DueRule {
  readonly rule: 'condition' | 'hours' | 'calendar'
  /** Running hours of the component. */
  readonly hours?: number
  /** The day, where it is known how fast hours grow. */
  readonly day?: string
}

/** The rules that speak, and the one that comes first. */
export interface NextDue {
  readonly rules: readonly DueRule[]
  /** Undefined where nothing is due by any rule, or nobody can tell which comes first. */
  readonly first: DueRule | undefined
}

/**
 * Next due by condition, by running hours and by the calendar: the earliest wins.
 *
 * Hours become a day by the hours that the component ran a day; where nobody
 * knows these, hours and days cannot be compared and no rule wins.
 */
export function nextDue(trend: WearTrend, service: ServiceRule): NextDue {
  const {last, forecast} = trend
  const dayAt = dayOfHours(service, trend)
  const byHours = (rule: 'condition' | 'hours', hours: number): DueRule => {
    const day = dayAt(hours)
    return {rule, hours, ...(day === undefined ? {} : {day})}
  }
  const all: DueRule[] = [
    ...(forecast.kind === 'due' ? [byHours('condition', forecast.due)] : []),
    ...(last && service.hours !== undefined ? [byHours('hours', last.hours + service.hours)] : []),
    ...(last && service.every ? [{rule: 'calendar', day: later(last.day, service.every)} as const] : []),
  ]
  const rules = all.filter((one) => one.day !== beyondCalendar)
  const days = rules.flatMap((one) => one.day ?? [])
  if (days.length === rules.length) {
    const earliest = [...days].sort()[0]
    return {rules, first: rules.find((one) => one.day === earliest)}
  }
  const hours = rules.flatMap((one) => one.hours ?? [])
  const least = Math.min(...hours)
  return {rules, first: hours.length === rules.length ? rules.find((one) => one.hours === least) : undefined}
}

/** The day on which so many hours are reached, counted on from the newest reading of the hours. */
function dayOfHours(
  {rate, last: counter}: ServiceRule,
  {last}: WearTrend,
): (hours: number) => string | undefined {
  const bases = [counter, last].flatMap((one) => one ?? [])
  const base = bases.reduce<{readonly day: string; readonly hours: number} | undefined>(
    (newest, one) => (newest && newest.day >= one.day ? newest : one),
    undefined,
  )
  return (hours) => {
    if (!rate || !base || !(rate.perDay > 0)) return undefined
    const day = dayNumber(base.day) + Math.floor((hours - base.hours) / rate.perDay)
    return day > latestDay ? beyondCalendar : dateOfDay(Math.max(day, earliestDay))
  }
}

/** The same day some months later, or the last one of a month that is shorter; or so many days later. */
function later(day: string, {count, unit}: NonNullable<ServiceRule['every']>): string {
  if (unit === 'days') return dateOfDay(dayNumber(day) + count)
  const [year = 0, month = 1, date = 1] = day.split('-').map(Number)
  const first = Date.UTC(year, month - 1 + count, 1)
  const length = new Date(Date.UTC(year, month + count, 0)).getUTCDate()
  return dateOfDay(first / 86_400_000 + Math.min(date, length) - 1)
}

/** Days as the calendar of the project knows them. */
const earliestDay = dayNumber('1900-01-01')
const latestDay = dayNumber('2199-12-31')
/** Stands for a day that no calendar of the project reaches: such a rule never comes first. */
const beyondCalendar = 'beyond the calendar'
