import type {MaterialTable} from './material-table.ts'
import type {SignalWord} from './office-content.ts'
import type {PageUpdate} from './page-update.ts'
import type {ReadingPhase} from './procedure.ts'

/** What every page of a vessel says of her. */
export interface VesselHead {
  readonly id: string
  readonly name: string
  readonly hullNumber: string
  readonly issuer: string
  readonly contact: readonly string[]
  readonly owner: string
  readonly approvedBy: string
  /** Printed on every page when the content is demonstration data. */
  readonly demonstration: boolean
  readonly language: string
}

/** What every page has. */
export interface PageHead {
  /** `<vessel>/<position>/<procedure>` or `<vessel>/<page>`. */
  readonly id: string
  /** As shown: `4S · impeller and wear rings`. */
  readonly shownAs: string
  /** Path below the vessel folder, for example `p/4s/wear-rings.html`. */
  readonly path: string
  readonly title: string
  readonly language: string
  /** The pump, on pages of a position. */
  readonly position?: PositionHead
  /** Paths of sources this page was made from; a page counts as approved when all are. */
  readonly madeFrom: readonly string[]
  /** Urgent revisions that stand above the page, the gravest first. */
  readonly urgent?: readonly UrgentNotice[]
}

/** An urgent revision as a page prints it. */
export interface UrgentNotice {
  /** Block of the technical text: `urgent-t-07`. */
  readonly block: string
  readonly number: string
  readonly title: string
  /** Days as such; `from` and `to` say them in words. */
  readonly validFrom: string
  readonly validTo: string
  readonly from: string
  readonly to: string
  /** Set where nobody knows whether the pump is concerned. */
  readonly variant: string
  /** The pumps that it counts for, on a page that serves others too; else blank. */
  readonly pumps: string
  readonly reason: string
  readonly word: SignalWord
  readonly hazard: string
  readonly consequence: string
  /** What is done now. */
  readonly actions: readonly string[]
  /** What is replaced, and what prints in its place. */
  readonly instead: readonly {readonly what: string; readonly text: string}[]
  /** "Supersedes T-06"; blank where it supersedes none. */
  readonly supersedes: string
  readonly cancelledBy: string
}

export interface PositionHead {
  readonly id: string
  readonly tag: string
  /** Blank where the pump hangs in no tank; then `keptAt` says where it lies. */
  readonly tankTag: string
  readonly keptAt: string
  readonly serial: string
  readonly design: string
  readonly variant: string
  readonly stackLength: string
  readonly tankVolume: string
  readonly critical: boolean
  /** Tank plan with its tank marked; absent where it hangs in none. */
  readonly plan?: Picture
}

/** Inline text bound to this pump. `value` shows a figure with its unit and links to its explanation. */
export type BoundInline =
  | {readonly kind: 'text'; readonly text: string}
  | {readonly kind: 'strong'; readonly children: BoundText}
  | {readonly kind: 'emphasis'; readonly children: BoundText}
  | {readonly kind: 'value'; readonly text: string; readonly path: string; readonly known: boolean}
  | {readonly kind: 'link'; readonly text: string; readonly path: string}
  /** Words for a part with its balloon: `lower wear ring (4)`. */
  | {readonly kind: 'part'; readonly text: string; readonly balloon: string; readonly part: string}
export type BoundText = readonly BoundInline[]

/** A link below the vessel folder; `fragment` names an element of the page. */
export interface PageLink {
  readonly text: string
  readonly path: string
  readonly fragment?: string
}

export type Page =
  | StartPage
  | PositionPage
  | ProcedurePage
  | JobPage
  | SymptomsPage
  | ExplanationsPage
  | ValuesPage
  | CautionsPage
  | ToolsPage
  | PartsPage
  | SourcesPage
  | WordsPage
  | WorkPage
  | FailuresPage

export interface StartPage {
  readonly kind: 'start'
  readonly head: PageHead
  /** Tank plan with a way to the page of each pump; inline, for its tanks are links. */
  readonly plan: {readonly svg: string; readonly alternative: string}
  readonly positions: readonly {
    readonly link: PageLink
    readonly serial: string
    readonly design: string
    readonly notKnown: number
  }[]
  /** Pumps that the tank plan cannot show, with the place where each is kept. */
  readonly portable: readonly {readonly link: PageLink; readonly keptAt: string}[]
  /** Pages that look over all jobs, over all parts. */
  readonly overviews: readonly {readonly link: PageLink; readonly about: string}[]
  readonly jobs: readonly {readonly title: string; readonly purpose: string; readonly interval: string}[]
  /** What serves the whole ship, whatever the pump. */
  readonly procedures: readonly ProcedureLine[]
  /** The ways to the records of the pumps, by their tags. */
  readonly records: readonly PageLink[]
  /** Urgent revisions of this ship. */
  readonly urgent: readonly {
    readonly block: string
    readonly number: string
    readonly title: string
    readonly validTo: string
    readonly to: string
  }[]
  /** Safety stance, one paragraph each. */
  readonly safety: readonly string[]
  readonly particulars: readonly Field[]
  readonly locations: readonly string[]
}

/** Label and content, content ready to print. */
export interface Field {
  readonly label: string
  readonly text: string
  readonly known?: boolean
}

export interface PositionPage {
  readonly kind: 'position'
  readonly head: PageHead
  readonly description: string
  readonly intendedUse: string
  readonly misuse: string
  readonly asFitted: readonly Field[]
  readonly components: readonly Field[]
  readonly ratings: readonly ValueLine[]
  readonly limits: readonly LimitLine[]
  readonly isolation: readonly IsolationLine[]
  /** Absent where the design does not state what it is drawn from. */
  readonly section?: SectionFigure
  /** How a portable pump stands with its gear; absent where the design does not state what it is drawn from. */
  readonly arrangement?: Arrangement
  /** Absent where the pump has no stack, or its design does not state what it is drawn from. */
  readonly stack?: BoundFigure
  readonly jobs: readonly JobLine[]
  readonly procedures: readonly ProcedureLine[]
  /** Absent where the content knows no symptoms. */
  readonly symptoms?: PageLink
  readonly valuesPages: readonly PageLink[]
  /** The way to the records of the pump, and what they are; the page itself shows none. */
  readonly records: {readonly link: PageLink; readonly about: string}
}

/** A section of a pump with numbered parts; the drawing is a file that pumps alike share. */
export interface SectionFigure {
  /** Path of the drawing below the vessel's folder. */
  readonly path: string
  readonly width: number
  readonly height: number
  readonly alternative: string
  /** Balloons from the wet end up, with the part that each names. */
  readonly numbers: readonly NumberedPart[]
  /** How the rings are held and which way each lip looks. */
  readonly variant: readonly string[]
  /** What it is drawn from: a length that moves its outlines is a line of the technical text. */
  readonly sizes: readonly ValueLine[]
  /** Bolts and O-rings, a line each. */
  readonly smallParts: readonly Field[]
}

/** A balloon with the part that it names. */
export interface NumberedPart {
  readonly balloon: string
  readonly title: string
}

/** The section of a pump with the parts marked that a procedure touches: the marks are a drawing of their own that lies over it. */
export interface TouchedParts {
  /** Path of the section below the vessel's folder. */
  readonly path: string
  readonly width: number
  readonly height: number
  readonly marks: {readonly path: string; readonly svg: string}
  readonly alternative: string
  /** Marked parts, from the wet end up. */
  readonly numbers: readonly NumberedPart[]
  /** Parts with a balloon that are touched too and lie outside of the section. */
  readonly others: readonly NumberedPart[]
  /** Of which pump the rings and the cargo seal are, on a page that several share; else blank. */
  readonly drawnAs: string
}

/** Drawing of a portable pump with its gear and numbered parts. */
export interface Arrangement {
  readonly picture: Picture
  /** What it was drawn from beside the values that stand in it, a line of the technical text. */
  readonly lengths: string
  readonly values: readonly ValueLine[]
  /** Balloons from the pump up, with the parts that each names. */
  readonly numbers: readonly {readonly balloon: string; readonly title: string}[]
}

export interface JobLine {
  readonly link: PageLink
  readonly purpose: string
  readonly interval: string
}

export interface ProcedureLine {
  readonly link: PageLink
  readonly people: string
  readonly hours: string
  readonly competence: string
}

/** A value as one line of a table, linked to its explanation. */
export interface ValueLine {
  readonly id: string
  readonly title: string
  readonly figure: string
  readonly unit: string
  readonly known: boolean
  readonly more: readonly string[]
  readonly condition: string
  /** Formula name, or how a stated value is known. */
  readonly basis: string
  /** "demonstration", "common practice, no source" … marks printed beside it. */
  readonly mark: string
  readonly link: PageLink
}

export interface LimitLine {
  readonly id: string
  readonly title: string
  /** "not above 1.20 mm diametral". */
  readonly limit: string
  readonly known: boolean
  /** "RENEW" or "STOP". */
  readonly outside: string
  readonly action: string
  /** Says which rule governs where two compete. */
  readonly because: string
}

export interface IsolationLine {
  readonly id: string
  /** Its place in the whole list of the pump; blank where there is no point. */
  readonly number: string
  /** Trade word of the role: "hydraulic pressure". */
  readonly role: string
  readonly tag: string
  readonly medium: string
  readonly kind: string
  readonly normal: string
  readonly isolated: string
  readonly where: string
  readonly lock: string
  readonly proof: string
  readonly restoredWith: string
  /** Set instead of a point where this pump has none. */
  readonly noneBecause: string
}

export interface ProcedurePage {
  readonly kind: 'procedure'
  readonly head: PageHead
  readonly activity: string
  /** True for a card: one sheet for an emergency, which is read while it is done. */
  readonly isCard: boolean
  /** True for a page that all pumps of one design share. */
  readonly isOfDesign: boolean
  /** Whether it was tried on board, on a pump of this design; only a draft says that it was not. */
  readonly isTried: boolean
  readonly performedBy: string
  readonly supervisedBy: string
  readonly competence: string
  readonly people: string
  readonly hours: string
  readonly clearHeight: string
  readonly weather: string
  readonly permits: readonly string[]
  readonly purpose: readonly BoundText[]
  readonly before: readonly BoundText[]
  readonly after: readonly BoundText[]
  readonly tools: readonly ToolLine[]
  readonly parts: readonly PartLine[]
  /** Absent where no touched part is on the section. */
  readonly touched?: TouchedParts
  readonly records: readonly string[]
  readonly sections: readonly BoundSection[]
  /** Every caution used, in the order of first use: number, word, title. */
  readonly cautionsUsed: readonly CautionLine[]
  readonly valuesUsed: readonly ValueLine[]
}

export interface ToolLine {
  readonly id: string
  readonly title: string
  readonly size: string
  readonly note: string
  readonly link: PageLink
}

export interface PartLine {
  readonly id: string
  readonly title: string
  readonly size: string
  /** "8 pieces", "0.1 l". */
  readonly quantity: string
  readonly note: string
  readonly balloon: string
  readonly link: PageLink
}

export interface CautionLine {
  readonly number: number
  readonly word: SignalWord
  readonly title: string
  readonly link: PageLink
}

export interface BoundSection {
  readonly id: string
  readonly title: string
  readonly intro: readonly BoundText[]
  readonly cautions: readonly BoundCaution[]
  readonly items: readonly BoundItem[]
}

export type BoundItem = BoundStep | BoundHold

/** A caution ready to print; several of one step are one panel under the highest word. */
export interface BoundCaution {
  readonly id: string
  /** Number on this page, by first use. */
  readonly number: number
  /** Stands in full further up on the page: hazard, consequence and protection are blank here. */
  readonly again: boolean
  readonly word: SignalWord
  readonly title: string
  readonly hazard: string
  readonly consequence: string
  readonly avoid: readonly string[]
  readonly protection: readonly string[]
  readonly link: PageLink
}

export interface BoundStep {
  readonly kind: 'step'
  readonly id: string
  readonly number: number
  /** Heads one variant of an unknown fact: "only when backstop is fitted"; tick box "found: …". */
  readonly variant?: string
  readonly cautions: readonly BoundCaution[]
  /** Section cautions that this step relies on, repeated short. */
  readonly recalls: readonly CautionLine[]
  /** Set where an urgent revision put its own words in place of the instruction. */
  readonly urgent?: string
  readonly instruction: BoundText
  readonly parts: readonly BoundPart[]
}

export interface BoundHold {
  readonly kind: 'hold'
  readonly id: string
  readonly variant?: string
  readonly title: string
  readonly text: readonly BoundText[]
  readonly signedBy: string
  readonly secondBy: string
}

export type BoundPart =
  | {readonly kind: 'note'; readonly text: BoundText}
  | {readonly kind: 'value'; readonly variant?: string; readonly line: ValueLine}
  | BoundReading
  | {readonly kind: 'wait'; readonly id: string; readonly least: ValueLine; readonly missed: string}
  | {readonly kind: 'repeat'; readonly until: string; readonly boxes: number}
  | {
      readonly kind: 'alternatives'
      readonly id: string
      readonly items: readonly {readonly id: string; readonly variant?: string; readonly text: BoundText}[]
    }
  | {readonly kind: 'second-person'; readonly id: string; readonly what: string}
  | {readonly kind: 'figure'; readonly variant?: string; readonly figure: BoundFigure}
  | {readonly kind: 'isolate' | 'restore'; readonly role: string; readonly points: readonly IsolationLine[]}
  | {readonly kind: 'identify'; readonly fact: string; readonly choices: readonly string[]}
  | {readonly kind: 'tally'; readonly id: string; readonly what: readonly string[]}
  | {
      readonly kind: 'write-in'
      readonly id: string
      readonly what: readonly string[]
      readonly columns: readonly string[]
    }
  | {
      readonly kind: 'cargo-table'
      readonly cargoes: readonly CargoLine[]
      /** What is missing where a figure is not known; blank where all are. */
      readonly missing: string
    }
  | ({readonly kind: 'material-table'} & MaterialTable)
  | {readonly kind: 'entry-limits'; readonly limits: readonly EntryLimitLine[]}

/** A figure in a table, with what governs it or what is missing, and the way to its explanation. */
export interface FigureCell {
  readonly text: string
  readonly because: string
  readonly link: PageLink
}

/** What a cargo of the vessel's list asks for at this pump. */
export interface CargoLine {
  readonly id: string
  readonly title: string
  readonly word: SignalWord
  readonly density: string
  /** "flammable", "reacts with water", "toxic". */
  readonly hazards: readonly string[]
  readonly purgeMedium: string
  /** Lowest purge pressure that lifts this cargo out of the cofferdam. */
  readonly least: FigureCell
  readonly most: FigureCell
  /** Set where the least lies above the most: the cofferdam is not lifted by pressure. */
  readonly noWindow: string
  readonly protection: string
}

/** A house limit for entry: the permit decides. */
export interface EntryLimitLine {
  readonly id: string
  readonly gas: string
  readonly limit: string
  readonly source: string
}

export interface BoundReading {
  readonly kind: 'reading'
  readonly id: string
  readonly variant?: string
  readonly title: string
  /** "AS FOUND", "AS LEFT", "DURING". */
  readonly phase: ReadingPhase
  readonly unit: string
  readonly stations: readonly string[]
  /** "inside micrometer, reads to 0.01 mm, ± 0.01 mm"; blank for a derived reading. */
  readonly instrument: string
  /** For a derived reading: "mean of a − mean of b". */
  readonly formula: string
  readonly limits: readonly LimitLine[]
}

/** A drawing that pages share, as a file below the vessel's folder, with what it tells in words. */
export interface Picture {
  /** Named by its content, so that a page never shows a drawing that was changed after it. */
  readonly path: string
  readonly svg: string
  /** Words of this pump alone, laid over the drawing that pumps alike share. */
  readonly own?: {readonly path: string; readonly svg: string}
  readonly width: number
  readonly height: number
  /** How wide it stands on paper. */
  readonly size: 'small' | 'middle' | 'wide'
  readonly alternative: string
}

/** A figure of a page, drawn from data. */
export interface BoundFigure {
  readonly id: string
  readonly picture: Picture
  readonly caption: string
  /** Too wide for a narrow screen: it keeps its size and is pushed sideways. */
  readonly wide?: true
  /** The data behind it, for the technical text. */
  readonly data: string
  /** Values that stand in the drawing: lines of the technical text of their own, so that a value that moves is told as one. */
  readonly values: readonly ValueLine[]
}

export interface JobPage {
  readonly kind: 'job'
  readonly head: PageHead
  readonly purpose: string
  readonly interval: string
  readonly intervalReason: string
  /** What the interval stands on: "common practice, no source". */
  readonly intervalMark: string
  readonly procedures: readonly ProcedureLine[]
  readonly hours: string
  readonly tools: readonly (ToolLine & {readonly aboard: string; readonly usedIn: string})[]
  readonly parts: readonly (PartLine & {readonly aboard: string; readonly usedIn: string})[]
  readonly asFound: readonly string[]
  readonly asLeft: readonly string[]
  readonly isolation: readonly IsolationLine[]
  readonly cautions: readonly CautionLine[]
}

/** From what is seen or heard to the procedure that finds or mends it, on one pump. */
export interface SymptomsPage {
  readonly kind: 'symptoms'
  readonly head: PageHead
  readonly symptoms: readonly SymptomLine[]
}

export interface SymptomLine {
  readonly id: string
  readonly title: string
  /** Set where nobody knows whether the row is for this pump. */
  readonly variant?: string
  readonly causes: readonly {
    readonly cause: string
    readonly check: string
    readonly procedures: readonly PageLink[]
    readonly advice: string
  }[]
}

/** Values of one pump, or those that the pumps of a design share, each explained in full. */
export interface ExplanationsPage {
  readonly kind: 'explanations'
  readonly head: PageHead
  readonly values: readonly ExplainedValue[]
  readonly sources: readonly SourceLine[]
}

export interface ExplainedValue {
  readonly line: ValueLine
  readonly words: string
  readonly formula: readonly string[]
  /** Symbols of the formula that the table below it does not name. */
  readonly symbols: readonly {readonly symbol: string; readonly meaning: string}[]
  readonly inputs: readonly ExplainedInput[]
  readonly steps: readonly ExplainedInput[]
  readonly missing: readonly string[]
  readonly rounding: string
  /** Sources by their number at the foot of the page, with the place in each. */
  readonly sources: readonly NumberedSource[]
  readonly usedIn: readonly PageLink[]
  /** Titles of the procedures that show a value which all pumps of the design share. */
  readonly namedIn: readonly string[]
}

/** A source named by its number at the foot of the page. */
export interface NumberedSource {
  readonly number: number
  readonly where: string
}

/** A source as the foot of a page names it. */
export interface SourceLine {
  readonly number: number
  readonly link: PageLink
  /** Edition, status and how it is known. */
  readonly status: string
}

export interface ExplainedInput {
  readonly symbol: string
  readonly title: string
  readonly printed: string
  readonly origin: string
  /** Explanation that it is the result of, on this page or on another one; `origin` is the word before it. */
  readonly way?: PageLink
  /** Number of its source at the foot of the page; 0 where none is named. */
  readonly source: number
  /** File and line of the content that hold it, in a copy for the office; empty on board and for intermediate results. */
  readonly writtenAt: string
}

/** Wall sheet: torque and clearance tables per design. */
export interface ValuesPage {
  readonly kind: 'values'
  readonly head: PageHead
  readonly designs: readonly {
    readonly id: string
    readonly title: string
    readonly torques: readonly TorqueLine[]
    readonly clearances: readonly ClearanceLine[]
    readonly others: readonly ValueLine[]
  }[]
}

/** A joint on the wall sheet; a figure that is computed or stated leads to its explanation. */
export interface TorqueLine {
  readonly id: string
  readonly joint: string
  readonly fastener: string
  readonly count: string
  readonly torque: PageLink
  readonly lubrication: string
  readonly passes: PageLink
  readonly order: PageLink
  readonly wrench: string
  readonly locking: string
}

/** A ring on the wall sheet; each figure leads to its explanation. */
export interface ClearanceLine {
  readonly id: string
  readonly ring: string
  readonly runningDiameter: PageLink
  readonly newClearance: PageLink
  readonly minimumNew: PageLink
  readonly renewal: PageLink
  readonly because: string
}

/** Places in one procedure, whose title is written once. */
export interface PlacesInProcedure {
  readonly procedure: string
  readonly places: readonly PageLink[]
}

export interface CautionsPage {
  readonly kind: 'cautions'
  readonly head: PageHead
  readonly words: readonly {readonly word: SignalWord; readonly meaning: string}[]
  readonly cautions: readonly {
    readonly caution: BoundCaution
    readonly residualRisk: string
    readonly source: PageLink
    /** Every section and step that uses it, by procedure. */
    readonly usedIn: readonly PlacesInProcedure[]
  }[]
}

export interface ToolsPage {
  readonly kind: 'tools'
  readonly head: PageHead
  readonly tools: readonly {
    readonly id: string
    readonly title: string
    readonly size: string
    readonly instrument: string
    readonly usedIn: readonly PageLink[]
  }[]
}

export interface PartsPage {
  readonly kind: 'parts'
  readonly head: PageHead
  readonly parts: readonly {
    readonly id: string
    readonly title: string
    readonly size: string
    readonly class: string
    readonly balloon: string
    readonly usedIn: readonly PageLink[]
  }[]
}

export interface SourcesPage {
  readonly kind: 'sources'
  readonly head: PageHead
  readonly sources: readonly {
    readonly id: string
    readonly title: string
    readonly edition: string
    readonly status: string
    readonly howKnown: string
    readonly usedIn: readonly PageLink[]
  }[]
}

export interface WordsPage {
  readonly kind: 'words'
  readonly head: PageHead
  readonly terms: readonly {
    readonly id: string
    readonly term: string
    readonly meaning: string
    readonly notUsed: readonly string[]
  }[]
}

/** Every job of the ship's pumps, most often first; it says how often and never when next. */
export interface WorkPage {
  readonly kind: 'work'
  readonly head: PageHead
  /** By time, with an event, on a condition alone; a group without jobs is left out. */
  readonly groups: readonly {readonly title: string; readonly jobs: readonly WorkLine[]}[]
}

/** A job on that page. */
export interface WorkLine {
  readonly id: string
  readonly title: string
  /** Hours, calendar and events; blank where a condition alone decides. */
  readonly interval: string
  /** "sooner when …"; blank where nothing brings it forward. */
  readonly trigger: string
  readonly reason: string
  /** What the interval stands on: "common practice, no source". */
  readonly mark: string
  /** "heavy maintenance: second engineer, pumpman". */
  readonly doneBy: string
  /** "all 20 pumps". */
  readonly pumps: string
  /** The job on each of these pumps, by tag. */
  readonly onPumps: readonly PageLink[]
}

/** Each part of the ship's pumps against each way in which it fails. */
export interface FailuresPage {
  readonly kind: 'failures'
  readonly head: PageHead
  readonly units: readonly {
    readonly id: string
    readonly title: string
    readonly parts: readonly PartFailures[]
  }[]
  /** Symptoms of each pump, by tag. */
  readonly symptoms: readonly PageLink[]
}

export interface PartFailures {
  readonly id: string
  readonly title: string
  /** "on 12 of 14 pumps", "on 8, NOT KNOWN on 1 of 14 pumps"; blank where all have it. */
  readonly pumps: string
  readonly failures: readonly {
    readonly mode: string
    readonly procedures: readonly PageLink[]
    /** Why there is no procedure, or why it goes no further. */
    readonly reason: string
  }[]
}

/** State of a page against the ledger. */
export type PageState =
  | {readonly kind: 'draft'}
  | {
      readonly kind: 'issued'
      readonly revision: number
      readonly suffix: string
      readonly date: string
      readonly checkCode: string
      /** Set where the page had an earlier revision. */
      readonly update?: PageUpdate
    }
