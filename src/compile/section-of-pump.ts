import {type CrossSection, crossSection} from '../figures/section/cross-section.ts'
import {
  type BoltId,
  partsOfSection,
  type RingId,
  type SectionGeometry,
  type SectionPart,
  type SectionVariant,
} from '../figures/section/section-geometry.ts'
import {variantText} from '../figures/section/section-text.ts'
import type {Design} from '../handbook-model/design-content.ts'
import type {PumpDesk} from './desk.ts'
import {sectionWordsEn} from './section-words-en.ts'

/** Part of the parts list that gives each part of the section its balloon. */
const partOfBalloon: Readonly<Record<SectionPart, string>> = {
  'suction-cover': 'suction-cover',
  'suction-cover-bolts': 'suction-cover-bolts',
  'suction-cover-ring': 'suction-cover-ring',
  'lower-ring': 'lower-ring',
  'lower-ring-screws': 'lower-ring-screws',
  impeller: 'impeller',
  'upper-ring': 'upper-ring',
  'upper-ring-screws': 'upper-ring-screws',
  casing: 'casing',
  'spigot-ring': 'spigot-ring',
  'cargo-seal': 'seal-set',
  sleeve: 'sleeve',
  'hub-bolts': 'hub-bolts',
  'shaft-flange': 'shaft-flange-bolts',
  'hand-hole-ring': 'hand-hole-ring',
  'hand-hole-bolts': 'hand-hole-bolts',
  'head-flange-ring': 'head-flange-ring',
  'head-flange-bolts': 'head-flange-bolts',
  'oil-seal': 'oil-seal',
  motor: 'motor',
  stack: 'stack-section',
}

/** A section with the parts that its balloons name, and what pumps alike have in common: design, rings and cargo seal. */
export interface PumpSection extends CrossSection {
  readonly name: string
  readonly legend: readonly {readonly part: SectionPart; readonly balloon: string; readonly title: string}[]
  /** How the rings are held and which way each lip looks, a sentence each. */
  readonly variant: readonly string[]
}

/** The section of a pump as it is fitted, or nothing where its design does not state what it is drawn from. */
export function sectionOfPump(desk: PumpDesk): PumpSection | undefined {
  const {design, facts, content} = desk
  const seal = facts.get('cargo-seal')
  const drawnFrom = sectionBasis(desk)
  if (!drawnFrom) return undefined
  const {geometry, variant} = drawnFrom
  const legend = partsOfSection(variant).flatMap((part) => {
    const balloon = content.parts.get(partOfBalloon[part])?.balloon
    return balloon === undefined ? [] : [{part, balloon, title: sectionWordsEn.parts[part]}]
  })
  if (legend.length < partsOfSection(variant).length) return undefined
  const drawn = crossSection({
    geometry,
    variant,
    parts: Object.fromEntries(legend.map(({part, ...one}) => [part, one])),
    words: sectionWordsEn,
  })
  return {
    ...drawn,
    name: `${design.id}-${variant.ringFit}-${seal ?? 'not-known'}`,
    legend,
    variant: variantText({variant, words: sectionWordsEn}),
  }
}

/** Lengths of the design and what is fitted, or nothing where its design does not state what a section is drawn from. */
export function sectionBasis({
  design,
  facts,
}: Pick<PumpDesk, 'design' | 'facts'>):
  | {readonly geometry: SectionGeometry; readonly variant: SectionVariant}
  | undefined {
  const fit = facts.get('wear-ring-fit')
  const seal = facts.get('cargo-seal')
  const geometry = sectionGeometry(design, seal)
  const single = design.seals.find((one) => one.id === 'single-lip')?.lips[0]
  if (!geometry || !single) return undefined
  return {
    geometry,
    variant: {
      ringFit: fit === 'screwed' || fit === 'pressed' ? fit : 'not-known',
      cargoLips: seal === undefined ? [] : (cargoSeal(design, seal)?.lips ?? []),
      singleLip: single,
    },
  }
}

/** The cargo seal by what is fitted; where nobody knows, the seat of the first one. */
export function cargoSeal(design: Design, fitted: string | undefined): Design['seals'][number] | undefined {
  const seals = design.seals.filter((one) => one.id.startsWith('cargo-seal'))
  if (fitted === undefined) return seals[0]
  return seals.find((one) => one.lips.length === (fitted === 'double-lip' ? 2 : 1))
}

/** What a section is drawn from, or nothing where a length is not stated or not known. */
export function sectionGeometry(design: Design, fitted: string | undefined): SectionGeometry | undefined {
  const {cofferdam, oil} = design
  const geometry = (id: string): number => millimetres(design.geometry.find((one) => one.id === id)?.value)
  const setting = (id: string): number => millimetres(design.settings.find((one) => one.id === id)?.value)
  const running = (id: string): number =>
    millimetres(design.rings.find((one) => one.id === id)?.runningDiameter)
  const ring = (id: RingId) => {
    const one = design.oRings.find((candidate) => candidate.id === id)
    return {groove: millimetres(one?.grooveDiameter), section: millimetres(one?.section)}
  }
  const bolt = (id: Exclude<BoltId, 'ring-screws'> | 'lower-ring-screws') => {
    const joint = design.joints.find((one) => one.id === id)
    return {thread: Number(joint?.thread.id.slice(1)), length: millimetres(joint?.length)}
  }
  const hasScrews = design.joints.some((one) => one.id === 'lower-ring-screws')
  const drawn: SectionGeometry = {
    impellerDiameter: geometry('impeller-diameter'),
    eyeDiameter: geometry('eye-diameter'),
    outletWidth: geometry('impeller-outlet'),
    hubDiameter: geometry('hub-diameter'),
    sleeveDiameter: geometry('sleeve-diameter'),
    casingDiameter: geometry('casing-diameter'),
    unitHeight: geometry('unit-height'),
    suctionClearance: geometry('suction-clearance'),
    motorFlangeDiameter: geometry('motor-flange-diameter'),
    motorDiameter: geometry('motor-diameter'),
    motorHeight: geometry('motor-height'),
    shaftReach: geometry('shaft-reach'),
    sleevePlace: (setting('sleeve-position-least') + setting('sleeve-position-most')) / 2,
    shaftDiameter: geometry('shaft-diameter'),
    spigotOffset: geometry('spigot-offset'),
    spigotBore: geometry('spigot-bore'),
    lowerRing: running('lower-ring'),
    upperRing: running('upper-ring'),
    cargoSeat: millimetres(cargoSeal(design, fitted)?.seatDepth),
    singleSeat: millimetres(design.seals.find((one) => one.id === 'single-lip')?.seatDepth),
    stack: {
      outside: geometry('stack-diameter'),
      bore: millimetres(cofferdam?.outerPipeBore),
      returnOutside: millimetres(cofferdam?.innerPipeOutside),
      returnBore: millimetres(oil?.returnPipeBore),
      pressureOutside: millimetres(oil?.pressurePipeOutside),
      pressureBore: millimetres(oil?.pressurePipeBore),
    },
    footBearing: bearing('foot-bearing', geometry),
    topBearing: bearing('top-bearing', geometry),
    rings: {
      'suction-cover-ring': ring('suction-cover-ring'),
      'spigot-ring': ring('spigot-ring'),
      'housing-ring': ring('housing-ring'),
      'sleeve-ring': ring('sleeve-ring'),
      'lip-holder-ring': ring('lip-holder-ring'),
      'hand-hole-ring': ring('hand-hole-ring'),
      'head-flange-ring': ring('head-flange-ring'),
    },
    bolts: {
      'suction-cover-bolts': bolt('suction-cover-bolts'),
      'seal-housing-bolts': bolt('seal-housing-bolts'),
      'sleeve-screws': bolt('sleeve-screws'),
      'hub-bolts': bolt('hub-bolts'),
      'hand-hole-bolts': bolt('hand-hole-bolts'),
      'lip-holder-bolts': bolt('lip-holder-bolts'),
      'shaft-flange-bolts': bolt('shaft-flange-bolts'),
      'head-flange-bolts': bolt('head-flange-bolts'),
      ...(hasScrews ? {'ring-screws': bolt('lower-ring-screws')} : {}),
    },
  }
  return lengthsOf(drawn).every(Number.isFinite) ? drawn : undefined
}

function bearing(
  id: 'foot-bearing' | 'top-bearing',
  geometry: (id: string) => number,
): {readonly bore: number; readonly outside: number; readonly width: number} {
  return {bore: geometry(`${id}-bore`), outside: geometry(`${id}-outside`), width: geometry(`${id}-width`)}
}

function lengthsOf(value: object): readonly number[] {
  return Object.values(value).flatMap((one: unknown) =>
    typeof one === 'object' && one !== null ? lengthsOf(one) : [Number(one)],
  )
}

/** Millimetres of a stated length; not a number where nobody knows it. */
function millimetres(
  datum: Design['geometry'][number]['value'] | Design['settings'][number]['value'] | undefined,
): number {
  return datum?.kind === 'known' && datum.quantity.kind === 'length'
    ? Math.round(datum.quantity.si * 1e6) / 1000
    : Number.NaN
}
