import type {DeclaredChange, EndedUrgent, Withdrawal} from '../handbook-model/approval-content.ts'
import type {UrgentRevision} from '../handbook-model/urgent-content.ts'
import {addMessage, type ContentFiles} from '../messages/add-message.ts'
import {compareTexts, type LineChange} from '../technical-text/compare-texts.ts'
import {figuresIn} from '../technical-text/line-changes.ts'
import {checkCode, technicalHash} from '../technical-text/technical-hash.ts'
import {issueText} from './issue-text.ts'
import type {Ledger, PageEntry} from './ledger.ts'
import {reasonsOfEnded, reasonsOfUrgent} from './urgent-reasons.ts'

/** What an issue is named, and what it is made from. */
export type IssueFacts = Omit<Ledger, 'version' | 'pages' | 'manifestHash'>

/** A page of the issue to come. */
export interface IssuedPage {
  readonly id: string
  /** Address below the vessel folder. */
  readonly path: string
  readonly text: string
  /** Paths of the sources that it is made from. */
  readonly madeFrom: readonly string[]
}

/** What became of pages and sources since the issue before. */
export interface IssueInput {
  readonly facts: IssueFacts
  readonly pages: readonly IssuedPage[]
  readonly earlier: Ledger | undefined
  /** Technical texts of earlier issues by their hash. */
  readonly earlierTexts: ReadonlyMap<string, string>
  readonly changes: readonly DeclaredChange[]
  readonly withdrawals: readonly Withdrawal[]
  readonly ended: readonly EndedUrgent[]
  readonly urgent: readonly UrgentRevision[]
}

/**
 * The pages of the next issue with their revisions.
 *
 * An equal technical text keeps its entry. Changed wording that a reviewer has confirmed gets a letter and keeps its
 * code; everything else is a new revision with its reasons. A page that is gone is withdrawn with a reason. What is
 * missing for that is told.
 */
export function nextPages(input: IssueInput, files: ContentFiles): Readonly<Record<string, PageEntry>> {
  const {pages, earlier} = input
  const told = new Set<string>()
  const present = new Set(pages.map(({id}) => id))
  const entries = pages.map((page): [string, PageEntry] => [
    page.id,
    nextEntry(page, earlier?.pages[page.id], input, files, told),
  ])
  const gone = Object.entries(earlier?.pages ?? {}).filter(([id]) => !present.has(id))
  const withdrawn = gone.map(([id, entry]): [string, PageEntry] => [
    id,
    entry.withdrawn ? entry : {...entry, ...withdrawal(id, input, files)},
  ])
  return Object.fromEntries([...entries, ...withdrawn].sort(([a], [b]) => (a < b ? -1 : 1)))
}

function nextEntry(
  page: IssuedPage,
  earlier: PageEntry | undefined,
  input: IssueInput,
  files: ContentFiles,
  told: Set<string>,
): PageEntry {
  const {date} = input.facts
  const hash = technicalHash(page.text)
  if (!earlier) return {revision: 1, date, code: checkCode(page.id, 1, hash), hash, path: page.path}
  if (earlier.hash === hash && !earlier.withdrawn) return earlier
  const changed = page.madeFrom.filter((path) => input.earlier?.sources[path] !== input.facts.sources[path])
  const declared = input.changes.filter(
    (one) => changed.includes(one.file) && one.hash === input.facts.sources[one.file],
  )
  const ownReasons = reasonsOfUrgent(changed, input.urgent)
  const saidElsewhere = new Set([...declared.map(({file}) => file), ...ownReasons.keys()])
  tellUnexplained(page, changed, saidElsewhere, input.facts, files, told)
  const lines = changedLines(page, earlier, input, files)
  const ended = reasonsOfEnded(lines ?? [], input, files, told)
  const words = earlier.withdrawn === undefined && lines !== undefined && lines.every(isWording)
  const calledEditorial =
    declared.length > 0 &&
    declared.length === changed.length &&
    declared.every((one) => one.class === 'editorial')
  const reasons = [...new Set([...ownReasons.values(), ...declared.map((one) => one.reason), ...ended])]
  if (words && calledEditorial)
    return {
      ...earlier,
      suffix: nextLetter(earlier.suffix),
      date,
      hash,
      revisionHash: earlier.revisionHash ?? earlier.hash,
    }
  if (calledEditorial) tellDisguised(page, lines ?? [], declared, files, told)
  const revision = earlier.revision + 1
  return {
    revision,
    date,
    code: checkCode(page.id, revision, hash),
    hash,
    path: page.path,
    ...(earlier.withdrawn ? {} : {previousHash: earlier.hash}),
    reasons: reasons.length > 0 ? reasons : [`handbook program ${input.facts.toolVersion}`],
  }
}

/** Kinds of lines that hold wording; values, limits, cautions, holds, order and presence are never wording. */
const wordingKinds: ReadonlySet<string> = new Set([
  'purpose',
  'state',
  'section',
  'intro',
  'step',
  'note',
  'choice',
  'missed',
  'caption',
  'symptom',
  'cause',
  'check',
  'advice',
  'term',
  'meaning',
])

/** True where words became other words at the same place, and no figure in them moved. */
function isWording({kind, before, after}: LineChange): boolean {
  if (!wordingKinds.has(kind) || before === undefined || after === undefined) return false
  return figuresIn(before) === figuresIn(after)
}

/** `a` behind none, then the letters in their order. */
function nextLetter(letter: string | undefined): string {
  const letters = 'abcdefghijklmnopqrstuvwxyz'
  const next = letters.charAt(letter ? letters.indexOf(letter) + 1 : 0)
  return next === '' ? 'z' : next
}

function changedLines(
  page: IssuedPage,
  earlier: PageEntry,
  {earlierTexts, facts}: IssueInput,
  files: ContentFiles,
): readonly LineChange[] | undefined {
  const {revision, hash} = earlier
  const before = issueText({vessel: facts.vessel, page: page.id, revision, hash}, earlierTexts, files)
  return before === undefined ? undefined : compareTexts(before, page.text)
}

/** Each changed source behind a page that moved says why, once for all pages. */
function tellUnexplained(
  page: IssuedPage,
  changed: readonly string[],
  explained: ReadonlySet<string>,
  {sources}: IssueFacts,
  files: ContentFiles,
  told: Set<string>,
): void {
  for (const source of changed) {
    if (told.has(source) || explained.has(source)) continue
    told.add(source)
    addMessage(
      files,
      {path: source, line: 1, column: 1},
      'no-unexplained-change',
      `Unexpected change of \`${source}\` that moves page \`${page.id}\`, expected its reason in changes.yaml`,
      {
        note: `Add to changes.yaml: \`- {file: ${source}, hash: ${sources[source] ?? 'none'}, class: technical, reason: …}\``,
      },
    )
  }
}

function tellDisguised(
  page: IssuedPage,
  lines: readonly LineChange[],
  declared: readonly DeclaredChange[],
  files: ContentFiles,
  told: Set<string>,
): void {
  const line = lines.find((one) => !isWording(one))
  for (const change of declared) {
    const key = `editorial ${change.file}`
    if (told.has(key)) continue
    told.add(key)
    addMessage(
      files,
      change.place,
      'no-disguised-change',
      `Unexpected editorial change of \`${change.file}\` that moves ${line ? `\`${line.kind}\` of \`${line.block}\` on ` : ''}page \`${page.id}\`, expected wording alone`,
      {note: 'Write `class: technical`, or take the other change back'},
    )
  }
}

/** A page that is gone carries when and why, and what stands in its place. */
function withdrawal(
  id: string,
  {facts, withdrawals, pages}: IssueInput,
  files: ContentFiles,
): Pick<PageEntry, 'withdrawn'> {
  const own = withdrawals.find(({page}) => id.split('/').slice(1).includes(page))
  if (!own) {
    addMessage(
      files,
      {path: 'changes.yaml', line: 1, column: 1},
      'no-unexplained-change',
      `Unexpected page \`${id}\` that is gone, expected it under \`withdrawn:\` with its reason`,
      {note: 'Add `- {page: …, reason: …}` with the last word of its id to `withdrawn:` of changes.yaml'},
    )
    return {}
  }
  const beside = own.replacedBy && [...id.split('/').slice(0, -1), own.replacedBy.id].join('/')
  const replacedBy = pages.find((page) => page.id === beside)?.id
  return {
    withdrawn: {date: facts.date, reason: own.reason, ...(replacedBy === undefined ? {} : {replacedBy})},
  }
}
