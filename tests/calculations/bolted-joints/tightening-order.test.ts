import {describe, expect, test} from 'vitest'
import {tighteningOrder} from '../../../src/calculations/bolted-joints/tightening-order.ts'
import {tighteningPasses} from '../../../src/calculations/bolted-joints/tightening-passes.ts'
import {newtonMetres, percent} from '../../../src/quantities/named-units.ts'

const counts = Array.from({length: 46}, (_, index) => index + 3)

/** Length of the sum of unit loads of the first bolts of an order. */
function resultant(order: readonly number[], bolts: number): number {
  const angles = order.map((bolt) => ((bolt - 1) / bolts) * 2 * Math.PI)
  return Math.hypot(
    angles.reduce((sum, angle) => sum + Math.cos(angle), 0),
    angles.reduce((sum, angle) => sum + Math.sin(angle), 0),
  )
}

describe('tightening order', () => {
  test.each(counts)('%d bolts are each tightened once', (bolts) => {
    expect([...tighteningOrder(bolts)].sort((a, b) => a - b)).toEqual(
      Array.from({length: bolts}, (_, index) => index + 1),
    )
  })

  test.each(counts.filter((bolts) => bolts % 2 === 0))(
    '%d bolts go in opposite pairs and balance after each pair',
    (bolts) => {
      const order = tighteningOrder(bolts)
      for (let index = 0; index < bolts; index += 2) {
        expect(Math.abs((order[index] ?? 0) - (order[index + 1] ?? 0))).toBe(bolts / 2)
        expect(resultant(order.slice(0, index + 2), bolts)).toBeLessThan(1e-9)
      }
    },
  )

  test.each(counts.filter((bolts) => bolts % 4 === 0))(
    'the second pair of %d bolts lies at a right angle to the first',
    (bolts) => {
      const order = tighteningOrder(bolts)
      expect((((order[2] ?? 0) - (order[0] ?? 0) + bolts) % (bolts / 2)) * (4 / bolts)).toBe(1)
    },
  )

  test.each(counts.filter((bolts) => bolts % 2 === 1))(
    '%d bolts in a star never pull further off centre than one bolt and a little',
    (bolts) => {
      const order = tighteningOrder(bolts)
      for (let index = 1; index <= bolts; index += 1) {
        expect(resultant(order.slice(0, index), bolts)).toBeLessThanOrEqual(
          1 / Math.cos(Math.PI / (2 * bolts)) + 1e-9,
        )
      }
    },
  )

  test('one and two bolts go in the order of their numbers', () => {
    expect([tighteningOrder(1), tighteningOrder(2)]).toEqual([[1], [1, 2]])
  })

  test.each([0, 49, 2.5])('a count of %d is refused', (bolts) => {
    expect(() => tighteningOrder(bolts)).toThrow('expected a whole number from 1 to 48')
  })
})

describe('tightening passes', () => {
  test('205.8 N·m in passes of 30, 60 and 100 % is 61.7, 123.5 and 205.8 N·m', () => {
    const passes = tighteningPasses(newtonMetres(205.8), [percent(30), percent(60), percent(100)])
    expect(passes.map((one) => Number(one.si.toFixed(1)))).toEqual([61.7, 123.5, 205.8])
  })

  test('passes that fall or do not end at the whole are refused', () => {
    expect(() => tighteningPasses(newtonMetres(10), [percent(60), percent(30), percent(100)])).toThrow(
      'expected rising shares',
    )
    expect(() => tighteningPasses(newtonMetres(10), [percent(30), percent(90)])).toThrow('expected 1')
  })
})
