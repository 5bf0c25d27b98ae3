import type {Figure} from './figure.ts'

const size = 240
const middle = size / 2
const circle = 78
const bolt = 15

/**
 * Bolt circle seen from outside: bolts numbered clockwise from the top, each with its turn in the tightening order.
 *
 * The number in the circle is the bolt, the number outside is its turn.
 */
export function tighteningOrderFigure(input: {
  readonly bolts: number
  readonly order: readonly number[]
}): Figure {
  const places = Array.from({length: input.bolts}, (_, index) => placeOf(index, input.bolts))
  const drawn = places.map(({x, y, outerX, outerY}, index) => {
    const turn = input.order.indexOf(index + 1) + 1
    return [
      `<circle class="figure-part" cx="${x}" cy="${y}" r="${bolt}"/>`,
      `<text class="figure-number" x="${x}" y="${y}">${index + 1}</text>`,
      `<text class="figure-turn" x="${outerX}" y="${outerY}">${turn}.</text>`,
    ].join('')
  })
  const first = input.order.slice(0, 2).flatMap((number) => places[number - 1] ?? [])
  const [from, to] = first
  const line = from && to ? `<path class="figure-thin" d="M${from.x} ${from.y}L${to.x} ${to.y}"/>` : ''
  const alternative = `Bolt circle of ${input.bolts} bolts numbered clockwise from the top. Tighten in the order ${input.order.join(' ')}.`
  return {
    svg: `<svg class="figure" viewBox="0 0 ${size} ${size}" role="img" aria-label="${alternative}"><circle class="figure-thin" cx="${middle}" cy="${middle}" r="${circle}"/><circle class="figure-line" cx="${middle}" cy="${middle}" r="44"/>${line}${drawn.join('')}</svg>`,
    alternative,
    data: `order ${input.order.join(' ')}`,
  }
}

function placeOf(index: number, bolts: number): {x: number; y: number; outerX: number; outerY: number} {
  const angle = (index / bolts) * 2 * Math.PI - Math.PI / 2
  const at = (radius: number, start: number, turn: number): number =>
    Math.round((start + radius * turn) * 10) / 10
  return {
    x: at(circle, middle, Math.cos(angle)),
    y: at(circle, middle, Math.sin(angle)),
    outerX: at(circle + 30, middle, Math.cos(angle)),
    outerY: at(circle + 30, middle, Math.sin(angle)),
  }
}
