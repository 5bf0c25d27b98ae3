import {chartWordsEn} from '../figures/charts/chart-words-en.ts'
import {wearChart} from '../figures/charts/wear-chart.ts'
import type {ServiceRule, WearData, WearLimit, WearPoint} from '../figures/charts/wear-trend.ts'
import type {ChartSection, FieldRow} from '../handbook-model/chart-section.ts'
import type {KnownDatum} from '../handbook-model/datum.ts'
import {
  daysBetween,
  type HoursRecord,
  readingsOf,
  totalOf,
  writtenHours,
} from '../handbook-model/hours-content.ts'
import type {WearReading} from '../handbook-model/wear-history.ts'
import {printFigure, valueIn} from '../quantities/print-quantity.ts'
import {chartJson, field, instrumentTitles, uncertaintyOf} from './chart-section.ts'
import {found, type PumpDesk} from './desk.ts'
import {procedurePath} from './page-paths.ts'
import {recordWordsEn} from './record-words-en.ts'
import {jobsOf, proceduresShowing} from './used-in.ts'
import {wordsEn} from './words-en.ts'

const words = recordWordsEn.wear

/** Clearances of the head that is fitted in this pump, wherever they were read. */
export function wearReadings(desk: PumpDesk): readonly WearReading[] {
  const head = desk.position.components.find(({kind}) => kind === 'head')?.serial
  const readings = desk.content.wear.get(desk.vessel.id)?.readings ?? []
  return head === undefined ? [] : readings.filter((one) => one.head.id === head)
}

/** A section for each wear ring of the design, by the readings of the head that is fitted. */
export function wearSections(desk: PumpDesk): readonly ChartSection[] {
  const readings = wearReadings(desk)
  const head = desk.position.components.find(({kind}) => kind === 'head')?.serial ?? recordWordsEn.notFitted
  return desk.design.rings.map((ring) => {
    const own = readings.filter((one) => one.ring.id === ring.id)
    const data: WearData = {
      what: words.what(ring.title.en, head),
      readings: own.map((one) => pointOf(one, desk)),
      ...limitsOf(ring.id, desk),
      service: serviceOf(ring.id, head, desk),
    }
    const {svg, statements} = wearChart(data, chartWordsEn)
    return {
      id: `wear-${ring.id}`,
      kind: 'wear',
      title: words.title(ring.title.en),
      ...(own.length > 0 ? {figure: {svg}} : {}),
      statements,
      json: chartJson(data),
      columns: words.columns,
      rows: own.map((one) => ({head: one.day, cells: cellsOf(one, desk)})),
      form: formOf(`wear-${ring.id}`, data),
    }
  })
}

function pointOf(reading: WearReading, desk: PumpDesk): WearPoint {
  const {day, tenths, clearance, leastGap, phase, renewed, instruments} = reading
  const uncertainty = uncertaintyOf(instruments, 'length', 'mm', desk)
  return {
    day,
    hours: tenths / 10,
    clearance: inMillimetres(valueIn(clearance, 'mm diametral')),
    ...(leastGap ? {leastGap: inMillimetres(valueIn(leastGap, 'mm diametral'))} : {}),
    phase,
    renewed,
    ...(uncertainty === undefined ? {} : {uncertainty}),
  }
}

/** Free of what the conversion leaves in the last digits. */
function inMillimetres(value: number): number {
  return Number(value.toFixed(6))
}

function limitsOf(ring: string, desk: PumpDesk): Pick<WearData, 'renewal' | 'minimumNew'> {
  const renewal = limitOf(`${ring}.renewal`, 'not-above', desk)
  const minimumNew = limitOf(`${ring}.minimum-new`, 'not-below', desk)
  return {...(renewal ? {renewal} : {}), ...(minimumNew ? {minimumNew} : {})}
}

/** A limit of the design as the pump's values know it, urgent revisions counted in; none where the value is not known. Without a limit the usual action counts. */
function limitOf(
  value: string,
  side: 'not-above' | 'not-below',
  {design, values}: PumpDesk,
): WearLimit | undefined {
  const limit = design.limits.find((one) => one.value.id === value && one.side === side)
  const known = values.get(value)
  if (known?.result.kind !== 'known') return undefined
  const {quantity} = known.result
  if (quantity?.kind !== 'diametral-clearance') return undefined
  return {
    value: inMillimetres(valueIn(quantity, 'mm diametral')),
    outside: limit?.outside ?? (side === 'not-above' ? 'RENEW' : 'STOP'),
    governs: known.condition?.split(';')[0] ?? '',
  }
}

/** The jobs that measure the ring: the shortest of their intervals counts, and how fast the hours of the head grow. */
function serviceOf(ring: string, head: string, desk: PumpDesk): ServiceRule {
  const measuring = new Set(proceduresShowing(`${ring}.renewal`, desk).map(({path}) => path))
  const jobs = jobsOf([desk]).filter(({procedures}) =>
    procedures.some(({id}) =>
      measuring.has(procedurePath(found(desk.content.procedures.get(id), `procedure ${id}`), desk)),
    ),
  )
  const byHours = jobs
    .flatMap(({interval}) => (interval.hours ? [valueIn(interval.hours.quantity, 'h')] : []))
    .sort((a, b) => a - b)[0]
  const calendar = jobs
    .flatMap(({interval}) => interval.calendar.slice(0, 1))
    .sort((a, b) => a.every.quantity.si - b.every.quantity.si)[0]
  return {
    job: jobs.map(({title}) => title.en).join(', '),
    ...(byHours === undefined ? {} : {hours: byHours}),
    ...(calendar
      ? {
          every: calendarOf(calendar.every),
          calendar: wordsEn.interval.calendar(calendar.every.figure, calendar.every.unit),
        }
      : {}),
    ...rateOf(desk.content.hours.get(desk.vessel.id), head),
  }
}

/** Whole months stay months, so that the day of the month stays. */
function calendarOf({quantity, figure, unit}: KnownDatum<'time'>): NonNullable<ServiceRule['every']> {
  const count = Number(figure)
  return unit === 'months' && Number.isInteger(count)
    ? {count, unit: 'months'}
    : {count: Math.floor(valueIn(quantity, 'd')), unit: 'days'}
}

/** Hours a day over all readings of a head; unknown behind an exchanged counter. */
function rateOf(record: HoursRecord | undefined, head: string): Pick<ServiceRule, 'rate' | 'last'> {
  const readings = readingsOf(record, 'head', head)
  const [first] = readings
  const last = readings.at(-1)
  const {tenths, isLeast} = totalOf(readings)
  if (!first || !last || isLeast) return {}
  const days = daysBetween(first.day, last.day)
  const known = {last: {day: last.day, hours: tenths / 10}}
  return days > 0
    ? {...known, rate: {perDay: (last.tenths - first.tenths) / 10 / days, from: first.day, to: last.day}}
    : known
}

function cellsOf(reading: WearReading, desk: PumpDesk): readonly string[] {
  const {at, tenths, phase, clearance, leastGap, renewed, instruments, note} = reading
  const millimetres = (value: typeof clearance): string => printFigure(valueIn(value, 'mm diametral'), 2)
  return [
    desk.vessel.positions.find(({id}) => id === at.id)?.tag ?? at.id,
    words.hours(writtenHours(tenths)),
    words.phases[phase],
    words.clearance(millimetres(clearance)),
    leastGap ? words.gap(millimetres(leastGap)) : recordWordsEn.notWritten,
    renewed ? recordWordsEn.yes : '',
    instrumentTitles(instruments, desk),
    note,
  ]
}

function formOf(id: string, {readings}: WearData): readonly FieldRow[] {
  const {form} = words
  const last = readings.at(-1)
  return [
    {
      legend: '',
      fields: [
        field(id, 'day', form.day, {type: 'date'}),
        field(id, 'hours', form.hours),
        field(id, 'clearance', form.clearance),
        field(id, 'uncertainty', form.uncertainty, {
          value: last?.uncertainty === undefined ? '' : String(last.uncertainty),
        }),
        field(id, 'phase', form.phase, {options: Object.entries(form.phases)}),
        field(id, 'gap', form.gap),
      ],
    },
  ]
}
