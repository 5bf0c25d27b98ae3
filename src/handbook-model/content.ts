import type {Place} from '../messages/place.ts'
import type {Quantity} from '../quantities/quantity.ts'
import type {Approval, DeclaredChange, EndedUrgent, Withdrawal} from './approval-content.ts'
import type {CalibrationRecord} from './calibration-content.ts'
import type {Origin} from './datum.ts'
import type {Design} from './design-content.ts'
import type {HoldHistory} from './hold-history.ts'
import type {HoursRecord} from './hours-content.ts'
import type {Material, Suitability} from './material-content.ts'
import type {
  Caution,
  FailureRow,
  Job,
  LanguageException,
  MachineUnit,
  Office,
  Part,
  Source,
  Symptom,
  Term,
  Tool,
} from './office-content.ts'
import type {Procedure} from './procedure.ts'
import type {PurgeHistory} from './purge-history.ts'
import type {Trial} from './trial-content.ts'
import type {UrgentRevision} from './urgent-content.ts'
import type {Cargo, Vessel} from './vessel-content.ts'
import type {WearHistory} from './wear-history.ts'

/** Product of `check`: the whole content, typed, references proven. Maps are in sorted order of their ids. */
export interface Content {
  readonly office: Office
  readonly sources: ReadonlyMap<string, Source>
  readonly vessels: ReadonlyMap<string, Vessel>
  readonly designs: ReadonlyMap<string, Design>
  readonly cautions: ReadonlyMap<string, Caution>
  readonly procedures: ReadonlyMap<string, Procedure>
  readonly jobs: ReadonlyMap<string, Job>
  readonly symptoms: readonly Symptom[]
  readonly exceptions: readonly LanguageException[]
  readonly failures: readonly FailureRow[]
  readonly tools: ReadonlyMap<string, Tool>
  readonly parts: ReadonlyMap<string, Part>
  /** From the wet end up; empty where parts are not grouped. */
  readonly units: readonly MachineUnit[]
  readonly terms: ReadonlyMap<string, Term>
  readonly tables: Tables
  readonly approvals: readonly Approval[]
  readonly changes: readonly DeclaredChange[]
  readonly withdrawals: readonly Withdrawal[]
  /** Urgent revisions that are ended, each with who has seen it. */
  readonly ended: readonly EndedUrgent[]
  readonly trials: readonly Trial[]
  /** Ids of the sources that values, cautions, tables and records name. */
  readonly namedSources: ReadonlySet<string>
  /** Records of running hours by vessel. */
  readonly hours: ReadonlyMap<string, HoursRecord>
  /** Days of calibration by vessel. */
  readonly calibrations: ReadonlyMap<string, CalibrationRecord>
  /** Clearances of wear rings by vessel. */
  readonly wear: ReadonlyMap<string, WearHistory>
  /** Purges of cofferdams by vessel. */
  readonly purges: ReadonlyMap<string, PurgeHistory>
  /** Pressure holds of cofferdams by vessel. */
  readonly tightness: ReadonlyMap<string, HoldHistory>
  /** Urgent revisions in order of their numbers. */
  readonly urgent: readonly UrgentRevision[]
}

/** The CSV tables, each row typed and with its own line as origin. */
export interface Tables {
  readonly threads: TableOf<ThreadRow>
  readonly boltHeads: TableOf<BoltHeadRow>
  readonly clearanceHoles: TableOf<ClearanceHoleRow>
  readonly propertyClasses: TableOf<PropertyClassRow>
  readonly friction: TableOf<FrictionRow>
  readonly runningClearances: TableOf<RunningClearanceRow>
  readonly cargoes: TableOf<Cargo>
  /** Without rows where the office has none. */
  readonly materials: TableOf<Material>
  readonly suitability: TableOf<Suitability>
}

export interface TableOf<Row> {
  readonly origin: Origin
  readonly rows: readonly Row[]
}

interface RowPlace {
  readonly place: Place
}

export interface ThreadRow extends RowPlace {
  readonly size: string
  readonly diameter: Quantity<'length'>
  readonly pitch: Quantity<'length'>
}

export interface BoltHeadRow extends RowPlace {
  readonly size: string
  readonly head: 'hexagon' | 'socket'
  readonly bearingDiameter: Quantity<'length'>
  readonly wrench: Quantity<'length'>
}

export interface ClearanceHoleRow extends RowPlace {
  readonly size: string
  readonly fine: Quantity<'length'>
  readonly medium: Quantity<'length'>
  readonly coarse: Quantity<'length'>
}

export interface PropertyClassRow extends RowPlace {
  readonly id: string
  readonly aboveDiameter: Quantity<'length'>
  readonly upToDiameter: Quantity<'length'>
  readonly yieldStress: Quantity<'stress'>
  readonly tensileStrength: Quantity<'stress'>
}

export interface FrictionRow extends RowPlace {
  readonly id: string
  /** Words printed beside every torque: "threads and head with assembly paste". */
  readonly title: string
  readonly frictionClass: string
  readonly threadFriction: Quantity<'ratio'>
  readonly headFriction: Quantity<'ratio'>
  readonly source: string
}

export interface RunningClearanceRow extends RowPlace {
  readonly fromDiameter: Quantity<'length'>
  readonly belowDiameter: Quantity<'length'>
  readonly clearance: Quantity<'diametral-clearance'>
}
