import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {eyeboltLimit, eyeboltSizes} from '../../../src/calculations/lifting/din-580-eyebolts.ts'
import {
  type ShacklePull,
  shackleLimit,
  shackleShare,
} from '../../../src/calculations/lifting/shackle-limit.ts'
import {degrees, kilograms} from '../../../src/quantities/named-units.ts'
import {
  axialLoadsOf1972,
  eyeboltRows,
  otherStandardSharesAt45,
} from '../../published-values/eyebolt-and-shackle-tables.ts'

describe('eyebolt', () => {
  test('there is a row for each size of the table and no other', () => {
    expect(eyeboltSizes).toEqual(eyeboltRows.map(([size]) => size))
  })

  test('the columns keep the ratios of the table: 0.70 to 0.74 up to 45°, one half up to 90° (computed check values)', () => {
    for (const [size] of eyeboltRows) {
      const axial = eyeboltLimit(size, degrees(0)).si
      const slanted = eyeboltLimit(size, degrees(45)).si / axial
      expect(slanted).toBeGreaterThanOrEqual(0.705)
      expect(slanted).toBeLessThanOrEqual(0.74)
      expect(eyeboltLimit(size, degrees(90)).si / axial).toBe(0.5)
    }
  })

  test('a little off the axis counts as 45°, a little beyond 45° as 90°', () => {
    expect(eyeboltLimit('M16', degrees(0.5)).si).toBe(500)
    expect(eyeboltLimit('M16', degrees(45.5)).si).toBe(350)
  })

  test('the limit never rises with the angle and never falls with the size', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...eyeboltSizes.keys()),
        fc.double({min: 0, max: 90, noNaN: true}),
        fc.double({min: 0, max: 90, noNaN: true}),
        (index, one, other) => {
          const size = eyeboltSizes[index] ?? ''
          const [steep, flat] = [Math.min(one, other), Math.max(one, other)]
          expect(eyeboltLimit(size, degrees(flat)).si).toBeLessThanOrEqual(
            eyeboltLimit(size, degrees(steep)).si,
          )
          const larger = eyeboltSizes[index + 1]
          if (larger)
            expect(eyeboltLimit(larger, degrees(one)).si).toBeGreaterThan(eyeboltLimit(size, degrees(one)).si)
        },
      ),
    )
  })

  test.each(axialLoadsOf1972)(
    'does not give the axial load of 1972 for %s, %d kg, which is too high (from memory)',
    (size, old) => {
      expect(eyeboltLimit(size, degrees(0)).si).toBeLessThan(old)
    },
  )

  test('does not mix in the shares of another standard, a quarter to a third at 45°', () => {
    for (const share of otherStandardSharesAt45) {
      const mixed = share * eyeboltLimit('M12', degrees(0)).si
      expect(eyeboltLimit('M12', degrees(45)).si / mixed).toBeGreaterThan(2)
    }
  })

  test('sizes and angles outside the table are refused', () => {
    expect(() => eyeboltLimit('M14', degrees(0))).toThrow(
      'Unexpected size `M14`, expected one of M8, M10, M12, M16, M20, M24, M30, M36, M42, M48',
    )
    expect(() => eyeboltLimit('M12', degrees(91))).toThrow(
      'Unexpected pull at 91.0 ° off the axis of the eyebolt, expected 0° to 90°',
    )
    expect(() => eyeboltLimit('M12', degrees(-1))).toThrow('expected 0° to 90°')
  })
})

const side = (angle: number): ShacklePull => ({kind: 'one-leg', sideAngle: degrees(angle)})
const between = (angle: number): ShacklePull => ({kind: 'two-legs', includedAngle: degrees(angle)})

describe('shackle', () => {
  test('keeps its whole limit under two legs with up to 120° between them (the same guidance)', () => {
    expect(shackleLimit(kilograms(2000), between(120)).si).toBe(2000)
    expect(shackleLimit(kilograms(2000), between(0)).si).toBe(2000)
  })

  test('takes the lower share between the printed angles', () => {
    expect(shackleShare(side(1)).si).toBe(0.7)
    expect(shackleShare(side(46)).si).toBe(0.5)
  })

  test('angles outside the guidance and a limit of nothing are refused', () => {
    expect(() => shackleShare(side(91))).toThrow(
      'Unexpected pull at 91.0 ° off the line of a shackle, expected 0° to 90°',
    )
    expect(() => shackleShare(between(121))).toThrow(
      'Unexpected 121.0 ° between two legs in a shackle, expected 0° to 120°',
    )
    expect(() => shackleLimit(kilograms(0), side(0))).toThrow('expected a limit above zero')
  })
})
