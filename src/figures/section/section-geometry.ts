/** What a cross-section is drawn from: lengths in millimetres, from the record of a design. */
export interface SectionGeometry {
  readonly impellerDiameter: number
  readonly eyeDiameter: number
  /** Width of the channel of the impeller at its outlet. */
  readonly outletWidth: number
  readonly hubDiameter: number
  readonly sleeveDiameter: number
  readonly casingDiameter: number
  /** From the lower edge of the suction cover to the unit flange. */
  readonly unitHeight: number
  readonly suctionClearance: number
  readonly motorFlangeDiameter: number
  readonly motorDiameter: number
  readonly motorHeight: number
  /** From the motor flange down to the lower face of the shaft flange. */
  readonly shaftReach: number
  /** From the hub seat down to the end of the sleeve. */
  readonly sleevePlace: number
  readonly shaftDiameter: number
  readonly spigotOffset: number
  readonly spigotBore: number
  readonly lowerRing: number
  readonly upperRing: number
  /** Depth of the seat of all lips of the cargo seal, and of the single lip above it. */
  readonly cargoSeat: number
  readonly singleSeat: number
  readonly stack: {
    readonly outside: number
    readonly bore: number
    readonly returnOutside: number
    readonly returnBore: number
    readonly pressureOutside: number
    readonly pressureBore: number
  }
  readonly footBearing: Bearing
  readonly topBearing: Bearing
  readonly rings: Readonly<Record<RingId, ORingSize>>
  readonly bolts: Readonly<
    Record<Exclude<BoltId, 'ring-screws'>, BoltSize> & Partial<Record<'ring-screws', BoltSize>>
  >
}

/** A bearing by its main measures. */
export interface Bearing {
  readonly bore: number
  readonly outside: number
  readonly width: number
}

/** Groove of an O-ring on its inner side, and the thickness of the ring. */
export interface ORingSize {
  readonly groove: number
  readonly section: number
}

/** Diameter of the thread, and length below the head. */
export interface BoltSize {
  readonly thread: number
  readonly length: number
}

export type RingId =
  | 'suction-cover-ring'
  | 'spigot-ring'
  | 'housing-ring'
  | 'sleeve-ring'
  | 'lip-holder-ring'
  | 'hand-hole-ring'
  | 'head-flange-ring'

export type BoltId =
  | 'suction-cover-bolts'
  | 'seal-housing-bolts'
  | 'sleeve-screws'
  | 'hub-bolts'
  | 'hand-hole-bolts'
  | 'lip-holder-bolts'
  | 'shaft-flange-bolts'
  | 'head-flange-bolts'
  | 'ring-screws'

/** Where the open edge of a lip looks. */
export interface SectionLip {
  readonly id: string
  readonly faces: 'cargo' | 'cofferdam' | 'oil'
}

/**
 * Which way the open edge of a lip looks in the drawing.
 *
 * The cargo seal has the cofferdam above it, the lip below the motor has it below.
 */
export function looksOf(lip: SectionLip, place: 'cargo seal' | 'single lip'): 'down' | 'up' {
  if (place === 'cargo seal') return lip.faces === 'cargo' ? 'down' : 'up'
  return lip.faces === 'oil' ? 'up' : 'down'
}

/** What differs between pumps of one design. */
export interface SectionVariant {
  readonly ringFit: 'screwed' | 'pressed' | 'not-known'
  /** Lips of the cargo seal from the wet end up; none where nobody knows what is fitted. */
  readonly cargoLips: readonly SectionLip[]
  readonly singleLip: SectionLip
}

/** Parts that carry a balloon, from the wet end up. */
export const sectionParts = [
  'suction-cover',
  'suction-cover-bolts',
  'suction-cover-ring',
  'lower-ring',
  'lower-ring-screws',
  'impeller',
  'upper-ring',
  'upper-ring-screws',
  'casing',
  'spigot-ring',
  'cargo-seal',
  'sleeve',
  'hub-bolts',
  'shaft-flange',
  'hand-hole-ring',
  'hand-hole-bolts',
  'head-flange-ring',
  'head-flange-bolts',
  'oil-seal',
  'motor',
  'stack',
] as const

export type SectionPart = (typeof sectionParts)[number]

/** Parts of a pump as it is drawn: rings that are pressed in have no screws. */
export function partsOfSection(variant: SectionVariant): readonly SectionPart[] {
  return sectionParts.filter(
    (part) => variant.ringFit === 'screwed' || (part !== 'lower-ring-screws' && part !== 'upper-ring-screws'),
  )
}
