import {type Figure, figureOf} from './figure.ts'
import {escaped, rounded, textWidth} from './svg-text.ts'

/** A tank on the plan, in hundredths of the ship's length and breadth; bow to the left, port below. */
export interface PlanShape {
  readonly id: string
  readonly tag: string
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
  /** Address of the pump's page, where the tank is a link. */
  readonly address?: string
}

/** Words of a plan in one language. */
export interface PlanWords {
  readonly view: string
  readonly marked: (tag: string | undefined) => string
  readonly tanks: (tags: string) => string
  readonly pump: (tag: string) => string
}

const width = 1000
const breadth = 240
const bow = 90
const stern = 60
const total = width + bow + stern

/**
 * Tank plan of a vessel seen from above: deck outline, tanks with their tags, and a way to the page of each pump. It takes
 * the styles of its page, for its tanks are links.
 */
export function tankPlan({tanks, words}: {readonly tanks: readonly PlanShape[]; readonly words: PlanWords}): {
  readonly svg: string
  readonly alternative: string
} {
  const alternative = `${words.view}, ${words.tanks(tanks.map((tank) => tank.tag).join(', '))}.`
  return {
    svg: `<svg class="plan" viewBox="0 0 ${total} ${breadth}" role="group" aria-label="${escaped(alternative)}"><path class="plan-hull" d="${hull(0)}"/>${tanks.map((tank) => cellOf(tank, words)).join('')}</svg>`,
    alternative,
  }
}

/** Letters of the small plan: a capital is 2.5 mm high where it is 30 mm wide, as on a sheet. */
const letter = 134
/** Room above and below the hull for the tag. */
const band = 140

/** The same plan small, with one tank marked by a hatch, a heavy outline and its tag beside the hull on its side; a portable pump hangs in none. */
export function markedPlan(
  tanks: readonly PlanShape[],
  marked: PlanShape | undefined,
  words: PlanWords,
): Figure {
  const alternative = `${words.view}; ${words.marked(marked?.tag)}.`

  return figureOf({
    size: 'small',
    width: total,
    height: breadth + 2 * band,
    drawn: [
      '<defs><pattern id="h" width="14" height="14" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path class="tank-hatch" d="M0 0V14"/></pattern></defs>',
      `<path class="hull" d="${hull(band)}"/>`,
      `<path class="tanks" d="${tanks.flatMap((tank) => (tank === marked ? [] : [boxOf(tank, band)])).join('')}"/>`,
      marked ? markOf(marked) : '',
    ].join(''),
    alternative,
    data: alternative,
  })
}

function markOf(marked: PlanShape): string {
  const {x, y, w, h} = placeOf(marked)
  const isBelow = marked.top >= 50
  const half = textWidth(marked.tag, letter, true) / 2
  const tagAt = Math.min(Math.max(x + w / 2, half + 4), total - half - 4)
  const lead = `M${rounded(x + w / 2)} ${rounded(band + y + (isBelow ? h : 0))}V${isBelow ? breadth + band + 6 : band - 6}`
  return `<path class="tank-marked" fill="url(#h)" d="${boxOf(marked, band)}${lead}"/><text class="tag" x="${rounded(tagAt)}" y="${isBelow ? breadth + 2 * band - 30 : 114}">${escaped(marked.tag)}</text>`
}

/** Deck outline, its highest point at a height. */
function hull(top: number): string {
  const middle = top + breadth / 2
  const aft = bow + width + stern * 0.5
  return `M4 ${middle}Q${bow * 0.5} ${top + 14} ${bow} ${top + 4}H${aft}Q${total - 4} ${top + 8} ${total - 4} ${middle}Q${total - 4} ${top + breadth - 8} ${aft} ${top + breadth - 4}H${bow}Q${bow * 0.5} ${top + breadth - 14} 4 ${middle}Z`
}

function boxOf(tank: PlanShape, down: number): string {
  const {x, y, w, h} = placeOf(tank)
  return `M${rounded(x)} ${rounded(y + down)}h${rounded(w)}v${rounded(h)}h${rounded(-w)}z`
}

function placeOf(tank: PlanShape): {
  readonly x: number
  readonly y: number
  readonly w: number
  readonly h: number
} {
  return {
    x: bow + (tank.left / 100) * width,
    y: 12 + (tank.top / 100) * (breadth - 24),
    w: ((tank.right - tank.left) / 100) * width,
    h: ((tank.bottom - tank.top) / 100) * (breadth - 24),
  }
}

function cellOf(tank: PlanShape, words: PlanWords): string {
  const {x, y, w, h} = placeOf(tank)
  const parts = tank.tag.split(' ')
  const lines = parts
    .map(
      (word, index) =>
        `<tspan x="${rounded(x + w / 2)}" dy="${index === 0 ? rounded((1 - parts.length) * 11) : '24'}"${pressed(word, w)}>${escaped(word)}</tspan>`,
    )
    .join('')
  const cell = `<path class="plan-tank" d="${boxOf(tank, 0)}"/><text class="plan-tag" x="${rounded(x + w / 2)}" y="${rounded(y + h / 2)}">${lines}</text>`
  return tank.address === undefined
    ? cell
    : `<a class="plan-link" href="${escaped(tank.address)}" aria-label="${escaped(words.pump(tank.tag))}">${cell}</a>`
}

/** Width of a letter of a tag, as drawn at most, and the room kept free at each side. */
const tagLetter = 14
const margin = 4

/** Presses a word together that is wider than its tank, so that it stays inside. */
function pressed(word: string, w: number): string {
  const room = w - 2 * margin
  return word.length * tagLetter > room
    ? ` textLength="${rounded(room)}" lengthAdjust="spacingAndGlyphs"`
    : ''
}
