import {boltGroup} from '../../../src/calculations/bolted-joints/bolt-group.ts'
import {coarseThread} from '../../../src/calculations/bolted-joints/coarse-threads.ts'
import {frictionFromTorqueTest} from '../../../src/calculations/bolted-joints/friction-from-torque-test.ts'
import {hexagonHead} from '../../../src/calculations/bolted-joints/hexagon-heads.ts'
import {leastPreload} from '../../../src/calculations/bolted-joints/least-preload.ts'
import {lubricantSwap} from '../../../src/calculations/bolted-joints/lubricant-swap.ts'
import {tighteningOrder} from '../../../src/calculations/bolted-joints/tightening-order.ts'
import {tighteningPasses} from '../../../src/calculations/bolted-joints/tightening-passes.ts'
import {wrenchExtensionSetting} from '../../../src/calculations/bolted-joints/wrench-extension.ts'
import {yieldClampForce} from '../../../src/calculations/bolted-joints/yield-clamp-force.ts'
import {
  degrees,
  kilonewtons,
  millimetres,
  newtonMetres,
  newtons,
  newtonsPerSquareMillimetre,
  percent,
  ratio,
} from '../../../src/quantities/named-units.ts'
import {type HeldRows, halfDigit, heldTo, near, same} from '../../published-values/agreement.ts'
import {published as fastening} from '../../published-values/fastening-rows.ts'
import {published as orders} from '../../published-values/tightening-orders.ts'

const gravity = 9.80665
/** Orders, passes and loads of joints against every published row. */
export const jointAgreements: readonly HeldRows[] = [
  heldTo(orders.crossPatterns, ([bolts, pattern]) => [
    same('order', tighteningOrder(bolts).join('-'), pattern.replaceAll(' ', '-')),
  ]),
  heldTo(orders.passRules, ({shares}) => [
    same(
      'shares',
      tighteningPasses(newtonMetres(100), shares.map(percent))
        .map((one) => Math.round(one.si))
        .join(' '),
      shares.join(' '),
    ),
  ]),
  heldTo(orders.passTorques, ([torque, share, printed]) => {
    const shares = [percent(share), percent(100)].slice(share === 100 ? 1 : 0)
    const found = tighteningPasses(newtonMetres(torque), shares)[0]?.si ?? Number.NaN
    return [near('torque of the pass', found, Number(printed), halfDigit(printed))]
  }),
  heldTo(fastening.leastPreload, ({preload, tighteningFactor, least}) => {
    const found = leastPreload({preload: kilonewtons(preload), tighteningFactor: ratio(tighteningFactor)})
    return [near('least preload in kN', found.si / 1000, least, 0.05)]
  }),
  heldTo(fastening.extension, ({torque, wrench, extended, setting}) => {
    const found = wrenchExtensionSetting({
      torque: newtonMetres(torque),
      wrenchLength: millimetres(wrench),
      extendedLength: millimetres(extended),
    })
    return [near('setting', found.si, setting, 1e-9)]
  }),
  heldTo(fastening.torqueTest, ({clampForce, torque, friction}) => {
    const found = frictionFromTorqueTest({
      thread: coarseThread('M16'),
      ...hexagonHead('M16'),
      clampForce: kilonewtons(clampForce),
      torque: newtonMetres(torque),
    })
    return [near('total friction', found.totalFriction.si, friction, 0.0002)]
  }),
  heldTo(fastening.yieldDivisor, ({friction, divisor}) => {
    const found = yieldClampForce({
      thread: coarseThread('M16'),
      yieldStress: newtonsPerSquareMillimetre(640),
      threadFriction: ratio(friction),
    })
    return [near('divisor', found.divisor.si, divisor, 0.0005)]
  }),
  heldTo(fastening.lubricantSwap, (row) => {
    const found = lubricantSwap({
      thread: coarseThread('M12'),
      ...hexagonHead('M12'),
      yieldStress: newtonsPerSquareMillimetre(640),
      utilisation: percent(90),
      edition: '2003',
      setFor: {threadFriction: ratio(0.14), headFriction: ratio(0.14)},
      appliedTo: {threadFriction: ratio(0.08), headFriction: ratio(0.08)},
    })
    return [
      near('torque', found.torque.si, row.torque, 0.5),
      near('preload in kN', found.preload.si / 1000, row.preload, 0.3),
      near('share of the allowed', found.shareOfAllowed.si, row.shareOfAllowed, 0.007),
      near('yield force in kN', found.yieldForce.si / 1000, row.yieldForce, 0.05),
    ]
  }),
  heldTo(fastening.boltGroups, ({bolts, circle, firstBoltAt, mass, loads}) => {
    const {shares} = boltGroup({
      bolts,
      boltCircle: millimetres(circle * 1000),
      pull: newtons(mass * gravity),
      moment: newtonMetres(mass * gravity * 0.05),
      firstBoltAt: degrees(firstBoltAt),
      leastPreload: kilonewtons(20),
    })
    return loads.map((load, index) => near(`bolt ${index + 1}`, shares[index]?.si ?? Number.NaN, load, 0.05))
  }),
]
