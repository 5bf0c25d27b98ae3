import type {Place} from '../messages/place.ts'
import type {QuantityKind} from '../quantities/quantity.ts'
import type {ClearanceKind, Datum, Localised, Reference} from './datum.ts'
import type {LimitSide} from './office-content.ts'

/** vessels/<id>/vessel.yaml. */
export interface Vessel {
  readonly id: string
  readonly name: Localised
  readonly hullNumber: string
  readonly built: string
  readonly shipType: Localised
  readonly deadweight: Datum<'mass'>
  readonly locations: readonly Localised[]
  readonly tanks: readonly Tank[]
  readonly positions: readonly Position[]
  readonly cargoes: readonly Reference[]
  readonly hydraulics: VesselHydraulics
  readonly supplies: VesselSupplies
  readonly facts: readonly FactValue[]
  readonly toolsAboard: readonly ToolAboard[]
  readonly sparesAboard: readonly SpareAboard[]
  readonly place: Place
}

export interface Tank {
  readonly id: string
  /** As on the tank plan: `4S`, `SLOP P`. */
  readonly tag: string
  readonly volume: Datum<'volume'>
  readonly height: Datum<'length'>
  readonly vacuumValveSetting: Datum<'gauge-pressure'>
  readonly pressureValveSetting: Datum<'gauge-pressure'>
  readonly plan: TankOnPlan
  readonly place: Place
}

/** Where the tank lies on the plan: frames along the ship, and the share of the breadth, port negative. */
export interface TankOnPlan {
  readonly fromFrame: number
  readonly toFrame: number
  readonly fromSide: number
  readonly toSide: number
}

export interface Position {
  readonly id: string
  /** The largest thing on every page: `4S`. */
  readonly tag: string
  readonly tank: Reference
  readonly design: Reference
  readonly serial: string
  readonly role: 'main' | 'stripping' | 'portable'
  readonly critical: boolean
  readonly installed: string
  readonly stackLength: Datum<'length'>
  readonly components: readonly Component[]
  readonly facts: readonly FactValue[]
  readonly isolation: readonly IsolationRole[]
  readonly place: Place
}

/** What is fitted there now; history belongs to the component, not to the position. */
export interface Component {
  readonly kind: 'head' | 'motor' | 'sleeve' | 'stack'
  readonly serial: string
  readonly place: Place
}

/** A fact as fitted. `value` undefined is "not known", with the reason. */
export interface FactValue {
  readonly fact: Reference
  readonly value: string | undefined
  readonly reason?: string
  readonly place: Place
}

export const isolationRoles = [
  'pressure',
  'return',
  'pilot',
  'discharge',
  'stripping',
  'purge-supply',
  'purge-outlet',
  'heating',
  'tank-cleaning',
  'cofferdam-relief',
  'cofferdam-vent',
] as const

export type IsolationRoleName = (typeof isolationRoles)[number]

/** What a procedure isolates by role: the points of this position, or the written reason why there is none. */
export interface IsolationRole {
  readonly role: IsolationRoleName
  readonly points: readonly IsolationPoint[]
  readonly noneBecause?: Localised
  readonly place: Place
}

export interface IsolationPoint {
  readonly id: string
  /** As on the plate. */
  readonly tag: string
  readonly medium: Localised
  readonly kind: 'valve' | 'blind' | 'fuse' | 'relief-valve'
  readonly normal: Localised
  readonly isolated: Localised
  readonly where: Localised
  readonly lock: Localised
  readonly proof: Localised
  readonly restoredWith: Localised
  readonly place: Place
}

export interface VesselHydraulics {
  readonly systemPressure: Datum<'gauge-pressure'>
  readonly returnPressure: Datum<'gauge-pressure'>
  readonly purgeRegulatorMaximum: Datum<'gauge-pressure'>
  readonly oil: Localised
}

/** What the ship gives a job: gas, oil and air, as flows and as vessels that hold them. */
export interface VesselSupplies {
  /** Purge gas as free gas, at the purge supply of one pump. */
  readonly purgeGasFlow: Datum<'volume-flow'>
  readonly bottleVolume: Datum<'volume'>
  readonly bottlePressure: Datum<'gauge-pressure'>
  /** Oil through one pump while it is flushed and vented. */
  readonly flushFlow: Datum<'volume-flow'>
  readonly drumVolume: Datum<'volume'>
  readonly ventilatorFlow: Datum<'volume-flow'>
}

export interface ToolAboard {
  readonly tool: Reference
  readonly number: string
  readonly location: Localised
}

export interface SpareAboard {
  readonly part: Reference
  readonly quantity: number
  readonly location: Localised
}

/** designs/<id>.yaml: everything that pumps of one design share. */
export interface Design {
  readonly id: string
  readonly title: Localised
  readonly variant: Localised
  readonly description: Localised
  readonly intendedUse: Localised
  readonly misuse: Localised
  readonly ratings: readonly NamedValue[]
  readonly facts: readonly FactValue[]
  readonly joints: readonly Joint[]
  readonly rings: readonly WearRing[]
  readonly cofferdam: Cofferdam
  readonly oil?: OilSpaces
  readonly motor?: Motor
  readonly curve?: PumpCurve
  readonly lifts: readonly Lift[]
  readonly lowering?: Lowering
  readonly seals: readonly Seal[]
  readonly oRings: readonly ORing[]
  readonly masses: readonly NamedValue<'mass'>[]
  readonly settings: readonly NamedValue[]
  readonly limits: readonly Limit[]
  readonly geometry: readonly NamedValue<'length'>[]
  readonly place: Place
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
  readonly place: Place
}

/** A row of tables/cargoes.csv. */
export interface Cargo {
  readonly id: string
  readonly title: string
  readonly density: Datum<'density'>
  readonly flammable: boolean
  readonly waterReactive: boolean
  readonly toxic: boolean
  readonly purgeMedium: string
  readonly word: 'WARNING' | 'DANGER'
  readonly protection: string
  readonly place: Place
}
