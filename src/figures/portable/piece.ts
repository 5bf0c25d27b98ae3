import {hatchLines, type Point} from '../section/shape.ts'
import {rounded} from '../svg-text.ts'
import type {PortablePart} from './portable-geometry.ts'

/**
 * Something drawn of the arrangement, in millimetres: across from the middle of its view, and up.
 *
 * `cut` is hatched; `thin` is cut too and too thin for a hatch: it is black; `whole` is seen; `blank` hides what lies behind it; the
 * others are lines: `hair`, `line`, `axis`, `chain`, and `hose`, the centre line of a tube; `holes` are round and black about single places.
 */
export interface Piece {
  readonly part: PortablePart | 'surroundings'
  /** Which piece of the part, so that a drawing of other lengths can be compared piece by piece. */
  readonly piece: string
  readonly drawn: 'cut' | 'thin' | 'whole' | 'blank' | 'hair' | 'line' | 'axis' | 'chain' | 'hose' | 'holes'
  /** Areas of one piece do not overlap. */
  readonly areas: readonly (readonly Point[])[]
  readonly hatch?: Hatch
  /** Outside of a tube or hole. */
  readonly outside?: number
  /** Place across of the axis between the half that is cut and the half that is seen: no edge is drawn along it. */
  readonly seam?: number
}

/** Which way the strokes of a hatch rise, so that parts that touch differ; `fine` for small parts. */
export type Hatch = 'up' | 'down' | 'fine'

/** Where a view stands on the drawing: units of the view box for its place zero, and for each millimetre. */
export interface View {
  readonly x: number
  readonly y: number
  readonly scale: number
}

/** A place of a view in units of the view box. */
export function placed([x, z]: Point, view: View): Point {
  return [view.x + x * view.scale, view.y - z * view.scale]
}

/** Pieces of a view as SVG, later ones above earlier ones. */
export function paintPieces(pieces: readonly Piece[], view: View): string {
  return pieces.map((piece) => painted(piece, view)).join('')
}

function painted(piece: Piece, view: View): string {
  const closed = pathOf(piece.areas, view, 'z')
  const open = pathOf(piece.areas, view, '')
  switch (piece.drawn) {
    case 'cut':
      return `${bordered(piece, closed, view)}<path class="hair" d="${pathOf(strokesOf(piece), view, '')}"/>`
    case 'thin':
      return `<path class="solid" d="${closed}"/>`
    case 'whole':
      return bordered(piece, closed, view)
    case 'blank':
      return `<path fill="#fff" d="${closed}"/>`
    case 'hair':
      return `<path class="hair" d="${open}"/>`
    case 'line':
      return `<path class="line" d="${open}"/>`
    case 'axis':
      return `<path class="thin" d="${open}"/>`
    case 'chain':
      return `<path class="line wire" d="${open}"/>`
    case 'hose':
      return tube(open, (piece.outside ?? 0) * view.scale)
    case 'holes':
      return `<path stroke="#000" stroke-linecap="round" stroke-width="${rounded(Math.max(3, (piece.outside ?? 0) * view.scale))}" d="${pathOf(piece.areas, view, 'h0')}"/>`
  }
}

/** A tube of two lines along its centre line; a narrow one is one line, for two would run together in print. */
function tube(d: string, outside: number): string {
  const line = (colour: string, wide: number): string =>
    `<path fill="none" stroke="${colour}" stroke-linejoin="round" stroke-width="${rounded(wide)}" d="${d}"/>`
  return outside < 16
    ? line('#000', Math.max(4, outside * 0.55))
    : `${line('#000', outside)}${line('#fff', outside - 6)}`
}

/** An area with its edges, but for those along the seam. */
function bordered({areas, seam}: Piece, closed: string, view: View): string {
  if (seam === undefined) return `<path class="part" d="${closed}"/>`
  const edges = areas.flatMap((area) => edgesBeside(area, seam))
  return `<path fill="#fff" d="${closed}"/><path class="line" d="${pathOf(edges, view, '')}"/>`
}

/** Runs of the outline of an area that do not lie on a line upwards. */
function edgesBeside(area: readonly Point[], seam: number): readonly (readonly Point[])[] {
  const runs: Point[][] = []
  area.forEach((from, index) => {
    const to = area[(index + 1) % area.length] ?? from
    if (from[0] === seam && to[0] === seam) return
    const last = runs.at(-1)
    if (last?.at(-1) === from) last.push(to)
    else runs.push([from, to])
  })
  return runs
}

/** Each area from its first place on by the ways between its places, in tenths of a unit. */
function pathOf(areas: readonly (readonly Point[])[], view: View, end: string): string {
  return areas
    .map((area) => {
      const places = area.map((one) => placed(one, view).map((way) => Math.round(way * 10)))
      const ways = places.slice(1).map(([x = 0, y = 0], index) => {
        const [fromX = 0, fromY = 0] = places[index] ?? []
        return wayOf(x - fromX, y - fromY)
      })
      const [x = 0, y = 0] = places[0] ?? []
      return `M${x / 10} ${y / 10}${ways.join('')}${end}`
    })
    .join('')
}

function wayOf(x: number, y: number): string {
  if (y === 0) return `h${x / 10}`
  return x === 0 ? `v${y / 10}` : `l${x / 10} ${y / 10}`
}

/** Way of each hatch, and how far apart its strokes lie: in print a millimetre, in small parts less. */
const hatches = {
  up: {way: 'up', spacing: 18},
  down: {way: 'down', spacing: 18},
  fine: {way: 'up', spacing: 11},
} as const

/** Strokes at 45° over the areas of a cut. */
function strokesOf({areas, hatch = 'up'}: Piece): readonly (readonly Point[])[] {
  return areas.flatMap((area) => hatchLines(area, hatches[hatch]))
}

/** The part of an area on the near side of a line upwards. */
export function leftOf(area: readonly Point[], seam: number): readonly Point[] {
  return area.flatMap((from, index) => {
    const to = area[(index + 1) % area.length] ?? from
    const kept: Point[] = from[0] <= seam ? [from] : []
    if (from[0] < seam !== to[0] < seam && from[0] !== seam && to[0] !== seam)
      kept.push([seam, from[1] + ((seam - from[0]) / (to[0] - from[0])) * (to[1] - from[1])])
    return kept
  })
}

/** An area that is seen. */
export function whole(part: Piece['part'], piece: string, area: readonly Point[]): Piece {
  return {part, piece, drawn: 'whole', areas: [area]}
}

/** One line of a kind. */
export function line(
  part: Piece['part'],
  piece: string,
  drawn: Piece['drawn'],
  area: readonly Point[],
): Piece {
  return {part, piece, drawn, areas: [area]}
}
