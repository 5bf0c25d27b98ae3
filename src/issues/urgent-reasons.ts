import type {EndedUrgent} from '../handbook-model/approval-content.ts'
import type {UrgentRevision} from '../handbook-model/urgent-content.ts'
import {addMessage, type ContentFiles} from '../messages/add-message.ts'
import type {LineChange} from '../technical-text/compare-texts.ts'
import type {Ledger} from './ledger.ts'

/** An urgent revision says itself why a page moves: its reason by the path of its file. */
export function reasonsOfUrgent(
  changed: readonly string[],
  urgent: readonly UrgentRevision[],
): ReadonlyMap<string, string> {
  return new Map(
    urgent.flatMap(({place, number, reason}): [string, string][] =>
      changed.includes(place.path) ? [[place.path, `urgent revision ${number}: ${reason.en}`]] : [],
    ),
  )
}

/**
 * Why urgent revisions stand on a page no more, one reason each.
 *
 * One that is superseded says so. One whose file is gone is asked for under `ended:` of changes.yaml: a deleted file has
 * no signature, and without it the old figures print again.
 */
export function reasonsOfEnded(
  lines: readonly LineChange[],
  {
    facts,
    ended,
    urgent,
  }: {
    readonly facts: Pick<Ledger, 'sources'>
    readonly ended: readonly EndedUrgent[]
    readonly urgent: readonly UrgentRevision[]
  },
  files: ContentFiles,
  told: Set<string>,
): readonly string[] {
  return lines.flatMap(({block, kind, before, after}): readonly string[] => {
    if (kind !== 'urgent' || !block.startsWith('urgent-') || after !== undefined || before === undefined)
      return []
    if (facts.sources[`urgent/${before.toLowerCase()}.yaml`] !== undefined) return []
    const later = urgent.find(({supersedes}) => supersedes.some(({id}) => id === before))
    if (later) return [`urgent revision ${before} superseded by ${later.number}`]
    const own = ended.find((one) => one.urgent.id === before)
    if (own) return [`urgent revision ${before} ended: ${own.reason}`]
    if (!told.has(before))
      addMessage(
        files,
        {path: 'changes.yaml', line: 1, column: 1},
        'no-unexplained-change',
        `Unexpected end of urgent revision \`${before}\`, expected it under \`ended:\` with its reason and who has seen it`,
        {note: `Add \`- {urgent: ${before}, reason: …, reviewed-by: …}\` to \`ended:\` of changes.yaml`},
      )
    told.add(before)
    return []
  })
}
