import {type Figure, figureOf} from './figure.ts'
import {escaped, rounded, textLines} from './svg-text.ts'

/** Words of the figure in one language. */
export interface TighteningWords {
  readonly bolt: string
  readonly turn: string
  /** What the picture tells beside the order. */
  readonly view: (bolts: number, title: string) => string
  readonly order: (order: string) => string
  readonly passes: (passes: string) => string
}

/** A bolted joint as it is tightened. */
export interface TighteningInput {
  readonly title: string
  readonly bolts: number
  /** Bolts in the order of their turns. */
  readonly order: readonly number[]
  readonly head: 'hexagon' | 'socket'
  /** Torques of the passes in one text, as the page prints them. */
  readonly passes: string
  readonly words: TighteningWords
}

/** Ten units are one millimetre on paper. */
const perMillimetre = 10
const letter = 36
const step = 50
/** Half of a bolt head across its corners, and the way from its middle to that of its turn. */
const head = 42
const toTurn = 74
/** Way between the middles of two heads where the paper allows it, and bounds of the radius of the circle of middles. */
const apart = 100
const leastCircle = 150
const mostCircle = 640
const edge = 44
/** Room of the words beside the circle. */
const wordsWidth = 560

/**
 * Bolt circle seen from the side of the heads: bolts numbered clockwise from the top, each with its turn in the order, and
 * the passes.
 *
 * The circle grows with the count of bolts, so that neighbours stay apart; where the words no longer fit beside it they
 * stand below.
 */
export function tighteningOrderFigure({
  title,
  bolts,
  order,
  head: kind,
  passes,
  words,
}: TighteningInput): Figure {
  const circle = Math.min(mostCircle, Math.max(leastCircle, apart / 2 / Math.sin(Math.PI / bolts)))
  const round = Math.ceil(2 * (circle + toTurn + edge))
  const isBelow = round + wordsWidth > widest
  const width = paperWidth(isBelow ? Math.max(round, wordsWidth) : round + wordsWidth)
  const middle: Place = [isBelow ? width / 2 : round / 2, round / 2]
  const lines = [
    ...textLines(title, letter, wordsWidth - edge, true).map((text) => ({text, isTitle: true})),
    ...[words.bolt, words.turn, words.passes(passes)].flatMap((text) =>
      textLines(text, letter, wordsWidth - edge).map((one) => ({text: one, isTitle: false})),
    ),
  ]
  const tall = lines.length * step
  const left = isBelow ? edge : round
  const top = isBelow ? round + step : Math.max(step, (round - tall) / 2 + letter)
  const height = Math.ceil(isBelow ? round + tall + edge : Math.max(round, top + tall))
  const heads = Array.from({length: bolts}, (_, index) => placeOf(index, bolts, circle, middle))
  const turns = Array.from({length: bolts}, (_, index) => placeOf(index, bolts, circle + toTurn, middle))
  const [first, second] = order.slice(0, 2).map((number) => heads[number - 1])
  return figureOf({
    size: width > 120 * perMillimetre ? 'wide' : 'middle',
    width,
    height,
    drawn: [
      `<path class="thin" d="${ring(middle, circle)}${cross(middle, circle)}"/>`,
      `<path class="line" d="${ring(middle, circle - head - 34)}"/>`,
      first && second ? `<path class="hair" d="M${written(first)}L${written(second)}"/>` : '',
      `<path class="part" d="${heads.map((place) => headShape(kind, place)).join('')}"/>`,
      ...heads.map((place, index) => `<text class="central strong" ${at(place)}>${index + 1}</text>`),
      ...turns.map(
        (place, index) => `<text class="central" ${at(place)}>${order.indexOf(index + 1) + 1}.</text>`,
      ),
      ...lines.map(
        ({text, isTitle}, index) =>
          `<text${isTitle ? ' class="strong"' : ''} ${at([left, top + index * step])}>${escaped(text)}</text>`,
      ),
    ].join(''),
    alternative: [words.view(bolts, title), words.order(order.join(' ')), words.passes(passes)].join(' '),
    data: `${title}: ${bolts}; order ${order.join(' ')}`,
  })
}

type Place = readonly [x: number, y: number]

const widest = 150 * perMillimetre

/** A figure that is narrower than a width of paper takes it, so that its letters are as large on paper as those of the others. */
function paperWidth(wanted: number): number {
  return wanted <= 120 * perMillimetre ? 120 * perMillimetre : Math.max(wanted, widest)
}

function placeOf(index: number, bolts: number, radius: number, [x, y]: Place): Place {
  const angle = (index / bolts) * 2 * Math.PI - Math.PI / 2
  return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)]
}

/** Hexagon of a head with a flat side above, or a round head with its socket. */
function headShape(kind: TighteningInput['head'], [x, y]: Place): string {
  if (kind === 'socket') return ring([x, y], head * 0.86)
  const corners = Array.from({length: 6}, (_, index): Place => {
    const angle = (index / 6) * 2 * Math.PI
    return [x + head * Math.cos(angle), y + head * Math.sin(angle)]
  })
  return `M${corners.map(written).join('L')}z`
}

function ring([x, y]: Place, radius: number): string {
  const r = rounded(radius)
  return `M${rounded(x - radius)} ${rounded(y)}a${r} ${r} 0 1 1 ${rounded(2 * radius)} 0a${r} ${r} 0 1 1 ${rounded(-2 * radius)} 0`
}

function cross([x, y]: Place, circle: number): string {
  const arm = Math.min(60, circle / 3)
  return `M${rounded(x - arm)} ${rounded(y)}h${rounded(2 * arm)}M${rounded(x)} ${rounded(y - arm)}v${rounded(2 * arm)}`
}

function written([x, y]: Place): string {
  return `${rounded(x)} ${rounded(y)}`
}

function at([x, y]: Place): string {
  return `x="${rounded(x)}" y="${rounded(y)}"`
}
