import type {Figure} from './figure.ts'
import {escaped, rounded} from './svg-text.ts'

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

const width = 1000
const breadth = 240
const bow = 90
const stern = 60

/**
 * Tank plan of a vessel seen from above: deck outline, tanks and their tags; one tank marked by hatch and heavy outline.
 *
 * @param name
 *   Prefix of element ids, so that two plans may stand on one page.
 */
export function tankPlan(input: {
  readonly tanks: readonly PlanShape[]
  readonly marked?: string
  readonly name: string
  readonly small: boolean
}): Omit<Figure, 'data'> {
  const place = input.tanks.findIndex((tank) => tank.id === input.marked)
  const cells = input.small
    ? [
        outlinesOf(input.tanks.slice(0, Math.max(0, place))),
        cellsOf(input, (tank) => tank.id === input.marked),
        outlinesOf(input.tanks.slice(place + 1)),
      ].join('')
    : cellsOf(input, () => true)
  const marked = input.tanks.find((tank) => tank.id === input.marked)
  const alternative = marked
    ? `Tank plan, bow to the left, port side below; tank ${marked.tag} is marked.`
    : `Tank plan, bow to the left, port side below, with the tanks ${input.tanks.map((tank) => tank.tag).join(', ')}.`
  const total = width + bow + stern
  const middle = breadth / 2
  const outline = `M4 ${middle}Q${bow * 0.5} 14 ${bow} 4H${bow + width + stern * 0.5}Q${total - 4} 8 ${total - 4} ${middle}Q${total - 4} ${breadth - 8} ${bow + width + stern * 0.5} ${breadth - 4}H${bow}Q${bow * 0.5} ${breadth - 14} 4 ${middle}Z`
  const hatch = `<defs><pattern id="${input.name}-hatch" width="10" height="10" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path class="plan-hatch" d="M0 0V10"/></pattern></defs>`
  const role = `role="${input.small ? 'img' : 'group'}" aria-label="${escaped(alternative)}"`
  return {
    svg: `<svg class="plan" viewBox="0 0 ${total} ${breadth}" ${role}>${hatch}<path class="plan-hull" d="${outline}"/>${cells}</svg>`,
    alternative,
  }
}

function cellsOf(input: Parameters<typeof tankPlan>[0], wanted: (tank: PlanShape) => boolean): string {
  return input.tanks
    .filter(wanted)
    .map((tank) => cellOf(tank, tank.id === input.marked, input.name, input.small))
    .join('')
}

/** Tanks without a word or a link, in one path, for the small plan stands on every page of a pump; the marked one keeps its turn. */
function outlinesOf(tanks: readonly PlanShape[]): string {
  if (tanks.length === 0) return ''
  const boxes = tanks.map((tank) => {
    const {x, y, w, h} = placeOf(tank)
    return `M${rounded(x)} ${rounded(y)}h${rounded(w)}v${rounded(h)}h${rounded(-w)}z`
  })
  return `<path class="plan-tank" d="${boxes.join('')}"/>`
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

function cellOf(tank: PlanShape, marked: boolean, name: string, small: boolean): string {
  const {x, y, w, h} = placeOf(tank)
  const fill = marked ? ` style="fill:url(#${name}-hatch)"` : ''
  const box = `<rect class="plan-tank${marked ? ' plan-marked' : ''}" x="${rounded(x)}" y="${rounded(y)}" width="${rounded(w)}" height="${rounded(h)}"${fill}/>`
  const words = tank.tag.split(' ')
  const lines = words
    .map(
      (word, index) =>
        `<tspan x="${rounded(x + w / 2)}" dy="${index === 0 ? rounded((1 - words.length) * 11) : '24'}"${small ? '' : pressed(word, w)}>${escaped(word)}</tspan>`,
    )
    .join('')
  const label =
    small && !marked
      ? ''
      : `<text class="plan-tag${marked ? ' plan-tag-marked' : ''}" x="${rounded(x + w / 2)}" y="${rounded(y + h / 2)}">${lines}</text>`
  const cell = `${box}${label}`
  return tank.address === undefined || small
    ? cell
    : `<a class="plan-link" href="${escaped(tank.address)}" aria-label="Pump ${escaped(tank.tag)}">${cell}</a>`
}

/** Width of a letter of a tag, as drawn at most, and the room kept free at each side. */
const letter = 14
const margin = 4

/** Presses a word together that is wider than its tank, so that it stays inside. */
function pressed(word: string, w: number): string {
  const room = w - 2 * margin
  return word.length * letter > room ? ` textLength="${rounded(room)}" lengthAdjust="spacingAndGlyphs"` : ''
}
