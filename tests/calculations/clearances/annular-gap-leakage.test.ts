import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {
  type AnnularGap,
  annularGapLeakage,
  smoothWallFriction,
} from '../../../src/calculations/clearances/annular-gap-leakage.ts'
import {metres, radialMillimetres, ratio} from '../../../src/quantities/named-units.ts'
import {quantityOf} from '../../../src/quantities/quantity.ts'

const gravity = 9.80665
const ring: AnnularGap = {
  diameter: metres(0.2),
  gap: radialMillimetres(0.25),
  length: metres(0.02),
  head: metres(60),
  endLoss: ratio(1.5),
}
const water = quantityOf('kinematic-viscosity', 1e-6)

function stated(changed: Partial<AnnularGap>, friction: number) {
  return annularGapLeakage({...ring, ...changed}, {kind: 'stated', friction: ratio(friction)})
}

function smooth(changed: Partial<AnnularGap>, viscosity = water) {
  return annularGapLeakage({...ring, ...changed}, {kind: 'smooth', viscosity})
}

/** Velocity at which the head lost equals the head there, found by halving: no fixed point, no root of the formula. */
function velocityByHalving(gap: AnnularGap, frictionAt: (velocity: number) => number): number {
  const lost = (velocity: number) =>
    ((gap.endLoss.si + (frictionAt(velocity) * gap.length.si) / (2 * gap.gap.si)) * velocity ** 2) /
    (2 * gravity)
  let low = 0
  let high = 1000
  for (let turn = 0; turn < 200; turn += 1) {
    const middle = (low + high) / 2
    if (lost(middle) < gap.head.si) low = middle
    else high = middle
  }
  return low
}

const gaps = fc
  .record({
    diameter: fc.double({min: 0.09, max: 0.3, noNaN: true}),
    gap: fc.double({min: 0.2, max: 0.6, noNaN: true}),
    length: fc.double({min: 0.01, max: 0.04, noNaN: true}),
    head: fc.double({min: 30, max: 120, noNaN: true}),
    endLoss: fc.double({min: 1, max: 2, noNaN: true}),
  })
  .map((one) => ({
    diameter: metres(one.diameter),
    gap: radialMillimetres(one.gap),
    length: metres(one.length),
    head: metres(one.head),
    endLoss: ratio(one.endLoss),
  }))

describe('leakage of an annular gap with a stated friction', () => {
  test('is the flow at which the head is used up', () => {
    fc.assert(
      fc.property(gaps, fc.double({min: 0, max: 0.1, noNaN: true}), (gap, friction) => {
        const byHalving = velocityByHalving(gap, () => friction)
        const result = annularGapLeakage(gap, {kind: 'stated', friction: ratio(friction)})
        expect(result.velocity.si / byHalving).toBeCloseTo(1, 9)
        expect(result.leakage.si / (Math.PI * gap.diameter.si * gap.gap.si * byHalving)).toBeCloseTo(1, 9)
      }),
    )
  })

  test('without friction it rises with the gap, without end loss with its power of 1.5, and always with the root of the head', () => {
    const twice = {gap: radialMillimetres(0.5)}
    expect(stated(twice, 0).leakage.si / stated({}, 0).leakage.si).toBeCloseTo(2, 12)
    const noEnds = {endLoss: ratio(0)}
    expect(stated({...twice, ...noEnds}, 0.04).leakage.si / stated(noEnds, 0.04).leakage.si).toBeCloseTo(
      2 ** 1.5,
      12,
    )
    expect(stated({head: metres(240)}, 0.04).leakage.si / stated({}, 0.04).leakage.si).toBeCloseTo(2, 12)
  })

  test('twice the gap leaks two to 2.83 times as much', () => {
    fc.assert(
      fc.property(gaps, fc.double({min: 0, max: 0.1, noNaN: true}), (gap, friction) => {
        const law = {kind: 'stated', friction: ratio(friction)} as const
        const wider = {...gap, gap: quantityOf('radial-clearance', gap.gap.si * 2)}
        const times = annularGapLeakage(wider, law).leakage.si / annularGapLeakage(gap, law).leakage.si
        expect(times).toBeGreaterThanOrEqual(2 - 1e-9)
        expect(times).toBeLessThanOrEqual(2 ** 1.5 + 1e-9)
      }),
    )
  })

  test.each([
    [{diameter: metres(0)}, 0.04, 'Unexpected diameter of 0 m, expected one above zero'],
    [{gap: radialMillimetres(0)}, 0.04, 'Unexpected gap of 0 m'],
    [{length: metres(0)}, 0.04, 'Unexpected length of 0 m'],
    [{head: metres(0)}, 0.04, 'Unexpected head of 0 m'],
    [{gap: radialMillimetres(11)}, 0.04, 'Unexpected radial gap of 0.011 m at a diameter of 0.2 m'],
    [{endLoss: ratio(-1)}, 0.04, 'Unexpected end loss -1, expected zero or more'],
    [{}, -0.01, 'Unexpected friction -0.01, expected zero or more'],
    [{endLoss: ratio(0)}, 0, 'Unexpected gap that nothing resists'],
  ])('%j with friction %d is refused', (changed, friction, reason) => {
    expect(() => stated(changed, friction)).toThrow(reason)
  })
})

describe('leakage of an annular gap with a smooth wall', () => {
  test('velocity and friction belong together, as found by halving the velocity', () => {
    fc.assert(
      fc.property(gaps, (gap) => {
        const byHalving = velocityByHalving(
          gap,
          (velocity) => 0.316 / ((2 * gap.gap.si * velocity) / 1e-6) ** 0.25,
        )
        const result = annularGapLeakage(gap, {kind: 'smooth', viscosity: water})
        expect(result.velocity.si / byHalving).toBeCloseTo(1, 9)
      }),
    )
  })

  test('thicker cargo leaks less', () => {
    const thicker = quantityOf('kinematic-viscosity', 3e-6)
    expect(smooth({}, thicker).leakage.si).toBeLessThan(smooth({}).leakage.si)
  })

  test.each([
    [20e-6, /^Unexpected Reynolds number of \d{3}, expected 3000 to 100000: state the friction of the gap$/u],
    [0.05e-6, /^Unexpected Reynolds number of \d{6}, expected 3000 to 100000/u],
    [0, /^Unexpected viscosity of 0 m²\/s, expected one above zero$/u],
  ])('a viscosity of %d m²/s is refused', (viscosity, reason) => {
    expect(() => smooth({}, quantityOf('kinematic-viscosity', viscosity))).toThrow(reason)
  })
})

describe('friction of a smooth wall', () => {
  test('sixteen times the Reynolds number halves it', () => {
    expect(smoothWallFriction(ratio(64_000)).si / smoothWallFriction(ratio(4000)).si).toBeCloseTo(0.5, 12)
  })

  test.each([2999, 100_001])('a Reynolds number of %d is refused', (reynolds) => {
    expect(() => smoothWallFriction(ratio(reynolds))).toThrow(
      `Unexpected Reynolds number of ${reynolds}, expected 3000 to 100000`,
    )
  })
})
