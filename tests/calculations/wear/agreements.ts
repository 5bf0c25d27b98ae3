import {predictionHalfWidth, straightLine} from '../../../src/calculations/wear/straight-line.ts'
import {studentTQuantile} from '../../../src/calculations/wear/student-t.ts'
import {type WearForecast, wearForecast} from '../../../src/calculations/wear/wear-forecast.ts'
import {diametralMillimetres, hours} from '../../../src/quantities/named-units.ts'
import {type HeldRows, heldTo, near} from '../../published-values/agreement.ts'
import {published as norris, norrisPoints} from '../../published-values/nist-norris.ts'
import {published as wear} from '../../published-values/wear-rows.ts'

const line = straightLine(
  norrisPoints.map(([x]) => x),
  norrisPoints.map(([, y]) => y),
)

function forecast(series: {
  readonly hours: readonly number[]
  readonly clearances: readonly number[]
  readonly limit: number
  readonly uncertainty?: number
  readonly at?: number
}): WearForecast {
  return wearForecast({
    readings: series.hours.map((one, index) => ({
      hours: hours(one),
      clearance: diametralMillimetres(series.clearances[index] ?? Number.NaN),
    })),
    limit: diametralMillimetres(series.limit),
    instrumentUncertainty: diametralMillimetres(series.uncertainty ?? 0),
    ...(series.at === undefined ? {} : {at: hours(series.at)}),
  })
}

function inHours(time: {readonly si: number} | undefined): number {
  return (time?.si ?? Number.NaN) / 3600
}

function inMillimetres(length: {readonly si: number} | undefined): number {
  return (length?.si ?? Number.NaN) * 1000
}

/** Wear against every published row. */
export const agreements: readonly HeldRows[] = [
  heldTo(norris.certified, ([name, certified]) => [
    near(name, line[name], certified, Math.abs(certified) * 1e-10),
  ]),
  heldTo(wear.studentT, ([degrees, t]) => [near('t', studentTQuantile(0.975, degrees), t, 0.0001)]),
  heldTo(wear.intervalAtMean, ({points, deviation, expected, half, lower, upper}) => {
    const found = predictionHalfWidth(
      {count: points, meanX: 7, spreadX: 3, residualDeviation: deviation},
      7,
      0.95,
    )
    return [
      near('half width', found, half, 0.005),
      near('lower', expected - found, lower, 0.005),
      near('upper', expected + found, upper, 0.005),
    ]
  }),
  heldTo(wear.fiveReadings, (row) => {
    const found = forecast(row)
    return [
      near('intercept in mm', inMillimetres(found.start), row.intercept, 0.0001),
      near('slope in mm/h', found.wear.si * 3.6e6, row.slopePerHour, 5e-9),
      near('deviation in mm', inMillimetres(found.residualDeviation), row.deviation, 1e-6),
      near('line meets the limit at h', inHours(found.limitReached?.byLine), row.lineMeetsLimit, 1),
      near('band meets the limit at h', inHours(found.limitReached?.byBand), row.bandMeetsLimit, 1),
      near('lower in mm', inMillimetres(found.expected?.lower), row.lower, 0.0001),
      near('upper in mm', inMillimetres(found.expected?.upper), row.upper, 0.0001),
    ]
  }),
  heldTo(wear.fourReadings, (row) => {
    const found = forecast(row)
    return [
      near('mm in 1000 h', found.wear.si * 3.6e9, row.perThousandHours, 0.0005),
      near('line meets the limit at h', inHours(found.limitReached?.byLine), row.lineMeetsLimit, 25),
      near('due at h', inHours(found.limitReached?.due), row.due, 25),
    ]
  }),
]
