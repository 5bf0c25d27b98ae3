import {checkContent} from '../check/check-content.ts'
import {newestDay} from '../check/newest-day.ts'
import {compilePages} from '../compile/compile-pages.ts'
import {computeValues} from '../compute/compute-values.ts'
import {noAgedRubber} from '../compute/no-aged-rubber.ts'
import {type ComparisonDate, laterDay} from '../handbook-model/comparison-date.ts'
import type {ComputedValues} from '../handbook-model/computed.ts'
import type {Content} from '../handbook-model/content.ts'
import type {HandbookPages, PageState} from '../handbook-model/pages.ts'
import {sourceHashes} from '../issues/approval-state.ts'
import {type Ledger, ledgersOf} from '../issues/ledger.ts'
import {pageState} from '../issues/page-state.ts'
import {type ContentFiles, stopsTheBuild} from '../messages/add-message.ts'
import {readSources} from '../read/read-sources.ts'
import {technicalText} from '../technical-text/technical-text.ts'

/** Content and values of one run; undefined content when a message stops the build. */
export interface CheckedContent {
  readonly files: ContentFiles
  readonly content: Content | undefined
  readonly values: ComputedValues | undefined
  /** Hash of every source that people sign, by its path. */
  readonly hashes: ReadonlyMap<string, string>
  /** Technical texts of earlier issues by their hash. */
  readonly ledgerTexts: ReadonlyMap<string, string>
  /** All ledgers of each vessel that has an issue, oldest first. */
  readonly allLedgers: ReadonlyMap<string, readonly Ledger[]>
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
  const allLedgers = new Map(
    [...(content?.vessels.keys() ?? [])].map((vessel) => [vessel, ledgersOf(vessel, sources.ledgers, files)]),
  )
  const ledgers = new Map(
    [...allLedgers].flatMap(([vessel, all]): [string, Ledger][] => {
      const ledger = all.at(-1)
      return ledger ? [[vessel, ledger]] : []
    }),
  )
  const issued = [...ledgers.values()].map(({date}) => date).reduce(laterDay, undefined)
  const compared = comparisonDate(asOf, laterDay(newestDay(sources), issued))
  if (content) noAgedRubber(content, compared?.day, files)
  const sound = !stopsTheBuild(files)
  return {
    files,
    content: sound ? content : undefined,
    values: sound ? values : undefined,
    hashes,
    ledgerTexts: textsByHash(sources.ledgers),
    allLedgers,
    ledgers,
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
  readonly issue: {readonly number: string; readonly date: string} | undefined
}

/** Compiles one vessel and holds each page against the newest ledger. */
export function stateVessel(
  content: Content,
  values: ComputedValues,
  vessel: string,
  ledgers: ReadonlyMap<string, Ledger>,
  withPlaces = false,
): StatedPages {
  const pages = compilePages(content, values, vessel, withPlaces)
  const ledger = ledgers.get(vessel)
  const technicalTexts = new Map(
    pages.pages.map((page) => [page.head.id, technicalText(page, pages.vessel.name)]),
  )
  const states = new Map([...technicalTexts].map(([id, text]) => [id, pageState(id, text, ledger)]))
  return {pages, technicalTexts, states, issue: ledger && {number: ledger.issue, date: ledger.date}}
}
