import {figureOf} from '../figure.ts'
import {circle, type Ink, line, open, ownWords, painted, solid} from '../ink.ts'
import {type PointKind, type PointState, padlock, pointSymbol} from '../isolation-symbols.ts'
import {escaped, rounded, textLines, textWidth} from '../svg-text.ts'
import {arrowhead, path} from './strokes.ts'
import type {PlacedStation, StationsFigure} from './view.ts'

/** A point of the isolation list at the top plate, as it stands during the test; without a tag where the pump has none. */
export interface RigPoint {
  readonly tag: string
  readonly kind: PointKind
  readonly state: PointState
  readonly locked: boolean
  /** "closed", "blind with red handle fitted". */
  readonly words: string
}

/** What the drawing of the rig is made from. */
export interface RigInput {
  readonly points: Readonly<Record<'supply' | 'relief' | 'vent' | 'outlet', RigPoint>>
  /** Stations at the gauge and at the pipe, each with its number. */
  readonly stations: readonly RigStation[]
  /** The test pressure, for the gauge. */
  readonly pressure: string
  /** Outside and bore of the outer pipe and outside of the inner one, in millimetres; undefined where one is not known. */
  readonly pipes: {readonly outside: number; readonly bore: number; readonly inner: number} | undefined
  readonly words: RigWords
  readonly alternative: string
  readonly data: string
}

/** A station: the gauge itself, or a side of the pipe. */
export interface RigStation {
  readonly name: string
  readonly number: number
  readonly at: 'gauge' | 'port' | 'starboard'
}

/** Words of the drawing, part by part. */
export interface RigWords {
  readonly relief: string
  readonly ventValve: string
  readonly shutOff: string
  readonly regulator: string
  readonly gasHose: string
  readonly topPlate: string
  readonly gaugeCock: string
  readonly cofferdam: string
  readonly deck: string
  readonly container: string
  readonly notKnown: string
  readonly seenFrom: string
}

const width = 1500
const letter = 36
/** Heights of the manifold of the rig, of the vent line, of the top plate and of the deck. */
const manifold = 214
const vent = 520
const plate = 640
const deck = 868
const bottom = 1010
/** The axis of the stack, and where the rig stands on the top plate. */
const axis = 420
const rig = 566

/**
 * The test rig on the top plate during the tightness test: where the relief valve was, with its own regulator and relief valve,
 * gauge on the pump side of the shut-off valve, vent line blinded, and where thermometers hold on the stack.
 *
 * The pipes of the stack have the proportions of the design; the rig is a scheme of its lines.
 */
export function rigFigure(input: RigInput): StationsFigure {
  const {words, points} = input
  const half = input.pipes ? input.pipes.outside / 2 : 84
  const placed = input.stations.map((one): PlacedStation => placeOf(one, half))
  const inks = [
    ...stackOf(input, half),
    ...ventLine(points, words),
    ...rigLines(words),
    ...topPlate(points, words, half),
    ...placed.flatMap((one) => stationLabel(one, input.stations)),
    word(input.pressure, gauge.middle[0] - gauge.radius - 20 - textWidth(input.pressure, letter), 126),
  ]
  const figure = figureOf({
    size: 'wide',
    width,
    height: bottom,
    drawn: painted(inks),
    own: ownWords(inks),
    alternative: input.alternative,
    data: input.data,
  })
  return {...figure, placed: [placed]}
}

const gauge = {middle: [690, 96], radius: 52} as const
const held = (plate + deck) / 2 + 12

function placeOf({name, number, at}: RigStation, half: number): PlacedStation {
  if (at === 'gauge')
    return {name, number, at: [gauge.middle[0], gauge.middle[1] + gauge.radius], outline: gauge}
  const x = axis + (at === 'port' ? -half : half)
  return {name, number, at: [x, held], outline: {x}}
}

/** Number and name beside the place; a thermometer points at the wall of the pipe. */
function stationLabel(
  {name, number, at: [x, y]}: PlacedStation,
  stations: readonly RigStation[],
): readonly Ink[] {
  const where = stations.find((one) => one.number === number)?.at
  const wide = 62 + textWidth(name, letter)
  const dot = {words: `<circle class="solid" cx="${rounded(x)}" cy="${rounded(y)}" r="8"/>`}
  const beside = gauge.middle[0] - gauge.radius - 20 - wide
  if (where === 'gauge') return [dot, ...balloon(number, beside + 24, 70), word(name, beside + 56, 83)]
  const side = where === 'port' ? -1 : 1
  const left = side === 1 ? x + 78 : x - 78 - wide
  return [
    line(`M${rounded(x)} ${held}h${side * 66}`),
    dot,
    ...balloon(number, left + 24, held),
    word(name, left + 56, held + 13),
  ]
}

function balloon(number: number, x: number, y: number): readonly Ink[] {
  return [open(circle(Math.round(x), y, 21)), text(String(number), x, y + 13, 'strong mid')]
}

/** Stack below the top plate through the deck: outer pipe, inner pipe, the cofferdam between them. */
function stackOf({pipes, words}: RigInput, half: number): readonly Ink[] {
  const ends = `M${rounded(axis - half - 20)} ${bottom - 30}q${rounded((half + 20) / 2)} -26 ${rounded(half + 20)} 0t${rounded(half + 20)} 0`
  const walls = pipes
    ? [half, pipes.bore / 2, pipes.inner / 2].flatMap((one) => [axis - one, axis + one])
    : [axis - half, axis + half]
  const wallLines = walls.map((x) => `M${rounded(x)} ${plate + 30}V${bottom - 30}`).join('')
  const deckLines = `M40 ${deck}H${rounded(axis - half - 14)}M${rounded(axis + half + 14)} ${deck}H860`
  const ground = [...spaced(60, axis - half - 30), ...spaced(axis + half + 40, 850)]
    .map((x) => `M${rounded(x)} ${deck}l-24 24`)
    .join('')
  const between = axis + (pipes ? (pipes.bore + pipes.inner) / 4 : half / 2)
  return [
    line(wallLines + deckLines),
    {words: path('hair', `${ends}${ground}M${rounded(between)} ${deck + 84}H${rounded(axis + half + 66)}`)},
    {words: path('thin', `M${axis} ${plate + 36}V${bottom - 8}`)},
    solid(circle(Math.round(between), deck + 84, 6)),
    word(pipes ? words.cofferdam : `${words.cofferdam}: ${words.notKnown}`, axis + half + 78, deck + 97),
    word(words.deck, 700, deck - 18),
    word(words.seenFrom, 1000, bottom - 36),
  ]
}

function spaced(from: number, to: number): readonly number[] {
  return Array.from({length: Math.max(0, Math.floor((to - from) / 90) + 1)}, (_, index) => from + index * 90)
}

/** Vent line: from the top plate over the blinded flange to the purge outlet valve and its container. */
function ventLine(points: RigInput['points'], words: RigWords): readonly Ink[] {
  return [
    line(
      `M780 ${plate}V${vent}H886M914 ${vent}H1114M1186 ${vent}H1310V${vent + 56}M1212 ${vent + 66}v110h196v-110`,
    ),
    ...pointSymbol(points.vent.kind, points.vent.state, 900, vent),
    ...pointSymbol(points.outlet.kind, points.outlet.state, 1150, vent),
    ...(points.outlet.locked ? padlock(1150, vent - 50) : []),
    ...pointLabel(points.vent, 836, vent + 84, 300),
    ...pointLabel(points.outlet, 1200, vent - 64, 290),
    text(words.container, 1310, vent + 140, 'mid'),
  ]
}

function pointLabel({tag, words}: RigPoint, x: number, y: number, room: number): readonly Ink[] {
  return [tagOf(tag, x, y), ...lines(words, x, y + 42, room)]
}

/** The rig: outlet on the flange of the relief valve, then gauge, relief valve and vent valve, then shut-off valve and regulator. */
function rigLines(words: RigWords): readonly Ink[] {
  const [x, y] = gauge.middle
  const pipe = `M${rig} ${plate}V${manifold}H1074M1146 ${manifold}H1226M${x} ${manifold}V${y + gauge.radius}M850 ${manifold}v-34M960 ${manifold}v40M1294 ${manifold}h70M1374 ${manifold - 26}v52`
  const flanges = `M${rig - 44} ${plate - 60}h88M${rig - 44} ${plate - 46}h88M960 ${manifold + 112}v50`
  return [
    line(pipe + flanges),
    open(`M1226 ${manifold - 34}h68v68h-68zM1226 ${manifold + 34}l68 -68${circle(x, y, gauge.radius)}`),
    {layer: 'line over', d: `M${x} ${y}l22 -28`},
    ...pointSymbol('relief-valve', 'passes', 850, manifold - 70),
    ...pointSymbol('valve', 'shut', 1110, manifold),
    ...upright('shut', 960, manifold + 76),
    solid(arrowhead([960, manifold + 178], 90)),
    word(words.relief, 900, manifold - 56),
    ...lines(words.ventValve, 596, manifold + 76, 320),
    ...lines(words.shutOff, 1010, manifold + 78, 230),
    word(words.regulator, 1190, manifold - 56),
    word(words.gasHose, 1290, manifold + 78),
  ]
}

/** A valve in an upright pipe. */
function upright(state: PointState, x: number, y: number): readonly Ink[] {
  const [above, below] = [`M${x} ${y}l-27 -36h54z`, `M${x} ${y}l-27 36h54z`]
  if (state === 'either') return [open(below), solid(above)]
  return [state === 'shut' ? solid(above + below) : open(above + below)]
}

/** Top plate with purge supply valve, gauge cock and the flange that carries the rig. */
function topPlate(points: RigInput['points'], words: RigWords, half: number): readonly Ink[] {
  const supply = 190
  return [
    open(`M120 ${plate}h690v30h-690z`),
    line(
      `M${supply} ${plate}v-60M${axis} ${plate}v-44M${axis - 20} ${plate - 116}h40M${supply - 20} ${plate - 132}h40`,
    ),
    ...upright(points.supply.state, supply, plate - 96),
    ...upright('shut', axis, plate - 80),
    ...(points.supply.locked ? padlock(supply - 56, plate - 96) : []),
    tagOf(points.supply.tag, 90, plate - 158),
    ...pointLabel(points.relief, 200, manifold + 46, 320),
    ...lines(words.gaugeCock, 356, plate - 176, 200),
    word(words.topPlate, axis + half + 24, plate + 76),
  ]
}

/** A tag belongs to one pump: the rest of the drawing is that of all pumps alike. */
function tagOf(tag: string, x: number, y: number): Ink {
  return {own: `<text class="strong" x="${x}" y="${y}">${escaped(tag)}</text>`}
}

function lines(words: string, x: number, y: number, room: number): readonly Ink[] {
  return textLines(words, letter, room).map((one, index) => word(one, x, y + index * 42))
}

function word(words: string, x: number, y: number): Ink {
  return text(words, x, y, '')
}

function text(words: string, x: number, y: number, kind: string): Ink {
  return {
    words: `<text${kind === '' ? '' : ` class="${kind}"`} x="${Math.round(x)}" y="${Math.round(y)}">${escaped(words)}</text>`,
  }
}
