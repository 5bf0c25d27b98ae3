import {circle, type Ink, line, open, solid} from './ink.ts'
import {escaped, rounded} from './svg-text.ts'

/** What a line leads to. */
export type DiagramSpace = 'oil side' | 'cofferdam' | 'cargo side' | 'tank'

/** Width of the diagram, its upper edge, and the edge of the middle on each side, where the lines end at the bar of a space. */
export const width = 1500
export const top = 64
export const edge = 620
const bar = 70

/** How far a space reaches from above to below. */
export interface Span {
  readonly space: DiagramSpace
  readonly from: number
  readonly to: number
}

/** The pump between both columns: spaces as bars, hydraulic motor above, shaft, pump below with its riser. */
export function machine(
  spansLeft: readonly Span[],
  spansRight: readonly Span[],
  foot: number,
  names: Readonly<Record<DiagramSpace, string>>,
): readonly Ink[] {
  const oil = spansLeft.find(({space}) => space === 'oil side')
  const cargo = spansRight.find(({space}) => space === 'cargo side')
  const middle = width / 2 - 14
  const motor = oil ? Math.min((oil.from + oil.to) / 2, foot - 240) : top + 60
  const pump = foot - 64
  const feed = oil ? `M${edge + bar} ${rounded(motor)}H${middle}` : ''
  const shaft = [-6, 6].map((side) => `M${middle + side} ${rounded(motor)}V${rounded(pump)}`).join('')
  const riser = cargo ? `M${middle} ${rounded(pump)}h58V${rounded(cargo.to - 40)}H${width - edge - bar}` : ''
  return [
    ...spansLeft.flatMap((span) => barOf(span, names[span.space], edge)),
    ...spansRight.flatMap((span) => barOf(span, names[span.space], width - edge - bar)),
    line(`${feed}${shaft}${riser}`),
    ...wheel(middle, motor, -1),
    ...wheel(middle, pump, 1),
  ]
}

/** A round machine: its triangle points inwards from the left for a motor, outwards to the right for a pump. */
function wheel(x: number, y: number, way: 1 | -1): readonly Ink[] {
  const radius = 38
  const [base, tip] = way === 1 ? [x + 8, x + radius] : [x - radius + 8, x]
  return [
    open(circle(Math.round(x), Math.round(y), radius)),
    solid(`M${rounded(tip)} ${rounded(y)}L${rounded(base)} ${rounded(y - 17)}v34z`),
  ]
}

/** A space of the pump, named along its bar. */
function barOf({from, to}: Span, name: string, x: number): readonly Ink[] {
  const middle = rounded((from + to) / 2)
  return [
    open(`M${x} ${rounded(from)}h${bar}V${rounded(to)}h-${bar}z`),
    {
      words: `<text class="strong mid" transform="translate(${x + bar / 2 + 13} ${middle}) rotate(-90)">${escaped(name)}</text>`,
    },
  ]
}
