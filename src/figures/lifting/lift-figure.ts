import {type Figure, figureOf} from '../figure.ts'
import {lineOf} from '../section/paint.ts'
import {boundsOf, type Point} from '../section/shape.ts'
import {rounded} from '../svg-text.ts'
import {
  areas,
  dimensionAcross,
  dimensionUpright,
  hair,
  hook,
  linePitch,
  type Note,
  notesColumn,
  word,
} from './drawing-parts.ts'
import {type DrawnLength, type LoadShape, plainBox, toldLengths} from './load-shapes.ts'
import {angleMark, drawnLegs, eyeRadius, freeHeight, legHeight, reachesHook, slingFromAbove} from './sling.ts'

/** What a figure says that no author wrote. */
export interface LiftWords {
  readonly notKnown: string
  readonly view: string
  readonly mass: (mass: string) => string
  readonly legs: (legs: number) => string
  readonly angle: (angle: string) => string
  readonly angleUnknown: string
  readonly straight: string
  readonly legLoad: string
  readonly ratedLoad: (gear: string) => string
  readonly least: (load: string) => string
  readonly empty: string
  readonly boxed: string
  readonly drawnBy: (lengths: string) => string
  readonly restFree: string
  readonly fromAbove: string
  readonly hookAbove: string
}

/** One lift as a figure draws it; a figure that nobody knows is `undefined`. */
export interface DrawnLift {
  /** "lift of the pump unit". */
  readonly title: string
  /** What hangs: "pump unit, complete and drained". */
  readonly load: string
  readonly mass: string | undefined
  readonly legs: number
  readonly angle: {readonly degrees: number; readonly text: string} | undefined
  readonly legLoad: string | undefined
  /** "2 of 4 legs count, as a mass", as its value says. */
  readonly legCondition: string
  readonly ratedLoad: string | undefined
  /** What is marked with the rated load: "hoist, shackles, each leg". */
  readonly gear: string
  /** Outline of the load; nothing where its design does not state the lengths. */
  readonly shape: LoadShape | undefined
}

const width = 1200
const middle = 340
/** Room on both sides of the line of the hook, and for legs and load together. */
const room = {left: 226, right: 290, upright: 500} as const
const column = {x: 700, width: width - 706, top: 6, gap: 66} as const

/**
 * A lift: hook, legs at their true angle from the vertical, and below them what hangs.
 *
 * Three or more legs are drawn from the side where one of them shows its true angle, and once more from above.
 * A load whose mass nobody knows is not drawn, and legs whose angle nobody knows neither.
 */
export function liftFigure(lift: DrawnLift, words: LiftWords): Figure {
  const drawing = lift.mass === undefined ? emptyHook(lift, words) : hangingLoad(lift, words)
  const texts = notesColumn(drawing.notes, column)
  const plan = lift.legs > 2 ? fromAbove(lift.legs, texts.bottom, words) : {svg: '', bottom: texts.bottom}
  return figureOf({
    size: 'middle',
    width,
    height: Math.ceil(Math.max(drawing.bottom, plan.bottom + 12)),
    drawn: `${drawing.svg}${texts.svg}${plan.svg}`,
    alternative: `${words.view} ${toldOf(lift, words, lift.shape?.lengths ?? [])}`,
    data: toldOf(lift, words, lift.shape?.lengths.filter(({value}) => value === undefined) ?? []),
  })
}

interface Drawing {
  readonly svg: string
  readonly bottom: number
  readonly notes: readonly Note[]
}

function hangingLoad(lift: DrawnLift, words: LiftWords): Drawing {
  const shape = lift.shape ?? plainBox()
  const {legs, angle} = lift
  const degrees = angle?.degrees ?? 0
  const scale = scaleOf(lift, shape)
  const hung = hook(middle, 4)
  const eye = eyeOf(lift, shape)
  const reach = eye.reach * scale
  const eyeLevel = hung.apex[1] + (angle ? legHeight(legs, degrees, reach) : freeHeight)
  const base = eyeLevel + eyeRadius + eye.height * scale
  const place = ([r, z]: Point): Point => [middle + r * scale, base - z * scale]
  const sling =
    angle && drawnLegs({legs, degrees, reach, isBroken: shape.hose !== undefined}, hung.apex, eyeLevel)
  const hooked = !angle || reachesHook(legs, degrees)
  const load = drawnLoad(shape, place, scale, base)
  const bounds = boundsOf(shape.areas.flat())
  // Beside the line of the hook, and inside of every load.
  const beside = bounds.left * 0.42 + bounds.right * 0.58
  const [high, low] = [shape.mark ?? eye.height * 0.45, shape.mark ?? eye.height * 0.425]
  return {
    svg: [
      load.svg,
      `<path class="thin" d="M${middle} ${rounded(hung.apex[1])}V${rounded(base + 16)}"/>`,
      hooked ? hung.svg : '',
      sling?.svg ?? '',
      angle && legs > 1 && hooked
        ? angleMark(angle, hung.apex, Math.hypot(reach, eyeLevel - hung.apex[1]))
        : '',
    ].join(''),
    bottom: load.bottom,
    notes: [
      gearNote(
        lift,
        words,
        hooked
          ? [
              [middle + 20, 40],
              [middle + 20, 60],
            ]
          : undefined,
      ),
      legNote(lift, words, sling?.along),
      {
        strong: [words.mass(lift.mass ?? '')],
        plain: [lift.load],
        along: [place([beside, high]), place([beside, low])],
        isInside: true,
      },
      {strong: [], plain: [lift.shape ? words.restFree : words.boxed]},
    ],
  }
}

/** Hook and words alone: nothing hangs in the drawing while its mass is not known. */
function emptyHook(lift: DrawnLift, words: LiftWords): Drawing {
  const hung = hook(middle, 4)
  const [x, y] = hung.apex
  const end = y + 120
  return {
    svg: `${hung.svg}${hair(`M${x} ${y + 14}V${end}m-24 12l48 -24`)}`,
    bottom: end + 20,
    notes: [
      {strong: [words.mass(words.notKnown)], plain: [lift.load, words.empty]},
      gearNote(lift, words, undefined),
      legNote(lift, words, undefined),
    ],
  }
}

function gearNote(lift: DrawnLift, words: LiftWords, along: Note['along']): Note {
  const load = lift.ratedLoad === undefined ? words.notKnown : words.least(lift.ratedLoad)
  return {strong: [load], plain: [words.ratedLoad(lift.gear)], ...(along ? {along} : {})}
}

function legNote(lift: DrawnLift, words: LiftWords, along: Note['along']): Note {
  const {legs, angle} = lift
  return {
    strong: [lift.legLoad ?? words.notKnown],
    plain: [
      words.legLoad,
      lift.legCondition === '' ? words.legs(legs) : lift.legCondition,
      ...(angle ? [] : [words.angleUnknown]),
      ...(angle && !reachesHook(legs, angle.degrees) ? [words.angle(angle.text), words.hookAbove] : []),
    ],
    ...(along ? {along} : {}),
  }
}

/** Where legs hold a load: several at its eyes, a single one above its middle. */
function eyeOf({legs}: Pick<DrawnLift, 'legs'>, shape: LoadShape): LoadShape['eye'] {
  return legs > 1 || shape.eye.reach === 0 ? shape.eye : {reach: 0, height: boundsOf(shape.areas.flat()).high}
}

/** How large a millimetre of the load is drawn. */
function scaleOf({legs, angle}: DrawnLift, shape: LoadShape): number {
  const {left, right, high} = boundsOf(shape.areas.flat())
  const {reach, height} = eyeOf({legs}, shape)
  const across = Math.min(room.left / -left, room.right / right)
  const grows = angle && legs > 1 && reachesHook(legs, angle.degrees)
  const upright = grows
    ? room.upright / Math.max(high, height + legHeight(legs, angle.degrees, reach))
    : (room.upright - freeHeight) / high
  return Math.min(across, upright)
}

/** Outline of the load with its dimensions and the hose that hangs beside it. */
function drawnLoad(
  shape: LoadShape,
  place: (point: Point) => Point,
  scale: number,
  base: number,
): {readonly svg: string; readonly bottom: number} {
  const {across, upright, hose} = shape
  const svg: string[] = []
  if (hose) {
    const [left, foot] = place([hose.at, shape.eye.height])
    const right = left + hose.width * scale
    const top = foot - freeHeight + 40
    svg.push(
      `<path class="part" d="M${rounded(left)} ${rounded(foot)}V${rounded(top)}c${rounded((right - left) / 3)} -20 ${rounded(((right - left) * 2) / 3)} 20 ${rounded(right - left)} 0V${rounded(foot)}z"/>`,
    )
  }
  svg.push(areas(shape.areas.map((one) => one.map(place))))
  if (shape.lines.length > 0) svg.push(hair(shape.lines.map((one) => lineOf(one.map(place))).join('')))
  const {left} = boundsOf(shape.areas.flat())
  if (upright) {
    const [edge, top] = place([left, upright.to])
    svg.push(dimensionUpright(top, place([0, upright.from])[1], edge - 6, edge - 44, upright.text))
  }
  if (!across) return {svg: svg.join(''), bottom: base + 24}
  const line = base + 66
  svg.push(dimensionAcross(place([across.from, 0])[0], place([across.to, 0])[0], base + 6, line, across.text))
  return {svg: svg.join(''), bottom: line + 14}
}

function fromAbove(
  legs: number,
  from: number,
  words: LiftWords,
): {readonly svg: string; readonly bottom: number} {
  const radius = 66
  const y = from + 40 + radius
  return {
    svg: `${slingFromAbove(legs, [column.x + 80, y], radius)}${word(words.fromAbove, column.x + 180, y - 8)}${word(words.legs(legs), column.x + 180, y - 8 + linePitch)}`,
    bottom: y + radius + eyeRadius,
  }
}

/**
 * All that the drawing shows, in words.
 *
 * @param lengths
 *   What the outline is drawn by: all, or those that no value below the figure prints.
 */
function toldOf(lift: DrawnLift, words: LiftWords, lengths: readonly DrawnLength[]): string {
  const {legs, angle} = lift
  const drawn = angle ? words.angle(angle.text) : words.angleUnknown
  const stands = legs === 1 ? words.straight : drawn
  const figures = [
    `${lift.title}: ${lift.load}, ${words.mass(lift.mass ?? words.notKnown)}`,
    `${words.legs(legs)}, ${stands}`,
    `${words.legLoad} ${lift.legLoad ?? words.notKnown}${lift.legCondition === '' ? '' : ` (${lift.legCondition})`}`,
    `${words.ratedLoad(lift.gear)} ${lift.ratedLoad === undefined ? words.notKnown : words.least(lift.ratedLoad)}`,
  ]
  const outline = lift.shape ? words.restFree : words.boxed
  const by = lengths.length > 0 ? `${words.drawnBy(toldLengths(lengths))} ` : ''
  return `${figures.join('; ')}. ${lift.mass === undefined ? words.empty : `${by}${outline}`}.`
}
