import {coarseThread} from '../../../src/calculations/bolted-joints/coarse-threads.ts'
import {eyeboltLimit} from '../../../src/calculations/lifting/din-580-eyebolts.ts'
import {loadShare, type PlanPosition} from '../../../src/calculations/lifting/load-share.ts'
import {loweringBolts} from '../../../src/calculations/lifting/lowering-bolts.ts'
import {type ScrewCollar, screwTorque} from '../../../src/calculations/lifting/screw-torque.ts'
import {shackleLimit, shackleShare} from '../../../src/calculations/lifting/shackle-limit.ts'
import {slingAngle, slingTensionFactor} from '../../../src/calculations/lifting/sling-angle.ts'
import {slingLimit, slingModeFactor} from '../../../src/calculations/lifting/sling-limit.ts'
import {slingTension} from '../../../src/calculations/lifting/sling-tension.ts'
import {
  degrees,
  inches,
  kilograms,
  kilonewtons,
  millimetres,
  ratio,
} from '../../../src/quantities/named-units.ts'
import {quantityOf} from '../../../src/quantities/quantity.ts'
import {type HeldRows, heldTo, near} from '../../published-values/agreement.ts'
import {published as gear} from '../../published-values/eyebolt-and-shackle-tables.ts'
import {published as plates} from '../../published-values/load-share-rows.ts'
import {type ScrewRow, published as screws} from '../../published-values/power-screw-rows.ts'
import {published as slings} from '../../published-values/sling-tables.ts'

const gravity = 9.80665

function placeOf([x, y]: readonly [number, number]): PlanPosition {
  return {x: quantityOf('length-difference', x), y: quantityOf('length-difference', y)}
}

function collarOf(row: ScrewRow): {readonly collar?: ScrewCollar} {
  return row.collar
    ? {collar: {meanDiameter: millimetres(row.collar.diameter), friction: ratio(row.collar.friction)}}
    : {}
}

/** Lifting against every published row. */
export const agreements: readonly HeldRows[] = [
  heldTo(gear.eyebolts, ([size, ...printed]) =>
    [0, 45, 90].map((angle, index) =>
      near(`kg at ${angle}°`, eyeboltLimit(size, degrees(angle)).si, printed[index] ?? Number.NaN, 1e-9),
    ),
  ),
  heldTo(gear.shackles, ({angle, share}) => {
    const pull = {kind: 'one-leg', sideAngle: degrees(angle)} as const
    return [
      near('share', shackleShare(pull).si, share, 1e-12),
      near('kg of 2000', shackleLimit(kilograms(2000), pull).si, 2000 * share, 1e-9),
    ]
  }),
  heldTo(plates.plates, (row) => {
    const found = loadShare({
      mass: kilograms(row.mass),
      supports: row.supports.map(placeOf),
      centreOfMass: placeOf(row.centre),
    })
    return row.loads.map((load, index) =>
      near(`support ${index + 1} in N`, found[index]?.si ?? Number.NaN, load, 0.05),
    )
  }),
  heldTo(screws.screws, (row) => {
    const found = screwTorque({
      load: kilonewtons(row.load),
      pitchDiameter: millimetres(row.pitchDiameter),
      lead: millimetres(row.lead),
      flankAngle: degrees(row.flank),
      threadFriction: ratio(row.friction),
      ...collarOf(row),
    })
    return [
      near('raising in N·m', found.raising.si, row.raising, row.tolerance),
      near('lowering in N·m', found.lowering.si, row.lowering, row.tolerance),
      near('efficiency', found.efficiency.si, row.efficiency, 5e-4),
    ]
  }),
  heldTo(screws.loweringBolts, (row) => {
    const found = loweringBolts({
      mass: kilograms((row.load * 1000) / gravity),
      thread: coarseThread('M20'),
      travel: millimetres(400),
      threadFriction: ratio(row.friction),
      ...collarOf(row),
    })
    return [
      near('raising in N·m', found.raising.si, row.raising, row.tolerance),
      near('lowering in N·m', found.lowering.si, row.lowering, row.tolerance),
    ]
  }),
  heldTo(slings.tensionFactors, ({fromHorizontal, factor}) => [
    near('factor', slingTensionFactor(degrees(90 - fromHorizontal)).si, Number(factor), 0.0015),
  ]),
  heldTo(slings.liftedShares, ({fromHorizontal, share}) => [
    near('share', 1 / slingTensionFactor(degrees(90 - fromHorizontal)).si, Number(share), 0.0006),
  ]),
  heldTo(slings.twoLengths, ({length, height, factor, fromHorizontal}) => {
    const found = slingAngle({length: inches(length), height: inches(height)})
    return [
      near('factor', found.tensionFactor.si, factor, 1e-9),
      near('from the horizontal', (found.fromHorizontal.si * 180) / Math.PI, fromHorizontal, 1e-9),
    ]
  }),
  heldTo(slings.tensions, ({fromHorizontal, factor}) => {
    const found = slingTension({
      mass: kilograms(1000),
      legs: 2,
      angleFromVertical: degrees(90 - fromHorizontal),
      share: 'two-legs',
    })
    return [
      near('half the weight times the factor', found.tension.si / (500 * gravity), Number(factor), 0.0015),
      near('the same as a mass', found.carried.si / 500, Number(factor), 0.0015),
    ]
  }),
  heldTo(slings.twoLegs, ({fromVertical, share}) => {
    const found = slingTension({
      mass: kilograms(1000),
      legs: 2,
      angleFromVertical: degrees(fromVertical),
      share: 'two-legs',
    })
    return [near('share of the weight', found.tension.si / (1000 * gravity), share, 5e-4)]
  }),
  heldTo(slings.modeFactors, ({legs, fromVertical, factor}) => {
    const found = slingModeFactor({
      legs,
      angleFromVertical: degrees(fromVertical),
      share: 'all-legs',
      hitch: 'straight',
    })
    return [near('factor', found.si, factor, 1e-12)]
  }),
  heldTo(slings.limits, ({oneLeg, legs, fromVertical, hitch, limit}) => {
    const found = slingLimit({
      oneLeg: kilograms(oneLeg * 1000),
      legs,
      angleFromVertical: degrees(fromVertical),
      share: 'all-legs',
      hitch,
    })
    return [near('t', found.si / 1000, limit, 1e-9)]
  }),
]
