import {describe, expect, test} from 'vitest'
import {eyeboltLimit} from '../../../src/calculations/lifting/din-580-eyebolts.ts'
import {requiredGearLimit} from '../../../src/calculations/lifting/gear-limit.ts'
import {loadShare} from '../../../src/calculations/lifting/load-share.ts'
import {screwTorque} from '../../../src/calculations/lifting/screw-torque.ts'
import {shackleLimit, shackleShare} from '../../../src/calculations/lifting/shackle-limit.ts'
import {slingAngle, slingTensionFactor} from '../../../src/calculations/lifting/sling-angle.ts'
import {slingLimit, slingModeFactor} from '../../../src/calculations/lifting/sling-limit.ts'
import {massHeldBy} from '../../../src/calculations/lifting/weight.ts'
import {degrees, kilograms, metres, millimetres, newtons, ratio} from '../../../src/quantities/named-units.ts'
import {type Quantity, quantityOf} from '../../../src/quantities/quantity.ts'
import {holdEnds, type RangeEnds} from '../range-ends.ts'

const screw = {
  load: newtons(1000),
  pitchDiameter: millimetres(14.7),
  lead: millimetres(2),
  threadFriction: ratio(0.15),
  flankAngle: degrees(30),
}
const sling = {legs: 2, angleFromVertical: degrees(30), hitch: 'straight', share: 'two-legs'} as const
const rows: readonly RangeEnds[] = [
  [
    'angle off the axis of an eyebolt',
    (angle) => eyeboltLimit('M12', degrees(angle)),
    [0, 45, 90],
    [-1, 90.1],
  ],
  ['load that gear carries', (kg) => requiredGearLimit(kilograms(kg)), [0.5], [0, -1]],
  ['reserve of gear', (si) => requiredGearLimit(kilograms(100), ratio(si)), [1, 1.25], [0.999]],
  ['load on a screw', (si) => screwTorque({...screw, load: quantityOf('force', si)}), [0.5], [0, -1]],
  [
    'diameter of a screw',
    (mm) => screwTorque({...screw, pitchDiameter: millimetres(mm)}),
    [0.5, 14],
    [0, -1],
  ],
  ['lead of a screw', (mm) => screwTorque({...screw, lead: millimetres(mm)}), [0.5, 2], [0, -1]],
  [
    'friction of a screw',
    (si) => screwTorque({...screw, threadFriction: ratio(si)}),
    [0, 0.6],
    [-0.01, 0.601],
  ],
  ['flank angle', (angle) => screwTorque({...screw, flankAngle: degrees(angle)}), [0, 40, 45], [-1, 45.1]],
  [
    'two legs in a shackle',
    (angle) => shackleShare({kind: 'two-legs', includedAngle: degrees(angle)}),
    [0, 120],
    [-1, 120.1],
  ],
  [
    'pull beside a shackle',
    (angle) => shackleShare({kind: 'one-leg', sideAngle: degrees(angle)}),
    [0, 45, 90],
    [-1, 90.1],
  ],
  [
    'limit marked on a shackle',
    (kg) => shackleLimit(kilograms(kg), {kind: 'one-leg', sideAngle: degrees(0)}),
    [0.5],
    [0, -1],
  ],
  ['angle of a leg', (angle) => slingTensionFactor(degrees(angle)), [0, 60], [-1, 60.1]],
  ['height over a leg', (m) => slingAngle({length: metres(2), height: metres(m)}), [1, 2], [0, -1, 2.001]],
  ['limit of one leg', (kg) => slingLimit({...sling, oneLeg: kilograms(kg)}), [0.5], [0, -1]],
  ['force that holds a mass', (si) => massHeldBy(quantityOf('force', si)), [0.5], [0, -1]],
]

describe('the ends of a stated range are inside it, and nothing beyond', () => {
  test.each(rows)('%s', (_what, run, accepted, refused) => {
    holdEnds(run, accepted, refused)
  })
})

describe('at 45°, where two rows of a table meet, the steeper row counts', () => {
  test('for an eyebolt', () => {
    expect(eyeboltLimit('M12', degrees(45)).si).toBe(eyeboltLimit('M12', degrees(1)).si)
    expect(eyeboltLimit('M12', degrees(45.1)).si).toBe(eyeboltLimit('M12', degrees(90)).si)
  })

  test('for a shackle', () => {
    const shareAt = (angle: number): number => shackleShare({kind: 'one-leg', sideAngle: degrees(angle)}).si
    expect([0, 1, 45, 45.1, 90].map(shareAt)).toEqual([1, 0.7, 0.7, 0.5, 0.5])
  })

  test('for a sling', () => {
    const factorAt = (angle: number): number =>
      slingModeFactor({...sling, angleFromVertical: degrees(angle)}).si
    expect([0, 45, 45.1, 60].map(factorAt)).toEqual([1.4, 1.4, 1, 1])
  })
})

test('a screw whose friction just holds the load locks itself, a smoother one does not', () => {
  // A square thread locks where its friction is above lead over turn: 2 mm over pi times 14.7 mm is 0.0433.
  const locks = (friction: number): boolean =>
    screwTorque({...screw, flankAngle: degrees(0), threadFriction: ratio(friction)}).isSelfLocking
  expect([0.0432, 0.0434].map(locks)).toEqual([false, true])
})

test('a screw whose lead is as long as its turn over its friction jams', () => {
  const jam = {...screw, flankAngle: degrees(0), threadFriction: ratio(0.5), pitchDiameter: metres(1)}
  expect(() => screwTorque({...jam, lead: quantityOf('length', Math.PI / 0.5)})).toThrow('the thread jams')
  expect(() => screwTorque({...jam, lead: quantityOf('length', (Math.PI / 0.5) * 0.999)})).not.toThrow()
})

describe('supports of a plate', () => {
  const apart = (m: number): Quantity<'length-difference'> => quantityOf('length-difference', m)
  const shares = (
    centre: readonly [number, number],
    places: readonly (readonly [number, number])[],
  ): number[] =>
    loadShare({
      mass: kilograms(100 / 9.80665),
      centreOfMass: {x: apart(centre[0]), y: apart(centre[1])},
      supports: places.map(([x, y]) => ({x: apart(x), y: apart(y)})),
    }).map(({si}) => si)

  function near(found: readonly number[], expected: readonly number[]): void {
    expect(found.length).toBe(expected.length)
    for (const [index, share] of expected.entries()) expect(found[index]).toBeCloseTo(share, 6)
  }

  // By levers about the other support: 100 N on two supports shares as the distances, the nearer one more.
  test('in a line athwart share by their levers', () => {
    near(
      shares(
        [0, 0.25],
        [
          [0, 0],
          [0, 1],
        ],
      ),
      [75, 25],
    )
  })

  test('in a line askew share by their levers', () => {
    near(
      shares(
        [0.75, 1],
        [
          [0, 0],
          [3, 4],
        ],
      ),
      [75, 25],
    )
  })

  test('in a line askew, three of them, keep weight and moment', () => {
    const found = shares(
      [1.2, 1.6],
      [
        [0, 0],
        [1.5, 2],
        [3, 4],
      ],
    )
    const along = [0, 2.5, 5]
    expect(found.reduce((sum, one) => sum + one, 0)).toBeCloseTo(100, 6)
    expect(found.reduce((sum, one, index) => sum + one * (along[index] ?? 0), 0)).toBeCloseTo(200, 6)
  })

  test('of a small plate and of a large one share alike', () => {
    for (const size of [0.001, 1, 1000])
      near(
        shares(
          [0.25 * size, 0.25 * size],
          [
            [0, 0],
            [size, 0],
            [0, size],
            [size, size],
          ],
        ),
        [50, 25, 25, 0],
      )
  })

  test('in one line hold no centre of mass beside it', () => {
    expect(() =>
      shares(
        [0.5, 0.01],
        [
          [0, 0],
          [1, 0],
        ],
      ),
    ).toThrow('beside the line')
    expect(() =>
      shares(
        [0.5, 0.6],
        [
          [0, 0],
          [3, 4],
        ],
      ),
    ).toThrow('beside the line')
    expect(() =>
      shares(
        [0.01, 0],
        [
          [0, 0],
          [0, 0],
        ],
      ),
    ).toThrow('beside the line')
  })

  test('in one place share evenly what stands above them', () => {
    near(
      shares(
        [2, 3],
        [
          [2, 3],
          [2, 3],
        ],
      ),
      [50, 50],
    )
    near(shares([2, 3], [[2, 3]]), [100])
  })

  test('that would have to pull are refused, one that bears nothing is not', () => {
    near(
      shares(
        [0, 0],
        [
          [0, 0],
          [1, 0],
        ],
      ),
      [100, 0],
    )
    expect(() =>
      shares(
        [-0.01, 0],
        [
          [0, 0],
          [1, 0],
        ],
      ),
    ).toThrow('lifts a support')
  })
})

test('one leg that hangs straight holds what is marked on it', () => {
  const factor = (hitch: 'straight' | 'choke' | 'basket'): number =>
    slingModeFactor({legs: 1, angleFromVertical: degrees(0), hitch, share: 'two-legs'}).si
  expect([factor('straight'), factor('choke'), factor('basket')]).toEqual([1, 0.8, 2])
})
