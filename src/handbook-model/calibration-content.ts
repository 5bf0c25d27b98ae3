import type {Place} from '../messages/place.ts'
import type {ComputedValue, PositionValues} from './computed.ts'
import type {Reference} from './datum.ts'
import type {Tool} from './office-content.ts'
import type {VesselRecord} from './record-files.ts'
import type {ToolAboard} from './vessel-content.ts'

/** One line of vessels/<id>/calibrations.csv: a measuring tool was calibrated on a day. */
export interface Calibration {
  readonly day: string
  readonly tool: Reference
  /** One of the numbers under which the tool lies aboard. */
  readonly number: string
  /** Label of the certificate; blank where nobody wrote it. */
  readonly certificate: string
  /** Last day that the certificate names, where it names one. */
  readonly validTo?: string
  readonly note: string
  readonly place: Place
}

/** vessels/<id>/calibrations.csv: a record that nobody signs and no page with a revision shows. */
export interface CalibrationRecord extends VesselRecord {
  /** In the order of their days. */
  readonly calibrations: readonly Calibration[]
}

/** The last day for which a calibration counts, and who says so. */
export interface ValidTo {
  readonly day: string
  readonly by: 'certificate' | 'interval'
}

/** Value id of the longest time since a calibration, in the settings of a design. */
const intervalId = 'setting.calibration-interval'

const secondsPerDay = 86_400

/** True for what measures: a tool with a range of torques or an instrument class. */
export function isMeasuring({torqueRange, instrument}: Tool): boolean {
  return torqueRange !== undefined || instrument !== undefined
}

/** Each number of a tool aboard: `OM 1 and OM 2`, `PP 8 to PP 11`; words without a number stay one. */
export function numbersOf({number}: Pick<ToolAboard, 'number'>): readonly string[] {
  return number.split(/, | and /u).flatMap((part) => {
    const [, name, first, other, last] = /^(.*?)(\d+) to (.*?)(\d+)$/u.exec(part) ?? []
    if (name === undefined || first === undefined || last === undefined || name !== other) return [part]
    const count = Number(last) - Number(first) + 1
    if (count < 1 || count > 1000) return [part]
    return Array.from(
      {length: count},
      (_, index) => `${name}${String(Number(first) + index).padStart(first.length, '0')}`,
    )
  })
}

/** The youngest calibration of one tool by its number. */
export function lastCalibration(
  record: CalibrationRecord | undefined,
  tool: string,
  number: string,
): Calibration | undefined {
  return record?.calibrations.findLast((one) => one.tool.id === tool && one.number === number)
}

/** The shortest time since a calibration that a pump of the vessel asks for; undefined where none does. */
export function calibrationInterval(pumps: Iterable<PositionValues>): ComputedValue | undefined {
  const stated = [...pumps].flatMap((values) => {
    const value = values.get(intervalId)
    return value && secondsOf(value) !== undefined ? [value] : []
  })
  return stated.reduce<ComputedValue | undefined>(
    (least, one) => (least && (secondsOf(least) ?? 0) <= (secondsOf(one) ?? 0) ? least : one),
    undefined,
  )
}

/** The day of the certificate, else so long after the calibration as the design says; undefined where neither is known. */
export function validToOf(
  {day, validTo}: Pick<Calibration, 'day' | 'validTo'>,
  interval: ComputedValue | undefined,
): ValidTo | undefined {
  if (validTo !== undefined) return {day: validTo, by: 'certificate'}
  const seconds = interval && secondsOf(interval)
  if (interval?.result.kind !== 'known' || seconds === undefined) return undefined
  const {figure, unit} = interval.result.printed
  const later =
    unit === 'months' && Number.isInteger(Number(figure))
      ? monthsLater(day, Number(figure))
      : daysLater(day, Math.floor(seconds / secondsPerDay))
  return {day: later, by: 'interval'}
}

function secondsOf({result}: ComputedValue): number | undefined {
  return result.kind === 'known' && result.quantity?.kind === 'time' ? result.quantity.si : undefined
}

/** The same day some months later, or the last one of a month that is shorter. */
function monthsLater(day: string, months: number): string {
  const [year = 0, month = 1, date = 1] = day.split('-').map(Number)
  const lastOfMonth = new Date(Date.UTC(year, month + months, 0)).getUTCDate()
  return written(Date.UTC(year, month - 1 + months, Math.min(date, lastOfMonth)))
}

function daysLater(day: string, days: number): string {
  return written(Date.parse(`${day}T00:00:00Z`) + days * secondsPerDay * 1000)
}

function written(time: number): string {
  return new Date(time).toISOString().slice(0, 10)
}
