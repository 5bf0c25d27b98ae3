import fc from 'fast-check'
import {linearRegression, rSquared} from 'simple-statistics'
import {describe, expect, test} from 'vitest'
import {lineAt, predictionHalfWidth, straightLine} from '../../../src/calculations/wear/straight-line.ts'
import {fiveReadings} from '../../published-values/wear-rows.ts'

const points = fc
  .array(fc.tuple(fc.double({min: 0, max: 100, noNaN: true}), fc.double({min: -50, max: 50, noNaN: true})), {
    minLength: 3,
    maxLength: 30,
  })
  .filter((all) => new Set(all.map(([x]) => Math.round(x))).size > 2)

function lineThrough(all: readonly (readonly [number, number])[]) {
  return straightLine(
    all.map(([x]) => x),
    all.map(([, y]) => y),
  )
}

describe('straight line by least squares', () => {
  test('agrees with an independent library', () => {
    fc.assert(
      fc.property(points, (all) => {
        fc.pre(new Set(all.map(([, y]) => Math.round(y))).size > 1)
        const line = lineThrough(all)
        const data = all.map(([x, y]) => [x, y])
        const other = linearRegression(data)
        expect(line.slope).toBeCloseTo(other.m, 6)
        expect(line.intercept).toBeCloseTo(other.b, 5)
        expect(line.determination).toBeCloseTo(
          rSquared(data, (x) => other.b + other.m * x),
          6,
        )
      }),
    )
  })

  test('passes through the means, and no other line through them leaves less', () => {
    fc.assert(
      fc.property(points, fc.double({min: -1, max: 1, noNaN: true}), (all, turn) => {
        const line = lineThrough(all)
        const meanY = all.reduce((sum, [, y]) => sum + y, 0) / all.length
        expect(lineAt(line, line.meanX)).toBeCloseTo(meanY, 8)
        const left = all.reduce(
          (sum, [x, y]) => sum + (y - meanY - (line.slope + turn) * (x - line.meanX)) ** 2,
          0,
        )
        expect(left).toBeGreaterThanOrEqual(line.sumOfSquaredResiduals - 1e-6)
      }),
    )
  })

  test.each([
    [[1, 2], [1, 2], 'Unexpected 2 points, expected at least 3'],
    [[1, 2, 3], [1, 2], 'Unexpected 2 values for 3 places, expected as many'],
    [[4, 4, 4], [1, 2, 3], 'Unexpected points at one place, expected at least two places'],
  ])('places %j with values %j are refused', (xs, ys, reason) => {
    expect(() => straightLine(xs, ys)).toThrow(reason)
  })

  test('points all at one height are explained wholly by a level line', () => {
    expect(straightLine([0, 1, 2], [3, 3, 3])).toMatchObject({slope: 0, determination: 1})
  })
})

describe('interval for one more point', () => {
  test('is narrowest at the mean, even on both sides, and wider with more confidence', () => {
    const line = straightLine(fiveReadings.hours, fiveReadings.clearances)
    const half = (x: number, confidence = 0.95) => predictionHalfWidth(line, x, confidence)
    expect(half(8000)).toBeLessThan(half(9000))
    expect(half(3000)).toBeCloseTo(half(13_000), 12)
    expect(half(8000, 0.99)).toBeGreaterThan(half(8000))
  })

  test('is refused without a third point and without a confidence between nothing and all', () => {
    const line = {count: 2, meanX: 0, spreadX: 1, residualDeviation: 1}
    expect(() => predictionHalfWidth(line, 0, 0.95)).toThrow('Unexpected 2 points')
    expect(() => predictionHalfWidth({...line, count: 5}, 0, 1)).toThrow('Unexpected probability 1')
  })
})
