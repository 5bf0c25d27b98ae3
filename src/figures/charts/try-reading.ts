import type {ChartWords} from './chart-words-en.ts'
import type {HoldData, HoldPoint} from './hold-results.ts'
import {type PurgeData, type PurgePoint, purgeFluids} from './purge-results.ts'
import type {WearData, WearPoint} from './wear-trend.ts'

/** What was typed into a form, by the names of its fields. */
export type Entries = ReadonlyMap<string, string>

/** Data with the reading that is tried, or in plain words why it cannot be. */
export type Tried<Data> =
  | {readonly ok: true; readonly data: Data}
  | {readonly ok: false; readonly refusal: string}

/** A number as a form gives it. */
type ReadNumber = {readonly ok: true; readonly value: number} | {readonly ok: false; readonly refusal: string}

/** Wear with one more clearance, marked as tried. */
export function tryClearance(data: WearData, entries: Entries, all: ChartWords): Tried<WearData> {
  const words = all.tryIt
  const day = dayOf(entries, all)
  if (!day.ok) return day
  const hours = numberOf(entries, 'hours', words.names.hours, all)
  if (!hours.ok) return hours
  const clearance = numberOf(entries, 'clearance', words.names.clearance, all)
  if (!clearance.ok) return clearance
  if (clearance.value === 0) return refused(words.zeroClearance)
  const uncertainty = optionalNumber(entries, 'uncertainty', words.names.uncertainty, all)
  if (!uncertainty.ok) return uncertainty
  const gap = optionalNumber(entries, 'gap', words.names.gap, all)
  if (!gap.ok) return gap
  if (gap.value !== undefined && gap.value > clearance.value) return refused(words.wideGap)
  const last = data.readings.at(-1)
  if (last && day.value < last.day) return refused(words.earlier(last.day))
  if (last && hours.value < last.hours) return refused(words.fall(String(last.hours)))
  const renewed = entries.get('phase') === 'renewed'
  const point: WearPoint = {
    day: day.value,
    hours: hours.value,
    clearance: clearance.value,
    ...(gap.value === undefined ? {} : {leastGap: gap.value}),
    phase: renewed ? 'as-left' : 'as-found',
    renewed,
    ...(uncertainty.value === undefined ? {} : {uncertainty: uncertainty.value}),
    tried: true,
  }
  return {ok: true, data: {...data, readings: [...data.readings, point]}}
}

/** Purges with one more, marked as tried. */
export function tryPurge(data: PurgeData, entries: Entries, all: ChartWords): Tried<PurgeData> {
  const words = all.tryIt
  const day = dayOf(entries, all)
  if (!day.ok) return day
  const hours = numberOf(entries, 'hours', words.names.since, all)
  if (!hours.ok) return hours
  const volume = numberOf(entries, 'volume', words.names.volume, all)
  if (!volume.ok) return volume
  const uncertainty = optionalNumber(entries, 'uncertainty', words.names.volumeDoubt, all)
  if (!uncertainty.ok) return uncertainty
  const fluid = purgeFluids.find((one) => one === entries.get('fluid')) ?? 'mixture'
  if (fluid === 'none' && volume.value > 0) return refused(words.dry)
  if (fluid !== 'none' && volume.value === 0) return refused(words.wet)
  const last = data.results.at(-1)
  if (last && day.value < last.day) return refused(words.earlier(last.day))
  const point: PurgePoint = {
    day: day.value,
    hours: hours.value,
    gas: entries.get('gas') === 'yes',
    volume: volume.value,
    fluid,
    ...(uncertainty.value === undefined ? {} : {uncertainty: uncertainty.value}),
    tried: true,
  }
  return {ok: true, data: {...data, results: [...data.results, point]}}
}

/** A whole pressure hold that is tried in place of the one on record. */
export function tryHold(data: HoldData, entries: Entries, all: ChartWords): Tried<HoldData> {
  const {names, rows, order, barometerRange, temperatureRange} = all.tryIt
  const readings: HoldPoint[] = []
  for (const [index, row] of rows.entries()) {
    const key = (name: string): string => `${name}-${index + 1}`
    const isBlank = ['minute', 'gauge', 'temperature', 'barometer'].every(
      (name) => (entries.get(key(name)) ?? '').trim() === '',
    )
    if (isBlank && row === rows[1]) continue
    const minute = numberOf(entries, key('minute'), names.minute(row), all)
    if (!minute.ok) return minute
    const gauge = numberOf(entries, key('gauge'), names.gauge(row), all)
    if (!gauge.ok) return gauge
    const temperature = numberOf(entries, key('temperature'), names.temperature(row), all, true)
    if (!temperature.ok) return temperature
    if (temperature.value < -60 || temperature.value > 200) return refused(temperatureRange)
    const barometer = numberOf(entries, key('barometer'), names.barometer(row), all)
    if (!barometer.ok) return barometer
    if (barometer.value < 800 || barometer.value > 1100) return refused(barometerRange)
    const before = readings.at(-1)
    if (before && minute.value <= before.minute) return refused(order)
    readings.push({
      minute: minute.value,
      gauge: gauge.value,
      temperature: temperature.value,
      barometer: barometer.value,
      tried: true,
    })
  }
  return {ok: true, data: {...data, test: '', readings}}
}

/** A refusal in plain words. */
export function refused(refusal: string): {readonly ok: false; readonly refusal: string} {
  return {ok: false, refusal}
}

/** The day of a reading. */
export function dayOf(
  entries: Entries,
  {tryIt}: ChartWords,
): {readonly ok: true; readonly value: string} | {readonly ok: false; readonly refusal: string} {
  const day = (entries.get('day') ?? '').trim()
  if (day === '') return refused(tryIt.noDay)
  return isCalendarDay(day) ? {ok: true, value: day} : refused(tryIt.badDay(day))
}

function isCalendarDay(day: string): boolean {
  const [, year = '', month = '', date = ''] = /^((?:19|20|21)\d{2})-(\d{2})-(\d{2})$/u.exec(day) ?? []
  if (year === '') return false
  const last = new Date(Date.UTC(Number(year), Number(month), 0)).getUTCDate()
  return Number(month) >= 1 && Number(month) <= 12 && Number(date) >= 1 && Number(date) <= last
}

/** A number that has to be there; of zero or more where nothing else is said. */
export function numberOf(
  entries: Entries,
  name: string,
  what: string,
  {tryIt}: ChartWords,
  mayBeNegative = false,
): ReadNumber {
  const text = (entries.get(name) ?? '').trim().replace(/^−/u, '-')
  if (text === '') return refused(tryIt.missing(what))
  if (/^-?\d+,\d+$/u.test(text)) return refused(tryIt.comma(what, text))
  const form = mayBeNegative ? /^-?\d{1,7}(?:\.\d{1,6})?$/u : /^\d{1,7}(?:\.\d{1,6})?$/u
  return form.test(text) ? {ok: true, value: Number(text)} : refused(tryIt.noNumber(what, text))
}

/** A number of zero or more, or nothing. */
export function optionalNumber(
  entries: Entries,
  name: string,
  what: string,
  words: ChartWords,
): {readonly ok: true; readonly value: number | undefined} | {readonly ok: false; readonly refusal: string} {
  return (entries.get(name) ?? '').trim() === ''
    ? {ok: true, value: undefined}
    : numberOf(entries, name, what, words)
}
