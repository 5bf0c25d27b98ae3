import {tighteningOrderFigure} from '../figures/tightening-order-figure.ts'
import type {BoundFigure} from '../handbook-model/pages.ts'
import {found, printedValue, type PumpDesk, valueOf} from './desk.ts'

/** A figure drawn from this pump's data. */
export function boundFigure(name: string, caption: string, desk: PumpDesk): BoundFigure {
  const [, jointId = ''] = name.split(':')
  const joint = found(desk.design.joints.find((one) => one.id === jointId), `joint ${jointId}`)
  const order = printedValue(valueOf(desk, `${joint.id}.order`)).split(' ').map(Number)
  const {svg, alternative, data} = tighteningOrderFigure({bolts: joint.count, order})
  return {id: name.replace(':', '-'), svg, alternative, caption, data}
}
