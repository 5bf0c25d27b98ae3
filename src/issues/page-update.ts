import {barKey, type PageUpdate, type RemovedBlock, type RemovedKind} from '../handbook-model/page-update.ts'
import {type PlacedChange, placedChanges} from '../technical-text/compare-texts.ts'
import {isRenumbering} from '../technical-text/line-changes.ts'
import type {TechnicalLine} from '../technical-text/technical-line.ts'
import type {NamedText} from './issue-text.ts'
import type {Ledger, PageEntry} from './ledger.ts'

/**
 * What the revision of a page changed, or undefined where it is the first.
 *
 * The text with which the revision began is held against the last text of the one before it. Letters move wording
 * alone, line for line, so that the places found there are those of the page as it reads now, and they bring no bar.
 *
 * @param lines
 *   Lines of the page's technical text as it reads now.
 * @param texts
 *   Technical texts of issues by their hash.
 * @throws {Error}
 *   When a text is missing that was proved to be there when the ledger was read.
 */
export function pageUpdate(
  lines: readonly TechnicalLine[],
  entry: PageEntry,
  texts: ReadonlyMap<string, string>,
): PageUpdate | undefined {
  if (entry.revision === 1) return undefined
  const reasons = entry.reasons ?? []
  if (entry.previousHash === undefined) return {reasons, bars: new Set(), removed: [], compared: false}
  const begun = entry.revisionHash ?? entry.hash
  const changes = placedChanges(textOf(entry.previousHash, texts), textOf(begun, texts))
  return {reasons, ...marksOf(changes, lines), compared: true}
}

/** The texts that the marks of a ledger's pages are told from. */
export function textsBehind({vessel, pages}: Ledger): readonly NamedText[] {
  return Object.entries(pages).flatMap(([page, {revision, previousHash, revisionHash, hash, withdrawn}]) =>
    previousHash === undefined || withdrawn
      ? []
      : [
          {vessel, page, revision: revision - 1, hash: previousHash},
          {vessel, page, revision, hash: revisionHash ?? hash},
        ],
  )
}

function textOf(hash: string, texts: ReadonlyMap<string, string>): string {
  const text = texts.get(hash)
  if (text === undefined) throw new Error(`Unexpected gap at text ${hash}, expected every text of the ledger`)
  return text
}

function marksOf(
  changes: readonly PlacedChange[],
  lines: readonly TechnicalLine[],
): Pick<PageUpdate, 'bars' | 'removed'> {
  const keys = lines.map(({within = '', block}) => barKey(within, block))
  const known = new Set(keys)
  const bars = new Set<string>()
  const removed = new Map<string, RemovedBlock>()
  for (const change of changes) {
    if (isRenumbering(change)) continue
    const {at, block, kind} = change
    const key = change.after === undefined ? keyAround(block, at, lines, known) : keys[at]
    if (key !== undefined) bars.add(key)
    else {
      const afterStep = lines.slice(0, at).findLast((line) => line.kind === 'number')?.text ?? ''
      const what = removedKind(block, kind)
      const place = barKey(afterStep, block)
      const before = removed.get(place)
      if (!before || before.what === 'line') removed.set(place, {what, id: block, afterStep})
    }
  }
  return {bars, removed: [...removed.values()]}
}

/** Key of the block that lost a line, where it is still there at the place. */
function keyAround(
  block: string,
  at: number,
  lines: readonly TechnicalLine[],
  known: ReadonlySet<string>,
): string | undefined {
  return [lines[at - 1], lines[at]]
    .map((line) => barKey(line?.within ?? '', block))
    .find((key) => known.has(key))
}

function removedKind(block: string, kind: string): RemovedKind {
  const [first = ''] = kind.split(' ')
  if (block.startsWith('urgent-')) return 'urgent'
  if (block.startsWith('caution-')) return 'caution'
  if (['isolation', 'isolate', 'restore'].includes(first)) return 'isolation'
  const known: readonly RemovedKind[] = ['step', 'hold', 'value', 'limit', 'reading', 'tool', 'part']
  return known.find((one) => one === first) ?? 'line'
}
