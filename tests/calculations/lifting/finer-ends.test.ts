import {describe, expect, test} from 'vitest'
import {eyeboltLimit} from '../../../src/calculations/lifting/din-580-eyebolts.ts'
import {loadShare} from '../../../src/calculations/lifting/load-share.ts'
import {screwTorque} from '../../../src/calculations/lifting/screw-torque.ts'
import {shackleShare} from '../../../src/calculations/lifting/shackle-limit.ts'
import {slingModeFactor} from '../../../src/calculations/lifting/sling-limit.ts'
import {kilograms, millimetres, newtons, ratio} from '../../../src/quantities/named-units.ts'
import {quantityOf} from '../../../src/quantities/quantity.ts'

type Place = readonly [number, number]

/** Shares of 100 N on supports at places in metres. */
function shares(centre: Place, places: readonly Place[]): readonly number[] {
  const at = ([x, y]: Place) => ({
    x: quantityOf('length-difference', x),
    y: quantityOf('length-difference', y),
  })
  return loadShare({
    mass: kilograms(100 / 9.80665),
    centreOfMass: at(centre),
    supports: places.map(at),
  }).map(({si}) => si)
}

describe('an angle of 45° that was computed from lengths', () => {
  const angle = quantityOf('angle', (Math.PI / 4) * (1 + 1e-12))
  const flatter = quantityOf('angle', (Math.PI / 4) * (1 + 1e-6))

  test('is 45° to an eyebolt', () => {
    expect([eyeboltLimit('M12', angle).si, eyeboltLimit('M12', flatter).si]).toEqual([240, 170])
  })

  test('is 45° to a shackle', () => {
    const share = (sideAngle: typeof angle) => shackleShare({kind: 'one-leg', sideAngle}).si
    expect([share(angle), share(flatter)]).toEqual([0.7, 0.5])
  })

  test('is 45° to a sling', () => {
    const factor = (angleFromVertical: typeof angle) =>
      slingModeFactor({legs: 2, angleFromVertical, hitch: 'straight', share: 'two-legs'}).si
    expect([factor(angle), factor(flatter)]).toEqual([1.4, 1])
  })

  test('is 45° to the flank of a screw', () => {
    const torque = (flankAngle: typeof angle) => () =>
      screwTorque({
        load: newtons(1000),
        pitchDiameter: millimetres(14.7),
        lead: millimetres(2),
        threadFriction: ratio(0.15),
        flankAngle,
      })
    expect(torque(angle)).not.toThrow()
    expect(torque(flatter)).toThrow('expected 0° to 45°')
  })
})

test('a screw of no diameter is refused for that, not because it jams', () => {
  const screw = {
    load: newtons(1000),
    pitchDiameter: millimetres(0),
    lead: millimetres(2),
    threadFriction: ratio(0.15),
    flankAngle: quantityOf('angle', 0),
  }
  expect(() => screwTorque(screw)).toThrow('Unexpected load, diameter or lead of nothing')
})

describe('supports of a plate', () => {
  test('share alike in every size of the plate', () => {
    for (const size of [1e-6, 1e6])
      for (const [index, share] of [50, 25, 25, 0].entries())
        expect(
          shares(
            [0.25 * size, 0.25 * size],
            [
              [0, 0],
              [size, 0],
              [0, size],
              [size, size],
            ],
          )[index],
        ).toBeCloseTo(share, 6)
  })

  // By springs of equal stiffness on the line: 1/3 each, and ∓1/8 of the lever over the sum of squares at both ends.
  test('in one line are told from the middle one when that is named last', () => {
    const found = shares(
      [0, 1],
      [
        [0, 0],
        [0, 4],
        [0, 2],
      ],
    )
    for (const [index, share] of [100 / 3 + 25, 100 / 3 - 25, 100 / 3].entries())
      expect(found[index]).toBeCloseTo(share, 6)
  })

  const line: readonly Place[] = [
    [0, 0],
    [0.1, 0.3],
    [0.2, 0.6],
    [0.7, 2.1],
  ]

  test('in a line whose digits do not lie on it exactly hold nothing beside it', () => {
    expect(() => shares([0.26, 0.74], line)).toThrow('beside the line')
    expect(shares([0.25, 0.75], line).reduce((sum, one) => sum + one, 0)).toBeCloseTo(100, 6)
  })

  test('in one line or place carry a centre of mass that the last digits put beside it', () => {
    const row: readonly Place[] = [
      [0, 0],
      [1, 0],
    ]
    expect(shares([0.5, 1e-7], row)[0]).toBeCloseTo(50, 6)
    expect(() => shares([0.5, 1e-5], row)).toThrow('beside the line')
    const place: readonly Place[] = [
      [0, 0],
      [0, 0],
    ]
    expect(shares([0, 1e-10], place)[0]).toBeCloseTo(50, 6)
    expect(() => shares([0, 1e-6], place)).toThrow('beside the line')
  })
})

test('a screw whose friction is just as large as its lead is not counted on to hold', () => {
  const holds = (lead: number) =>
    screwTorque({
      load: newtons(1000),
      pitchDiameter: quantityOf('length', 1),
      lead: quantityOf('length', lead),
      threadFriction: ratio(0.5),
      flankAngle: quantityOf('angle', 0),
    }).isSelfLocking
  expect([0.999, 1, 1.001].map((share) => holds(share * 0.5 * Math.PI))).toEqual([true, false, false])
})
