import type {Figure} from '../figures/figure.ts'
import {type SealSide, sealOrientationFigure} from '../figures/seal-orientation-figure.ts'
import {tighteningOrderFigure} from '../figures/tightening-order-figure.ts'
import type {BoundFigure} from '../handbook-model/pages.ts'
import type {Procedure} from '../handbook-model/procedure.ts'
import {valuesBehindStations} from '../handbook-model/station-places.ts'
import {valueIn} from '../quantities/print-quantity.ts'
import {found, type PumpDesk, printedValue, pumpValue} from './desk.ts'
import {sealWordsEn, tighteningWordsEn} from './figure-words-en.ts'
import {isolationFigure} from './isolation-figure.ts'
import {liftOfPump, loweringOfPump} from './lifting-figures.ts'
import {pictureOf} from './picture.ts'
import {pipeStackOfPump, valuesOfStack} from './pipe-stack-of-pump.ts'
import {planOfPump} from './plan-of-pump.ts'
import {portableFigure, portableFigureValues} from './portable-figure.ts'
import {stationsOfPump} from './stations-figure.ts'
import {valueLine} from './value-line.ts'

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
  const {kind, figure, wide, values = []} = drawnFor(name, desk, procedure)
  return {
    id,
    caption,
    picture: pictureOf(kind, figure),
    data: figure.data,
    values: values.map((value) => valueLine(pumpValue(desk, value), desk)),
    ...(wide ? {wide} : {}),
  }
}

/** The figure of a name, the kind that its file is named by, and whether a narrow screen pushes it sideways. */
interface DrawnFigure {
  readonly kind: string
  readonly figure: Figure
  readonly wide?: true
  /** Ids of the values whose figures stand in the drawing. */
  readonly values?: readonly string[]
}

function drawnFor(name: string, desk: PumpDesk, procedure: Procedure): DrawnFigure {
  const [kind = '', of = ''] = name.split(':')
  if (kind === 'tank-plan') return {kind, figure: planOfPump(desk)}
  if (kind === 'pipe-stack') {
    const figure = found(pipeStackOfPump(desk), 'what a pipe stack is drawn from')
    return {kind, figure, wide: true, values: valuesOfStack}
  }
  if (kind === 'seal-orientation') return {kind, figure: sealOrientation(of, desk), wide: true}
  if (kind === 'isolation-lines' && (of === 'isolated' || of === 'restored'))
    return {kind, figure: isolationFigure(of, procedure, desk), wide: true}
  if (kind === 'lift') return {kind, wide: true, ...liftOfPump(of, desk)}
  if (name === 'lowering' || name === 'raising') return {kind, wide: true, ...loweringOfPump(name, desk)}
  if (kind === 'stations')
    return {
      kind,
      figure: stationsOfPump(name, procedure, desk),
      wide: true,
      values: valuesBehindStations(name),
    }
  if (kind === 'portable-arrangement')
    return {kind, figure: portableFigure(desk), wide: true, values: portableFigureValues}
  return {kind: 'tightening-order', figure: order(of, desk), wide: true, values: [`${of}.passes`]}
}

function order(jointId: string, desk: PumpDesk): Figure {
  const joint = found(
    desk.design.joints.find((one) => one.id === jointId),
    `joint ${jointId}`,
  )
  const turns = printedValue(pumpValue(desk, `${joint.id}.order`))
    .split(' ')
    .map(Number)
  return tighteningOrderFigure({
    title: joint.title.en,
    bolts: joint.count,
    order: turns,
    head: joint.head,
    passes: printedValue(pumpValue(desk, `${joint.id}.passes`)),
    words: tighteningWordsEn,
  })
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
    words: sealWordsEn,
    depth: seatDepth.kind === 'known' ? valueIn(seatDepth.quantity, 'mm') : undefined,
  })
}
