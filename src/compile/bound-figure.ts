import type {Figure} from '../figures/figure.ts'
import {type SealSide, sealOrientationFigure} from '../figures/seal-orientation-figure.ts'
import {tankPlan} from '../figures/tank-plan.ts'
import {tighteningOrderFigure} from '../figures/tightening-order-figure.ts'
import type {BoundFigure} from '../handbook-model/pages.ts'
import type {Procedure} from '../handbook-model/procedure.ts'
import {valueIn} from '../quantities/print-quantity.ts'
import {found, type PumpDesk, printedValue, pumpValue} from './desk.ts'
import {isolationFigure} from './isolation-figure.ts'
import {planTanks} from './plan-tanks.ts'

/**
 * A figure drawn from this pump's data.
 *
 * @param id
 *   Element id, of the procedure that shows it, so that pages can be merged.
 * @param procedure
 *   What it isolates and restores moves in a diagram of lines; the rest stays.
 * @throws {Error}
 *   When the name is none that the check lets pass, or its joint is missing.
 */
export function boundFigure(
  id: string,
  name: string,
  caption: string,
  desk: PumpDesk,
  procedure: Procedure,
): BoundFigure {
  if (name === 'tank-plan') return {id, caption, ...markedPlan(id, desk)}
  const [kind, of = ''] = name.split(':')
  if (kind === 'seal-orientation') return {id, caption, wide: true, ...sealOrientation(of, desk)}
  if (kind === 'isolation-lines' && (of === 'isolated' || of === 'restored'))
    return {id, caption, wide: true, ...isolationFigure(of, procedure, desk)}
  return {id, caption, ...order(of, desk)}
}

function order(jointId: string, desk: PumpDesk): Figure {
  const joint = found(
    desk.design.joints.find((one) => one.id === jointId),
    `joint ${jointId}`,
  )
  const turns = printedValue(pumpValue(desk, `${joint.id}.order`))
    .split(' ')
    .map(Number)
  return tighteningOrderFigure({bolts: joint.count, order: turns})
}

/** Spaces of a seal, the lower one first. */
const sidesOf = {
  'cargo-cofferdam': ['cargo', 'cofferdam'],
  'cofferdam-oil': ['cofferdam', 'oil'],
} as const satisfies Record<string, readonly [SealSide, SealSide]>

function sealOrientation(sealId: string, desk: PumpDesk): Figure {
  const seal = found(
    desk.design.seals.find((one) => one.id === sealId),
    `seal ${sealId}`,
  )
  const {seatDepth} = seal
  return sealOrientationFigure({
    title: seal.title.en,
    sides: sidesOf[seal.between],
    lips: seal.lips.map(({title, faces}) => ({title: title.en, faces})),
    depth: seatDepth.kind === 'known' ? valueIn(seatDepth.quantity, 'mm') : undefined,
  })
}

function markedPlan(id: string, desk: PumpDesk): Figure {
  const tanks = planTanks(desk.vessel).map(({position: _position, ...tank}) => tank)
  const {svg, alternative} = tankPlan({
    tanks,
    ...(desk.tank ? {marked: desk.tank.id} : {}),
    name: id,
    small: true,
  })
  return {svg, alternative, data: alternative}
}
