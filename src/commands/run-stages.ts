import {checkContent} from '../check/check-content.ts'
import {compilePages} from '../compile/compile-pages.ts'
import {computeValues} from '../compute/compute-values.ts'
import type {ComputedValues} from '../handbook-model/computed.ts'
import type {Content} from '../handbook-model/content.ts'
import type {HandbookPages, PageState} from '../handbook-model/pages.ts'
import {newestLedger} from '../issues/ledger.ts'
import {pageState} from '../issues/page-state.ts'
import {type ContentFiles, stopsTheBuild} from '../messages/add-message.ts'
import {readSources} from '../read/read-sources.ts'
import {technicalText} from '../technical-text/technical-text.ts'

/** Content and values of one run; undefined content when a message stops the build. */
export interface CheckedContent {
  readonly files: ContentFiles
  readonly content: Content | undefined
  readonly values: ComputedValues | undefined
  readonly ledgers: ReadonlyMap<string, string>
}

/** Reads, checks and computes; all messages are collected in `files`. */
export async function checkAndCompute(contentFolder: string): Promise<CheckedContent> {
  const files: ContentFiles = new Map()
  const sources = await readSources(contentFolder, files)
  const content = checkContent(sources, files)
  const values = content && computeValues(content, files)
  const sound = !stopsTheBuild(files)
  return {
    files,
    content: sound ? content : undefined,
    values: sound ? values : undefined,
    ledgers: sources.ledgers,
  }
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
  ledgers: ReadonlyMap<string, string>,
  files: ContentFiles,
): StatedPages {
  const pages = compilePages(content, values, vessel)
  const ledger = newestLedger(vessel, ledgers, files)
  const technicalTexts = new Map(
    pages.pages.map((page) => [page.head.id, technicalText(page, pages.vessel.name)]),
  )
  const states = new Map([...technicalTexts].map(([id, text]) => [id, pageState(id, text, ledger)]))
  return {pages, technicalTexts, states, issue: ledger && {number: ledger.issue, date: ledger.date}}
}
