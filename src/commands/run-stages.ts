import {checkContent} from '../check/check-content.ts'
import {newestDay} from '../check/newest-day.ts'
import {compilePages} from '../compile/compile-pages.ts'
import {computeValues} from '../compute/compute-values.ts'
import {noAgedRubber} from '../compute/no-aged-rubber.ts'
import {type ComparisonDate, laterDay} from '../handbook-model/comparison-date.ts'
import type {ComputedValues} from '../handbook-model/computed.ts'
import type {Content} from '../handbook-model/content.ts'
import type {HandbookPages, PageState} from '../handbook-model/pages.ts'
import type {PublicationPage} from '../handbook-model/publication.ts'
import {sourceHashes} from '../issues/approval-state.ts'
import {type Ledger, ledgersOf} from '../issues/ledger.ts'
import {pageState} from '../issues/page-state.ts'
import {pageUpdate, textsBehind} from '../issues/page-update.ts'
import {publicationPages} from '../issues/publication.ts'
import {addMessage, type ContentFiles, stopsTheBuild} from '../messages/add-message.ts'
import {readSources} from '../read/read-sources.ts'
import {technicalHash} from '../technical-text/technical-hash.ts'
import {technicalLines, technicalText} from '../technical-text/technical-text.ts'

/** Earlier issues, as far as pages are compared with them. */
export interface IssueHistory {
  /** Technical texts of issues by their hash. */
  readonly texts: ReadonlyMap<string, string>
  /** The ledger before the newest one, of each vessel that has two issues. */
  readonly earlier: ReadonlyMap<string, Ledger>
}

/** Content and values of one run; undefined content when a message stops the build. */
export interface CheckedContent {
  readonly files: ContentFiles
  readonly content: Content | undefined
  readonly values: ComputedValues | undefined
  /** Hash of every source that people sign, by its path. */
  readonly hashes: ReadonlyMap<string, string>
  /** What the issues before say. */
  readonly history: IssueHistory
  /** The newest ledger of each vessel that has an issue. */
  readonly ledgers: ReadonlyMap<string, Ledger>
  /** The day that dates are compared with; undefined where none is named and the content holds none. */
  readonly asOf: ComparisonDate | undefined
}

/**
 * Reads, checks and computes; all messages are collected in `files`.
 *
 * @param asOf
 *   The day that dates are compared with, in place of the newest one of the content.
 */
export async function checkAndCompute(contentFolder: string, asOf?: string): Promise<CheckedContent> {
  const files: ContentFiles = new Map()
  const sources = await readSources(contentFolder, files)
  const hashes = sourceHashes(files)
  const content = checkContent(sources, files)
  const values = content && computeValues(content, files)
  const issues = [...(content?.vessels.keys() ?? [])].map(
    (vessel) => [vessel, ledgersOf(vessel, sources.ledgers, files)] as const,
  )
  const ledgers = lastOf(issues, -1)
  const ledgerTexts = textsByHash(sources.ledgers)
  for (const ledger of ledgers.values()) refuseLostTexts(ledger, ledgerTexts, files)
  const issued = [...ledgers.values()].map(({date}) => date).reduce(laterDay, undefined)
  const compared = comparisonDate(asOf, laterDay(newestDay(sources), issued))
  if (content) noAgedRubber(content, compared?.day, files)
  const sound = !stopsTheBuild(files)
  return {
    files,
    content: sound ? content : undefined,
    values: sound ? values : undefined,
    hashes,
    history: {texts: ledgerTexts, earlier: lastOf(issues, -2)},
    ledgers,
    asOf: compared,
  }
}

/** One ledger of each vessel, counted from the newest. */
function lastOf(
  issues: readonly (readonly [string, readonly Ledger[]])[],
  place: -1 | -2,
): ReadonlyMap<string, Ledger> {
  return new Map(
    issues.flatMap(([vessel, ledgers]): [string, Ledger][] => {
      const ledger = ledgers.at(place)
      return ledger ? [[vessel, ledger]] : []
    }),
  )
}

function textsByHash(ledgerFiles: ReadonlyMap<string, string>): ReadonlyMap<string, string> {
  return new Map(
    [...ledgerFiles].flatMap(([path, text]): [string, string][] => {
      const hash = /\/texts\/([0-9a-f]{64})\.txt$/u.exec(path)?.[1]
      return hash === undefined ? [] : [[hash, text]]
    }),
  )
}

/** Tells every text that is not there as it was written, of those from which changes of issued pages are told. */
function refuseLostTexts(ledger: Ledger, texts: ReadonlyMap<string, string>, files: ContentFiles): void {
  for (const hash of new Set(textsBehind(ledger))) {
    const text = texts.get(hash)
    if (text !== undefined && technicalHash(text) === hash) continue
    addMessage(
      files,
      {path: `issues/${ledger.vessel}/texts/${hash}.txt`, line: 1, column: 1},
      'no-lost-text',
      `Unexpected ${text === undefined ? 'gap' : 'change'} at a text of issue \`${ledger.issue}\` of \`${ledger.vessel}\`, expected the file as the tool wrote it`,
      {note: 'Take the texts again from the commit of the issue'},
    )
  }
}

function comparisonDate(named: string | undefined, newest: string | undefined): ComparisonDate | undefined {
  if (named !== undefined) return {day: named, origin: 'option'}
  return newest === undefined ? undefined : {day: newest, origin: 'content'}
}

/** Pages of one vessel with their technical texts and states. */
export interface StatedPages {
  readonly pages: HandbookPages
  readonly technicalTexts: ReadonlyMap<string, string>
  readonly states: ReadonlyMap<string, PageState>
  readonly publication: readonly PublicationPage[]
  readonly issue: {readonly number: string; readonly date: string} | undefined
}

/**
 * Compiles one vessel and holds each page against the newest ledger.
 *
 * @param history
 *   Earlier issues, from which the changes of issued pages are told.
 */
export function stateVessel(
  content: Content,
  values: ComputedValues,
  vessel: string,
  ledgers: ReadonlyMap<string, Ledger>,
  withPlaces = false,
  history: IssueHistory = {texts: new Map(), earlier: new Map()},
): StatedPages {
  const pages = compilePages(content, values, vessel, withPlaces)
  const ledger = ledgers.get(vessel)
  const technicalTexts = new Map(
    pages.pages.map((page) => [page.head.id, technicalText(page, pages.vessel.name)]),
  )
  const states = new Map(
    pages.pages.map((page): [string, PageState] => {
      const {id} = page.head
      const lines = technicalLines(page, pages.vessel.name)
      return [
        id,
        pageState(id, technicalTexts.get(id) ?? '', ledger, (entry) =>
          pageUpdate(lines, entry, history.texts),
        ),
      ]
    }),
  )
  const publication = publicationPages({
    pages,
    states,
    ledger,
    earlier: history.earlier.get(vessel),
    texts: history.texts,
  })
  return {
    pages,
    technicalTexts,
    states,
    publication,
    issue: ledger && {number: ledger.issue, date: ledger.date},
  }
}
