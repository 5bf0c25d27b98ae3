import {join} from 'node:path'
import {stringify} from 'yaml'
import {nearestWord} from '../check/nearest-word.ts'
import {
  type Approval,
  authorityOfRole,
  type SignatureRole,
  signatureRoles,
} from '../handbook-model/approval-content.ts'
import type {Content} from '../handbook-model/content.ts'
import {nodeDisk} from '../publish/disk.ts'
import {type CommandOptions, messagesText, type Outcome} from './outcome.ts'
import {checkAndCompute} from './run-stages.ts'
import {writeWhole} from './write-whole.ts'

/** Who signs what, in which role, on which day, and with which words. */
export interface SignatureWords {
  /** Files or folders below the content folder; `.` is all of it. */
  readonly sources: readonly string[]
  readonly role: string
  readonly by: string
  readonly date: string
  readonly statement: string
}

/**
 * `sheetanchor approve`: writes one person's signature on sources as they read now into approvals.yaml.
 *
 * Signatures on an older text of a source are taken out: they answer for something that is no longer there.
 */
export async function runApprove(words: SignatureWords, options: CommandOptions): Promise<Outcome> {
  const {files, content, hashes} = await checkAndCompute(options.content, options.asOf)
  if (!content) return {exitStatus: 1, out: '', err: messagesText(files, options)}
  const sources = sourcesNamed(words.sources, [...hashes.keys()])
  const role = signatureRoles.find((one) => one === words.role)
  const refusal = refusalOfRole(words, role, content) ?? (typeof sources === 'string' ? sources : undefined)
  if (refusal !== undefined || !role || typeof sources === 'string') return used(refusal ?? '')
  const signed = sources.map((source) => signedSource(source, hashes.get(source) ?? '', role, words, content))
  const faults = signed.filter((one): one is string => typeof one === 'string')
  if (faults.length > 0) return used(faults.join('\n'))
  const fresh = signed.flatMap((one) => (typeof one === 'string' ? [] : [one]))
  const kept = content.approvals.filter(
    (one) => hashes.get(one.file) === one.hash && !sources.includes(one.file),
  )
  const all = [...kept, ...fresh].sort((a, b) => (a.file < b.file ? -1 : 1))
  writeWhole(join(options.content, 'approvals.yaml'), approvalsText(all), nodeDisk)
  const lines = sources.map((source) => `  ${source}\n`).join('')
  return {
    exitStatus: 0,
    out: options.json
      ? `${JSON.stringify({signed: sources, role, by: words.by, date: words.date}, null, 2)}\n`
      : `Signed by ${words.by} as ${role} on ${words.date}:\n${lines}`,
    err: '',
  }
}

/** An approval without the places that a file gives it. */
interface PlainApproval {
  readonly file: string
  readonly hash: string
  readonly signatures: readonly {
    readonly role: SignatureRole
    readonly by: string
    readonly date: string
    readonly statement: string
  }[]
}

function signedSource(
  source: string,
  hash: string,
  role: SignatureRole,
  {by, date, statement}: SignatureWords,
  {approvals}: Content,
): PlainApproval | string {
  const earlier = approvals.find((one) => one.file === source && one.hash === hash)
  const others = plainSignatures(earlier).filter((one) => one.role !== role)
  const own = others.find((one) => one.by === by)
  if (own)
    return `Unexpected \`${by}\` as ${role} of \`${source}\` and as its ${own.role}, expected another person`
  const signatures = [...others, {role, by, date, statement}].sort(
    (a, b) => signatureRoles.indexOf(a.role) - signatureRoles.indexOf(b.role),
  )
  return {file: source, hash, signatures}
}

function plainSignatures(approval: Approval | undefined): PlainApproval['signatures'] {
  return (approval?.signatures ?? []).map(({role, by, date, statement}) => ({
    role,
    by: by.id,
    date,
    statement,
  }))
}

function refusalOfRole(
  {role: asked, by, date, statement}: SignatureWords,
  role: SignatureRole | undefined,
  {office}: Content,
): string | undefined {
  if (!role) return `Unexpected role \`${asked}\`, expected one of ${signatureRoles.join(', ')} with --as`
  const person = office.people.find(({id}) => id === by)
  const ids = office.people.map(({id}) => id)
  if (!person)
    return `Unexpected person \`${by}\`, expected \`${nearestWord(by, ids) ?? ''}\` or another of ${ids.join(', ')} with --by`
  const authority = authorityOfRole[role]
  if (!person.may.includes(authority))
    return `Unexpected \`${by}\` as ${role}, expected a person who may \`${authority}\` by office.yaml:${person.place.line}`
  if (date === '') return 'Unexpected signature without a day, expected it with --date'
  return statement === ''
    ? 'Unexpected signature without words, expected what was done with --statement'
    : undefined
}

/** The sources that files and folders name, or why they name none. */
function sourcesNamed(named: readonly string[], known: readonly string[]): readonly string[] | string {
  if (named.length === 0) return 'Unexpected call without a source, expected files or folders of the content'
  const found = new Set<string>()
  for (const one of named) {
    const path = one.replace(/^\.\//u, '').replace(/\/+$/u, '')
    const below = known.filter((source) => path === '.' || source === path || source.startsWith(`${path}/`))
    if (below.length === 0)
      return `Unexpected source \`${one}\`, expected \`${nearestWord(path, known) ?? ''}\` or another file or folder of the content`
    for (const source of below) found.add(source)
  }
  return [...found].sort()
}

/** approvals.yaml as the tool writes it: the same signatures give the same bytes. */
function approvalsText(approvals: readonly (PlainApproval | Approval)[]): string {
  const plain = approvals.map((one) => ({
    file: one.file,
    hash: one.hash,
    signatures: one.signatures.map(({role, by, date, statement}) => ({
      role,
      by: typeof by === 'string' ? by : by.id,
      date,
      statement,
    })),
  }))
  return `# Written by \`sheetanchor approve\`: who answers for each source as it reads now.\n${stringify({approvals: plain}, {lineWidth: 0, defaultStringType: 'QUOTE_DOUBLE', defaultKeyType: 'PLAIN'})}`
}

function used(reason: string): Outcome {
  return {exitStatus: 2, out: '', err: `${reason}\n`}
}
