import {type Figure, figureOf} from './figure.ts'
import {circle, type Ink, line, open, ownWords, painted} from './ink.ts'
import {type DiagramLegend, diagramLegend, type LegendWords} from './isolation-legend.ts'
import {type DiagramSpace, edge, machine, type Span, top, width} from './isolation-machine.ts'
import {hangingTag, type PointKind, type PointState, padlock, pointSymbol} from './isolation-symbols.ts'
import {escaped, rounded, textLines, textWidth} from './svg-text.ts'

/** A point of the isolation list of one pump, as it stands now. */
export interface DiagramPoint {
  readonly number: number
  readonly tag: string
  readonly kind: PointKind
  /** The kind in words. */
  readonly kindWords: string
  readonly state: PointState
  /** The state as the list says it. */
  readonly words: string
  /** Left alone by this procedure: it stands as in normal use. */
  readonly stays: boolean
  readonly secured?: 'locked' | 'sealed' | 'tagged'
}

/** The points of one role, or the written reason why there is none. */
export interface DiagramRole {
  readonly title: string
  readonly space: DiagramSpace
  /** Its valves and blinds stand one behind the other in one pipe, the first one at the pump. */
  readonly onePipe: boolean
  readonly points: readonly DiagramPoint[]
  readonly noneBecause: string
}

/** Words of the diagram in one language. */
export interface IsolationWords extends LegendWords {
  readonly pump: (tag: string, phase: string) => string
  readonly view: (tag: string, phase: string) => string
  readonly none: string
  readonly noneOnPump: string
  readonly stays: (words: string) => string
  readonly secured: Readonly<Record<NonNullable<DiagramPoint['secured']>, string>>
  readonly spaces: Readonly<Record<DiagramSpace, string>>
}

const letter = 36
const step = 40
const left: readonly DiagramSpace[] = ['oil side', 'tank']
const right: readonly DiagramSpace[] = ['cargo side', 'cofferdam']

/**
 * Isolation list of one pump as lines: each point with its number, its kind by symbol and its state in words and by shape.
 *
 * Oil side and tank stand on the left, cargo side and cofferdam on the right. Order and length of lines follow the list, not the pipes.
 */
export function isolationDiagram(input: {
  readonly pump: string
  /** "isolated", "restored". */
  readonly phase: string
  readonly roles: readonly DiagramRole[]
  readonly words: IsolationWords
}): Figure {
  const {pump, phase, roles, words} = input
  // States stand behind the widest tag, so that pumps whose tags are as wide share the drawing.
  const tags = Math.max(
    0,
    ...roles.flatMap(({points}) => points.map(({tag}) => textWidth(tag, letter, true))),
  )
  const beside = Math.ceil(tags) + 22
  const columns = [columnOf(roles, left, words, beside, false), columnOf(roles, right, words, beside, true)]
  const foot = Math.max(...columns.map(({bottom}) => bottom), top + 300)
  const legend: DiagramLegend = diagramLegend(
    roles.flatMap(({points}) => points),
    words,
    foot + 20,
    width,
  )
  const alternative = `${words.view(pump, phase)} ${roles.map((role) => roleWords(role, words)).join('; ')}.`
  const inks: readonly Ink[] = [
    {
      own: `<text class="strong mid" x="${width / 2}" y="40">${escaped(words.pump(pump, phase))}</text>`,
    },
    ...columns.flatMap((column) => column.inks),
    ...machine(columns[0]?.spans ?? [], columns[1]?.spans ?? [], foot, words.spaces),
    ...legend.inks,
  ]
  return figureOf({
    size: 'wide',
    width,
    height: Math.ceil(legend.bottom),
    drawn: painted(inks),
    own: ownWords(inks),
    alternative,
    data: `${phase}: ${roles.flatMap((role) => roleData(role, words)).join('; ')}.`,
  })
}

/** Number, tag, kind and state of each point in short; what this procedure leaves alone stands nowhere else on its page, so that its words stand here. */
function roleData({title, points}: DiagramRole, words: IsolationWords): readonly string[] {
  if (points.length === 0) return [`${title} ${words.none}`]
  return points.map((point) => {
    const short = `${point.number} ${point.tag} ${words.meanings[point.kind][point.state]}`
    return point.stays ? `${short} (${stateWords(point, words)})` : short
  })
}

function stateWords({words: own, stays, secured}: DiagramPoint, words: IsolationWords): string {
  return `${stays ? words.stays(own) : own}${secured ? `, ${words.secured[secured]}` : ''}`
}

function roleWords({title, points, noneBecause}: DiagramRole, words: IsolationWords): string {
  return points.length === 0
    ? `${title}: ${words.noneOnPump}, ${noneBecause.replace(/\.$/u, '')}`
    : `${title}: ${points.map((point) => pointWords(point, words)).join(', ')}`
}

function pointWords(point: DiagramPoint, words: IsolationWords): string {
  return `${point.number} ${point.tag} (${point.kindWords}, ${stateWords(point, words)})`
}

function columnOf(
  roles: readonly DiagramRole[],
  spaces: readonly DiagramSpace[],
  words: IsolationWords,
  beside: number,
  mirrored: boolean,
): Drawn & {readonly spans: readonly Span[]} {
  const spans: Span[] = []
  const inks: Ink[] = []
  let y = top
  for (const space of spaces) {
    const from = y
    for (const role of roles.filter((one) => one.space === space)) {
      inks.push(word(role.title, textEdge(mirrored), y + 32))
      const drawn =
        role.points.length === 0 ? stubOf(y, words, mirrored) : rowsOf(role, y + 40, words, beside, mirrored)
      inks.push(...drawn.inks)
      y = drawn.bottom + 6
    }
    if (y > from) {
      y = Math.max(y, from + textWidth(words.spaces[space], letter, true) + 24)
      spans.push({space, from, to: y})
      y += 24
    }
  }
  return {inks, bottom: y, spans}
}

/** Where texts begin: beside the symbols on the left, beside the pump on the right. */
function textEdge(mirrored: boolean): number {
  return mirrored ? width - edge + 20 : 124
}

interface Drawn {
  readonly inks: readonly Ink[]
  readonly bottom: number
}

/** A role without a point: a short capped pipe. */
function stubOf(y: number, words: IsolationWords, mirrored: boolean): Drawn {
  const x = xOn(mirrored)
  const pipe = y + 62
  const at = mirrored ? textEdge(mirrored) + 100 : textEdge(mirrored)
  const stub = `M${x(edge)} ${pipe}H${x(edge - 90)}M${x(edge - 90)} ${pipe - 20}v40`
  return {inks: [line(stub), word(words.noneOnPump, at, pipe + 13)], bottom: pipe + 26}
}

function rowsOf(
  role: DiagramRole,
  start: number,
  words: IsolationWords,
  beside: number,
  mirrored: boolean,
): Drawn {
  const inks: Ink[] = []
  let y = start
  let before: number | undefined
  for (const [index, point] of role.points.entries()) {
    const pipe = y + 60
    const inPipe = role.onePipe && point.kind !== 'fuse'
    const goesOn = inPipe && role.points.slice(index + 1).some(({kind}) => kind !== 'fuse')
    inks.push({
      down: pipe,
      drawn: [
        ...(inPipe && before !== undefined
          ? pipeBehind(point, before - pipe, xOn(mirrored))
          : ownPipe(point, xOn(mirrored), goesOn ? behindAt : undefined)),
        open(circle(textEdge(mirrored) + 27, -32, 24)),
        ...securedSign(point.secured, xOn(mirrored)(symbolAt), -48),
      ],
    })
    if (inPipe) before = pipe
    const label = labelOf(point, stateWords(point, words), {x: textEdge(mirrored), y, pipe, beside})
    inks.push(...label.inks)
    y = Math.max(label.bottom, pipe + 36)
  }
  return {inks, bottom: y}
}

/** Number and tag above the pipe; the state behind them where it has the room, else below the pipe. */
function labelOf(
  point: DiagramPoint,
  state: string,
  {
    x,
    y,
    pipe,
    beside,
  }: {readonly x: number; readonly y: number; readonly pipe: number; readonly beside: number},
): Drawn {
  const wordsAt = x + 64
  const room = edge - 132 - 64
  const fits = beside + textWidth(state, letter) <= room
  const lines = fits ? [] : textLines(state, letter, room)
  return {
    inks: [
      {words: `<text class="strong mid" x="${x + 27}" y="${y + 39}">${point.number}</text>`},
      {own: `<text class="strong" x="${wordsAt}" y="${y + 39}">${escaped(point.tag)}</text>`},
      ...(fits ? [word(state, wordsAt + beside, y + 39)] : []),
      ...lines.map((text, index) => word(text, wordsAt, pipe + 40 + index * step)),
    ],
    bottom: fits ? pipe + 18 : pipe + 40 + lines.length * step - 22,
  }
}

/** Middle of the symbols, and of a pipe that goes on behind, from the outer edge. */
const symbolAt = 64
const behindAt = 12

function securedSign(secured: DiagramPoint['secured'], x: number, y: number): readonly Ink[] {
  if (secured === undefined) return []
  return secured === 'locked' ? padlock(x, y) : hangingTag(x, y)
}

/** A point on a pipe from the pump outwards, to where the drawing breaks off or another point stands behind it. */
function ownPipe(point: DiagramPoint, x: (at: number) => number, next?: number): readonly Ink[] {
  const ends = point.kind === 'plug' || point.kind === 'transport-bolt' || point.kind === 'relief-valve'
  const outer = next ?? 10
  const mark = ends || next !== undefined ? '' : `M${x(outer) - 7} 14l14 -28`
  const pipe = `M${x(edge)} 0H${x(ends ? symbolAt : outer)}`
  return [
    point.kind === 'fuse' ? {layer: 'line wire', d: pipe} : line(pipe),
    line(mark),
    ...pointSymbol(point.kind, point.state, x(symbolAt), 0, x(0) === 0 ? 1 : -1),
  ]
}

/** A point behind another one in the same pipe: the pipe turns down and back through it, and breaks off beyond. */
function pipeBehind(point: DiagramPoint, behind: number, x: (at: number) => number): readonly Ink[] {
  const pipe = `M${x(behindAt)} ${rounded(behind)}V0H${x(112)}M${x(110) - 6} 14l12 -28`
  return [line(pipe), ...pointSymbol(point.kind, point.state, x(symbolAt), 0, x(0) === 0 ? 1 : -1)]
}

/** Places on the left side, and the same ones seen in a mirror for the right side. */
function xOn(mirrored: boolean): (at: number) => number {
  return (at) => (mirrored ? width - at : at)
}

function word(text: string, x: number, y: number): Ink {
  return {words: `<text x="${Math.round(x)}" y="${Math.round(y)}">${escaped(text)}</text>`}
}
