import {contractVersion} from '../browser-contract/page-contract.ts'
import type {HandbookPages} from '../handbook-model/handbook-pages.ts'
import type {PageUpdate, RemovedKind} from '../handbook-model/page-update.ts'
import type {
  BoundCaution,
  BoundItem,
  BoundPart,
  BoundSection,
  BoundStep,
  BoundText,
  Page,
  PageState,
  ProcedurePage,
  VesselHead,
} from '../handbook-model/pages.ts'
import {withBars} from './bars.ts'
import {interfaceWords, spokenCode} from './words-en.ts'

/** State of a page in words. */
export interface StateView {
  readonly issued: boolean
  readonly revision: string
  readonly date: string
  readonly code: string
  readonly spoken: string
}

/** What every template can reach as `@root`. */
export interface PageView {
  readonly page: Page
  /** Blocks without an id of their own that changed with this revision. */
  readonly blocks: Readonly<Record<string, true>>
  /** Why this revision is there, where it is not the first. */
  readonly update: UpdateView | undefined
  readonly vessel: VesselHead
  readonly state: StateView
  readonly words: typeof interfaceWords
  /** Version that the page runtime must meet. */
  readonly contract: number
  /** Way from the page's folder back to the vessel folder: blank, or `../../`. */
  readonly base: string
  readonly body: string
  readonly documentTitle: string
  readonly units: readonly UnitView[]
  /** Tools and parts of a procedure in rows that fit a sheet each. */
  readonly toolRows: readonly ProcedurePage['tools'][]
  readonly partRows: readonly ProcedurePage['parts'][]
}

/** Reason for update in words. */
export interface UpdateView {
  readonly head: string
  readonly reasons: readonly string[]
  /** What the bars mean; blank where none can be told. */
  readonly bars: string
  /** What was deleted and where, one line each. */
  readonly removed: readonly string[]
}

/** What never splits over sheets: a heading with its cautions, or one step or hold point. */
export interface UnitView {
  readonly heading?: {readonly id: string; readonly title: string; readonly bar?: true}
  readonly intro?: readonly BoundText[]
  readonly cautions?: readonly BoundCaution[]
  /** True for the first caution of a section, which says that they hold for all of it. */
  readonly ofSection?: boolean
  readonly item?: BoundItem
  /** True when the step's further parts follow in units of their own. */
  readonly goesOn?: boolean
  readonly more?: {readonly number: number; readonly parts: readonly BoundPart[]; readonly bar?: true}
}

/** Makes a page ready for its template; only strings, lists and links are left. */
export function pageView(plain: Page, handbook: HandbookPages, state: PageState): PageView {
  const {vessel} = handbook
  const update = state.kind === 'issued' ? state.update : undefined
  const {page, blocks} = withBars(plain, update)
  const {head} = page
  const base = '../'.repeat(head.path.split('/').length - 1)
  return {
    page,
    blocks,
    update: update && updateView(update, stateView(state, false).revision),
    vessel,
    state: stateView(state, page.kind === 'procedure' && !page.isTried),
    words: interfaceWords,
    contract: contractVersion,
    base,
    body: page.kind,
    documentTitle: [head.position?.tag, head.title, vessel.name]
      .filter((one) => one !== undefined)
      .join(' · '),
    units: page.kind === 'procedure' ? page.sections.flatMap(unitsOf) : [],
    toolRows: page.kind === 'procedure' ? rowsOf(page.tools) : [],
    partRows: page.kind === 'procedure' ? rowsOf(page.parts) : [],
  }
}

/** Lines of a list that go to a sheet together when the whole list outgrows one. */
const linesInRow = 6

function rowsOf<Line>(lines: readonly Line[]): readonly (readonly Line[])[] {
  return Array.from({length: Math.ceil(lines.length / linesInRow)}, (_, row) =>
    lines.slice(row * linesInRow, (row + 1) * linesInRow),
  )
}

/** Parts that stay with the instruction of their step; further ones may go over to the next sheet. A step under many cautions keeps none. */
function partsWithInstruction(item: BoundStep): number {
  return item.cautions.length > 2 ? 0 : 1
}

/** Further parts that go to a sheet together. */
const partsInNext = 2

function unitsOf(section: BoundSection): readonly UnitView[] {
  const heading = {id: section.id, title: section.title, ...barOf(section)}
  const items = section.items.flatMap(unitsOfItem)
  const [firstCaution, ...cautions] = section.cautions
  if (firstCaution || section.intro.length > 0) {
    const head: UnitView = {
      heading,
      intro: section.intro,
      cautions: firstCaution ? [firstCaution] : [],
      ofSection: firstCaution !== undefined,
    }
    return [head, ...cautions.map((one): UnitView => ({cautions: [one]})), ...items]
  }
  const [first, ...rest] = items
  return first ? [{heading, ...first}, ...rest] : []
}

/** A step with its cautions and first parts, then its further parts in pairs: a caution never leaves its step, and no unit outgrows a sheet. */
function unitsOfItem(item: BoundItem): readonly UnitView[] {
  const kept = item.kind === 'step' ? partsWithInstruction(item) : 0
  if (item.kind === 'hold' || item.parts.length <= kept) return [{item}]
  const units: UnitView[] = [{item: {...item, parts: item.parts.slice(0, kept)}, goesOn: true}]
  for (let index = kept; index < item.parts.length; index += partsInNext) {
    units.push({
      more: {number: item.number, parts: item.parts.slice(index, index + partsInNext), ...barOf(item)},
    })
  }
  return units
}

/** The mark that `withBars` set on a block. */
function barOf(block: object): {readonly bar?: true} {
  return 'bar' in block ? {bar: true} : {}
}

function updateView({reasons, compared, removed}: PageUpdate, revision: string): UpdateView {
  return {
    head: interfaceWords.update.head(revision),
    reasons,
    bars: compared ? interfaceWords.update.bars : '',
    removed: removed.map(({what, id, afterStep}) =>
      interfaceWords.update.removed(interfaceWords.removedKinds[what], removedName(what, id), afterStep),
    ),
  }
}

/** Id of a block that is gone, as its author wrote it. */
function removedName(what: RemovedKind, id: string): string {
  return what === 'urgent' ? id.slice('urgent-'.length).toUpperCase() : id.replace(/^caution-|^.*--/u, '')
}

function stateView(state: PageState, untried: boolean): StateView {
  const draft = untried ? `${interfaceWords.draft}, ${interfaceWords.untried}` : interfaceWords.draft
  if (state.kind === 'draft') return {issued: false, revision: draft, date: '', code: '', spoken: ''}
  return {
    issued: true,
    revision: `${state.revision}${state.suffix}`,
    date: state.date,
    code: state.checkCode,
    spoken: spokenCode(state.checkCode),
  }
}
