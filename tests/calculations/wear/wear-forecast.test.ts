import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {straightLine} from '../../../src/calculations/wear/straight-line.ts'
import {studentTQuantile} from '../../../src/calculations/wear/student-t.ts'
import {wearForecast} from '../../../src/calculations/wear/wear-forecast.ts'
import {diametralMillimetres, hours} from '../../../src/quantities/named-units.ts'
import {fiveReadings, fourReadings} from '../../published-values/wear-rows.ts'

interface Series {
  readonly hours: readonly number[]
  readonly clearances: readonly number[]
  readonly limit: number
  readonly uncertainty?: number
  readonly at?: number
}

function forecast(series: Series) {
  return wearForecast({
    readings: series.hours.map((one, index) => ({
      hours: hours(one),
      clearance: diametralMillimetres(series.clearances[index] ?? 0),
    })),
    limit: diametralMillimetres(series.limit),
    instrumentUncertainty: diametralMillimetres(series.uncertainty ?? 0),
    ...(series.at === undefined ? {} : {at: hours(series.at)}),
  })
}

function inHours(time: {readonly si: number} | undefined): number {
  return (time?.si ?? Number.NaN) / 3600
}

/** Hours at which the upper edge meets the limit, by the closed form of the quadratic equation behind the band. */
function bandByQuadratic(series: Series): number {
  const line = straightLine(series.hours, series.clearances)
  const factor = studentTQuantile(0.975, line.count - 2) * line.residualDeviation
  const rest = series.limit - line.intercept - line.slope * line.meanX
  const a = line.slope ** 2 - factor ** 2 / line.spreadX
  const b = -2 * rest * line.slope
  const c = rest ** 2 - factor ** 2 * (1 + 1 / line.count)
  return line.meanX + (-b - Math.sqrt(b ** 2 - 4 * a * c)) / (2 * a)
}

describe('wear forecast from five readings', () => {
  const result = forecast(fiveReadings)

  test('line, crossing and band are those computed apart from this project', () => {
    expect(Math.abs(result.start.si * 1000 - fiveReadings.intercept)).toBeLessThanOrEqual(0.0001)
    expect(result.wear.si * 3.6e6).toBeCloseTo(fiveReadings.slopePerHour, 9)
    expect(Math.abs(result.residualDeviation.si * 1000 - fiveReadings.deviation)).toBeLessThanOrEqual(1e-6)
    expect(Math.abs(inHours(result.limitReached?.byLine) - fiveReadings.lineMeetsLimit)).toBeLessThanOrEqual(
      1,
    )
    expect(Math.abs(inHours(result.limitReached?.byBand) - fiveReadings.bandMeetsLimit)).toBeLessThanOrEqual(
      1,
    )
    expect(Math.abs((result.expected?.lower.si ?? 0) * 1000 - fiveReadings.lower)).toBeLessThanOrEqual(0.0001)
    expect(Math.abs((result.expected?.upper.si ?? 0) * 1000 - fiveReadings.upper)).toBeLessThanOrEqual(0.0001)
  })

  test('the band governs where it meets the limit before the line less the uncertainty', () => {
    expect(result.limitReached?.governs).toBe('prediction band')
    expect(inHours(result.limitReached?.due)).toBeCloseTo(fiveReadings.bandMeetsLimit, -1)
    const coarse = forecast({...fiveReadings, uncertainty: 0.1})
    expect(coarse.limitReached?.governs).toBe('line less uncertainty')
    expect(inHours(coarse.limitReached?.due)).toBeCloseTo((0.8 - 0.498) / 1.525e-5, 0)
  })

  test('the band meets the limit where the quadratic equation says', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({min: -0.012, max: 0.012, noNaN: true}), {minLength: 5, maxLength: 12}),
        fc.double({min: 1e-5, max: 5e-5, noNaN: true}),
        (scatter, slope) => {
          const series = {
            hours: scatter.map((_, index) => index * 2000),
            clearances: scatter.map((one, index) => 0.5 + slope * index * 2000 + one),
            limit: 2.2,
          }
          const last = (scatter.length - 1) * 2000
          const line = straightLine(series.hours, series.clearances)
          fc.pre(line.slope > 4 * line.slopeDeviation)
          const expected = bandByQuadratic(series)
          fc.pre(expected > last)
          expect(inHours(forecast(series).limitReached?.byBand) / expected).toBeCloseTo(1, 6)
        },
      ),
    )
  })

  test('a band that has met the limit is due at the last reading, not before it', () => {
    const late = forecast({...fiveReadings, limit: 0.745})
    expect(inHours(late.limitReached?.byBand)).toBe(16_000)
    const past = forecast({...fiveReadings, limit: 0.6})
    expect(inHours(past.limitReached?.byBand)).toBe(16_000)
    expect(past.limitReached?.governs).toBe('line less uncertainty')
  })
})

describe('wear forecast from fewer readings', () => {
  const result = forecast({...fourReadings, at: 8000})

  test('four readings give 0.041 mm per 1000 h, the limit at 11 850 h and the due hours at 11 100 h (computed apart from this project)', () => {
    expect(Math.abs(result.wear.si * 3.6e6 * 1000 - fourReadings.perThousandHours)).toBeLessThanOrEqual(
      0.0005,
    )
    expect(Math.abs(inHours(result.limitReached?.byLine) - fourReadings.lineMeetsLimit)).toBeLessThanOrEqual(
      25,
    )
    expect(Math.abs(inHours(result.limitReached?.due) - fourReadings.due)).toBeLessThanOrEqual(25)
    expect(result.limitReached?.due).toEqual(result.limitReached?.byCondition)
  })

  test('they show a band but do not use it, and are flagged beyond one and a half times their span', () => {
    expect(result.limitReached?.byBand).toBeUndefined()
    expect(result.limitReached?.governs).toBe('line less uncertainty')
    expect(result.expected?.upper.si).toBeGreaterThan(result.expected?.clearance.si ?? 1)
    expect(result.limitReached?.beyondSpan).toBe(true)
    expect(forecast({...fourReadings, limit: 0.86}).limitReached?.beyondSpan).toBe(false)
  })

  test.each([
    [9749, false],
    [9750, false],
    [9751, true],
  ])('hours asked for at %d h are beyond the span of 0 to 6500 h: %s', (at, beyond) => {
    expect(forecast({...fourReadings, at}).expected?.beyondSpan).toBe(beyond)
  })

  test('the span is counted from the first reading', () => {
    const shifted = {...fourReadings, hours: fourReadings.hours.map((one) => one + 30_000)}
    expect(forecast({...shifted, at: 39_750}).expected?.beyondSpan).toBe(false)
    expect(forecast({...shifted, at: 39_751}).expected?.beyondSpan).toBe(true)
    expect(inHours(forecast(shifted).limitReached?.due)).toBeCloseTo(
      inHours(result.limitReached?.due) + 30_000,
      3,
    )
  })

  test('three readings are enough and two are refused', () => {
    const three = {...fourReadings, hours: [0, 2100, 4300], clearances: [0.48, 0.56, 0.66]}
    expect(forecast(three).limitReached?.governs).toBe('line less uncertainty')
    expect(() => forecast({...three, hours: [0, 2100]})).toThrow(
      'Unexpected 2 readings since the renewal, expected at least 3: two points always lie on a line',
    )
  })

  test('a ring that does not wear reaches no limit', () => {
    expect(
      forecast({hours: [0, 1000, 2000], clearances: [0.5, 0.49, 0.5], limit: 0.9}).limitReached,
    ).toBeUndefined()
    expect(
      forecast({hours: [0, 1000, 2000], clearances: [0.5, 0.49, 0.48], limit: 0.9}).limitReached,
    ).toBeUndefined()
  })

  test('a ring past its limit was due before its last reading', () => {
    const {limitReached} = forecast({...fourReadings, limit: 0.7})
    expect(inHours(limitReached?.due)).toBeLessThan(6500)
    expect(limitReached?.beyondSpan).toBe(false)
  })

  test('readings out of order, at one time, or with a negative uncertainty are refused', () => {
    expect(() => forecast({...fourReadings, hours: [0, 4300, 2100, 6500]})).toThrow(
      'Unexpected reading at 2100 h after one at 4300 h, expected readings in the order of the hours',
    )
    expect(() => forecast({...fourReadings, hours: [5, 5, 5, 5]})).toThrow('Unexpected points at one place')
    expect(() => forecast({...fourReadings, uncertainty: -0.01})).toThrow(
      'Unexpected uncertainty of −0.01 mm diametral, expected zero or more',
    )
  })

  test('more uncertainty is due earlier, by the uncertainty over the wear', () => {
    fc.assert(
      fc.property(fc.double({min: 0, max: 0.2, noNaN: true}), (uncertainty) => {
        const {limitReached, wear} = forecast({...fourReadings, uncertainty})
        const earlier = (limitReached?.byLine.si ?? 0) - (limitReached?.byCondition.si ?? 0)
        expect(earlier * wear.si * 1000).toBeCloseTo(uncertainty, 9)
      }),
    )
  })
})
