import type {CheckData, CheckedPage, CheckedRevision, DifferingValue} from '../browser-contract/check-data.ts'
import type {RenderedFile} from '../handbook-model/files.ts'
import type {ContentFiles} from '../messages/add-message.ts'
import {compareTexts, type LineChange} from '../technical-text/compare-texts.ts'
import {figuresIn} from '../technical-text/line-changes.ts'
import {issueText} from './issue-text.ts'
import type {Ledger, PageEntry} from './ledger.ts'
import {pageDifferences} from './page-differences.ts'

/** How many issues a folder knows of. */
const issuesKept = 3

/** What the check data is made from. */
export interface CheckDataInput {
  readonly vessel: string
  readonly tags: Readonly<Record<string, string>>
  /** All ledgers of the vessel, oldest first. */
  readonly ledgers: readonly Ledger[]
  /** Technical texts of issues by their hash. */
  readonly texts: ReadonlyMap<string, string>
}

/**
 * The check data of the last three issues; a text that is lost is a message.
 *
 * A revision beside the current one carries the values that the current one prints otherwise.
 */
export function checkDataOf({vessel, tags, ledgers, texts}: CheckDataInput, files: ContentFiles): CheckData {
  const kept = ledgers.slice(-issuesKept)
  const newest = kept.at(-1)
  const differing = (
    page: string,
    own: PageEntry,
    current: PageEntry,
  ): Pick<CheckedRevision, 'values' | 'others'> => {
    const [sheet, now] = [own, current].map(({revision, hash}) =>
      issueText({vessel, page, revision, hash}, texts, files),
    )
    return sheet === undefined || now === undefined ? {} : differencesOf(sheet, now)
  }
  const pages = Object.entries(newest?.pages ?? {}).map(([page, entry]): [string, CheckedPage] => {
    const {withdrawn} = entry
    const revisions = revisionsOf(page, kept)
    return [
      page.slice(vessel.length + 1),
      {
        revisions: revisions.map(({entry: own, last}, index): CheckedRevision => {
          const shown = {code: own.code, revision: `${own.revision}${own.suffix ?? ''}`, last}
          return index === 0 || withdrawn ? shown : {...shown, ...differing(page, own, entry)}
        }),
        ...(withdrawn ? {withdrawn} : {}),
      },
    ]
  })
  return {
    version: 1,
    vessel,
    issues: kept.map(({issue: number, date}) => ({number, date})),
    tags,
    pages: Object.fromEntries(pages),
  }
}

/** The check data as a file that a page can load from a folder. */
export function checkDataFile(data: CheckData): RenderedFile {
  const text = `window.sheetanchor=window.sheetanchor||{};\nwindow.sheetanchor.checkData=${JSON.stringify(data)};\n`
  return {path: 'check-data.js', bytes: new TextEncoder().encode(text)}
}

/** Revisions of a page in the kept issues, newest first; those of one code are one, with its newest letter. */
function revisionsOf(
  page: string,
  kept: readonly Ledger[],
): readonly {readonly entry: PageEntry; readonly last: string}[] {
  const found = new Map<string, {readonly entry: PageEntry; readonly last: string}>()
  for (const {issue, pages} of [...kept].reverse()) {
    const entry = pages[page]
    if (entry && !found.has(entry.code)) found.set(entry.code, {entry, last: issue})
  }
  return [...found.values()]
}

/** Values and limits that differ, and lines whose figures do; everything else is counted. */
function differencesOf(sheet: string, now: string): Pick<CheckedRevision, 'values' | 'others'> {
  const values: DifferingValue[] = []
  let others = 0
  for (const {area, block, change, lines} of pageDifferences(compareTexts(sheet, now))) {
    const figures =
      area === 'values' ||
      area === 'limits' ||
      (change === 'changed' && lines.some((line) => figuresIn(line.before) !== figuresIn(line.after)))
    if (figures) values.push(...lines.map((line) => differingValue(block, line)))
    else others += 1
  }
  return {values, others}
}

function differingValue(value: string, {before, after}: LineChange): DifferingValue {
  return {
    value,
    ...(before === undefined ? {} : {sheet: before}),
    ...(after === undefined ? {} : {now: after}),
  }
}
