import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {liquidLeakRate} from '../../../src/calculations/gas/liquid-leak-rate.ts'
import {purgeLowerBound} from '../../../src/calculations/gas/purge-lower-bound.ts'
import {purgeUpperBound} from '../../../src/calculations/gas/purge-upper-bound.ts'
import {purgeWindow} from '../../../src/calculations/gas/purge-window.ts'
import {riserPurgePressure} from '../../../src/calculations/gas/riser-purge-pressure.ts'
import {sealPressure} from '../../../src/calculations/gas/seal-pressure.ts'
import {
  bar,
  barGauge,
  hours,
  kilogramsPerCubicMetre,
  litres,
  metres,
} from '../../../src/quantities/named-units.ts'

/** Weight of a column as the sum of a thousand slices, in bar. */
function slices(density: number, height: number): number {
  return (
    Array.from({length: 1000}, () => density * 9.80665 * (height / 1000)).reduce((sum, one) => sum + one, 0) /
    1e5
  )
}

const densities = fc.double({min: 600, max: 2000, noNaN: true})
const heights = fc.double({min: 0, max: 30, noNaN: true})
const pressures = fc.double({min: 0, max: 5, noNaN: true})

describe('columns of liquid', () => {
  test('seal, purge and riser carry the weight of the slices and what presses besides', () => {
    fc.assert(
      fc.property(densities, heights, pressures, pressures, (density, height, one, other) => {
        const [liquid, column] = [kilogramsPerCubicMetre(density), slices(density, height)]
        const over = sealPressure({
          density: liquid,
          level: metres(height),
          tankPressure: barGauge(one),
          cofferdamPressure: barGauge(other),
        })
        expect(over.si / 1e5).toBeCloseTo(column + one - other, 9)
        expect(
          purgeLowerBound({density: liquid, lift: metres(height), margin: bar(one)}).si / 1e5,
        ).toBeCloseTo(column + one, 9)
        expect(
          riserPurgePressure({density: liquid, height: metres(height), backPressure: barGauge(other)}).si /
            1e5,
        ).toBeCloseTo(column + other, 9)
      }),
    )
  })

  test('no density, a height or a margin or a back pressure below zero are refused', () => {
    const lift = {density: kilogramsPerCubicMetre(1000), lift: metres(14), margin: bar(0.5)}
    expect(() => purgeLowerBound({...lift, density: kilogramsPerCubicMetre(0)})).toThrow(
      'Unexpected density of nothing, expected a density above zero',
    )
    expect(() => purgeLowerBound({...lift, lift: metres(-1)})).toThrow(
      'Unexpected height of -1 m, expected a height of zero or more',
    )
    expect(() => purgeLowerBound({...lift, margin: bar(-0.1)})).toThrow(
      'Unexpected margin below zero, expected a margin of zero or more',
    )
    expect(() =>
      riserPurgePressure({
        density: kilogramsPerCubicMetre(1000),
        height: metres(14),
        backPressure: barGauge(-0.1),
      }),
    ).toThrow('Unexpected back pressure below zero, expected none or more')
  })
})

describe('window of the purge pressure', () => {
  const upper = purgeUpperBound({
    cofferdamRating: barGauge(6),
    lipReverseLimit: bar(3),
    lowestTankPressure: barGauge(-0.035),
    regulatorMaximum: barGauge(5),
  })

  test('it reaches from the lift with its margin to the lowest limit, which is named', () => {
    const lower = purgeLowerBound({
      density: kilogramsPerCubicMetre(1000),
      lift: metres(14),
      margin: bar(0.5),
    })
    expect(purgeWindow(lower, upper)).toEqual({
      lower,
      upper: barGauge(2.965),
      governs: 'seal lip',
      safe: true,
    })
  })

  test.each([
    [2.955, true],
    [2.965, true],
    [2.975, false],
  ])('a lower bound of %d bar(g) below an upper bound of 2.965 is safe: %s', (lower, safe) => {
    expect(purgeWindow(barGauge(lower), upper).safe).toBe(safe)
  })

  test('a heavy cargo in a deep tank leaves no safe window, and that is a result', () => {
    const lower = purgeLowerBound({
      density: kilogramsPerCubicMetre(1850),
      lift: metres(16),
      margin: bar(0.5),
    })
    const window = purgeWindow(lower, upper)
    expect(window.safe).toBe(false)
    expect(window.lower.si).toBeGreaterThan(window.upper.si)
  })
})

describe('leak of liquid', () => {
  test('is told per running hour and per day', () => {
    const leak = liquidLeakRate({volume: litres(0.12), running: hours(30), elapsed: hours(72)})
    expect((leak.perRunningHour?.si ?? 0) * 3.6e9).toBeCloseTo(4, 9)
    expect(leak.perDay.si * 86_400e6).toBeCloseTo(40, 9)
  })

  test('without running hours is told per day only', () => {
    const leak = liquidLeakRate({volume: litres(0.12), running: hours(0), elapsed: hours(72)})
    expect(Object.keys(leak)).toEqual(['perDay'])
    expect(leak.perDay.si * 86_400e6).toBeCloseTo(40, 9)
  })

  test('each rate times its time is the volume again', () => {
    fc.assert(
      fc.property(
        fc.double({min: 0, max: 2, noNaN: true}),
        fc.double({min: 0.1, max: 500, noNaN: true}),
        fc.double({min: 0, max: 500, noNaN: true}),
        (volume, running, standing) => {
          const leak = liquidLeakRate({
            volume: litres(volume),
            running: hours(running),
            elapsed: hours(running + standing),
          })
          expect((leak.perRunningHour?.si ?? Number.NaN) * running * 3.6e6).toBeCloseTo(volume, 9)
          expect(leak.perDay.si * (running + standing) * 3.6e6).toBeCloseTo(volume, 9)
        },
      ),
    )
  })

  test('figures below zero, no time and more running than time are refused', () => {
    const of = (volume: number, running: number, elapsed: number) =>
      liquidLeakRate({volume: litres(volume), running: hours(running), elapsed: hours(elapsed)})
    const refusal = 'Unexpected volume or running hours below zero, expected none or more'
    expect(() => of(-1, 1, 24)).toThrow(refusal)
    expect(() => of(1, -1, 24)).toThrow(refusal)
    expect(() => of(1, 0, 0)).toThrow(
      'Unexpected time of nothing since the last purge, expected a time above zero',
    )
    expect(() => of(1, 30, 24)).toThrow(
      'Unexpected 30.0 h of running within 24.0 h, expected no more than has passed',
    )
    expect(of(1, 24, 24).perRunningHour?.si).toBe(of(1, 24, 24).perDay.si)
  })
})
