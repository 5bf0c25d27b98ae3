import {readCheckCode} from './check-symbol.ts'

/** What a handbook folder knows of its last three issues, to judge a printed sheet by its check code. */
export interface CheckData {
  readonly version: 1
  readonly vessel: string
  /** Oldest first; the last one is the issue of the folder. */
  readonly issues: readonly {readonly number: string; readonly date: string}[]
  /** Tag on the plate of each pump by its position. */
  readonly tags: Readonly<Record<string, string>>
  /** By page id behind the vessel. */
  readonly pages: Readonly<Record<string, CheckedPage>>
}

/** A page in the last three issues. */
export interface CheckedPage {
  /** Newest first; the first one is current unless the page is withdrawn. */
  readonly revisions: readonly CheckedRevision[]
  readonly withdrawn?: {
    readonly date: string
    readonly reason: string
    readonly replacedBy?: string | undefined
  }
}

/** A revision of a page; letters keep its code. */
export interface CheckedRevision {
  readonly code: string
  /** With the newest letter: `4a`. */
  readonly revision: string
  /** Number of the last issue that held it. */
  readonly last: string
  /** Values that the current revision prints otherwise; none beside the current one. */
  readonly values?: readonly DifferingValue[]
  /** How many other things differ: steps, cautions, wording. */
  readonly others?: number
}

/** A figure of an old sheet beside that of the current one; one side is missing where it came or went. */
export interface DifferingValue {
  readonly value: string
  readonly sheet?: string
  readonly now?: string
}

/** What is to be said of a sheet; always with the issue that it was held against. */
export type SheetAnswer =
  | {readonly kind: 'not-well-formed'}
  | {readonly kind: 'no-issue'; readonly code: string}
  | {
      readonly kind: 'not-found'
      readonly code: string
      readonly base: CheckData['issues'][number]
      readonly issues: number
    }
  | ({readonly kind: 'current'} & SheetFound)
  | ({
      readonly kind: 'superseded'
      /** The revision that is current. */
      readonly current: string
      readonly values: readonly DifferingValue[]
      readonly others: number
    } & SheetFound)
  | ({readonly kind: 'withdrawn'} & NonNullable<CheckedPage['withdrawn']> & SheetFound)

/** The sheet that a code belongs to. */
export interface SheetFound {
  readonly code: string
  readonly page: string
  /** Tag of the pump; none on pages of a design or the ship. */
  readonly tag?: string
  readonly revision: string
  /** The issue in this folder: an older folder cannot know of a newer one. */
  readonly base: CheckData['issues'][number]
}

/**
 * Answers for a sheet by the check code that was typed.
 *
 * Blanks, hyphens and small letters are forgiven as `readCheckCode` does. A code whose check symbol does not fit is not
 * well formed: it was misread or mistyped.
 */
export function answerSheet(data: CheckData, typed: string): SheetAnswer {
  const read = readCheckCode(typed)
  if (!read?.sound) return {kind: 'not-well-formed'}
  const {code} = read
  const base = data.issues.at(-1)
  if (!base) return {kind: 'no-issue', code}
  for (const [id, {revisions, withdrawn}] of Object.entries(data.pages)) {
    const own = revisions.find((one) => one.code === code)
    if (!own) continue
    const tag = data.tags[id.split('/')[0] ?? '']
    const found: SheetFound = {
      code,
      page: `${data.vessel}/${id}`,
      ...(tag === undefined ? {} : {tag}),
      revision: own.revision,
      base,
    }
    if (withdrawn) return {kind: 'withdrawn', ...withdrawn, ...found}
    const [current] = revisions
    if (!current || current.code === code) return {kind: 'current', ...found}
    return {
      kind: 'superseded',
      current: current.revision,
      values: own.values ?? [],
      others: own.others ?? 0,
      ...found,
    }
  }
  return {kind: 'not-found', code, base, issues: data.issues.length}
}
