import type {Place} from '../messages/place.ts'
import type {QuantityKind} from '../quantities/quantity.ts'
import type {WrittenCondition} from './condition.ts'
import type {Localised, Reference} from './datum.ts'
import type {HoldKind} from './hold-kinds.ts'
import type {IsolationRoleName} from './vessel-content.ts'

/** procedures/<id>.md, parsed and checked, not yet bound to a pump. */
export interface Procedure {
  readonly id: string
  readonly title: string
  readonly activity:
    | 'inspection'
    | 'test'
    | 'overhaul'
    | 'repair'
    | 'isolation'
    | 'restoration'
    | 'preparation'
    | 'card'
  readonly maintenance: 'predetermined' | 'condition-based' | 'corrective' | 'all'
  readonly scope: 'vessel' | 'design' | 'position'
  /** The pumps that it is for; without it, all. */
  readonly when?: WrittenCondition
  readonly performedBy: Localised
  readonly supervisedBy: Localised
  readonly competence: 'crew' | 'heavy-maintenance'
  readonly people: number
  /** Hours of work; an estimate until measured. */
  readonly hours: number
  readonly clearHeight: Localised
  readonly weather: Localised
  readonly permits: readonly Localised[]
  readonly tools: readonly ProcedureTool[]
  readonly parts: readonly ProcedurePart[]
  readonly records: readonly Localised[]
  readonly retiredIds: readonly string[]
  readonly purpose: readonly RichText[]
  readonly before: readonly RichText[]
  readonly after: readonly RichText[]
  readonly sections: readonly Section[]
  readonly place: Place
}

export interface ProcedureTool {
  readonly tool: Reference
  readonly note?: Localised
  /** On which pumps the tool is needed; all when left out. */
  readonly when?: WrittenCondition
}

export interface ProcedurePart {
  readonly part: Reference
  readonly quantity: number
  readonly unit: string
  readonly note?: Localised
  /** On which pumps the part is needed; all when left out. */
  readonly when?: WrittenCondition
}

/** Inline text of content: words, emphasis, values and links by id. Plain data, so that every stage can read it. */
export type RichText = readonly Inline[]

export type Inline =
  | {readonly kind: 'text'; readonly text: string}
  | {readonly kind: 'strong'; readonly children: RichText}
  | {readonly kind: 'emphasis'; readonly children: RichText}
  | {readonly kind: 'value'; readonly value: Reference}
  | {readonly kind: 'procedure'; readonly procedure: Reference; readonly label: string}
  | {readonly kind: 'term'; readonly term: Reference; readonly label: string}
  /** Words for a part, behind which its balloon stands. */
  | {readonly kind: 'part'; readonly part: Reference; readonly label: string}

export interface Section {
  readonly id: string
  readonly title: string
  readonly when?: WrittenCondition
  /** Cautions of the whole section, repeated short at each step that relies on them. */
  readonly cautions: readonly CautionUse[]
  readonly intro: readonly RichText[]
  readonly items: readonly SectionItem[]
  readonly place: Place
}

export type SectionItem = Step | HoldPoint

export interface CautionUse {
  readonly caution: Reference
  readonly when?: WrittenCondition
  readonly place: Place
}

export interface Step {
  readonly kind: 'step'
  readonly id: string
  /** Action classes of the hazard gate; empty for a step without a classed hazard. */
  readonly actions: readonly string[]
  readonly when?: WrittenCondition
  /** Cautions written directly before the step. */
  readonly cautions: readonly CautionUse[]
  readonly instruction: RichText
  readonly parts: readonly StepPart[]
  readonly place: Place
}

/** What a step carries below its instruction, in order. */
export type StepPart =
  | {readonly kind: 'note'; readonly text: RichText; readonly when?: WrittenCondition; readonly place: Place}
  | {
      readonly kind: 'value'
      readonly value: Reference
      readonly when?: WrittenCondition
      readonly place: Place
    }
  | Reading
  | DerivedReading
  | {
      readonly kind: 'wait'
      readonly id: string
      readonly least: Reference
      readonly missed: string
      readonly when?: WrittenCondition
      readonly place: Place
    }
  | {
      readonly kind: 'repeat'
      readonly until: string
      readonly times?: number
      readonly when?: WrittenCondition
      readonly place: Place
    }
  | {
      readonly kind: 'alternatives'
      readonly id: string
      readonly items: readonly Alternative[]
      readonly when?: WrittenCondition
      readonly place: Place
    }
  | {
      readonly kind: 'second-person'
      readonly id: string
      readonly what: string
      readonly when?: WrittenCondition
      readonly place: Place
    }
  | {
      readonly kind: 'figure'
      readonly figure: string
      readonly caption: string
      readonly when?: WrittenCondition
      readonly place: Place
    }
  | {readonly kind: 'isolate' | 'restore'; readonly role: IsolationRoleName; readonly place: Place}
  | {readonly kind: 'identify'; readonly fact: Reference; readonly place: Place}
  | {
      readonly kind: 'tally'
      readonly id: string
      readonly what: readonly string[]
      readonly when?: WrittenCondition
      readonly place: Place
    }
  /** Lines to write into that nothing is judged by: `what` names the lines, `columns` what stands beside each. */
  | {
      readonly kind: 'write-in'
      readonly id: string
      readonly what: readonly string[]
      readonly columns: readonly string[]
      readonly when?: WrittenCondition
      readonly place: Place
    }
  /** Every cargo of the vessel's list with what it asks for, or against each wetted material; or the office's limits for entry. */
  | {
      readonly kind: 'cargo-table' | 'material-table' | 'entry-limits'
      readonly when?: WrittenCondition
      readonly place: Place
    }

export interface Alternative {
  readonly id: string
  readonly when?: WrittenCondition
  readonly text: RichText
  readonly place: Place
}

export type ReadingPhase = 'as-found' | 'as-left' | 'during'

export interface Reading {
  readonly kind: 'reading'
  readonly id: string
  readonly title: string
  /** Kind of quantity that is written down, and the unit it is written in. */
  readonly quantity: string
  readonly unit: string
  readonly stations: readonly string[]
  /** Tool id of the instrument. */
  readonly instrument: Reference
  readonly phase: ReadingPhase
  /** Limits the reading itself is held against; empty when it feeds a derived reading. */
  readonly limits: readonly Reference[]
  readonly when?: WrittenCondition
  readonly place: Place
}

/** What a derived reading is computed from, in order, and what comes out. */
export interface Derivation {
  readonly from: readonly QuantityKind[]
  readonly result: QuantityKind
}

/** The calculations that a derived reading may name. */
export const derivations: ReadonlyMap<string, Derivation> = new Map<string, Derivation>([
  ['clearance', {from: ['length', 'length'], result: 'diametral-clearance'}],
  ['smallest-gap', {from: ['length', 'length'], result: 'diametral-clearance'}],
  [
    'corrected-drop',
    {
      from: [
        'gauge-pressure',
        'gauge-pressure',
        'temperature',
        'temperature',
        'absolute-pressure',
        'absolute-pressure',
      ],
      result: 'pressure-difference',
    },
  ],
  ['spread', {from: ['length'], result: 'length'}],
  ['sum', {from: ['volume'], result: 'volume'}],
  ['hourly-rate', {from: ['volume', 'time'], result: 'volume-flow'}],
  ['daily-rate', {from: ['volume', 'time'], result: 'volume-flow'}],
  [
    'curve-share',
    {from: ['gauge-pressure', 'gauge-pressure', 'length', 'rotational-speed'], result: 'ratio'},
  ],
])

/** A reading computed from readings by a named calculation: the clearance from twelve stations. */
export interface DerivedReading {
  readonly kind: 'derived'
  readonly id: string
  readonly title: string
  readonly unit: string
  readonly calculation: string
  readonly from: readonly Reference[]
  readonly phase: ReadingPhase
  readonly limits: readonly Reference[]
  readonly when?: WrittenCondition
  readonly place: Place
}

/** Cannot be passed without a second signature. */
export interface HoldPoint {
  readonly kind: 'hold-point'
  readonly id: string
  readonly title: string
  readonly signedBy: string
  readonly secondBy: string
  /** Which of the ten holds of the work it is, where it is one. */
  readonly holds?: HoldKind
  readonly when?: WrittenCondition
  readonly text: readonly RichText[]
  readonly place: Place
}
