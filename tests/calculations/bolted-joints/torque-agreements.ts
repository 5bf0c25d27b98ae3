import {loadClasses} from '../../../src/calculations/bolted-joints/bolt-load-tables.ts'
import {boltStrength} from '../../../src/calculations/bolted-joints/bolt-strength.ts'
import {coarseThread} from '../../../src/calculations/bolted-joints/coarse-threads.ts'
import {hexagonHead} from '../../../src/calculations/bolted-joints/hexagon-heads.ts'
import {nutFactorFromFriction} from '../../../src/calculations/bolted-joints/nut-factor-from-friction.ts'
import {
  nutFactorOf,
  nutFactorPreload,
  nutFactorTorque,
  torqueUnderOtherNutFactor,
} from '../../../src/calculations/bolted-joints/nut-factor-torque.ts'
import {yieldStressOf} from '../../../src/calculations/bolted-joints/property-classes.ts'
import {
  type TighteningResult,
  type TorqueEdition,
  tighteningTorque,
} from '../../../src/calculations/bolted-joints/tightening-torque.ts'
import {
  kilonewtons,
  millimetres,
  newtonMetres,
  newtons,
  newtonsPerSquareMillimetre,
  percent,
  ratio,
} from '../../../src/quantities/named-units.ts'
import type {Quantity} from '../../../src/quantities/quantity.ts'
import {type Agreement, type HeldRows, halfDigit, heldTo, near} from '../../published-values/agreement.ts'
import {
  inchInMetres,
  published as nutFactors,
  poundForceInNewtons,
} from '../../published-values/nut-factor-rows.ts'
import {coarseRows, type TorqueRow, published as torques} from '../../published-values/vdi-2230-tables.ts'

function tighten(
  size: string,
  yieldStress: Quantity<'stress'>,
  friction: number,
  {edition = '2003', pitch}: {readonly edition?: TorqueEdition; readonly pitch?: number} = {},
): TighteningResult {
  const thread = coarseThread(size)
  return tighteningTorque({
    thread: pitch === undefined ? thread : {...thread, pitch: millimetres(pitch)},
    ...hexagonHead(size),
    yieldStress,
    utilisation: percent(90),
    threadFriction: ratio(friction),
    headFriction: ratio(friction),
    edition,
  })
}

function yieldOf(propertyClass: string, size: string): Quantity<'stress'> {
  return yieldStressOf(propertyClass, coarseThread(size).nominalDiameter)
}

/** Preload and torque of a printed pair; the share is what the rounding of the table leaves open beside its digits. */
function printedPair(
  row: TorqueRow,
  {preload, torque}: TighteningResult,
  share: number,
  more: number,
): readonly Agreement[] {
  return [
    near(
      'preload in kN',
      preload.si / 1000,
      Number(row.preload),
      halfDigit(row.preload) + share * Number(row.preload),
    ),
    near(
      'torque in N·m',
      torque.si,
      Number(row.torque),
      halfDigit(row.torque) + share * Number(row.torque) + more,
    ),
  ]
}

/** 0.2 % proof stress in N/mm² of the classes of the stainless table. */
const stainlessStress: Readonly<Record<string, number>> = {'50': 210, '70': 450, '80': 600}

const nutFactorExample = {diameter: millimetres(0.19 * 25.4), preload: 1275 * poundForceInNewtons}
const poundInch = poundForceInNewtons * inchInMetres

function nutFactorOfM16(size: string, friction: number): number {
  const {nominalDiameter} = coarseThread(size)
  return nutFactorOf({...tighten(size, newtonsPerSquareMillimetre(640), friction), diameter: nominalDiameter})
    .si
}

/** Torques and nut factors against every published row. */
export const torqueAgreements: readonly HeldRows[] = [
  heldTo(torques.coarse, (row) =>
    printedPair(row, tighten(row.thread, yieldOf(row.propertyClass, row.thread), row.friction), 0, 0.2).map(
      (one, index) => (index === 0 ? {...one, tolerance: halfDigit(row.preload)} : one),
    ),
  ),
  heldTo(torques.fine, (row) => {
    const [size = '', pitch = ''] = row.thread.split('x')
    const found = tighten(size, yieldOf(row.propertyClass, size), row.friction, {pitch: Number(pitch)})
    return printedPair(row, found, 0.003, 0)
  }),
  heldTo(torques.stainless, (row) => {
    const stress = newtonsPerSquareMillimetre(stainlessStress[row.propertyClass] ?? Number.NaN)
    const loose = Number(row.thread.slice(1)) < 12 ? 0.025 : 0.013
    return printedPair(row, tighten(row.thread, stress, row.friction), loose, 0)
  }),
  heldTo(torques.of1986, ([size, ...printed]) =>
    loadClasses.map((propertyClass, index) => {
      const torque = printed[index] ?? Number.NaN
      const found = tighten(size, yieldOf(propertyClass, size), 0.14, {edition: '1986'}).torque.si
      return near(`torque of ${propertyClass}`, found, torque, 0.015 * torque + (torque < 100 ? 0.5 : 2.5))
    }),
  ),
  heldTo(nutFactors.torques, ([nutFactor, printed]) => {
    const {diameter, preload} = nutFactorExample
    const torque = nutFactorTorque({nutFactor: ratio(nutFactor), diameter, preload: newtons(preload)})
    return [near('torque in lbf·in', torque.si / poundInch, Number(printed), halfDigit(printed))]
  }),
  heldTo(nutFactors.preloads, ([nutFactor, printed]) => {
    const {diameter, preload} = nutFactorExample
    const torque = newtonMetres(Number(printed) * poundInch)
    const found = nutFactorPreload({nutFactor: ratio(nutFactor), diameter, torque})
    return [near('preload in N', found.si, preload, preload / (Number(printed) / halfDigit(printed) - 1))]
  }),
  heldTo(nutFactors.ofTable, ([size, nutFactor]) => {
    const row = coarseRows.find(
      (one) => one.thread === size && one.propertyClass === '8.8' && one.friction === 0.12,
    )
    const ofTable = nutFactorOf({
      torque: newtonMetres(Number(row?.torque)),
      preload: kilonewtons(Number(row?.preload)),
      diameter: coarseThread(size).nominalDiameter,
    })
    return [
      near('nut factor of the printed table', ofTable.si, nutFactor, 0.0011),
      near('nut factor of the exact form', nutFactorOfM16(size, 0.12), nutFactor, 0.0011),
    ]
  }),
  heldTo(nutFactors.ofM16, ([friction, nutFactor]) => [
    near('nut factor', nutFactorOfM16('M16', friction), nutFactor, 0.0006),
  ]),
  heldTo(nutFactors.ofM10, ([friction, nutFactor]) => {
    const found = nutFactorFromFriction({
      thread: coarseThread('M10'),
      bearingDiameter: millimetres(15.2),
      holeDiameter: millimetres(11),
      threadFriction: ratio(friction),
      headFriction: ratio(friction),
    })
    return [
      near('nut factor', found.nutFactor.si, nutFactor, 0.00005),
      near('friction diameter in mm', found.bearingFrictionDiameter.si * 1000, 13.212, 0.0005),
    ]
  }),
  heldTo(nutFactors.reusable, ([size, preload, oiled, pasted]) => {
    const thread = coarseThread(size)
    const proofLoad = boltStrength({thread, propertyClass: '8.8'}).proofLoad?.si ?? 0
    const reusable = newtons(0.75 * proofLoad)
    const torqueAt = (nutFactor: number) =>
      nutFactorTorque({nutFactor: ratio(nutFactor), diameter: thread.nominalDiameter, preload: reusable}).si
    return [
      near('preload in kN', reusable.si / 1000, preload, 0.051),
      near('torque at 0.20', torqueAt(0.2), oiled, 0.06),
      near('torque at 0.15', torqueAt(0.15), pasted, 0.06),
    ]
  }),
  heldTo(nutFactors.otherFactor, ({plain, phosphated, share}) => {
    const found = torqueUnderOtherNutFactor({
      torque: newtonMetres(100),
      nutFactor: ratio(plain),
      otherNutFactor: ratio(phosphated),
    })
    return [near('share of the torque', found.si / 100, share, 0.005)]
  }),
]
