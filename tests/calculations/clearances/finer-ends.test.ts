import {expect, test} from 'vitest'
import {
  annularGapLeakage,
  smoothWallFriction,
} from '../../../src/calculations/clearances/annular-gap-leakage.ts'
import {leastRunningClearance} from '../../../src/calculations/clearances/least-running-clearance.ts'
import {runningClearance} from '../../../src/calculations/clearances/running-clearance.ts'
import {metres, millimetres, ratio} from '../../../src/quantities/named-units.ts'
import {quantityOf} from '../../../src/quantities/quantity.ts'

test('a gap of exactly a twentieth of its diameter is one', () => {
  const leak = (gap: number) => () =>
    annularGapLeakage(
      {
        diameter: metres(1),
        gap: quantityOf('radial-clearance', gap),
        length: metres(0.03),
        head: metres(80),
        endLoss: ratio(1.5),
      },
      {kind: 'stated', friction: ratio(0.02)},
    )
  expect(leak(1 / 20)).not.toThrow()
  expect(leak(0.0501)).toThrow('at most a twentieth')
})

// Without a loss at the ends, 2·g·H = λ·L/(2·s)·v² with λ = 0.316/(2·s·v/ν)^0.25 is solved by hand:
// v^(7/4) = 4·g·H·s/(0.316·L)·(2·s/ν)^(1/4).
test('a smooth gap without a loss at its ends has the velocity that the equation gives in one step', () => {
  const [gap, length, head, viscosity] = [0.00025, 0.05, 60, 1e-6]
  const velocity =
    (((4 * 9.80665 * head * gap) / (0.316 * length)) * ((2 * gap) / viscosity) ** (1 / 4)) ** (4 / 7)
  const found = annularGapLeakage(
    {
      diameter: metres(0.2),
      gap: quantityOf('radial-clearance', gap),
      length: metres(length),
      head: metres(head),
      endLoss: ratio(0),
    },
    {kind: 'smooth', viscosity: quantityOf('kinematic-viscosity', viscosity)},
  )
  expect(found.velocity.si).toBeCloseTo(velocity, 9)
})

test('a diameter of 65 mm that lost its thirteenth digit begins its own step', () => {
  const least = (metre: number) =>
    leastRunningClearance({
      runningDiameter: quantityOf('length', metre),
      table: 'own metric',
      galling: false,
    }).clearance.si
  expect(least(0.065 * (1 - 2e-13))).toBe(least(0.065))
  expect(least(0.065 * (1 - 1e-10))).toBe(least(0.064))
})

test('a clearance without a bore or without a hub is refused for that', () => {
  for (const [bores, hubs] of [
    [[], [millimetres(210)]],
    [[millimetres(210)], []],
  ] as const)
    expect(() => runningClearance({bores, hubs})).toThrow('Unexpected empty list of diameters')
})

test('the friction of a smooth wall is known at both ends of its Reynolds numbers', () => {
  // 0.316/Re^0.25: the fourth root of 100 000 is ten times that of 10.
  expect(smoothWallFriction(ratio(100_000)).si).toBeCloseTo(0.0316 / 10 ** 0.25, 12)
  expect(smoothWallFriction(ratio(3000)).si).toBeCloseTo(0.316 / Math.sqrt(Math.sqrt(3000)), 12)
  for (const beyond of [2999.9, 100_000.1])
    expect(() => smoothWallFriction(ratio(beyond))).toThrow('Unexpected Reynolds number')
})
