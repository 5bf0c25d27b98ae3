import type {Content} from '../handbook-model/content.ts'
import type {Origin} from '../handbook-model/datum.ts'
import type {CalendarInterval, JobInterval} from '../handbook-model/job-interval.ts'
import {wordsEn} from './words-en.ts'

const words = wordsEn.interval

/** An interval in full: "5 000 running hours or 60 months, whichever is first; sooner when …". */
export function intervalText(interval: JobInterval): string {
  return words.joined([regularText(interval), triggerText(interval)].filter((one) => one !== ''))
}

/** Hours, calendar and events; blank where the job is done on a condition alone. */
export function regularText({hours, hoursMost, calendar, events}: JobInterval): string {
  const running = hours ? words.hours(hours.figure, hoursMost?.figure ?? '') : ''
  const [first = '', ...others] = calendar.map(calendarText)
  const times = running !== '' && first !== '' ? words.first(running, first) : running || first
  return words.joined([times, ...others, ...events.map((one) => one.en)].filter((one) => one !== ''))
}

/** What brings the job forward, or what alone it is done on; blank where nothing does. */
export function triggerText({hours, calendar, events, trigger}: JobInterval): string {
  if (!trigger) return ''
  if (hours || calendar.length > 0) return words.sooner(trigger.en)
  return events.length > 0 ? words.also(trigger.en) : words.only(trigger.en)
}

/** What is said beside a figure of this origin: that it is an estimate, that no published source carries it. */
export function markOfOrigin({status, source}: Origin, content: Content): string {
  const howKnown = content.sources.get(source)?.howKnown
  return [
    ...(status === 'assumed' ? [wordsEn.estimate] : []),
    ...(howKnown === 'common-practice' || howKnown === 'demonstration' ? [wordsEn.howKnown[howKnown]] : []),
  ].join(', ')
}

function calendarText({every, note}: CalendarInterval): string {
  const time = words.calendar(every.figure, every.unit)
  return note ? words.withNote(time, note.en) : time
}
