import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {coarseThread} from '../../../src/calculations/bolted-joints/coarse-threads.ts'
import {loweringBolts} from '../../../src/calculations/lifting/lowering-bolts.ts'
import {type ScrewTorqueInput, screwTorque} from '../../../src/calculations/lifting/screw-torque.ts'
import {degrees, kilograms, kilonewtons, millimetres, ratio} from '../../../src/quantities/named-units.ts'

const plain: ScrewTorqueInput = {
  load: kilonewtons(5),
  pitchDiameter: millimetres(18.376),
  lead: millimetres(2.5),
  flankAngle: degrees(30),
  threadFriction: ratio(0.15),
}

/** Torque of a turn by another way: the angles of lead and friction on an inclined plane. */
function byAngles(load: number, diameter: number, lead: number, friction: number, flank: number) {
  const slope = Math.atan(lead / (Math.PI * diameter))
  const rest = Math.atan(friction / Math.cos(flank))
  return {
    raising: ((load * diameter) / 2) * Math.tan(slope + rest),
    lowering: ((load * diameter) / 2) * Math.tan(rest - slope),
  }
}

describe('torque of a screw under load', () => {
  test('agrees with the inclined plane, is linear in the load, and friction raises both torques', () => {
    fc.assert(
      fc.property(
        fc.double({min: 5, max: 60, noNaN: true}),
        fc.double({min: 0.05, max: 0.3, noNaN: true}),
        fc.double({min: 0, max: 0.5, noNaN: true}),
        fc.constantFrom(0, 15, 30),
        (diameter, steepness, friction, flank) => {
          const input = {
            ...plain,
            pitchDiameter: millimetres(diameter),
            lead: millimetres(diameter * steepness),
            flankAngle: degrees(flank),
            threadFriction: ratio(friction),
          }
          const result = screwTorque(input)
          const other = byAngles(
            5000,
            diameter / 1000,
            (diameter * steepness) / 1000,
            friction,
            (flank * Math.PI) / 180,
          )
          expect(result.raising.si).toBeCloseTo(other.raising, 6)
          expect(result.lowering.si).toBeCloseTo(other.lowering, 6)
          expect(result.isSelfLocking).toBe(other.lowering > 0)
          const double = screwTorque({...input, load: kilonewtons(10)})
          expect(double.raising.si / result.raising.si).toBeCloseTo(2, 9)
          const rougher = screwTorque({...input, threadFriction: ratio(friction + 0.05)})
          expect(rougher.raising.si).toBeGreaterThan(result.raising.si)
          expect(rougher.lowering.si).toBeGreaterThan(result.lowering.si)
        },
      ),
    )
  })

  test('without friction no work is lost and the load comes down by itself', () => {
    const result = screwTorque({...plain, threadFriction: ratio(0)})
    expect(result.efficiency.si).toBeCloseTo(1, 12)
    expect(result.lowering.si).toBeCloseTo(-result.raising.si, 12)
    expect(result.isSelfLocking).toBe(false)
  })

  test('a thread holds by itself from the friction on at which its lowering torque is nothing', () => {
    const edge = (2.5 / (Math.PI * 18.376)) * Math.cos(Math.PI / 6)
    expect(screwTorque({...plain, threadFriction: ratio(edge * 1.001)}).isSelfLocking).toBe(true)
    expect(screwTorque({...plain, threadFriction: ratio(edge * 0.999)}).isSelfLocking).toBe(false)
  })

  test('a collar holds the load back, but does not make the thread hold by itself', () => {
    const collar = {meanDiameter: millimetres(25), friction: ratio(0.15)}
    const result = screwTorque({...plain, threadFriction: ratio(0.02), collar})
    expect(result.lowering.si).toBeGreaterThan(0)
    expect(result.isSelfLocking).toBe(false)
  })

  test.each<[Partial<ScrewTorqueInput>, string]>([
    [{load: kilonewtons(0)}, 'expected values above zero'],
    [{lead: millimetres(0)}, 'expected values above zero'],
    [{threadFriction: ratio(0.7)}, 'Unexpected friction 0.7, expected 0 to 0.60'],
    [{threadFriction: ratio(-0.1)}, 'Unexpected friction -0.1, expected 0 to 0.60'],
    [
      {collar: {meanDiameter: millimetres(25), friction: ratio(0.61)}},
      'Unexpected friction 0.61, expected 0 to 0.60',
    ],
    [{collar: {meanDiameter: millimetres(0), friction: ratio(0.1)}}, 'expected a diameter above zero'],
    [{flankAngle: degrees(50)}, 'Unexpected flank angle of 50°, expected 0° to 45°'],
    [{lead: millimetres(400)}, 'Unexpected lead at which the thread jams'],
  ])('%o is refused', (change, reason) => {
    expect(() => screwTorque({...plain, ...change})).toThrow(reason)
  })
})

describe('lowering bolts', () => {
  const bolts = {
    mass: kilograms(5000 / 9.80665),
    thread: coarseThread('M20'),
    travel: millimetres(400),
    threadFriction: ratio(0.15),
  }

  test('M20 under 5 kN takes 10.02 N·m up and 5.92 N·m down (computed check value), and 160 turns for 400 mm', () => {
    const result = loweringBolts(bolts)
    expect(Math.abs(result.raising.si - 10.02)).toBeLessThanOrEqual(0.005)
    expect(Math.abs(result.lowering.si - 5.92)).toBeLessThanOrEqual(0.005)
    expect(result.turns.si).toBeCloseTo(160, 9)
    expect(result.isSelfLocking).toBe(true)
  })

  test('a face that turns below the head adds its friction: 19.40 and 15.30 N·m (computed check value)', () => {
    const result = loweringBolts({
      ...bolts,
      collar: {meanDiameter: millimetres(25), friction: ratio(0.15)},
    })
    expect(Math.abs(result.raising.si - 19.4)).toBeLessThanOrEqual(0.005)
    expect(Math.abs(result.lowering.si - 15.3)).toBeLessThanOrEqual(0.005)
  })

  test('each bolt carries the whole mass, not its half (common practice)', () => {
    const result = loweringBolts({...bolts, mass: kilograms(186)})
    expect(result.load.si).toBeCloseTo(186 * 9.80665, 9)
    expect(result.tensileStress.si / 1e6).toBeCloseTo((186 * 9.80665) / 244.794, 3)
  })

  test('turns are additive in the travel', () => {
    fc.assert(
      fc.property(
        fc.double({min: 1, max: 900, noNaN: true}),
        fc.double({min: 1, max: 900, noNaN: true}),
        (a, b) => {
          const of = (travel: number) => loweringBolts({...bolts, travel: millimetres(travel)}).turns.si
          expect(of(a) + of(b)).toBeCloseTo(of(a + b), 6)
        },
      ),
    )
  })

  test('no travel and no mass are refused', () => {
    expect(() => loweringBolts({...bolts, travel: millimetres(0)})).toThrow('expected a travel above zero')
    expect(() => loweringBolts({...bolts, mass: kilograms(0)})).toThrow('expected a mass above zero')
  })
})
