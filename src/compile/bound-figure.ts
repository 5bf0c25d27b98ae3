import {tankPlan} from '../figures/tank-plan.ts'
import {tighteningOrderFigure} from '../figures/tightening-order-figure.ts'
import type {BoundFigure} from '../handbook-model/pages.ts'
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
  const [, jointId = ''] = name.split(':')
  const joint = found(
    desk.design.joints.find((one) => one.id === jointId),
    `joint ${jointId}`,
  )
  const order = printedValue(pumpValue(desk, `${joint.id}.order`))
    .split(' ')
    .map(Number)
  const {svg, alternative, data} = tighteningOrderFigure({bolts: joint.count, order})
  return {id, svg, alternative, caption, data}
}

function markedPlan(id: string, desk: PumpDesk): Pick<BoundFigure, 'svg' | 'alternative' | 'data'> {
  const tanks = planTanks(desk.vessel).map(({position: _position, ...tank}) => tank)
  const {svg, alternative} = tankPlan({
    tanks,
    ...(desk.tank ? {marked: desk.tank.id} : {}),
    name: id,
    small: true,
  })
  return {svg, alternative, data: alternative}
}
