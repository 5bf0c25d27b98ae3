import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {coarseThread} from '../../../src/calculations/bolted-joints/coarse-threads.ts'
import {hexagonHead} from '../../../src/calculations/bolted-joints/hexagon-heads.ts'
import {leastPreload} from '../../../src/calculations/bolted-joints/least-preload.ts'
import {lubricantSwap} from '../../../src/calculations/bolted-joints/lubricant-swap.ts'
import {tighteningTorque} from '../../../src/calculations/bolted-joints/tightening-torque.ts'
import {yieldClampForce} from '../../../src/calculations/bolted-joints/yield-clamp-force.ts'
import {kilonewtons, newtonsPerSquareMillimetre, percent, ratio} from '../../../src/quantities/named-units.ts'

const joint = {
  thread: coarseThread('M12'),
  ...hexagonHead('M12'),
  yieldStress: newtonsPerSquareMillimetre(640),
  utilisation: percent(90),
  edition: '2003',
} as const

function frictionOf(friction: number) {
  return {threadFriction: ratio(friction), headFriction: ratio(friction)}
}

function swap(from: number, to: number) {
  return lubricantSwap({...joint, setFor: frictionOf(from), appliedTo: frictionOf(to)})
}

describe('a torque under another lubrication', () => {
  test('M12 8.8 set for friction 0.14 and applied at 0.08 gets 67.1 kN, 1.48 times the allowed and beyond yield (computed from the printed table)', () => {
    const result = swap(0.14, 0.08)
    expect(Math.abs(result.torque.si - 93)).toBeLessThanOrEqual(0.5)
    expect(Math.abs(result.preload.si / 1000 - 67.1)).toBeLessThanOrEqual(0.3)
    expect(Math.abs(result.shareOfAllowed.si - 1.48)).toBeLessThanOrEqual(0.007)
    expect(Math.abs(result.yieldForce.si / 1000 - 53.9)).toBeLessThanOrEqual(0.05)
    expect(result.preload.si).toBeGreaterThan(result.yieldForce.si)
    expect(result.outcome).toBe('beyond yield')
  })

  test('the same lubrication is within, a little less friction is above the utilisation, more friction is within', () => {
    expect(swap(0.12, 0.12).outcome).toBe('within')
    expect(swap(0.12, 0.12).combinedUtilisation.si).toBeCloseTo(0.9, 12)
    expect(swap(0.12, 0.115).outcome).toBe('above utilisation')
    expect(swap(0.08, 0.14).outcome).toBe('within')
  })

  test('the combined stress is that of tension and torsion worked out on the bolt', () => {
    const {preload, combinedUtilisation} = swap(0.14, 0.1)
    const {geometry, leadAngle, frictionAngle} = tighteningTorque({...joint, ...frictionOf(0.1)})
    const tension = preload.si / geometry.stressArea.si
    const threadTorque =
      ((preload.si * geometry.pitchDiameter.si) / 2) * Math.tan(leadAngle.si + frictionAngle.si)
    const torsion = threadTorque / ((Math.PI * geometry.stressDiameter.si ** 3) / 12)
    expect(combinedUtilisation.si).toBeCloseTo(Math.sqrt(tension ** 2 + 3 * torsion ** 2) / 640e6, 9)
  })

  test('the preload reached rises as friction falls, and the torque keeps what it was set for', () => {
    const friction = fc.double({min: 0.05, max: 0.4, noNaN: true})
    fc.assert(
      fc.property(friction, friction, (one, other) => {
        const low = swap(0.14, Math.min(one, other))
        const high = swap(0.14, Math.max(one, other))
        expect(low.preload.si).toBeGreaterThanOrEqual(high.preload.si * (1 - 1e-12))
        expect(low.torque.si).toBe(high.torque.si)
      }),
    )
  })

  test('a friction out of range is refused', () => {
    expect(() => swap(0.14, 0.7)).toThrow('Unexpected friction 0.7, expected 0.02 to 0.60')
  })
})

describe('least preload', () => {
  test('a factor of one leaves all, and factors multiply', () => {
    const preload = kilonewtons(50)
    expect(leastPreload({preload, tighteningFactor: ratio(1)}).si).toBe(50_000)
    const twice = leastPreload({
      preload: leastPreload({preload, tighteningFactor: ratio(1.5)}),
      tighteningFactor: ratio(1.2),
    })
    expect(twice.si).toBeCloseTo(leastPreload({preload, tighteningFactor: ratio(1.8)}).si, 9)
  })

  test.each([
    [0.9, 41.9, 'Unexpected tightening factor 0.9, expected 1 to 4'],
    [4.1, 41.9, 'Unexpected tightening factor 4.1, expected 1 to 4'],
    [1.8, 0, 'Unexpected preload of 0 N, expected one above zero'],
  ])('a factor of %d on %d kN is refused', (factor, preload, reason) => {
    expect(() => leastPreload({preload: kilonewtons(preload), tighteningFactor: ratio(factor)})).toThrow(
      reason,
    )
  })
})

describe('yield clamp force', () => {
  const ofM16 = {
    thread: coarseThread('M16'),
    yieldStress: newtonsPerSquareMillimetre(640),
    threadFriction: ratio(0.12),
  }

  test('M16 at friction 0.12 divides by 1.196, and not by the 1.430 of the page that leaves the square root out', () => {
    const {divisor, clampForce} = yieldClampForce(ofM16)
    expect(Math.abs(divisor.si - 1.196)).toBeLessThanOrEqual(0.0005)
    const misprinted = 1 + 3 * 0.379 ** 2
    expect(Math.abs(misprinted - 1.43)).toBeLessThanOrEqual(0.002)
    const wrong = (640e6 * 156.668e-6) / misprinted
    expect(wrong / clampForce.si).toBeCloseTo(0.84, 2)
  })

  test('tension and elastic torsion at that force make exactly the yield stress', () => {
    const force = yieldClampForce(ofM16).clampForce.si
    const diameter = 0.016 - 0.9381943 * 0.002
    const pitchDiameter = 0.016 - 0.649519053 * 0.002
    const tension = force / ((Math.PI / 4) * diameter ** 2)
    const threadTorque = (force / 2) * (0.002 / Math.PI + (0.12 * pitchDiameter) / Math.cos(Math.PI / 6))
    const torsion = threadTorque / ((Math.PI / 16) * diameter ** 3)
    expect(Math.sqrt(tension ** 2 + 3 * torsion ** 2) / 640e6).toBeCloseTo(1, 6)
  })

  test('at full utilisation the 1986 edition of the exact form is within 0.5 % of it', () => {
    const exact = tighteningTorque({
      thread: ofM16.thread,
      ...hexagonHead('M16'),
      yieldStress: ofM16.yieldStress,
      utilisation: percent(100),
      ...frictionOf(0.12),
      edition: '1986',
    })
    expect(Math.abs(exact.preload.si / yieldClampForce(ofM16).clampForce.si - 1)).toBeLessThan(0.005)
  })

  test('falls with friction and is linear in the yield stress', () => {
    const rougher = yieldClampForce({...ofM16, threadFriction: ratio(0.2)})
    expect(rougher.clampForce.si).toBeLessThan(yieldClampForce(ofM16).clampForce.si)
    const stronger = yieldClampForce({...ofM16, yieldStress: newtonsPerSquareMillimetre(1280)})
    expect(stronger.clampForce.si / yieldClampForce(ofM16).clampForce.si).toBeCloseTo(2, 12)
  })

  test.each([
    [{threadFriction: ratio(0.01)}, 'Unexpected friction 0.01, expected 0.02 to 0.60'],
    [{yieldStress: newtonsPerSquareMillimetre(0)}, 'Unexpected yield stress of 0 Pa'],
  ])('%j is refused', (changed, reason) => {
    expect(() => yieldClampForce({...ofM16, ...changed})).toThrow(reason)
  })
})
