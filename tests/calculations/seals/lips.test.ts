import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {lipSpeed} from '../../../src/calculations/seals/lip-speed.ts'
import {sealSeat} from '../../../src/calculations/seals/seal-seat.ts'
import {metresPerSecond, millimetres, revolutionsPerMinute} from '../../../src/quantities/named-units.ts'
import {quantityOf} from '../../../src/quantities/quantity.ts'

describe('speed at a seal lip', () => {
  test('is the way of a point on the surface added up over one second', () => {
    const [radius, turns, steps] = [0.03, 40, 400_000]
    let way = 0
    for (let step = 0; step < steps; step += 1) {
      const angle = (2 * Math.PI * turns * step) / steps
      const next = (2 * Math.PI * turns * (step + 1)) / steps
      way += radius * Math.hypot(Math.cos(next) - Math.cos(angle), Math.sin(next) - Math.sin(angle))
    }
    expect(lipSpeed(millimetres(60), revolutionsPerMinute(2400)).si).toBeCloseTo(way, 5)
  })

  test('is linear in diameter and speed', () => {
    fc.assert(
      fc.property(
        fc.double({min: 1, max: 300, noNaN: true}),
        fc.double({min: 0, max: 4000, noNaN: true}),
        (diameter, speed) => {
          const one = lipSpeed(millimetres(diameter), revolutionsPerMinute(speed)).si
          expect(lipSpeed(millimetres(2 * diameter), revolutionsPerMinute(speed)).si).toBeCloseTo(2 * one, 9)
          expect(lipSpeed(millimetres(diameter), revolutionsPerMinute(3 * speed)).si).toBeCloseTo(3 * one, 9)
        },
      ),
    )
  })

  test('no diameter and a negative speed are refused', () => {
    expect(() => lipSpeed(millimetres(0), revolutionsPerMinute(2400))).toThrow('expected one above zero')
    expect(() => lipSpeed(millimetres(60), quantityOf('rotational-speed', -1))).toThrow(
      'expected zero or more',
    )
  })
})

describe('seat of a lip seal', () => {
  test('is at least 45 HRC up to 4 m/s and 55 HRC above it (DIN 3760, from memory)', () => {
    expect(sealSeat('elastomer', metresPerSecond(4)).leastHardness.si).toBe(45)
    expect(sealSeat('elastomer', metresPerSecond(4.01)).leastHardness.si).toBe(55)
  })

  test('runs out by 0.10 mm at most (from memory) and is worn by 0.05 mm at most (common practice)', () => {
    const seat = sealSeat('ptfe', metresPerSecond(7.5))
    expect(seat.greatestRunOut.si * 1000).toBeCloseTo(0.1, 12)
    expect(seat.greatestGroove.si * 1000).toBeCloseTo(0.05, 12)
  })

  test('a negative speed is refused', () => {
    expect(() => sealSeat('ptfe', quantityOf('speed', -1))).toThrow('expected zero or more')
  })
})
