import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {runOut} from '../../../src/calculations/run-out/run-out.ts'
import {totalIndicatorReading} from '../../../src/calculations/run-out/total-indicator-reading.ts'
import {millimetresOfDifference} from '../../../src/quantities/named-units.ts'

/** Result in mm and degrees. */
function found(readings: readonly number[]) {
  const result = runOut(readings.map(millimetresOfDifference))
  return {
    total: result.totalIndicatorReading.si * 1000,
    eccentricity: result.eccentricity.si * 1000,
    phase: result.phase ? (result.phase.si * 180) / Math.PI : undefined,
    mean: result.mean.si * 1000,
    residualRange: result.residualRange.si * 1000,
  }
}

/** Readings of one harmonic in mm, phase in degrees. */
function wave(count: number, offset: number, eccentricity: number, phase: number): readonly number[] {
  return Array.from(
    {length: count},
    (_, index) => offset + eccentricity * Math.cos((2 * Math.PI * index) / count - (phase * Math.PI) / 180),
  )
}

function squares(
  readings: readonly number[],
  [mean, cosine, sine]: readonly [number, number, number],
): number {
  return readings.reduce((sum, reading, index) => {
    const angle = (2 * Math.PI * index) / readings.length
    return sum + (reading - mean - cosine * Math.cos(angle) - sine * Math.sin(angle)) ** 2
  }, 0)
}

/** The best fit by another way: no formula, only steps in all directions that shrink when none of them helps. */
function searchedFit(readings: readonly number[]): readonly [number, number, number] {
  let best: readonly [number, number, number] = [0, 0, 0]
  for (let step = 1; step > 1e-10; step /= 2) {
    for (let moved = true; moved; ) {
      moved = false
      for (const axis of [0, 1, 2] as const) {
        for (const sign of [-1, 1]) {
          const [mean, cosine, sine] = best
          const next = [mean, cosine, sine] as const
          const tried: readonly [number, number, number] = [
            next[0] + (axis === 0 ? sign * step : 0),
            next[1] + (axis === 1 ? sign * step : 0),
            next[2] + (axis === 2 ? sign * step : 0),
          ]
          if (squares(readings, tried) < squares(readings, best)) {
            best = tried
            moved = true
          }
        }
      }
    }
  }
  return best
}

const someReadings = fc.array(fc.double({min: -0.5, max: 0.5, noNaN: true}), {minLength: 3, maxLength: 24})

describe('total indicator reading', () => {
  test('one reading is refused', () => {
    expect(() => totalIndicatorReading([millimetresOfDifference(0.1)])).toThrow(
      'Unexpected 1 readings, expected at least two',
    )
  })
})

describe('run-out', () => {
  test('eight stations show less than twice an eccentricity whose peak lies between them', () => {
    const result = found(wave(8, 0, 0.05, 30))
    expect(result.total).toBeLessThan(2 * result.eccentricity)
    expect(result.total).toBeGreaterThanOrEqual(2 * result.eccentricity * Math.cos(Math.PI / 8) - 1e-12)
  })

  test('agrees with a fit that is searched for step by step', () => {
    fc.assert(
      fc.property(someReadings, (readings) => {
        const [mean, cosine, sine] = searchedFit(readings)
        const result = found(readings)
        expect(result.mean).toBeCloseTo(mean, 6)
        expect(result.eccentricity).toBeCloseTo(Math.hypot(cosine, sine), 6)
      }),
      {numRuns: 40},
    )
  })

  test('no other mean and wave leave a smaller rest', () => {
    const small = fc.double({min: -0.1, max: 0.1, noNaN: true})
    fc.assert(
      fc.property(someReadings, small, small, small, (readings, a, b, c) => {
        const {mean, eccentricity, phase = 0} = found(readings)
        const angle = (phase * Math.PI) / 180
        const [cosine, sine] = [eccentricity * Math.cos(angle), eccentricity * Math.sin(angle)]
        expect(squares(readings, [mean, cosine, sine])).toBeLessThanOrEqual(
          squares(readings, [mean + a, cosine + b, sine + c]) + 1e-12,
        )
      }),
    )
  })

  test('a pure wave comes back with its eccentricity, phase and mean', () => {
    fc.assert(
      fc.property(
        fc.integer({min: 3, max: 36}),
        fc.double({min: -1, max: 1, noNaN: true}),
        fc.double({min: 0.001, max: 1, noNaN: true}),
        fc.double({min: 1, max: 359, noNaN: true}),
        (count, offset, eccentricity, phase) => {
          const result = found(wave(count, offset, eccentricity, phase))
          expect(result.eccentricity).toBeCloseTo(eccentricity, 9)
          expect(result.phase).toBeCloseTo(phase, 6)
          expect(result.mean).toBeCloseTo(offset, 9)
          expect(result.residualRange).toBeLessThanOrEqual(1e-9)
          expect(result.total).toBeGreaterThanOrEqual(2 * eccentricity * Math.cos(Math.PI / count) - 1e-9)
          expect(result.total).toBeLessThanOrEqual(2 * eccentricity + 1e-9)
        },
      ),
    )
  })

  test('setting the dial anew changes only the mean', () => {
    fc.assert(
      fc.property(someReadings, fc.double({min: -1, max: 1, noNaN: true}), (readings, shift) => {
        const [one, other] = [found(readings), found(readings.map((reading) => reading + shift))]
        expect(other.mean - one.mean).toBeCloseTo(shift, 9)
        expect(other.total).toBeCloseTo(one.total, 9)
        expect(other.eccentricity).toBeCloseTo(one.eccentricity, 9)
        expect(other.residualRange).toBeCloseTo(one.residualRange, 9)
      }),
    )
  })

  test('starting k stations later turns the phase back by 360k/n degrees', () => {
    fc.assert(
      fc.property(
        fc.integer({min: 3, max: 24}),
        fc.integer({min: 0, max: 23}),
        fc.double({min: 0, max: 359, noNaN: true}),
        (count, later, phase) => {
          const k = later % count
          const readings = wave(count, 0.2, 0.05, phase)
          const turned = found([...readings.slice(k), ...readings.slice(0, k)]).phase ?? Number.NaN
          const change = (found(readings).phase ?? Number.NaN) - turned - (360 * k) / count
          expect(Math.abs(Math.sin((change * Math.PI) / 360))).toBeLessThanOrEqual(1e-7)
        },
      ),
    )
  })

  test.each([
    ['all alike', [0.03, 0.03, 0.03, 0.03, 0.03, 0.03, 0.03]],
    ['five alike, whose mean is rounded', [0.03, 0.03, 0.03, 0.03, 0.03]],
    ['all nothing', [0, 0, 0]],
    [
      'a three-lobed part',
      wave(12, 0.1, 0, 0).map((one, index) => one + 0.02 * Math.cos((Math.PI * index) / 2)),
    ],
  ])('%s has no phase', (_, readings) => {
    const result = found(readings)
    expect(result.phase).toBeUndefined()
    expect(result.eccentricity).toBeLessThanOrEqual(1e-12)
  })

  test('a part that stands out at the first station has phase nothing, never a full turn', () => {
    for (let count = 3; count <= 24; count += 1)
      expect(found(wave(count, 0.1, 0.05, 0)).phase).toBeLessThan(1e-6)
  })

  test('fewer than three readings are refused', () => {
    expect(() => found([0, 0.1])).toThrow(
      'Unexpected 2 readings, expected at least three at even steps of one turn',
    )
  })
})
