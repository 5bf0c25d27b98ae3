import type {Place} from '../messages/place.ts'
import type {QuantityKind} from '../quantities/quantity.ts'
import type {ClearanceKind, Datum, Localised, Reference} from './datum.ts'
import type {HoldKind} from './hold-kinds.ts'
import type {WettedParts} from './material-content.ts'
import type {LimitSide} from './office-content.ts'
import type {FactValue} from './vessel-content.ts'

/** designs/<id>.yaml: everything that pumps of one design share. */
export interface Design {
  readonly id: string
  readonly title: Localised
  readonly variant: Localised
  readonly description: Localised
  readonly intendedUse: Localised
  readonly misuse: Localised
  /** Why it is kept where no pump is of it. */
  readonly keptFor?: Localised
  readonly ratings: readonly NamedValue[]
  readonly facts: readonly FactValue[]
  readonly joints: readonly Joint[]
  readonly rings: readonly WearRing[]
  /** A pump that hangs in a tank has one; a portable pump has none. */
  readonly cofferdam?: Cofferdam
  readonly oil?: OilSpaces
  readonly motor?: Motor
  readonly curve?: PumpCurve
  readonly stripping?: Stripping
  readonly lifts: readonly Lift[]
  readonly lowering?: Lowering
  readonly seals: readonly Seal[]
  readonly oRings: readonly ORing[]
  /** What the cargo touches, by material; empty where the design does not say. */
  readonly wetted: readonly WettedParts[]
  readonly masses: readonly NamedValue<'mass'>[]
  readonly settings: readonly NamedValue[]
  readonly limits: readonly Limit[]
  readonly geometry: readonly NamedValue<'length'>[]
  /** What a second paper says of a value; the value of the design governs. */
  readonly alsoStated?: readonly AlsoStated[]
  readonly place: Place
}

/** A second paper on one value. */
export interface AlsoStated {
  /** Value id. */
  readonly value: Reference
  readonly says: Datum<QuantityKind>
  /** Why the two papers disagree, where they do. */
  readonly reason?: Localised
  readonly place: Place
}

/** A design of pumps that hang in tanks. */
export type HungDesign = Design & Required<Pick<Design, 'cofferdam'>>

/** Whether pumps of a design hang in tanks. */
export function isHungDesign(design: Design): design is HungDesign {
  return design.cofferdam !== undefined
}

/** A value of the design with an id, so that procedures can refer to it as `<group>.<id>`. */
export interface NamedValue<K extends QuantityKind = QuantityKind> {
  readonly id: string
  readonly title: Localised
  readonly value: Datum<K>
  readonly condition?: Localised
  readonly place: Place
}

/** A bolted joint. A joint without a lubrication state stops the build. */
export interface Joint {
  readonly id: string
  readonly title: Localised
  readonly thread: Reference
  readonly propertyClass: Reference
  readonly head: 'hexagon' | 'socket'
  readonly hole: 'fine' | 'medium' | 'coarse'
  readonly count: number
  readonly length: Datum<'length'>
  readonly utilisation: Datum<'ratio'>
  /** Row of tables/friction.csv; undefined when the author left it out. */
  readonly lubrication?: Reference
  readonly locking: Localised
  readonly pattern: 'crosswise' | 'single'
  /** Which hold point stands behind its tightening, where one must. */
  readonly held?: HoldKind
  readonly place: Place
}

export interface WearRing {
  readonly id: string
  readonly title: Localised
  readonly runningDiameter: Datum<'length'>
  readonly material: Localised
  readonly newClearance: Datum<ClearanceKind>
  readonly minimumNew: Datum<ClearanceKind>
  readonly renewal: Datum<ClearanceKind>
  /** Why it is new with less clearance than the table of running clearances prints. */
  readonly belowTable?: Localised
  readonly place: Place
}

export interface Cofferdam {
  readonly outerPipeBore: Datum<'length'>
  readonly innerPipeOutside: Datum<'length'>
  readonly headVolume: Datum<'volume'>
  readonly rating: Datum<'gauge-pressure'>
  readonly lipReverseLimit: Datum<'pressure-difference'>
  readonly allowedLeak: Datum<'volume-flow'>
  readonly reliefValveSetting: Datum<'gauge-pressure'>
  readonly place: Place
}

/** Oil spaces of a concentric stack: pressure pipe inside, return annulus around it, and what the ends hold. */
export interface OilSpaces {
  readonly pressurePipeBore: Datum<'length'>
  readonly pressurePipeOutside: Datum<'length'>
  readonly returnPipeBore: Datum<'length'>
  readonly motorCasing: Datum<'volume'>
  readonly controlValve: Datum<'volume'>
  readonly place: Place
}

export interface Motor {
  /** Oil for one turn. */
  readonly displacement: Datum<'displacement'>
  readonly volumetricEfficiency: Datum<'ratio'>
  readonly mechanicalEfficiency: Datum<'ratio'>
  readonly place: Place
}

/** What the curve says of a new pump on water. */
export interface PumpCurve {
  readonly speed: Datum<'rotational-speed'>
  readonly shutOffHead: Datum<'length'>
  readonly flow: Datum<'volume-flow'>
  readonly head: Datum<'length'>
  readonly efficiency: Datum<'ratio'>
  readonly place: Place
}

/** The riser that stripping gas empties: where it begins and ends beside the pipe stack, and what its end presses against. */
export interface Stripping {
  /** Foot of the stripping pipe below the foot of the stack. */
  readonly footBelowStack: Datum<'length'>
  /** Highest place of the stripping pipe above the top of the stack at deck. */
  readonly topAboveDeck: Datum<'length'>
  readonly backPressure: Datum<'gauge-pressure'>
  readonly place: Place
}

/** One lift: what hangs, on how many legs, at which angle from the vertical. */
export interface Lift {
  readonly id: string
  readonly title: Localised
  /** Id of a mass of the design. */
  readonly mass: Reference
  readonly legs: number
  readonly angle: Datum<'angle'>
  readonly place: Place
}

/** The screws by which the pump unit comes down and goes up. */
export interface Lowering {
  readonly mass: Reference
  readonly thread: Reference
  readonly lubrication: Reference
  /** Bearing diameters of the thrust washer below the nut. */
  readonly washerOutside: Datum<'length'>
  readonly washerInside: Datum<'length'>
  readonly travel: Datum<'length'>
  readonly place: Place
}

/** A seal on the shaft and what its lips look at. */
export interface Seal {
  readonly id: string
  readonly title: Localised
  readonly part: Reference
  readonly runningDiameter: Datum<'length'>
  readonly seatDepth: Datum<'length'>
  /** The two spaces that it parts, the lower one first. */
  readonly between: 'cargo-cofferdam' | 'cofferdam-oil'
  /** From the wet end up: each lip and the side that its open edge faces. */
  readonly lips: readonly SealLip[]
  readonly place: Place
}

export interface SealLip {
  readonly id: string
  readonly title: Localised
  readonly faces: 'cargo' | 'cofferdam' | 'oil'
  readonly place: Place
}

export interface ORing {
  readonly id: string
  readonly title: Localised
  readonly part: Reference
  readonly section: Datum<'length'>
  readonly sectionTolerance: Datum<'length'>
  readonly insideDiameter: Datum<'length'>
  readonly grooveDiameter: Datum<'length'>
  readonly grooveDepth: Datum<'length'>
  readonly depthTolerance: Datum<'length'>
  readonly place: Place
}

/** A limit: which side, which value, and what is done outside it. */
export interface Limit {
  readonly id: string
  readonly title: Localised
  readonly side: LimitSide
  /** Value id (`lower-ring.renewal`) that the reading is held against. */
  readonly value: Reference
  readonly outside: 'RENEW' | 'STOP'
  /** What the crew does when outside, in words. */
  readonly action: Localised
  /** Which hold point stands behind the reading as left, where one must. */
  readonly held?: HoldKind
  readonly place: Place
}
