import {sectionWordsEn} from '../../../src/compile/section-words-en.ts'
import {type CrossSection, crossSection} from '../../../src/figures/section/cross-section.ts'
import {
  type SectionGeometry,
  type SectionVariant,
  sectionParts,
} from '../../../src/figures/section/section-geometry.ts'
import {isInside, type Outline, type Point} from '../../../src/figures/section/shape.ts'

/** An invented pump of usual proportions. */
export const geometry: SectionGeometry = {
  impellerDiameter: 386,
  eyeDiameter: 196,
  outletWidth: 24,
  hubDiameter: 92,
  sleeveDiameter: 100,
  casingDiameter: 640,
  unitHeight: 410,
  suctionClearance: 45,
  motorFlangeDiameter: 420,
  motorDiameter: 250,
  motorHeight: 420,
  shaftReach: 78,
  sleevePlace: 85,
  shaftDiameter: 70,
  spigotOffset: 300,
  spigotBore: 150,
  lowerRing: 210,
  upperRing: 190,
  cargoSeat: 24,
  singleSeat: 12,
  stack: {
    outside: 168.3,
    bore: 160.3,
    returnOutside: 139.7,
    returnBore: 127.1,
    pressureOutside: 76.1,
    pressureBore: 60.3,
  },
  footBearing: {bore: 75, outside: 130, width: 25},
  topBearing: {bore: 65, outside: 120, width: 23},
  rings: {
    'suction-cover-ring': {groove: 435, section: 5.33},
    'spigot-ring': {groove: 160.5, section: 6.99},
    'housing-ring': {groove: 160, section: 5.33},
    'sleeve-ring': {groove: 86.2, section: 3.53},
    'lip-holder-ring': {groove: 128, section: 3.53},
    'hand-hole-ring': {groove: 122, section: 5.33},
    'head-flange-ring': {groove: 333, section: 6.99},
  },
  bolts: {
    'suction-cover-bolts': {thread: 12, length: 40},
    'seal-housing-bolts': {thread: 10, length: 35},
    'sleeve-screws': {thread: 6, length: 14},
    'hub-bolts': {thread: 12, length: 45},
    'hand-hole-bolts': {thread: 8, length: 25},
    'lip-holder-bolts': {thread: 8, length: 20},
    'shaft-flange-bolts': {thread: 10, length: 30},
    'head-flange-bolts': {thread: 16, length: 60},
    'ring-screws': {thread: 6, length: 16},
  },
}

const wetLip = {id: 'wet', faces: 'cargo'} as const
const singleLip = {id: 'single', faces: 'cofferdam'} as const

export const doubleLip: SectionVariant = {
  ringFit: 'screwed',
  cargoLips: [wetLip, {id: 'second', faces: 'cofferdam'}],
  singleLip,
}

/** Every kind of pump that a section tells apart. */
export const variants: readonly (readonly [name: string, variant: SectionVariant])[] = [
  ['two lips, rings screwed', doubleLip],
  ['one lip, rings screwed', {...doubleLip, cargoLips: [wetLip]}],
  ['two lips, rings pressed', {...doubleLip, ringFit: 'pressed'}],
  ['two lips, fit of the rings not known', {...doubleLip, ringFit: 'not-known'}],
  ['lips not known', {...doubleLip, cargoLips: []}],
]

export const numbered = Object.fromEntries(
  sectionParts.map((part, index) => [part, {balloon: String(index + 1), title: sectionWordsEn.parts[part]}]),
)

export function sectionOf(variant: SectionVariant, of = geometry): CrossSection {
  return crossSection({geometry: of, variant, parts: numbered, words: sectionWordsEn})
}

/** Name of an outline that stays when its place moves. */
export function nameOf({part, piece}: Outline): string {
  return `${part}: ${piece}`
}

/** Names of the outlines that two drawings show differently. */
export function movedBetween(before: readonly Outline[], after: readonly Outline[]): readonly string[] {
  const old = new Map(before.map((one) => [nameOf(one), written(one.points)]))
  return after
    .map((one) => [nameOf(one), written(one.points)] as const)
    .flatMap(([name, points]) => (old.get(name) === points ? [] : [name]))
}

function written(points: readonly Point[]): string {
  return points.map(([r, z]) => `${r.toFixed(3)} ${z.toFixed(3)}`).join(' ')
}

/** Every length of a geometry as a path of keys. */
export function lengthsOf(value: object, before: readonly string[] = []): readonly (readonly string[])[] {
  return Object.entries(value).flatMap(([key, one]: readonly [string, unknown]) =>
    typeof one === 'object' && one !== null ? lengthsOf(one, [...before, key]) : [[...before, key]],
  )
}

/** The geometry with one length changed. */
export function changed(
  path: readonly string[],
  by: (length: number) => number,
  of: SectionGeometry = geometry,
): SectionGeometry {
  const copy = structuredClone(of)
  const keys = path.slice(0, -1)
  const holder: object = keys.reduce<object>((place, key) => Reflect.get(place, key), copy)
  const last = path.at(-1) ?? ''
  Reflect.set(holder, last, by(Number(Reflect.get(holder, last))))
  return copy
}

/** Bolts and screws whose tip stands in a space, not in metal; mirror images aside. */
export function looseBolts(outlines: readonly Outline[]): readonly string[] {
  const metal = outlines.filter((one) => one.drawn === 'cut' || one.piece === 'shaft')
  const bolts = outlines.filter(({piece}) => /^(?:bolt|screw)(?!.*left$)/u.test(piece))
  if (bolts.length < 9) throw new Error(`Unexpected section with ${bolts.length} bolts, expected more`)
  return bolts
    .filter(({points}) => {
      const [from, a, b, to] = points.slice(3, 7)
      if (!from || !a || !b || !to) return true
      // The corners of the tip, a little inside of the bolt.
      const inside = (tip: Point, back: Point, other: Point): Point => [
        tip[0] + (back[0] - tip[0]) * 0.05 + (other[0] - tip[0]) * 0.05,
        tip[1] + (back[1] - tip[1]) * 0.05 + (other[1] - tip[1]) * 0.05,
      ]
      return [inside(a, from, b), inside(b, to, a)].some(
        (corner) => !metal.some((area) => isInside(corner, area.points)),
      )
    })
    .map(nameOf)
}
