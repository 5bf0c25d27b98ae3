import type {ChartSection} from './chart-section.ts'
import type {PageHead, PageLink} from './pages.ts'

/** A page about the issue itself, or a record: it has no revision and no check code of its own. */
export type PublicationPage = EffectivePage | ChangedPage | WithdrawnPage | RecordPage

/** A record that goes on between issues: it may hold days, and moves no page with a revision. */
export type RecordPage = HoursPage | CalibrationsPage | PumpRecordPage

/** Folder of the record pages below that of the vessel: an issue is the same issue whatever stands there. */
export const recordsFolder = 'records'

/** What stands above every record. */
export interface RecordParts {
  readonly head: PageHead
  /** "Records up to 2031-02-14." */
  readonly upTo: string
  /** From which log; blank where there is none. */
  readonly source: string
}

/** Running hours of what is fitted, by the last reading of each. */
export interface HoursPage extends RecordParts {
  readonly kind: 'hours'
  readonly pumps: readonly {readonly link: PageLink; readonly lines: readonly HoursLine[]}[]
  /** What has lines and is fitted in no pump any more. */
  readonly removed: readonly HoursLine[]
}

export interface HoursLine {
  readonly component: string
  /** False where nobody has read its hours. */
  readonly read: boolean
  /** False where nobody has read them, or a counter was exchanged. */
  readonly known: boolean
  readonly hours: string
  readonly day: string
  readonly counted: string
  readonly since: string
  /** False where the counter was exchanged in between. */
  readonly sinceKnown: boolean
  readonly notes: readonly string[]
}

/** Records of one pump: charts with their readings, a form to try one, and what is fitted with its hours. */
export interface PumpRecordPage extends RecordParts {
  readonly kind: 'pump-record'
  readonly charts: readonly ChartSection[]
  readonly fitted: readonly HoursLine[]
}

/** Measuring tools aboard, each with its last calibration. */
export interface CalibrationsPage extends RecordParts {
  readonly kind: 'calibrations'
  /** By the place where they lie, in the order of the list of what is aboard. */
  readonly places: readonly {readonly location: string; readonly lines: readonly CalibrationLine[]}[]
}

export interface CalibrationLine {
  readonly tool: string
  readonly size: string
  /** Number or numbers whose last calibration reads alike. */
  readonly number: string
  /** False where the record has no line of it. */
  readonly read: boolean
  readonly day: string
  readonly certificate: string
  readonly certificateKnown: boolean
  /** Last day, or why none is known. */
  readonly validTo: string
  readonly validToKnown: boolean
  /** Who says so: the certificate, or the calibration and an interval. */
  readonly basis: string
  /** "common practice, no source", beside an interval. */
  readonly mark: string
  readonly note: string
}

/** Part of the list of effective pages. */
export interface EffectivePage {
  readonly kind: 'effective'
  readonly head: PageHead
  /** "2031-03 of 2031-03-14"; blank before the first issue. */
  readonly issue: string
  readonly parts: readonly PartLink[]
  /** True for the first part, which lists the urgent revisions. */
  readonly first: boolean
  readonly urgent: readonly ListedUrgent[]
  /** How many lines the whole list has. */
  readonly count: number
  readonly lines: readonly EffectiveLine[]
}

/** An urgent revision with the pages that it stands above. */
export interface ListedUrgent {
  readonly number: string
  readonly title: string
  readonly validTo: string
  /** Its days in words. */
  readonly from: string
  readonly to: string
  readonly pages: readonly AlikePages[]
}

/** A further part of a list that is too long for one page. */
export interface PartLink {
  readonly number: number
  readonly path: string
}

export interface EffectiveLine {
  readonly id: string
  readonly title: string
  /** Blank where this folder holds no such page. */
  readonly path: string
  readonly revision: string
  readonly date: string
  readonly code: string
  readonly status: EffectiveStatus
}

export type EffectiveStatus =
  | 'same'
  | 'new'
  | 'changed'
  | 'wording'
  | 'draft'
  | 'withdrawn'
  | 'gone'
  | 'publication'

/** Part of what changed with the newest issue against the one before it. */
export interface ChangedPage {
  readonly kind: 'changed'
  readonly head: PageHead
  readonly issue: string
  /** The issue that it is compared with; blank for a first issue. */
  readonly against: string
  readonly parts: readonly PartLink[]
  /** True for the first part, which lists the urgent revisions. */
  readonly first: boolean
  readonly urgent: readonly ListedUrgent[]
  readonly changes: readonly ChangeGroup[]
  readonly added: readonly AlikePages[]
  readonly wording: readonly AlikePages[]
  readonly withdrawn: readonly AlikePages[]
}

/** Pages of one title in one revision, for one reason where there is one: the same procedure on all pumps is one line. */
export interface AlikePages {
  readonly title: string
  readonly revision: string
  readonly reason: string
  readonly pages: readonly Pick<NamedPage, 'id' | 'path'>[]
}

export interface NamedPage {
  readonly id: string
  readonly title: string
  readonly path: string
  readonly revision: string
}

/** The same changes for the same reasons, with all pages that they stand on. */
export interface ChangeGroup {
  readonly reasons: readonly string[]
  readonly pages: readonly AlikePages[]
  readonly steps: readonly ChangedLine[]
  readonly cautions: readonly ChangedLine[]
  readonly values: readonly ChangedLine[]
}

/** A line before and after; one side is blank where it came or went. */
export interface ChangedLine {
  readonly done: 'added' | 'changed' | 'removed'
  readonly block: string
  readonly kind: string
  readonly before: string
  readonly after: string
}

/** What stands in the place of a page that was withdrawn. */
export interface WithdrawnPage {
  readonly kind: 'withdrawn'
  readonly head: PageHead
  readonly revision: string
  readonly code: string
  readonly date: string
  readonly reason: string
  /** The page in its place, where known. */
  readonly replacedBy?: NamedPage
}
