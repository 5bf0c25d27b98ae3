import {describe, expect, test} from 'vitest'
import {coarseThread} from '../../../src/calculations/bolted-joints/coarse-threads.ts'
import {
  frictionFromTorqueTest,
  type TorqueTestInput,
} from '../../../src/calculations/bolted-joints/friction-from-torque-test.ts'
import {hexagonHead} from '../../../src/calculations/bolted-joints/hexagon-heads.ts'
import {tighteningTorque} from '../../../src/calculations/bolted-joints/tightening-torque.ts'
import {
  kilonewtons,
  millimetres,
  newtonMetres,
  newtons,
  newtonsPerSquareMillimetre,
  percent,
  ratio,
} from '../../../src/quantities/named-units.ts'

const ofM16: TorqueTestInput = {
  thread: coarseThread('M16'),
  ...hexagonHead('M16'),
  clampForce: kilonewtons(80.97),
  torque: newtonMetres(205.9),
}

describe('friction from a torque and clamp-force test', () => {
  test('M16 at 80.97 kN and 205.9 N·m has a total friction of 0.1204 (computed apart from this project)', () => {
    const result = frictionFromTorqueTest(ofM16)
    expect(Math.abs(result.totalFriction.si - 0.1204)).toBeLessThanOrEqual(0.0002)
    expect(result.nutFactor.si).toBeCloseTo(205.9 / (80_970 * 0.016), 12)
    expect(result.threadFriction).toBeUndefined()
    expect(result.headFriction).toBeUndefined()
  })

  test.each([
    ['M8', 0.08],
    ['M8', 0.14],
    ['M12', 0.1],
    ['M16', 0.12],
    ['M20', 0.12],
    ['M24', 0.14],
    ['M30', 0.14],
  ])('%s tightened at friction %d by the exact form shows that friction within 0.001', (size, friction) => {
    const tightened = tighteningTorque({
      thread: coarseThread(size),
      ...hexagonHead(size),
      yieldStress: newtonsPerSquareMillimetre(640),
      utilisation: percent(90),
      threadFriction: ratio(friction),
      headFriction: ratio(friction),
      edition: '2003',
    })
    const {totalFriction} = frictionFromTorqueTest({
      thread: coarseThread(size),
      ...hexagonHead(size),
      clampForce: tightened.preload,
      torque: tightened.torque,
    })
    expect(Math.abs(totalFriction.si - friction)).toBeLessThanOrEqual(0.001)
  })

  test('thread and face come apart where the thread torque was measured, and put together give the torque again', () => {
    const result = frictionFromTorqueTest({...ofM16, threadTorque: newtonMetres(100)})
    const force = 80_970
    const pitchDiameter = 0.016 - 0.649519053 * 0.002
    const thread = force * (0.002 / (2 * Math.PI) + 0.577 * pitchDiameter * (result.threadFriction?.si ?? 0))
    const face = (force * 0.019995 * (result.headFriction?.si ?? 0)) / 2
    expect(thread).toBeCloseTo(100, 6)
    expect(thread + face).toBeCloseTo(205.9, 6)
  })

  test.each([
    [{torque: newtonMetres(20)}, 'Unexpected torque below what the pitch alone takes'],
    [{threadTorque: newtonMetres(20)}, 'Unexpected torque below what the pitch alone takes'],
    [{threadTorque: newtonMetres(205.9)}, 'Unexpected thread torque as large as the whole torque'],
    [{clampForce: newtons(0)}, 'Unexpected clamp force or torque of nothing'],
    [{torque: newtonMetres(0)}, 'Unexpected clamp force or torque of nothing'],
    [{holeDiameter: millimetres(23)}, 'Unexpected hole as large as the bearing face'],
  ])('%j is refused', (changed, reason) => {
    expect(() => frictionFromTorqueTest({...ofM16, ...changed})).toThrow(reason)
  })
})
