import type {Place} from '../messages/place.ts'
import type {WrittenCondition} from './condition.ts'
import type {Localised, Reference, ValueStatus} from './datum.ts'
import type {SignalWord, WorstHarm} from './office-content.ts'

/** urgent/<number>.yaml: what ships must know today, before the page itself is rewritten. */
export interface UrgentRevision {
  /** The number in small letters, which is the name of its file: `t-07`. */
  readonly id: string
  /** `T-07`: of the whole office, never used twice. */
  readonly number: string
  readonly title: Localised
  /** What was found, and where. */
  readonly reason: Localised
  /** Days, each with its place. */
  readonly validFrom: Reference
  readonly validTo: Reference
  readonly vessels: readonly Reference[]
  /** Positions of those vessels; all of them where none is named. */
  readonly positions: readonly Reference[]
  /** Procedures that it stands above; see `concernsProcedure` for what counts where none is named. */
  readonly procedures: readonly Reference[]
  readonly when?: WrittenCondition
  readonly word: SignalWord
  readonly worstHarm: WorstHarm
  readonly likelihood: 'will' | 'could'
  readonly hazard: Localised
  readonly consequence: Localised
  /** What is done now, each line with a verb first. */
  readonly do: readonly Localised[]
  readonly values: readonly ReplacedValue[]
  readonly steps: readonly ReplacedStep[]
  /** Numbers of earlier urgent revisions that end with this one. */
  readonly supersedes: readonly Reference[]
  /** What ends it before its day. */
  readonly cancelledBy: Localised
  readonly place: Place
}

/** A figure that prints in place of a value, on every page that shows it. */
export interface ReplacedValue {
  readonly value: Reference
  /** The figure with its unit as written, or the words of a value that has no unit. */
  readonly instead: Reference
  /** What the figure holds for; that of the value where none is given. */
  readonly condition?: Localised
  readonly status: ValueStatus
  readonly source: string
  readonly where?: string
  readonly place: Place
}

/** An instruction that prints in place of that of a step; what stands below the step stays. */
export interface ReplacedStep {
  readonly procedure: Reference
  readonly step: Reference
  readonly instead: Localised
  readonly place: Place
}
