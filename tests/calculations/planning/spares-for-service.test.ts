import {compiled, pdtr} from 'cephes'
import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {expectedUse, sparesForService} from '../../../src/calculations/planning/spares-for-service.ts'
import {count, hours, percent, ratio} from '../../../src/quantities/named-units.ts'

await compiled

function spares(mean: number, level: number) {
  return sparesForService({expectedUse: count(mean), serviceLevel: ratio(level)})
}

describe('spares for a service level', () => {
  test('an expected use of 1.6 pieces takes 4 for 95 %, which serve 97.6 % (computed apart from this project)', () => {
    const result = spares(1.6, 0.95)
    expect(result.stock.si).toBe(4)
    expect(Math.abs(result.served.si - 0.976)).toBeLessThanOrEqual(0.0005)
    expect(result.servedWithOneLess?.si).toBeLessThan(0.95)
  })

  test('agrees with an independent library, and is the smallest stock that serves', () => {
    fc.assert(
      fc.property(
        fc.double({min: 0.001, max: 200, noNaN: true}),
        fc.double({min: 0.5, max: 0.9999, noNaN: true}),
        (mean, level) => {
          const {stock, served, servedWithOneLess} = spares(mean, level)
          expect(served.si).toBeCloseTo(pdtr(stock.si, mean), 9)
          expect(served.si).toBeGreaterThanOrEqual(level)
          if (servedWithOneLess) expect(servedWithOneLess.si).toBeLessThan(level)
          else expect(stock.si).toBe(0)
        },
      ),
    )
  })

  test('what is never used needs no stock', () => {
    expect(spares(0, 0.9999)).toEqual({
      stock: count(0),
      served: ratio(1),
      servedWithOneLess: undefined,
    })
  })

  test.each([
    [-1, 0.95, 'Unexpected use of -1 pieces, expected 0 to 500'],
    [501, 0.95, 'Unexpected use of 501 pieces'],
    [1, 0.49, 'Unexpected service level of 0.49, expected 0.5 to 0.9999'],
    [1, 1, 'Unexpected service level of 1'],
  ])('a use of %d at a level of %d is refused', (mean, level, reason) => {
    expect(() => spares(mean, level)).toThrow(reason)
  })
})

describe('expected use', () => {
  test('sums hours ahead over mean lives', () => {
    const parts = [
      {hoursAhead: hours(6000), meanLife: hours(10_000)},
      {hoursAhead: hours(6000), meanLife: hours(10_000)},
      {hoursAhead: hours(2000), meanLife: hours(5000)},
    ]
    expect(expectedUse(parts).si).toBeCloseTo(1.6, 12)
    expect(expectedUse([]).si).toBe(0)
    expect(sparesForService({expectedUse: expectedUse(parts), serviceLevel: percent(95)}).stock.si).toBe(4)
  })

  test('refuses negative hours and a life of nothing', () => {
    expect(() => expectedUse([{hoursAhead: hours(-1), meanLife: hours(10)}])).toThrow(
      'Unexpected running time ahead of −1 h, expected zero or more',
    )
    expect(() => expectedUse([{hoursAhead: hours(1), meanLife: hours(0)}])).toThrow(
      'Unexpected mean life of 0 h, expected one above zero',
    )
  })
})
