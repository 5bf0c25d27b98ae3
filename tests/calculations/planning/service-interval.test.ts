import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {serviceInterval} from '../../../src/calculations/planning/service-interval.ts'
import {hours, percent, ratio} from '../../../src/quantities/named-units.ts'

type Pair = readonly [number, number]

function interval(mix: readonly Pair[], runs: readonly Pair[] = []) {
  return serviceInterval({
    mix: mix.map(([share, alone]) => ({share: ratio(share), interval: hours(alone)})),
    runs: runs.map(([run, alone]) => ({run: hours(run), interval: hours(alone)})),
  })
}

const lives = fc.double({min: 500, max: 20_000, noNaN: true})

const mixes = fc
  .array(fc.tuple(fc.double({min: 0.05, max: 1, noNaN: true}), lives), {minLength: 1, maxLength: 6})
  .map((all): readonly Pair[] => {
    const whole = all.reduce((sum, [weight]) => sum + weight, 0)
    return all.map(([weight, life]) => [weight / whole, life])
  })

describe('service interval of a mix of cargoes', () => {
  test('half of the time at 1000 h and half at 3000 h makes 1500 h', () => {
    expect(
      interval([
        [0.5, 1000],
        [0.5, 3000],
      ]).interval.si / 3600,
    ).toBeCloseTo(1500, 9)
  })

  test('a single cargo keeps its own interval', () => {
    expect(interval([[1, 4000]]).interval.si / 3600).toBeCloseTo(4000, 9)
  })

  test('is the hour at which wear counted hour by hour makes the whole', () => {
    const mix: readonly Pair[] = [
      [0.6, 8000],
      [0.3, 2000],
      [0.1, 500],
    ]
    let worn = 0
    let hour = 0
    while (worn < 1) {
      const place = hour % 10
      worn += 1 / (place < 6 ? 8000 : place < 9 ? 2000 : 500)
      hour += 1
    }
    expect(Math.abs(interval(mix).interval.si / 3600 - hour)).toBeLessThanOrEqual(10)
  })

  test('lies between the shortest and the longest interval, and does not depend on the order', () => {
    fc.assert(
      fc.property(mixes, (mix) => {
        const found = interval(mix).interval.si / 3600
        const alone = mix.map(([, life]) => life)
        expect(found).toBeGreaterThanOrEqual(Math.min(...alone) * (1 - 1e-9))
        expect(found).toBeLessThanOrEqual(Math.max(...alone) * (1 + 1e-9))
        expect(interval([...mix].reverse()).interval.si / 3600 / found).toBeCloseTo(1, 9)
      }),
    )
  })

  test('runs use it up: what is used and what is left of the mix ahead', () => {
    const found = interval(
      [[1, 4000]],
      [
        [1000, 8000],
        [500, 2000],
      ],
    )
    expect(found.used.si).toBeCloseTo(0.375, 12)
    expect(found.left.si / 3600).toBeCloseTo(2500, 9)
  })

  test('running what is left with the mix makes the whole, and past it nothing is left', () => {
    fc.assert(
      fc.property(mixes, fc.double({min: 0, max: 400, noNaN: true}), lives, (mix, run, alone) => {
        const {left} = interval(mix, [[run, alone]])
        const ahead = mix.map(([share, life]): Pair => [(share * left.si) / 3600, life])
        fc.pre(left.si > 0)
        expect(interval(mix, [[run, alone], ...ahead]).used.si).toBeCloseTo(1, 9)
      }),
    )
    expect(interval([[1, 4000]], [[5000, 4000]]).left.si / 3600).toBeCloseTo(-1000, 9)
  })

  test.each<[readonly Pair[], readonly Pair[], string]>([
    [[[0.5, 1000]], [], 'Unexpected shares that make 50.00 %, expected 100 %'],
    [[], [], 'Unexpected shares that make 0.00 %'],
    [
      [
        [1.2, 1000],
        [-0.2, 1000],
      ],
      [],
      'Unexpected share of −20 %, expected zero or more',
    ],
    [[[1, 0]], [], 'Unexpected interval of 0 h, expected one above zero'],
    [[[1, 1000]], [[-1, 1000]], 'Unexpected running time of −1 h, expected zero or more'],
    [[[1, 1000]], [[1, 0]], 'Unexpected interval of 0 h'],
  ])('mix %j with runs %j is refused', (mix, runs, reason) => {
    expect(() => interval(mix, runs)).toThrow(reason)
  })

  test('shares written in whole percent make the whole', () => {
    const found = serviceInterval({
      mix: [33, 33, 34].map((share) => ({share: percent(share), interval: hours(3000)})),
      runs: [],
    })
    expect(found.interval.si / 3600).toBeCloseTo(3000, 6)
  })
})
