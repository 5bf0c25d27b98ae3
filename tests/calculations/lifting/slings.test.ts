import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {requiredGearLimit} from '../../../src/calculations/lifting/gear-limit.ts'
import {slingAngle, slingTensionFactor} from '../../../src/calculations/lifting/sling-angle.ts'
import {countedLegs, type SlingShare} from '../../../src/calculations/lifting/sling-legs.ts'
import {slingLimit, slingModeFactor} from '../../../src/calculations/lifting/sling-limit.ts'
import {slingTension} from '../../../src/calculations/lifting/sling-tension.ts'
import {massHeldBy, weightOf} from '../../../src/calculations/lifting/weight.ts'
import {degrees, kilograms, metres, ratio} from '../../../src/quantities/named-units.ts'
import {quantityOf} from '../../../src/quantities/quantity.ts'
import {modeFactorRows} from '../../published-values/sling-tables.ts'

function tension(mass: number, legs: number, angle: number, share: SlingShare = 'two-legs') {
  return slingTension({mass: kilograms(mass), legs, angleFromVertical: degrees(angle), share})
}

describe('tension factor of a sling leg', () => {
  test('the factor of two lengths is length over height, and a leg that hangs straight has factor 1', () => {
    fc.assert(
      fc.property(
        fc.double({min: 0.2, max: 10, noNaN: true}),
        fc.double({min: 0.5, max: 1, noNaN: true}),
        (length, share) => {
          const angle = slingAngle({length: metres(length), height: metres(length * share)})
          expect(angle.tensionFactor.si).toBeCloseTo(1 / share, 6)
          expect(angle.fromVertical.si + angle.fromHorizontal.si).toBeCloseTo(Math.PI / 2, 12)
        },
      ),
    )
    expect(slingTensionFactor(degrees(0)).si).toBe(1)
  })

  test('a leg flatter than 30° from the horizontal is refused (ASME B30.9, read in a reprint)', () => {
    expect(() => slingTensionFactor(degrees(61))).toThrow(
      'Unexpected leg at 61.0 ° from the vertical, expected 0° to 60°',
    )
    expect(() => slingTensionFactor(degrees(-1))).toThrow('expected 0° to 60°')
    expect(() => slingAngle({length: metres(3), height: metres(1.4)})).toThrow('expected 0° to 60°')
    expect(() => slingAngle({length: metres(1), height: metres(1.2)})).toThrow(
      'Unexpected height of 1.200 m over a leg of 1.000 m, expected a height above zero and at most the length',
    )
    expect(() => slingAngle({length: metres(1), height: metres(0)})).toThrow('expected a height above zero')
  })
})

describe('tension of a sling leg', () => {
  test('of three or four legs of a rigid load two count, so that each carries half the weight at least (common practice)', () => {
    for (const legs of [3, 4]) {
      expect(tension(1000, legs, 45).counted).toBe(2)
      expect(tension(1000, legs, 45).tension.si).toBe(tension(1000, 2, 45).tension.si)
    }
  })

  test('where all legs are taken to carry, the fourth still does not count (EN 818-4, read in a reprint)', () => {
    expect(countedLegs(4, 'all-legs')).toBe(3)
    expect(tension(900, 4, 0, 'all-legs').carried.si).toBeCloseTo(300, 9)
    expect(tension(900, 4, 30, 'all-legs').tension.si).toBe(tension(900, 3, 30, 'all-legs').tension.si)
  })

  test('the upright parts of all counted legs add up to the weight, and the tension rises with angle and mass', () => {
    fc.assert(
      fc.property(
        fc.double({min: 1, max: 5000, noNaN: true}),
        fc.integer({min: 2, max: 4}),
        fc.double({min: 0, max: 59, noNaN: true}),
        fc.constantFrom<SlingShare>('two-legs', 'all-legs'),
        (mass, legs, angle, share) => {
          const one = tension(mass, legs, angle, share)
          const upright = one.counted * one.tension.si * Math.cos((angle * Math.PI) / 180)
          expect(upright / (mass * 9.80665)).toBeCloseTo(1, 9)
          expect(tension(mass, legs, angle + 1, share).tension.si).toBeGreaterThan(one.tension.si)
          expect(tension(2 * mass, legs, angle, share).tension.si / one.tension.si).toBeCloseTo(2, 9)
        },
      ),
    )
  })

  test('one leg hangs straight and carries all', () => {
    expect(tension(250, 1, 0).carried.si).toBeCloseTo(250, 9)
    expect(() => tension(250, 1, 10)).toThrow(
      'Unexpected single leg at 10.0 ° from the vertical, expected 0°',
    )
  })

  test.each([0, 5, 2.5, Number.NaN])('a sling with %d legs is refused', (legs) => {
    expect(() => tension(250, legs, 10)).toThrow('expected 1, 2, 3 or 4')
  })

  test('a load of nothing and a flat leg are refused', () => {
    expect(() => tension(0, 2, 10)).toThrow('Unexpected mass of 0 kg, expected a mass above zero')
    expect(() => tension(250, 2, 60.1)).toThrow('expected 0° to 60°')
  })
})

describe('working load limit of a sling', () => {
  test.each(modeFactorRows)(
    '$legs legs up to $fromVertical° have the printed factor $factor (EN 818-4, read in a reprint), cut off from n·cos β',
    ({legs, counted, fromVertical, factor}) => {
      const found = slingModeFactor({
        legs,
        angleFromVertical: degrees(fromVertical),
        share: 'all-legs',
        hitch: 'straight',
      }).si
      expect(found).toBe(factor)
      const exact = counted * Math.cos((fromVertical * Math.PI) / 180)
      expect(Math.floor(exact * 10 + 1e-9) / 10).toBeCloseTo(factor, 12)
    },
  )

  test('a rigid load on four legs has the limit of two, which is lower', () => {
    const of = (legs: number, share: SlingShare) =>
      slingLimit({
        oneLeg: kilograms(1000),
        legs,
        angleFromVertical: degrees(40),
        share,
        hitch: 'straight',
      }).si
    expect(of(4, 'two-legs')).toBe(of(2, 'two-legs'))
    expect(of(4, 'two-legs')).toBeLessThan(of(4, 'all-legs'))
  })

  test('a load at the limit loads no leg beyond its own limit, whatever the angle', () => {
    fc.assert(
      fc.property(
        fc.integer({min: 2, max: 4}),
        fc.constantFrom(0, 10, 30, 45, 60),
        fc.constantFrom<SlingShare>('two-legs', 'all-legs'),
        (legs, angle, share) => {
          const limit = slingLimit({
            oneLeg: kilograms(1000),
            legs,
            angleFromVertical: degrees(angle),
            share,
            hitch: 'straight',
          })
          expect(tension(limit.si, legs, angle, share).carried.si).toBeLessThanOrEqual(1000 + 1e-6)
        },
      ),
    )
  })

  test('hitches of several legs, slanted single legs and limits of nothing are refused', () => {
    const call = (legs: number, angle: number, hitch: 'straight' | 'choke', oneLeg = 1000) =>
      slingLimit({
        oneLeg: kilograms(oneLeg),
        legs,
        angleFromVertical: degrees(angle),
        share: 'two-legs',
        hitch,
      })
    expect(() => call(2, 10, 'choke')).toThrow('Unexpected choke hitch of 2 legs, expected straight legs')
    expect(() => call(1, 10, 'straight')).toThrow('Unexpected single leg at 10.0 °')
    expect(() => call(2, 10, 'straight', 0)).toThrow('expected a limit above zero')
    expect(() => call(2, 61, 'straight')).toThrow('expected 0° to 60°')
  })
})

describe('gear', () => {
  test('must be marked with 1.25 times what it carries at its angle (common practice)', () => {
    const {carried} = tension(1000, 4, 45)
    expect(requiredGearLimit(carried).si).toBeCloseTo((1.25 * 1000) / (2 * Math.SQRT1_2), 6)
    expect(requiredGearLimit(kilograms(400), ratio(1.5)).si).toBe(600)
  })

  test('with a reserve below one or no load is refused', () => {
    expect(() => requiredGearLimit(kilograms(400), ratio(0.99))).toThrow(
      'Unexpected reserve of 0.99, expected at least 1',
    )
    expect(() => requiredGearLimit(kilograms(0))).toThrow('expected a load above zero')
  })

  test('weighs by standard gravity, and the mass comes back', () => {
    expect(weightOf(kilograms(1)).si).toBe(9.80665)
    expect(massHeldBy(weightOf(kilograms(186))).si).toBeCloseTo(186, 9)
    expect(() => massHeldBy(quantityOf('force', 0))).toThrow('expected a force above zero')
  })
})
