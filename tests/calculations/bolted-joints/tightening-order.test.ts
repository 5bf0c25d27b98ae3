import {describe, expect, test} from 'vitest'
import {tighteningOrder} from '../../../src/calculations/bolted-joints/tightening-order.ts'
import {tighteningPasses} from '../../../src/calculations/bolted-joints/tightening-passes.ts'
import {newtonMetres, percent} from '../../../src/quantities/named-units.ts'
import {crossPatterns} from '../../published-values/tightening-orders.ts'

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
    'every second pair of %d bolts lies at a right angle to the pair before it',
    (bolts) => {
      const order = tighteningOrder(bolts)
      for (let index = 0; index < bolts; index += 4) {
        const between = ((order[index + 2] ?? 0) - (order[index] ?? 0) + bolts) % (bolts / 2)
        expect(between * (4 / bolts)).toBe(1)
      }
    },
  )

  test('the remembered cross patterns hold what they promise themselves', () => {
    for (const [bolts, pattern] of crossPatterns) {
      const order = pattern.split(/[- ]/u).map(Number)
      expect(new Set(order).size).toBe(bolts)
      for (let index = 0; index < bolts; index += 2)
        expect(resultant(order.slice(0, index + 2), bolts)).toBeLessThan(1e-9)
    }
  })

  test.each(counts.filter((bolts) => bolts % 4 === 2))(
    'the second pair of %d bolts lies as near to a right angle as there are bolts',
    (bolts) => {
      const [first = 0, , second = 0] = tighteningOrder(bolts)
      const apart = Math.abs(second - first) % (bolts / 2)
      expect(Math.min(apart, bolts / 2 - apart)).toBe(Math.floor(bolts / 4))
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
  test('passes that fall or do not end at the whole are refused', () => {
    expect(() => tighteningPasses(newtonMetres(10), [percent(60), percent(30), percent(100)])).toThrow(
      'expected rising shares',
    )
    expect(() => tighteningPasses(newtonMetres(10), [percent(30), percent(90)])).toThrow('expected 1')
  })
})
