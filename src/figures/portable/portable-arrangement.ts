import {type Figure, figureOf} from '../figure.ts'
import type {Point} from '../section/shape.ts'
import {escaped, textLines} from '../svg-text.ts'
import {balloonsOf, calloutsOf, type PortableFigures, type PortableWords} from './labels.ts'
import {balloonInks, calloutInks, dimensionInks, dimensionOf} from './marks.ts'
import {paintPieces, placed, type View} from './piece.ts'
import {
  misfitOf,
  type PortableGeometry,
  type PortablePart,
  placesOf,
  portableParts,
} from './portable-geometry.ts'
import {rigPlaces} from './rig-places.ts'
import {arrangementPieces, arrangementViews, margin, width} from './views.ts'

/** Number and title of each part that the parts list has. */
export type PortableParts = Readonly<
  Partial<Record<PortablePart, {readonly balloon: string; readonly title: string}>>
>

/** What an arrangement is drawn from. */
export interface PortableInput {
  readonly geometry: PortableGeometry
  readonly figures: PortableFigures
  readonly parts: PortableParts
  readonly words: PortableWords
  /** The lengths without a dimension line, in words. */
  readonly lengths: string
}

/**
 * Arrangement of a portable pump: tripod over the hatch, chain and hoses down to the pump in the tank, the way of the oil to
 * the outlet post and of the cargo to its connection; beside it the pump in half section, larger.
 *
 * @throws {Error}
 *   When the lengths of the pump cannot stand together.
 */
export function portableArrangement({geometry: g, figures, parts, words, lengths}: PortableInput): Figure {
  const misfit = misfitOf(g)
  if (misfit)
    throw new Error(`Unexpected lengths of a pump (${misfit}), expected such as fit into each other`)
  const views = arrangementViews(g)
  const pieces = arrangementPieces(g)
  const balloons = balloonsOf(g)
  const numbered = numberedParts(parts)
  const rig = rigPlaces(g)
  const pump = placesOf(g)
  const onRig = (point: Point): Point => placed(point, views.rig)
  const onPump = (point: Point): Point => placed(point, views.pump)
  const bottomLeft = onPump([-pump.right, 0])
  const bottomRight = onPump([pump.right, 0])
  return figureOf({
    size: 'wide',
    width,
    height: views.height,
    drawn: [
      paintPieces(pieces.rig, {...views.rig}),
      paintPieces(pieces.inTank, views.inTank),
      paintPieces(pieces.pump, views.pump),
      axisOf(g, views.pump),
      ...dimensionInks([
        dimensionOf({
          from: onRig([rig.left - 130, 0]),
          to: onRig([-120, g.headHeight]),
          line: 56,
          way: 'up',
          text: figures.headHeight,
        }),
        dimensionOf({
          from: onRig([-120, rig.foot]),
          to: onRig([-g.hatchMost / 2 - 40, rig.coaming]),
          line: onRig([-760, 0])[0],
          way: 'up',
          text: words.depth(figures.depthMost),
          along: 0.28,
        }),
        dimensionOf({
          from: bottomRight,
          to: onPump([pump.eye, pump.top]),
          line: 1462,
          way: 'up',
          text: figures.pumpLength,
        }),
        dimensionOf({
          from: bottomLeft,
          to: bottomRight,
          line: bottomLeft[1] + 64,
          way: 'across',
          text: figures.pumpDiameter,
        }),
      ]),
      ...calloutInks(calloutsOf(g, figures, words)),
      ...balloonInks(
        balloons.flatMap((one) => {
          const part = parts[one.part]
          return part ? [{...one, number: part.balloon}] : []
        }),
      ),
    ].join(''),
    alternative: `${words.view} ${words.order} ${numbered}.`,
    data: `${numbered}. ${lengths}`,
  })
}

/** In place of a drawing: why there is none, between the lines of a break. */
export function undrawnArrangement({
  reason,
  parts,
  lengths,
}: {
  readonly reason: string
  readonly parts: PortableParts
  readonly lengths: string
}): Figure {
  const lines = textLines(reason, 36, width - 2 * margin, true)
  const height = 140 + lines.length * 44
  const across = (y: number): string => `M0 ${y}H700l20 -24l60 48l20 -24H${width}`
  return figureOf({
    size: 'wide',
    width,
    height,
    drawn: `<path class="hair" d="${across(40)}${across(height - 40)}"/>${lines
      .map(
        (text, index) => `<text class="strong" x="${margin}" y="${112 + index * 44}">${escaped(text)}</text>`,
      )
      .join('')}`,
    alternative: `${reason} ${numberedParts(parts)}.`,
    data: `${reason} ${numberedParts(parts)}. ${lengths}`,
  })
}

/** Numbers with their titles, from the pump up. */
function numberedParts(parts: PortableParts): string {
  return portableParts
    .flatMap((part) => {
      const one = parts[part]
      return one ? [`${one.balloon} ${one.title}`] : []
    })
    .join('; ')
}

function axisOf(g: PortableGeometry, view: View): string {
  const {axis, flange, flangeHigh} = placesOf(g)
  return paintPieces(
    [
      {
        part: 'surroundings',
        piece: 'axes',
        drawn: 'axis',
        areas: [
          [
            [axis, -22],
            [axis, g.pumpLength * 0.9],
          ],
          [
            [flange, flangeHigh - 60],
            [flange, flangeHigh + 40],
          ],
        ],
      },
    ],
    view,
  )
}
