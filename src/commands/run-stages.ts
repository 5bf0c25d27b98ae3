import {checkContent} from '../check/check-content.ts'
import {newestDay} from '../check/newest-day.ts'
import {compilePages} from '../compile/compile-pages.ts'
import {computeValues} from '../compute/compute-values.ts'
import {noAgedRubber} from '../compute/no-aged-rubber.ts'
import {noEndingUrgent} from '../compute/no-ending-urgent.ts'
import {noIdleSheet} from '../compute/no-idle-sheet.ts'
import {noPastCalibration} from '../compute/no-past-calibration.ts'
import {type ComparisonDate, laterDay} from '../handbook-model/comparison-date.ts'
import type {ComputedValues} from '../handbook-model/computed.ts'
import type {Content} from '../handbook-model/content.ts'
import type {HandbookPages} from '../handbook-model/handbook-pages.ts'
import type {PageState} from '../handbook-model/pages.ts'
import type {PublicationPage} from '../handbook-model/publication.ts'
import {sourceHashes} from '../issues/approval-state.ts'
import {type IssueHistory, newestLedger} from '../issues/history.ts'
import {issueText} from '../issues/issue-text.ts'
import {type Ledger, ledgersOf} from '../issues/ledger.ts'
import {pageState} from '../issues/page-state.ts'
import {pageUpdate, textsBehind} from '../issues/page-update.ts'
import {publicationPages} from '../issues/publication.ts'
import {refuseReusedNumbers} from '../issues/urgent-numbers.ts'
import {type ContentFiles, stopsTheBuild} from '../messages/add-message.ts'
import {readSources} from '../read/read-sources.ts'
import {technicalLines, textOfLines} from '../technical-text/technical-text.ts'

/** Content and values of one run; undefined content when a message stops the build. */
export interface CheckedContent {
  readonly files: ContentFiles
  readonly content: Content | undefined
  readonly values: ComputedValues | undefined
  /** Hash of every source that people sign, by its path. */
  readonly hashes: ReadonlyMap<string, string>
  readonly history: IssueHistory
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
  const vessels = [...(content?.vessels.keys() ?? [])]
  const history: IssueHistory = {
    ledgers: new Map(vessels.map((vessel) => [vessel, ledgersOf(vessel, sources.ledgers, files)])),
    texts: textsByHash(sources.ledgers),
  }
  const newest = vessels.flatMap((vessel) => newestLedger(history, vessel) ?? [])
  for (const named of newest.flatMap(textsBehind)) issueText(named, history.texts, files)
  const issued = newest.map(({date}) => date).reduce(laterDay, undefined)
  const compared = comparisonDate(asOf, laterDay(newestDay(sources), issued))
  if (content) {
    noAgedRubber(content, compared?.day, files)
    if (values) noPastCalibration(content, values, compared?.day, files)
    noEndingUrgent(content, compared?.day, files)
    refuseReusedNumbers(content.urgent, hashes, history, files)
  }
  const sound = !stopsTheBuild(files)
  if (sound && content && values) noIdleSheet(content, values, files)
  return {
    files,
    content: sound ? content : undefined,
    values: sound ? values : undefined,
    hashes,
    history,
    asOf: compared,
  }
}

function textsByHash(ledgerFiles: ReadonlyMap<string, string>): ReadonlyMap<string, string> {
  return new Map(
    [...ledgerFiles].flatMap(([path, text]): [string, string][] => {
      const hash = /\/texts\/([0-9a-f]{64})\.txt$/u.exec(path)?.[1]
      return hash === undefined ? [] : [[hash, text]]
    }),
  )
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

/** Compiles one vessel and states its pages. */
export function stateVessel(
  content: Content,
  values: ComputedValues,
  vessel: string,
  history: IssueHistory,
  withPlaces = false,
): StatedPages {
  return statePages(compilePages(content, values, vessel, withPlaces), history)
}

/** Holds each page of a vessel against its newest issue and tells what that issue changed. */
export function statePages(pages: HandbookPages, history: IssueHistory): StatedPages {
  const {texts} = history
  const [earlier, ledger] = lastTwo(history.ledgers.get(pages.vessel.id))
  const lines = new Map(pages.pages.map((page) => [page.head.id, technicalLines(page, pages.vessel.name)]))
  const technicalTexts = new Map([...lines].map(([id, own]) => [id, textOfLines(own)]))
  const states = new Map(
    [...lines].map(([id, own]): [string, PageState] => [
      id,
      pageState(id, technicalTexts.get(id) ?? '', ledger, (entry) => pageUpdate(own, entry, texts)),
    ]),
  )
  return {
    pages,
    technicalTexts,
    states,
    publication: publicationPages({pages, states, ledger, earlier, texts}),
    issue: ledger && {number: ledger.issue, date: ledger.date},
  }
}

/** The issue before the newest one, then the newest. */
function lastTwo(ledgers: readonly Ledger[] = []): readonly [Ledger | undefined, Ledger | undefined] {
  return [ledgers.at(-2), ledgers.at(-1)]
}
