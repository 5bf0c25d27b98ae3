import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {loadShare, type PlanPosition} from '../../../src/calculations/lifting/load-share.ts'
import {kilograms} from '../../../src/quantities/named-units.ts'
import {quantityOf} from '../../../src/quantities/quantity.ts'

type Place = readonly [number, number]

const at = ([x, y]: Place): PlanPosition => ({
  x: quantityOf('length-difference', x),
  y: quantityOf('length-difference', y),
})

function loads(mass: number, supports: readonly Place[], centre: Place): readonly number[] {
  return loadShare({mass: kilograms(mass), supports: supports.map(at), centreOfMass: at(centre)}).map(
    (one) => one.si,
  )
}

/**
 * The same by another way: a plate on equal springs sinks until force and both moments balance; height and two tilts are
 * found by going down the energy of the springs step by step.
 */
function settledLoads(mass: number, supports: readonly Place[], centre: Place): readonly number[] {
  const weight = mass * 9.80665
  let [height, tiltX, tiltY] = [0, 0, 0]
  for (let step = 0; step < 20_000; step += 1) {
    const forces = supports.map(([x, y]) => height + tiltX * x + tiltY * y)
    const sum = (of: (force: number, place: Place) => number) =>
      forces.reduce((total, force, index) => total + of(force, supports[index] ?? [0, 0]), 0)
    height -= 0.1 * (sum((force) => force) - weight)
    tiltX -= 0.1 * (sum((force, [x]) => force * x) - weight * centre[0])
    tiltY -= 0.1 * (sum((force, [, y]) => force * y) - weight * centre[1])
  }
  return supports.map(([x, y]) => height + tiltX * x + tiltY * y)
}

describe('load share', () => {
  test('two supports 0.5 m apart with the load 0.3 m from the first carry 40 and 60 % (statics)', () => {
    const [first = 0, second = 0] = loads(
      100,
      [
        [0, 0],
        [0.5, 0],
      ],
      [0.3, 0],
    )
    expect(first / (first + second)).toBeCloseTo(0.4, 12)
    expect(second / (first + second)).toBeCloseTo(0.6, 12)
  })

  test('forces and moments balance on a slanted, uneven pattern, as the settling plate shows', () => {
    const supports: readonly Place[] = [
      [1.1, 0.2],
      [-0.7, 0.9],
      [-0.9, -1],
      [0.6, -0.8],
      [0.1, 0.3],
    ]
    const centre: Place = [0.1, 0.05]
    const found = loads(500, supports, centre)
    const settled = settledLoads(500, supports, centre)
    found.forEach((load, index) => {
      expect(Math.abs(load - (settled[index] ?? 0))).toBeLessThanOrEqual(1e-3)
    })
  })

  test('the loads add up to the weight, balance about the centre, and move with the plate', () => {
    const place = fc.tuple(fc.integer({min: -50, max: 50}), fc.integer({min: -50, max: 50}))
    fc.assert(
      fc.property(
        fc.uniqueArray(place, {minLength: 3, maxLength: 6, selector: ([x, y]) => `${x} ${y}`}),
        fc.integer({min: -100, max: 100}),
        (whole, shift) => {
          const supports = whole.map(([x, y]): Place => [x / 100, y / 100])
          const middle = (axis: 0 | 1) => supports.reduce((sum, one) => sum + one[axis], 0) / supports.length
          const centre: Place = [middle(0), middle(1)]
          const found = loads(300, supports, centre)
          const sum = found.reduce((total, load) => total + load, 0)
          expect(sum / (300 * 9.80665)).toBeCloseTo(1, 9)
          const moment = found.reduce(
            (total, load, index) => total + load * ((supports[index]?.[0] ?? 0) - centre[0]),
            0,
          )
          expect(Math.abs(moment)).toBeLessThanOrEqual(1e-6)
          const moved = loads(
            300,
            supports.map(([x, y]): Place => [x + shift, y]),
            [centre[0] + shift, centre[1]],
          )
          moved.forEach((load, index) => {
            expect(Math.abs(load - (found[index] ?? 0))).toBeLessThanOrEqual(1e-3)
          })
        },
      ),
    )
  })

  test('one support below the centre carries all', () => {
    expect(loads(100, [[0.2, 0.1]], [0.2, 0.1])[0]).toBeCloseTo(980.665, 9)
  })

  test('a plate that tips, a centre beside a line of supports and no support are refused', () => {
    const line: readonly Place[] = [
      [0, 0],
      [0.5, 0],
    ]
    expect(() => loads(100, line, [0.6, 0])).toThrow('Unexpected centre of mass that lifts a support')
    expect(() => loads(100, line, [0.3, 0.1])).toThrow('expected it on their line')
    expect(() => loads(100, [[0, 0]], [0.1, 0])).toThrow('expected it on their line')
    expect(() => loads(100, [], [0, 0])).toThrow('Unexpected plate without support, expected at least one')
    expect(() => loads(0, line, [0.3, 0])).toThrow('expected a mass above zero')
  })
})
