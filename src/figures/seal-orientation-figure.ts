import {type Figure, figureOf} from './figure.ts'
import {escaped, rounded, textLines} from './svg-text.ts'

/** A space that a lip keeps out, in their order from the wet end up. */
export type SealSide = 'cargo' | 'cofferdam' | 'oil'

/** A lip of a seal and the side that its open edge looks at. */
export interface OrientedLip {
  readonly title: string
  readonly faces: SealSide
}

/** Words of the figure in one language. */
export interface SealWords {
  readonly sides: Readonly<Record<SealSide, string>>
  readonly spaces: Readonly<Record<SealSide, string>>
  readonly asItStands: string
  readonly looksAt: (space: string) => string
  readonly view: (title: string, below: string, above: string) => string
  readonly data: (below: string, above: string) => string
}

const width = 1200
const letter = 36
const line = 42
/** Drawn twice as high as the seal is, in tenths of a millimetre. */
const perMillimetre = 20
const band = 120
const shaft = 200
const seat = 420
const housing = 560
const arrow = 620
const wordsAt = 700

/**
 * Half section of a seal on its running surface as it stands in the pump: the wet end below, its open edges by shape,
 * by arrow and in words.
 *
 * A lip is a fork: its open side looks at what it keeps out, its thin leg runs on the sleeve with the spring behind it.
 *
 * @param input.sides
 *   The two spaces that the seal parts: below and above.
 * @param input.lips
 *   From the wet end up.
 * @param input.depth
 *   Depth of the whole seal in its seat, in millimetres; undefined where nobody knows it.
 */
export function sealOrientationFigure(input: {
  readonly title: string
  readonly sides: readonly [SealSide, SealSide]
  readonly lips: readonly OrientedLip[]
  readonly depth: number | undefined
  readonly words: SealWords
}): Figure {
  const {words} = input
  const [below, above] = input.sides
  const count = Math.max(1, input.lips.length)
  const each = Math.max(150, ((input.depth ?? 12 * count) * perMillimetre) / count)
  const bottom = band + each * count
  const height = bottom + band
  const ways = input.lips.map(({faces}): Way => (faces === below ? 'down' : 'up'))
  const told = input.lips.map((lip, index) => `${index + 1} ${lip.title}: ${looksAt(lip, words)}`)
  const alternative = `${words.view(input.title, words.sides[below], words.sides[above])} ${told.join('; ')}.`
  const drawn = input.lips.map((lip, index) => {
    const top = bottom - each * (index + 1)
    return `${lipShape(top, each, ways[index] ?? 'up')}${labelOf({title: `${index + 1} ${lip.title}`, looks: looksAt(lip, words)}, top, each, ways[index] ?? 'up')}`
  })
  return figureOf({
    size: 'middle',
    width,
    height: Math.ceil(height),
    drawn: [
      surroundings(bottom, height),
      sideName(words.sides[above], band - 34),
      sideName(words.sides[below], height - 28),
      `<text x="${wordsAt}" y="${band - 34}">${escaped(words.asItStands)}</text>`,
      ...drawn,
    ].join(''),
    alternative,
    data: `${words.data(words.spaces[below], words.spaces[above])}; ${told.join('; ')}.`,
  })
}

type Way = 'up' | 'down'

/** By what it looks at and not by up and down: on a bench a seal lies the other way round. */
function looksAt({faces}: OrientedLip, words: SealWords): string {
  return words.looksAt(words.spaces[faces])
}

function sideName(name: string, y: number): string {
  return `<text class="strong" x="${shaft + 40}" y="${rounded(y)}">${name.toUpperCase()}</text>`
}

/** Running surface on the left, housing with its shoulder on the right, both hatched; centre line and ends broken off. */
function surroundings(bottom: number, height: number): string {
  const hatched: string[] = []
  for (let y = 20; y < height + 100; y += 30) {
    hatched.push(cut(110, shaft, y, 0, height, 1))
    hatched.push(cut(seat, housing, y, band, bottom, -1))
  }
  return [
    `<path class="thin" d="M40 0V${rounded(height)}"/>`,
    `<path class="hair" d="${hatched.join('')}"/>`,
    `<path class="line" d="M110 0V${rounded(height)}"/>`,
    `<path class="bold" d="M${shaft} 0V${rounded(height)}"/>`,
    `<path class="line" d="M${seat} ${band}H${housing}V${rounded(bottom)}H${seat}z"/>`,
  ].join('')
}

/** One stroke of a hatch at 45° between two uprights, cut off above and below. */
function cut(left: number, right: number, y: number, top: number, bottom: number, lean: 1 | -1): string {
  const from = lean === 1 ? y : y - (right - left)
  const xOf = (at: number): number => left + (from - at) * lean
  const ends = [xOf(top), xOf(bottom)].sort((a, b) => a - b)
  const start = Math.max(left, ends[0] ?? left)
  const end = Math.min(right, ends[1] ?? right)
  const yOf = (x: number): number => from - (x - left) * lean
  return start < end ? `M${rounded(start)} ${rounded(yOf(start))}L${rounded(end)} ${rounded(yOf(end))}` : ''
}

/** A lip in section: rim in the seat, back, and the leg that runs on the sleeve, with the spring in the open side. */
function lipShape(top: number, each: number, way: Way): string {
  const y = (part: number): string => rounded(way === 'down' ? top + part * each : top + (1 - part) * each)
  const inner = shaft + 4
  const fork = `M${seat} ${y(0.06)}H${inner + 64}L${inner} ${y(0.72)}L${inner + 44} ${y(0.93)}L${inner + 62} ${y(0.78)}L${inner + 50} ${y(0.68)}L${inner + 100} ${y(0.26)}H${seat - 44}V${y(0.94)}H${seat}z`
  return `<path class="solid" d="${fork}"/><circle class="part" cx="${inner + 84}" cy="${y(0.7)}" r="22"/>`
}

/** Arrow towards what the lip looks at, with its number, title and direction. */
function labelOf(
  told: {readonly title: string; readonly looks: string},
  top: number,
  each: number,
  way: Way,
): string {
  const middle = top + each / 2
  const sign = way === 'down' ? 1 : -1
  const tip = middle + sign * each * 0.4
  const tail = middle - sign * each * 0.36
  const neck = tip - sign * 52
  const point = `M${arrow - 13} ${rounded(tail)}V${rounded(neck)}H${arrow - 40}L${arrow} ${rounded(tip)}L${arrow + 40} ${rounded(neck)}H${arrow + 13}V${rounded(tail)}z`
  const title = textLines(told.title, letter, width - wordsAt - 10, true)
  const looks = textLines(told.looks, letter, width - wordsAt - 10)
  const first = middle - ((title.length + looks.length - 1) * line) / 2 + 12
  const texts = [...title, ...looks].map(
    (text, index) =>
      `<text${index < title.length ? ' class="strong"' : ''} x="${wordsAt}" y="${rounded(first + index * line)}">${escaped(text)}</text>`,
  )
  return `<path class="solid" d="${point}"/>${texts.join('')}`
}
