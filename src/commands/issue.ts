import {join} from 'node:path'
import {nearestWord} from '../check/nearest-word.ts'
import type {Content} from '../handbook-model/content.ts'
import {contentHashOf, refuseUnapproved} from '../issues/approval-state.ts'
import {type IssueHistory, newestLedger} from '../issues/history.ts'
import type {Ledger} from '../issues/ledger.ts'
import {type IssueFacts, nextPages} from '../issues/next-ledger.ts'
import {refuseUntimely} from '../issues/urgent-days.ts'
import {stopsTheBuild} from '../messages/add-message.ts'
import {checkFiles} from '../publish/check-files.ts'
import {type Disk, nodeDisk} from '../publish/disk.ts'
import {issuedLines} from '../publish/manifest.ts'
import {publishVessel} from '../publish/publish-vessel.ts'
import {technicalHash} from '../technical-text/technical-hash.ts'
import {handbookFiles} from './handbook-files.ts'
import {type CommandOptions, countWords, messagesData, messagesText, type Outcome} from './outcome.ts'
import {type ProgramWithVersion, readProgramWithVersion} from './program-files.ts'
import {refusedOutFolder} from './ready-out-folder.ts'
import {checkAndCompute, statePages, stateVessel} from './run-stages.ts'
import {writeWhole} from './write-whole.ts'

/** What an issue is called, and who issues it. */
export interface IssueWords {
  /** `2031-03`: year and running number of the vessel. */
  readonly number: string
  readonly date: string
  /** A person of the office who may publish. */
  readonly by: string
}

/** Counts of what an issue did to the pages of a vessel. */
interface IssueCounts {
  readonly same: number
  readonly added: readonly string[]
  readonly revised: readonly string[]
  readonly lettered: readonly string[]
  readonly withdrawn: readonly string[]
}

/**
 * `sheetanchor issue`: gives the pages of one vessel their revisions, writes the ledger of the issue, and publishes it.
 *
 * Texts are written first and the ledger last: a stop leaves the issue before or this one. After a stop behind the
 * ledger the next build publishes this one.
 */
export async function runIssue(
  words: IssueWords,
  options: CommandOptions,
  disk: Disk = nodeDisk,
  programFiles: () => Promise<ProgramWithVersion> = readProgramWithVersion,
): Promise<Outcome> {
  const unready = refusedOutFolder(options.out, disk)
  if (unready) return unready
  options.progress('reading and checking')
  const checked = await checkAndCompute(options.content, options.asOf)
  const {files, content, values, hashes, history} = checked
  const failed = (): Outcome => ({
    exitStatus: 1,
    out: options.json
      ? `${JSON.stringify({passed: false, messages: messagesData(files)}, null, 2)}\n`
      : `Nothing issued: ${countWords(files)}\n`,
    err: messagesText(files, options),
  })
  if (!content || !values) return failed()
  const vessel = options.vessels[0] ?? ''
  const earlier = newestLedger(history, vessel)
  const refusal = refusalOf(words, options, content, earlier)
  if (refusal !== undefined) return {exitStatus: 2, out: '', err: `${refusal}\n`}
  options.progress(`compiling ${vessel}`)
  const draft = stateVessel(content, values, vessel, history)
  const program = await programFiles()
  const made = new Set(draft.pages.pages.flatMap((page) => [...page.head.madeFrom]))
  refuseUnapproved(made, hashes, content.approvals, files)
  const facts: IssueFacts = {
    vessel,
    issue: words.number,
    date: words.date,
    asOf: options.asOf ?? words.date,
    issuedBy: words.by,
    toolVersion: program.version,
    contentHash: contentHashOf(hashes),
    sources: Object.fromEntries(hashes),
  }
  refuseUntimely(content.urgent, facts, files)
  const pages = nextPages(
    {
      facts,
      pages: draft.pages.pages.map(({head}) => ({
        id: head.id,
        path: head.path,
        text: draft.technicalTexts.get(head.id) ?? '',
        madeFrom: head.madeFrom,
      })),
      earlier,
      earlierTexts: history.texts,
      changes: content.changes,
      withdrawals: content.withdrawals,
      ended: content.ended,
      urgent: content.urgent,
    },
    files,
  )
  if (stopsTheBuild(files)) return failed()
  const open: Ledger = {version: 1, ...facts, manifestHash: '0'.repeat(64), pages}
  options.progress(`rendering ${vessel}`)
  const now = withIssue(history, open, draft.technicalTexts)
  const rendered = handbookFiles(statePages(draft.pages, now), program, now, files)
  checkFiles(vessel, rendered, files)
  if (stopsTheBuild(files)) return failed()
  const ledger: Ledger = {...open, manifestHash: technicalHash(issuedLines(rendered))}
  writeLedger(ledger, draft.technicalTexts, history.texts, options.content, disk)
  publishVessel({vesselId: vessel, files: rendered, siteFolder: options.out, disk})
  const counts = countPages(ledger, earlier)
  return {
    exitStatus: 0,
    out: options.json
      ? `${JSON.stringify({passed: true, vessel, issue: words.number, date: words.date, ...counts}, null, 2)}\n`
      : countsText(words, vessel, counts, options.out),
    err: messagesText(files, options),
  }
}

function refusalOf(
  {number, date, by}: IssueWords,
  options: CommandOptions,
  content: Content,
  earlier: Ledger | undefined,
): string | undefined {
  const [vessel = '', ...more] = options.vessels
  const vessels = [...content.vessels.keys()]
  if (!content.vessels.has(vessel) || more.length > 0)
    return `Unexpected ${vessel === '' ? 'call without a vessel' : `vessel \`${options.vessels.join('`, `')}\``}, expected one of ${vessels.map((id) => `\`${id}\``).join(', ')} with --vessel`
  if (!/^\d{4}-\d{2}$/u.test(number))
    return `Unexpected issue \`${number}\`, expected year and running number like \`2031-03\` with --number`
  if (date === '') return 'Unexpected issue without a day, expected it with --date'
  if (earlier && (number <= earlier.issue || date < earlier.date))
    return `Unexpected issue \`${number}\` of ${date}, expected one after \`${earlier.issue}\` of ${earlier.date}`
  if (options.asOf === undefined)
    return 'Unexpected issue without the day that dates are compared with, expected it with --as-of'
  const person = content.office.people.find(({id}) => id === by)
  const ids = content.office.people.map(({id}) => id)
  if (!person)
    return `Unexpected person \`${by}\`, expected \`${nearestWord(by, ids) ?? ''}\` or another of ${ids.join(', ')} with --by`
  if (!person.may.includes('publish'))
    return `Unexpected \`${by}\` as publisher, expected a person who may \`publish\` by office.yaml:${person.place.line}`
  return undefined
}

/** The history with one issue more. */
function withIssue(
  {ledgers, texts}: IssueHistory,
  ledger: Ledger,
  newTexts: ReadonlyMap<string, string>,
): IssueHistory {
  const {vessel} = ledger
  return {
    ledgers: new Map([...ledgers, [vessel, [...(ledgers.get(vessel) ?? []), ledger]]]),
    texts: new Map([
      ...texts,
      ...[...newTexts.values()].map((text): [string, string] => [technicalHash(text), text]),
    ]),
  }
}

/** Texts that no earlier issue has, then the ledger that names them. */
function writeLedger(
  ledger: Ledger,
  texts: ReadonlyMap<string, string>,
  known: ReadonlyMap<string, string>,
  contentFolder: string,
  disk: Disk,
): void {
  const folder = join(contentFolder, 'issues', ledger.vessel)
  const written = new Set(known.keys())
  for (const text of texts.values()) {
    const hash = technicalHash(text)
    if (written.has(hash)) continue
    written.add(hash)
    writeWhole(join(folder, 'texts', `${hash}.txt`), text, disk)
  }
  writeWhole(join(folder, `${ledger.issue}.json`), `${JSON.stringify(ledger, null, 1)}\n`, disk)
}

function countPages({pages}: Ledger, earlier: Ledger | undefined): IssueCounts {
  const ids = Object.keys(pages)
  const of = (wanted: (id: string) => boolean): readonly string[] => ids.filter(wanted)
  const before = (id: string): Ledger['pages'][string] | undefined => earlier?.pages[id]
  const gone = (id: string): boolean => pages[id]?.withdrawn !== undefined
  const moved = (id: string): boolean => pages[id]?.hash !== before(id)?.hash && !gone(id)
  return {
    same: of((id) => before(id) !== undefined && !moved(id) && !gone(id)).length,
    added: of((id) => before(id) === undefined),
    revised: of(
      (id) => before(id) !== undefined && moved(id) && pages[id]?.revision !== before(id)?.revision,
    ),
    lettered: of(
      (id) => before(id) !== undefined && moved(id) && pages[id]?.revision === before(id)?.revision,
    ),
    withdrawn: of((id) => gone(id) && before(id)?.withdrawn === undefined),
  }
}

/** How many pages of a kind are named in words. */
const mostNamed = 40

function countsText({number, date}: IssueWords, vessel: string, counts: IssueCounts, out: string): string {
  const list = (what: string, ids: readonly string[]): readonly string[] =>
    ids.length === 0
      ? []
      : [
          `${what}: ${ids.length}`,
          ...ids.slice(0, mostNamed).map((id) => `  ${id}`),
          ...(ids.length > mostNamed ? [`  and ${ids.length - mostNamed} more, all named with --json`] : []),
        ]
  return [
    `Issue ${number} of ${vessel}, ${date}: open ${out}/${vessel}/index.html`,
    `unchanged: ${counts.same}`,
    ...list('new pages', counts.added),
    ...list('new revisions', counts.revised),
    ...list('changed wording', counts.lettered),
    ...list('withdrawn', counts.withdrawn),
    '',
  ].join('\n')
}
