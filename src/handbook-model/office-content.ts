import type {Place} from '../messages/place.ts'
import type {WrittenCondition} from './condition.ts'
import type {ClearanceKind, Datum, Localised, Reference} from './datum.ts'
import type {JobInterval} from './job-interval.ts'

/** office.yaml: who issues the handbook, with which authorities and house limits. */
export interface Office {
  readonly issuer: Localised
  readonly contact: readonly string[]
  readonly languages: readonly string[]
  /** True puts "demonstration data, not for service" on every page. */
  readonly demonstration: boolean
  /** What people wear, each by one word; where listed, the cargo table uses no other. */
  readonly protections?: readonly string[]
  /** Role that the title block names as approver; never a person. */
  readonly approverRole: Localised
  readonly ownerRole: Localised
  readonly people: readonly Person[]
  readonly house: HouseLimits
  readonly facts: readonly FactDeclaration[]
  readonly place: Place
}

export interface Person {
  readonly id: string
  readonly role: Localised
  readonly may: readonly ('write' | 'review' | 'approve' | 'publish')[]
  readonly place: Place
}

export interface HouseLimits {
  readonly wearRingRenewal: Datum<ClearanceKind>
  readonly entryLimits: readonly EntryLimit[]
  readonly tightnessTestPressure: Datum<'gauge-pressure'>
  readonly tightnessStabilise: Datum<'time'>
  readonly tightnessHoldLeast: Datum<'time'>
  readonly purgeLiftMargin: Datum<'pressure-difference'>
  readonly isolationProof: Datum<'time'>
  readonly isolationRecheck: Datum<'time'>
  readonly tighteningPasses: readonly Datum<'ratio'>[]
  /** Gas changes of one purge, and the time that it takes at least. */
  readonly purgeChanges: Datum<'count'>
  readonly purgeLeast: Datum<'time'>
  /** Air changes before the first reading at the opening, and how often the air is read again. */
  readonly entryAirChanges: Datum<'count'>
  readonly entryRetest: Datum<'time'>
  /** Rated load of each item of gear as a share of the load that it carries. */
  readonly liftingReserve: Datum<'ratio'>
  /** Share of the curve below which a head is watched, and below which the pump is opened. */
  readonly testRunWatch: Datum<'ratio'>
  readonly testRunAct: Datum<'ratio'>
  /** How far a drained or filled volume may lie from the computed one. */
  readonly oilTolerance: Datum<'ratio'>
  /** Changes of the oil when a pump is flushed and vented. */
  readonly flushChanges: Datum<'count'>
  /** From the alarm to the portable pump that pumps. */
  readonly portableRigTime: Datum<'time'>
  /** From the cure of rubber to its fitting, in a store that is kept as told. */
  readonly rubberLife: Datum<'time'>
  /** Highest temperature of a store of rubber. */
  readonly storeWarmest: Datum<'temperature'>
}

export interface EntryLimit {
  readonly id: string
  readonly gas: Localised
  readonly side: LimitSide
  readonly limit: Datum<'ratio' | 'concentration'>
}

export type LimitSide = 'not-above' | 'not-below'

/** A typed fact that conditions may ask for: `backstop = fitted`. */
export interface FactDeclaration {
  readonly id: string
  readonly title: Localised
  readonly scope: 'vessel' | 'design' | 'position'
  readonly values: readonly {readonly id: string; readonly title: Localised}[]
  readonly place: Place
}

/** sources.yaml: what a value or a rule rests on. */
export interface Source {
  readonly id: string
  readonly title: Localised
  readonly edition: string
  readonly kind: 'standard' | 'regulation' | 'book' | 'drawing' | 'record' | 'practice'
  readonly status: 'current' | 'superseded' | 'unknown'
  readonly supersededBy?: Reference
  readonly howKnown: 'read' | 'reprint' | 'memory' | 'common-practice' | 'demonstration'
  /** Why it is kept where nothing stands on it. */
  readonly keptFor?: Localised
  readonly place: Place
}

/** cautions/<id>.yaml: written once, rendered wherever it is called for. */
export interface Caution {
  readonly id: string
  readonly hazardClass: string
  readonly word: SignalWord
  readonly worstHarm: WorstHarm
  readonly likelihood: 'will' | 'could'
  readonly title: Localised
  readonly hazard: Localised
  readonly consequence: Localised
  readonly avoid: readonly Localised[]
  readonly sign?: string
  readonly protection: readonly Localised[]
  readonly residualRisk: Localised
  readonly source: Reference
  readonly place: Place
}

export type SignalWord = 'DANGER' | 'WARNING' | 'CAUTION' | 'NOTICE'
export type WorstHarm = 'death-or-serious-injury' | 'minor-or-moderate-injury' | 'damage'

/** tools.yaml: what is used again. */
export interface Tool {
  readonly id: string
  readonly title: Localised
  /** Size in words ready to print, for example "square drive 1/2 in". */
  readonly size: Localised
  /** Scale of a torque wrench; printed before the size. */
  readonly torqueRange?: {readonly least: Datum<'torque'>; readonly most: Datum<'torque'>}
  readonly instrument?: InstrumentClass
  readonly place: Place
}

/** What a measuring tool can show; a reading names it. */
export interface InstrumentClass {
  /** Smallest step that can be read. */
  readonly graduation: Datum<InstrumentKind | 'gauge-pressure'>
  readonly uncertainty: Datum<InstrumentKind>
}

type InstrumentKind =
  | 'length'
  | 'pressure-difference'
  | 'temperature-difference'
  | 'time'
  | 'torque'
  | 'ratio'
  | 'concentration'
  | 'volume'
  | 'mass'
  | 'speed'
  | 'rotational-speed'
  | 'angle'

/** Rubbers whose storage periods are known, by the letters of ISO 1629. */
export const rubbers = [
  'AU',
  'BR',
  'EU',
  'IR',
  'NR',
  'SBR',
  'BIIR',
  'CIIR',
  'CR',
  'HNBR',
  'IIR',
  'NBR',
  'XNBR',
  'EPDM',
  'EPM',
  'FKM',
  'FVMQ',
  'VMQ',
] as const

/** parts.yaml: what is fitted or used up. */
export interface Part {
  readonly id: string
  readonly title: Localised
  readonly class: 'spare' | 'consumable' | 'insurance-spare'
  /** Size, material or grade, ready to print. */
  readonly size: Localised
  /** What it is made of, where that is a rubber with a storage period. */
  readonly rubber?: (typeof rubbers)[number]
  /** Number on the section drawing, counted from the wet end up. */
  readonly balloon?: string
  /** The pumps that have it, where neither design nor procedures tell. */
  readonly when?: WrittenCondition
  readonly place: Place
}

/** A unit of the machine: parts that are opened together, by their numbers on the section drawing. */
export interface MachineUnit {
  readonly id: string
  readonly title: Localised
  readonly balloons: readonly string[]
  readonly place: Place
}

/** terms.yaml: one word per thing. */
export interface Term {
  readonly id: string
  readonly term: Localised
  readonly meaning: Localised
  /** Words that are not used for this thing. */
  readonly notUsed: readonly string[]
  readonly place: Place
}

/** symptoms.yaml: what is seen or heard, and where it leads. */
export interface Symptom {
  readonly id: string
  readonly title: Localised
  readonly when?: WrittenCondition
  /** In the order in which they are looked for. */
  readonly causes: readonly SymptomCause[]
  readonly place: Place
}

export interface SymptomCause {
  readonly cause: Localised
  readonly check: Localised
  /** Procedures that find or mend it; none only with an advice. */
  readonly procedures: readonly Reference[]
  readonly advice?: Localised
  readonly place: Place
}

/** failures.yaml: how a fitted part fails, and what the handbook has against it. */
export interface FailureRow {
  readonly id: string
  readonly part: Reference
  readonly mode: Localised
  /** Procedures that find or mend it; none only with a reason. */
  readonly procedures: readonly Reference[]
  readonly reason?: Localised
  readonly place: Place
}

/** exceptions.yaml: a line that a rule of language is not held against, for a reason that a reviewer has signed. */
export interface LanguageException {
  readonly rule: string
  /** Path of the file below the content folder. */
  readonly file: string
  /** Words of the line, as they stand in it. */
  readonly words: string
  readonly reason: string
  /** Id of a person of the office who may review. */
  readonly reviewedBy: Reference
  readonly place: Place
}

/** jobs/<id>.yaml: procedures in order. */
export interface Job {
  readonly id: string
  readonly title: Localised
  /** The pumps that it is for; without it, all. */
  readonly when?: WrittenCondition
  readonly purpose: Localised
  readonly interval: JobInterval
  readonly procedures: readonly Reference[]
  readonly asFound: readonly Localised[]
  readonly asLeft: readonly Localised[]
  readonly place: Place
}
