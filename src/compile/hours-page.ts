import type {Content} from '../handbook-model/content.ts'
import {
  daysBetween,
  type FittedOnce,
  type HoursReading,
  type HoursRecord,
  readingsOf,
  stepBetween,
  totalOf,
  writtenHours,
} from '../handbook-model/hours-content.ts'
import type {HoursLine, HoursPage} from '../handbook-model/publication.ts'
import type {Vessel} from '../handbook-model/vessel-content.ts'
import {found} from './desk.ts'
import {positionPath} from './page-paths.ts'
import {recordParts} from './record-page.ts'
import {wordsEn} from './words-en.ts'

const words = wordsEn.runningHours

/** Running hours of a vessel: the last reading of each component. A record page, so that a new line moves no other. */
export function hoursPage(content: Content, vesselId: string): HoursPage {
  const vessel = found(content.vessels.get(vesselId), `vessel ${vesselId}`)
  const record = content.hours.get(vesselId)
  return {
    kind: 'hours',
    ...recordParts(content, vesselId, 'hours', {record, last: record?.readings.at(-1)?.day}),
    pumps: vessel.positions.map(({id, tag, components}) => ({
      link: {text: tag, path: positionPath(id)},
      lines:
        components.length === 0
          ? [unread(words.noComponents)]
          : components.map((component) => hoursLine(component, id, vessel, record)),
    })),
    removed: (record?.removed ?? []).map((component) => hoursLine(component, '', vessel, record)),
  }
}

/** What one component has run, by its last reading. */
export function hoursLine(
  {kind, serial}: FittedOnce,
  position: string,
  vessel: Vessel,
  record: HoursRecord | undefined,
): HoursLine {
  const readings = readingsOf(record, kind, serial)
  const last = readings.at(-1)
  const name = words.component(kind, serial)
  if (!last) return unread(name)
  const since = sinceOf(readings.at(-2), last)
  const {tenths, isLeast} = totalOf(readings)
  return {
    component: name,
    read: true,
    known: !isLeast,
    hours: isLeast ? words.atLeast(writtenHours(tenths)) : words.hours(writtenHours(tenths)),
    day: last.day,
    counted: words.counted[last.counted],
    since: since ?? wordsEn.notKnownCell,
    sinceKnown: since !== undefined,
    notes: notesOf(readings, last, position, vessel),
  }
}

/** A component whose hours nobody has read. */
function unread(component: string): HoursLine {
  return {
    component,
    read: false,
    known: false,
    hours: wordsEn.notKnownCell,
    day: words.neverRead,
    counted: '',
    since: '',
    sinceKnown: true,
    notes: [],
  }
}

/** Undefined where nobody knows: the counter was exchanged in between. */
function sinceOf(before: HoursReading | undefined, last: HoursReading): string | undefined {
  if (!before) return words.firstReading
  const step = stepBetween(before, last)
  return step === undefined ? undefined : words.since(writtenHours(step), daysBetween(before.day, last.day))
}

/** What the author wrote, an exchanged counter, and every other pump that the component ran in. */
function notesOf(
  readings: readonly HoursReading[],
  last: HoursReading,
  position: string,
  {positions}: Vessel,
): readonly string[] {
  const others = new Map<string, string>()
  for (const {at, day} of readings) if (at && at.id !== position) others.set(at.id, day)
  return [
    ...[...others].map(([id, day]) => words.ranAt(positions.find((one) => one.id === id)?.tag ?? id, day)),
    ...readings.flatMap(({newCounterTenths, day}) =>
      newCounterTenths === undefined
        ? []
        : [words.newCounter(writtenHours(newCounterTenths), day, writtenHours(last.tenths))],
    ),
    ...(last.note === '' ? [] : [last.note]),
  ]
}
