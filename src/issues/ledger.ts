import {z} from 'zod'
import {addMessage, type ContentFiles} from '../messages/add-message.ts'
import {checkCode} from '../technical-text/technical-hash.ts'

const hash = z.string().regex(/^[0-9a-f]{64}$/u)

const pageEntry = z.strictObject({
  revision: z.int().min(1),
  suffix: z
    .string()
    .regex(/^[a-z]?$/u)
    .optional(),
  date: z.iso.date(),
  code: z.string(),
  /** Of the technical text as it is issued. */
  hash,
  /** Of the text with which this revision began, where letters followed: the code is taken from it. */
  revisionHash: hash.optional(),
  /** Of the last text of the revision before this one; none where the page is new. */
  previousHash: hash.optional(),
  /** Address below the vessel folder: where the page is withdrawn, a stub stands there. */
  path: z.string(),
  /** Why this revision is there. */
  reasons: z.array(z.string()).optional(),
  withdrawn: z
    .strictObject({date: z.iso.date(), reason: z.string(), replacedBy: z.string().optional()})
    .optional(),
})

/** A page as an issue holds it. */
export type PageEntry = z.infer<typeof pageEntry>

const ledgerShape = z.strictObject({
  version: z.literal(1),
  vessel: z.string(),
  issue: z.string(),
  date: z.iso.date(),
  /** Day with which dates were compared. */
  asOf: z.iso.date(),
  /** Who issued it: a person of the office who may publish. */
  issuedBy: z.string(),
  toolVersion: z.string(),
  contentHash: hash,
  /** Of the list of all files of the published folder but its records, with their hashes. */
  manifestHash: hash,
  /** Hash of each source by its path. */
  sources: z.record(z.string(), hash),
  pages: z.record(z.string(), pageEntry),
})

/** One issue of a vessel's handbook: written by the tool, committed by the office, never edited. */
export type Ledger = z.infer<typeof ledgerShape>

/**
 * Reads the ledgers of one vessel, oldest first; a damaged one is a message.
 *
 * @param texts
 *   Files below content/issues by path.
 */
export function ledgersOf(
  vessel: string,
  texts: ReadonlyMap<string, string>,
  files: ContentFiles,
): readonly Ledger[] {
  const ledgers = [...texts]
    .filter(([path]) => path.startsWith(`issues/${vessel}/`) && path.endsWith('.json'))
    .flatMap(([path, text]) => readLedger(path, text, files) ?? [])
  return ledgers.sort((a, b) => (a.date === b.date ? compare(a.issue, b.issue) : compare(a.date, b.date)))
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0
}

/** One ledger from its text; one that was copied or edited is a message. */
export function readLedger(path: string, text: string, files: ContentFiles): Ledger | undefined {
  const note = {note: 'Take the file again from the commit of that issue: a ledger is never edited'}
  let data: unknown
  try {
    data = JSON.parse(text)
  } catch {
    addMessage(
      files,
      {path, line: 1, column: 1},
      'no-damaged-ledger',
      'Unexpected text that is not JSON, expected a ledger',
      note,
    )
    return undefined
  }
  const parsed = ledgerShape.safeParse(data)
  const fault = parsed.success
    ? faultOfLedger(path, parsed.data)
    : `Unexpected field \`${fieldOf(parsed.error.issues[0])}\` in the ledger, expected a ledger of version \`1\``
  if (fault === undefined) return parsed.data
  addMessage(files, {path, line: 1, column: 1}, 'no-damaged-ledger', fault, note)
  return undefined
}

/** A reason why the ledger is not the one that was written to this place, or undefined. */
function faultOfLedger(path: string, {vessel, issue, pages}: Ledger): string | undefined {
  const [, folder = '', name = ''] = path.split('/')
  if (vessel !== folder)
    return `Unexpected vessel \`${vessel}\` of the ledger, expected \`${folder}\` as its folder`
  if (`${issue}.json` !== name)
    return `Unexpected issue \`${issue}\` of the ledger, expected \`${name.replace(/\.json$/u, '')}\` as its name`
  for (const [page, {revision, hash, revisionHash, code}] of Object.entries(pages)) {
    if (!page.startsWith(`${vessel}/`))
      return `Unexpected page \`${page}\` in the ledger, expected pages of \`${vessel}\``
    const expected = checkCode(page, revision, revisionHash ?? hash)
    if (code !== expected)
      return `Unexpected check code \`${code}\` of page \`${page}\` in the ledger, expected \`${expected}\` for its revision and text`
  }
  return undefined
}

/** The field that does not fit, or the key that is not known. */
function fieldOf(issue: z.core.$ZodIssue | undefined): string {
  const keys = issue?.code === 'unrecognized_keys' ? issue.keys : []
  return [...(issue?.path ?? []), ...keys].join('.')
}
