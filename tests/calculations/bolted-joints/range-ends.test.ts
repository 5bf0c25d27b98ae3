import {describe, expect, test} from 'vitest'
import {boltGroup} from '../../../src/calculations/bolted-joints/bolt-group.ts'
import {proofLoadRows} from '../../../src/calculations/bolted-joints/bolt-load-tables.ts'
import {nominalStressArea} from '../../../src/calculations/bolted-joints/bolt-strength.ts'
import {coarseThread} from '../../../src/calculations/bolted-joints/coarse-threads.ts'
import {frictionFromTorqueTest} from '../../../src/calculations/bolted-joints/friction-from-torque-test.ts'
import {leastPreload} from '../../../src/calculations/bolted-joints/least-preload.ts'
import {lubricantSwap} from '../../../src/calculations/bolted-joints/lubricant-swap.ts'
import {nutFactorFromFriction} from '../../../src/calculations/bolted-joints/nut-factor-from-friction.ts'
import {nutFactorPreload, nutFactorTorque} from '../../../src/calculations/bolted-joints/nut-factor-torque.ts'
import type {MetricThread} from '../../../src/calculations/bolted-joints/thread-geometry.ts'
import {tighteningOrder} from '../../../src/calculations/bolted-joints/tightening-order.ts'
import {tighteningPasses} from '../../../src/calculations/bolted-joints/tightening-passes.ts'
import {tighteningTorque} from '../../../src/calculations/bolted-joints/tightening-torque.ts'
import {wrenchCovers} from '../../../src/calculations/bolted-joints/wrench-covers.ts'
import {yieldClampForce} from '../../../src/calculations/bolted-joints/yield-clamp-force.ts'
import {
  millimetres,
  newtonMetres,
  newtons,
  newtonsPerSquareMillimetre,
  ratio,
} from '../../../src/quantities/named-units.ts'
import {quantityOf} from '../../../src/quantities/quantity.ts'
import {holdEnds, type RangeEnds} from '../range-ends.ts'

const thread = {nominalDiameter: millimetres(12), pitch: millimetres(1.75)}
const joint = {
  thread,
  bearingDiameter: millimetres(16.63),
  holeDiameter: millimetres(13.5),
  yieldStress: newtonsPerSquareMillimetre(600),
  utilisation: ratio(0.9),
  threadFriction: ratio(0.12),
  headFriction: ratio(0.12),
  edition: '2003',
} as const
const group = {
  bolts: 8,
  boltCircle: quantityOf('length', 0.2),
  pull: newtons(800),
  moment: quantityOf('torque', 0),
  firstBoltAt: quantityOf('angle', 0),
  leastPreload: newtons(1000),
}
const tested = {
  thread,
  clampForce: newtons(20_000),
  torque: newtonMetres(40),
  bearingDiameter: joint.bearingDiameter,
  holeDiameter: joint.holeDiameter,
}

const rows: readonly RangeEnds[] = [
  [
    'bolt circle',
    (si) => boltGroup({...group, boltCircle: quantityOf('length', si)}),
    [0.001, 0.5],
    [0, -0.1],
  ],
  [
    'preload of a bolt group',
    (si) => boltGroup({...group, leastPreload: quantityOf('force', si)}),
    [0.5],
    [0, -1],
  ],
  ['count of a bolt group', (bolts) => boltGroup({...group, bolts}), [3, 48], [2, 49, 8.5]],
  [
    'clamp force of a torque test',
    (si) => frictionFromTorqueTest({...tested, clampForce: quantityOf('force', si)}),
    [0.5, 20_000],
    [0, -1],
  ],
  [
    'torque of a torque test',
    (si) => frictionFromTorqueTest({...tested, clampForce: newtons(100), torque: newtonMetres(si)}),
    [0.5],
    [0, -1],
  ],
  [
    'hole below the head of a torque test',
    (mm) => frictionFromTorqueTest({...tested, holeDiameter: millimetres(mm)}),
    [16.62],
    [16.63, 17],
  ],
  [
    'tightening factor',
    (si) => leastPreload({preload: newtons(1000), tighteningFactor: ratio(si)}),
    [1, 4],
    [0.999, 4.001],
  ],
  [
    'preload',
    (si) => leastPreload({preload: quantityOf('force', si), tighteningFactor: ratio(2)}),
    [0.5],
    [0, -1],
  ],
  [
    'thread friction of a nut factor',
    (si) => nutFactorFromFriction({...joint, threadFriction: ratio(si)}),
    [0.02, 0.6],
    [0.019, 0.601, 1.5],
  ],
  [
    'head friction of a nut factor',
    (si) => nutFactorFromFriction({...joint, headFriction: ratio(si)}),
    [0.02, 0.6],
    [0.019, 0.601, 1.5],
  ],
  [
    'hole of a nut factor',
    (mm) => nutFactorFromFriction({...joint, holeDiameter: millimetres(mm)}),
    [0, 16.62],
    [-0.1, 16.63],
  ],
  [
    'nut factor',
    (si) => nutFactorPreload({nutFactor: ratio(si), diameter: millimetres(12), torque: newtonMetres(40)}),
    [0.05, 0.5],
    [0.049, 0.501],
  ],
  [
    'diameter of a nut factor',
    (mm) => nutFactorPreload({nutFactor: ratio(0.2), diameter: millimetres(mm), torque: newtonMetres(40)}),
    [0.5, 12],
    [0, -1],
  ],
  [
    'nut factor of a torque',
    (si) => nutFactorTorque({nutFactor: ratio(si), diameter: millimetres(12), preload: newtons(1000)}),
    [0.05, 0.5],
    [0.049, 0.501],
  ],
  [
    'friction in the thread',
    (si) => tighteningTorque({...joint, threadFriction: ratio(si)}),
    [0.02, 0.6],
    [0.019, 0.601],
  ],
  [
    'friction below the head',
    (si) => tighteningTorque({...joint, headFriction: ratio(si)}),
    [0.02, 0.6],
    [0.019, 0.601],
  ],
  [
    'hole below the head',
    (mm) => tighteningTorque({...joint, holeDiameter: millimetres(mm)}),
    [16.62],
    [16.63, 17],
  ],
  ['utilisation', (si) => tighteningTorque({...joint, utilisation: ratio(si)}), [0.01, 1], [0, 1.001]],
  [
    'torque for a wrench',
    (si) => wrenchCovers({torque: newtonMetres(si), begin: newtonMetres(0), most: newtonMetres(1)}),
    [0.5],
    [0, -1],
  ],
  [
    'beginning of a scale',
    (si) => wrenchCovers({torque: newtonMetres(2), begin: newtonMetres(si), most: newtonMetres(3)}),
    [0, 0.5, 2.9],
    [-0.1, 3],
  ],
  [
    'friction at yield',
    (si) => yieldClampForce({thread, yieldStress: joint.yieldStress, threadFriction: ratio(si)}),
    [0.02, 0.6],
    [0.019, 0.601, 1.5],
  ],
  [
    'yield stress',
    (si) => yieldClampForce({thread, yieldStress: quantityOf('stress', si), threadFriction: ratio(0.1)}),
    [0.5],
    [0, -1],
  ],
  ['count of bolts', (bolts) => tighteningOrder(bolts), [1, 3, 48], [0, 49, 2.5]],
  ['last pass', (si) => tighteningPasses(newtonMetres(60), [ratio(0.3), ratio(si)]), [1], [0.999, 1.001]],
  [
    'pass after a pass of 30 %',
    (si) => tighteningPasses(newtonMetres(60), [ratio(0.3), ratio(si), ratio(1)]),
    [0.31],
    [0.3, 0.29],
  ],
]

describe('the ends of a stated range are inside it, and nothing beyond', () => {
  test.each(rows)('%s', (_what, run, accepted, refused) => {
    holdEnds(run, accepted, refused)
  })
})

test('one bolt has an order of one', () => {
  expect(tighteningOrder(1)).toEqual([1])
})

/** ISO 261, coarse pitch: the table of the library begins at M6. */
function threadOf(size: string): MetricThread {
  return size === 'M5' ? {nominalDiameter: millimetres(5), pitch: millimetres(0.8)} : coarseThread(size)
}

test('a nominal stress area of the load table is that of its thread, to the digits that it prints', () => {
  expect(proofLoadRows.length).toBe(12)
  for (const {size, nominalStressArea: printed} of proofLoadRows)
    expect(printed.si, size).toBeCloseTo(nominalStressArea(threadOf(size)).si, 12)
})

test('a friction that the torque of the pitch alone would give is refused', () => {
  const lead = 0.00175 / (2 * Math.PI)
  const torque = quantityOf('torque', lead * 20_000)
  expect(() => frictionFromTorqueTest({...tested, torque})).toThrow('below what the pitch alone takes')
})

describe('a lubricant swap', () => {
  const swapped = (set: number, applied: number, utilisation: number): string =>
    lubricantSwap({
      ...joint,
      utilisation: ratio(utilisation),
      setFor: {threadFriction: ratio(set), headFriction: ratio(set)},
      appliedTo: {threadFriction: ratio(applied), headFriction: ratio(applied)},
    }).outcome

  test('to the same state stays within its utilisation, even at the whole yield stress', () => {
    expect(swapped(0.12, 0.12, 0.7)).toBe('within')
    expect(swapped(0.12, 0.12, 1)).toBe('within')
  })

  test('to less friction goes above it', () => {
    expect(swapped(0.12, 0.119, 0.7)).toBe('above utilisation')
    expect(swapped(0.2, 0.08, 0.9)).toBe('beyond yield')
  })
})

describe('a torque wrench', () => {
  const covers = (torque: number): string =>
    wrenchCovers({torque: newtonMetres(torque), begin: newtonMetres(0), most: newtonMetres(100)}).reason

  test('covers both ends of its usable range', () => {
    expect([20, 100].map(covers)).toEqual(['within the range', 'within the range'])
    expect([19.99, 100.01].map(covers)).toEqual(['below the range', 'above the range'])
  })

  test('covers an end that a conversion missed by its last digit', () => {
    expect(covers(20 * (1 - 1e-12))).toBe('within the range')
    expect(covers(100 * (1 + 1e-12))).toBe('within the range')
  })
})

test('a joint is closed by the last newton of its clamp force, and open without it', () => {
  expect(boltGroup({...group, leastPreload: newtons(100.5)}).opens).toBe(false)
  expect(boltGroup({...group, leastPreload: newtons(100)}).opens).toBe(true)
})
