import {type SealSide, sealOrientationFigure} from '../figures/seal-orientation-figure.ts'
import {tankPlan} from '../figures/tank-plan.ts'
import {tighteningOrderFigure} from '../figures/tightening-order-figure.ts'
import type {BoundFigure} from '../handbook-model/pages.ts'
import {valueIn} from '../quantities/print-quantity.ts'
import {found, type PumpDesk, printedValue, pumpValue} from './desk.ts'
import {planTanks} from './plan-tanks.ts'

/**
 * A figure drawn from this pump's data.
 *
 * @param id
 *   Element id, of the procedure that shows it, so that pages can be merged.
 * @throws {Error}
 *   When the name is none that the check lets pass, or its joint is missing.
 */
export function boundFigure(id: string, name: string, caption: string, desk: PumpDesk): BoundFigure {
  if (name === 'tank-plan') return {id, caption, ...markedPlan(id, desk)}
  const [kind, of = ''] = name.split(':')
  return {id, caption, ...(kind === 'seal-orientation' ? sealOrientation(of, desk) : order(of, desk))}
}

type Drawn = Pick<BoundFigure, 'svg' | 'alternative' | 'data'>

function order(jointId: string, desk: PumpDesk): Drawn {
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

function sealOrientation(sealId: string, desk: PumpDesk): Drawn {
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

function markedPlan(id: string, desk: PumpDesk): Drawn {
  const tanks = planTanks(desk.vessel).map(({position: _position, ...tank}) => tank)
  const {svg, alternative} = tankPlan({
    tanks,
    ...(desk.tank ? {marked: desk.tank.id} : {}),
    name: id,
    small: true,
  })
  return {svg, alternative, data: alternative}
}
