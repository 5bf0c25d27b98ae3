import type {Point} from '../section/shape.ts'
import {rounded} from '../svg-text.ts'
import {at, bar, path} from './strokes.ts'

/** What an instrument is drawn on: the outline by its middle and radius, and the directions of the stations. */
interface Held {
  readonly middle: Point
  readonly r: number
  readonly way: 1 | -1
  /** From the top with the clock. */
  readonly angles: readonly number[]
}

/** The instrument where a station is measured: across a diameter at the first, in a gap at the second, elsewhere at the first. */
export function held(kind: 'bore' | 'outside' | 'groove' | 'gap' | 'depth' | 'dial', on: Held): string {
  const {middle, r} = on
  const [x, y] = middle
  const degrees = ((on.angles[kind === 'gap' ? 1 : 0] ?? 0) * 180) / Math.PI
  const piece = (dx: number, dy: number, wide: number, high: number): string =>
    bar([x + dx, y + dy], [wide, high], middle, degrees)
  if (kind === 'bore') return path('part', piece(0, 0, 10, 2 * r) + piece(0, 0, 26, Math.min(110, r * 0.8)))
  if (kind === 'outside')
    return path(
      'part',
      frame(on) + piece(0, r + 45, 30, 44) + piece(0, -r - 12, 10, 24) + piece(0, r + 12, 10, 24),
    )
  if (kind === 'gap') return path('part', piece(0, -r - 14, 14, 60))
  if (kind === 'groove') return path('part', piece(0, -r - 14, 78, 18) + piece(0, -r - 38, 30, 30))
  if (kind === 'depth') return path('part', piece(0, -r, 74, 22))
  return `${path('part', piece(0, -r - 50, 10, 100))}<circle class="part" cx="${rounded(x)}" cy="${rounded(y - r - 142)}" r="46"/>${path('line', `M${rounded(x)} ${rounded(y - r - 142)}v-30`)}`
}

/** The bow of an outside micrometer, on the side where no station has its name. */
function frame({middle, r, way, angles}: Held): string {
  const [x, y] = middle
  const first = angles[0] ?? 0
  const on = (radius: number, turn: number): string =>
    at([x + radius * Math.sin(first + turn), y - radius * Math.cos(first + turn)])
  const [inner, outer] = [r + 18, r + 46]
  const sweep = way === 1 ? 0 : 1
  return `M${on(inner, 0)}A${rounded(inner)} ${rounded(inner)} 0 0 ${sweep} ${on(inner, Math.PI)}L${on(outer, Math.PI)}A${rounded(outer)} ${rounded(outer)} 0 0 ${1 - sweep} ${on(outer, 0)}z`
}
