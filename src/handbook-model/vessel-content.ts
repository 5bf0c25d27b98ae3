import type {Place} from '../messages/place.ts'
import type {Datum, Localised, Reference} from './datum.ts'
import type {FittedMaterial} from './material-content.ts'

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
  /** Why something is not as on sister pumps of other ships. */
  readonly differences?: readonly ExplainedDifference[]
  readonly place: Place
}

/** Why one thing is stated otherwise of this pump or ship than of sister pumps. */
export interface ExplainedDifference {
  /** As `sisters` names it: `fact.backstop`. */
  readonly item: Reference
  readonly reason: Localised
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
  /** Residue after stripping as the manual of the ship records it, where it does. */
  readonly recordedResidue?: Datum<'volume'>
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

/** What a pump is aboard for. */
export const positionRoles = ['main', 'stripping', 'portable'] as const

export type PositionRole = (typeof positionRoles)[number]

export interface Position {
  readonly id: string
  /** The largest thing on every page: `4S`. */
  readonly tag: string
  /** The tank in which it hangs; a portable pump has none. */
  readonly tank?: Reference
  /** Where a portable pump is kept; the others hang in their tanks. */
  readonly keptAt?: Localised
  readonly design: Reference
  readonly serial: string
  readonly role: PositionRole
  readonly critical: boolean
  readonly installed: string
  /** A portable pump has no stack. */
  readonly stackLength?: Datum<'length'>
  /** Sections of the stack from deck down, where they are listed. */
  readonly stackSections: readonly StackSection[]
  /** Distance of each support of the stack from the underside of the top plate, the uppermost first, where they are listed. */
  readonly stackSupports?: readonly Datum<'length'>[]
  readonly components: readonly Component[]
  readonly facts: readonly FactValue[]
  /** Materials of wetted parts as fitted, where the design leaves them to the pump. */
  readonly materials: readonly FittedMaterial[]
  readonly isolation: readonly IsolationRole[]
  /** Why something is not as on its sister pumps. */
  readonly differences?: readonly ExplainedDifference[]
  readonly place: Place
}

/** A pump that hangs in a tank on its stack: every pump but the portable one. */
export type HungPosition = Position & Required<Pick<Position, 'tank' | 'stackLength'>>

/** Whether a pump hangs in a tank. */
export function isHung(position: Position): position is HungPosition {
  return position.tank !== undefined && position.stackLength !== undefined
}

/** One length of the pipe stack between two joints. */
export interface StackSection {
  readonly number: number
  readonly length: Datum<'length'>
  readonly place: Place
}

/** What has a serial number and hours of its own. */
export const componentKinds = ['head', 'motor', 'sleeve', 'stack'] as const

/** What is fitted there now; history belongs to the component, not to the position. */
export interface Component {
  readonly kind: (typeof componentKinds)[number]
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
  'temporary-plugs',
  'transport-bolts',
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
  readonly kind: 'valve' | 'blind' | 'fuse' | 'relief-valve' | 'plug' | 'transport-bolt'
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
  /** How stiff the oil is, and how it grows with its temperature. */
  readonly oilBulkModulus: Datum<'pressure-difference'>
  readonly oilExpansion: Datum<'thermal-expansion'>
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
  /** Pieces below which new ones are ordered. */
  readonly least?: number
  /** Day of the cure of what is made of rubber; of several the earliest. */
  readonly cured?: string
  readonly location: Localised
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
