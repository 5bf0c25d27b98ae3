import {type Figure, figureOf} from '../figure.ts'
import {notesColumn, word} from './drawing-parts.ts'
import type {DrawnLowering} from './drawn-lowering.ts'
import {type DrawnLength, toldLengths} from './load-shapes.ts'
import {sideView, viewFromBelow} from './lowering-views.ts'

/** What a figure says that no author wrote. */
export interface LoweringWords {
  readonly notKnown: string
  readonly view: string
  readonly bolts: (thread: string) => string
  readonly places: (count: number, areOpposite: boolean) => string
  readonly boltLoad: (load: string) => string
  readonly carries: (mass: string) => string
  readonly travel: (travel: string, turns: string) => string
  readonly torque: (torque: string) => string
  readonly moves: string
  readonly drawnBy: (lengths: string) => string
  readonly boxed: string
  readonly restFree: string
}

const width = 1500
const column = {x: 900, width: width - 904, gap: 62} as const

/**
 * The pump unit let down from its motor on two bolts that stand opposite each other, from the side and from below.
 *
 * The side view parts the flanges by the travel, at the scale of the unit.
 */
export function loweringFigure(lowering: DrawnLowering, words: LoweringWords): Figure {
  const side = sideView(lowering)
  const below = viewFromBelow(lowering, side.scale, column.x + column.width / 2)
  const right = notesColumn(
    [
      {
        strong: [words.bolts(lowering.thread.text)],
        plain: [words.places(lowering.places, lowering.places % 2 === 0)],
      },
      {
        strong: [words.boltLoad(lowering.boltLoad ?? words.notKnown)],
        plain: [words.carries(lowering.mass ?? words.notKnown)],
      },
    ],
    {...column, top: below.bottom + 24},
  )
  const left = notesColumn(
    [
      {
        strong: [words.travel(lowering.travel?.text ?? words.notKnown, lowering.turns ?? words.notKnown)],
        plain: [torqueWords(lowering, words), lowering.lengths ? words.restFree : words.boxed],
      },
    ],
    {x: 110, width: 740, gap: 0, top: side.bottom + 20},
  )
  const {lengths, travel} = lowering
  const lengthsOf = [...Object.values(lengths ?? {}), ...(lengths ? [lowering.washer] : [])]
  return figureOf({
    size: 'wide',
    width,
    height: Math.ceil(Math.max(left.bottom, right.bottom) + 16),
    drawn: [
      side.svg,
      travel ? '' : word(words.notKnown, 20, side.face - 20),
      below.svg,
      left.svg,
      right.svg,
    ].join(''),
    alternative: `${words.view} ${toldOf(lowering, words, lengthsOf)}`,
    data: toldOf(
      lowering,
      words,
      lengthsOf.filter(({value}) => value === undefined),
    ),
  })
}

function torqueWords({torque, torqueCondition}: DrawnLowering, words: LoweringWords): string {
  const told = words.torque(torque ?? words.notKnown)
  return torqueCondition === '' ? told : `${told} (${torqueCondition})`
}

/**
 * All that the drawing shows, in words.
 *
 * @param lengths
 *   What it is drawn by: all, or those that no value below the figure prints.
 */
function toldOf(lowering: DrawnLowering, words: LoweringWords, lengths: readonly DrawnLength[]): string {
  const figures = [
    words.bolts(lowering.thread.text),
    words.places(lowering.places, lowering.places % 2 === 0),
    `${words.boltLoad(lowering.boltLoad ?? words.notKnown)}: ${words.carries(lowering.mass ?? words.notKnown)}`,
    words.travel(lowering.travel?.text ?? words.notKnown, lowering.turns ?? words.notKnown),
    torqueWords(lowering, words),
  ]
  const outline = lowering.lengths ? words.restFree : words.boxed
  const by = lengths.length > 0 ? `${words.drawnBy(toldLengths(lengths))} ` : ''
  return `${figures.join('; ')}. ${words.moves} ${by}${outline}.`
}
