import {rounded} from '../svg-text.ts'

/** Marks of points, told apart by their shape alone. */
export type MarkShape = 'circle' | 'square' | 'triangle' | 'diamond' | 'cup' | 'dot' | 'cross' | 'star'

const r = 13

/** Each shape around its middle, where its path begins; open ones are filled with the paper. */
const shapes: Readonly<Record<MarkShape, {readonly d: string; readonly kind: 'open' | 'solid' | 'strokes'}>> =
  {
    circle: {d: `m-${r} 0a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0-${2 * r} 0z`, kind: 'open'},
    dot: {d: `m-${r} 0a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0-${2 * r} 0z`, kind: 'solid'},
    square: {d: `m-${r}-${r}h${2 * r}v${2 * r}h-${2 * r}z`, kind: 'solid'},
    cup: {d: `m-${r}-${r}h${2 * r}v${2 * r}h-${2 * r}z`, kind: 'open'},
    triangle: {d: `m0-${r + 3}l${r + 3} ${2 * r}h-${2 * (r + 3)}z`, kind: 'solid'},
    diamond: {d: `m0-${r + 4}l${r + 4} ${r + 4}-${r + 4} ${r + 4}-${r + 4}-${r + 4}z`, kind: 'open'},
    cross: {
      d: `m-${r + 7}-${r + 7}l${2 * (r + 7)} ${2 * (r + 7)}m0-${2 * (r + 7)}l-${2 * (r + 7)} ${2 * (r + 7)}`,
      kind: 'strokes',
    },
    star: {
      d: `m-${r + 9} 0h${2 * (r + 9)}m-${r + 9}-${r + 9}v${2 * (r + 9)}m-16-38l32 32m0-32l-32 32`,
      kind: 'strokes',
    },
  }

/** A mark around a place of the drawing; its path begins there. */
export function markOf(shape: MarkShape, x: number, y: number): string {
  const {d, kind} = shapes[shape]
  return `<path class="chart-${kind}" d="M${rounded(x)} ${rounded(y)}${d}"/>`
}
