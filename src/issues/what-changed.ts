import type {PageHead} from '../handbook-model/pages.ts'
import type {ChangedLine, ChangedPage, ChangeGroup, NamedPage} from '../handbook-model/publication.ts'
import {compareTexts, type LineChange} from '../technical-text/compare-texts.ts'
import {doneTo, isRenumbering} from '../technical-text/line-changes.ts'
import {areaOfLines} from './page-differences.ts'
import {
  alike,
  issueWords,
  listedUrgent,
  named,
  type PublicationInput,
  partId,
  partsOf,
  publicationHead,
} from './publication-head.ts'

/** How much of the changes one page holds, in characters of its data. */
const sizeOfPart = 30_000

/**
 * What the newest issue changed against the one before it, on the pages of this ship alone.
 *
 * Pages that changed alike for the same reasons are told together; a list that is too long goes over to further pages.
 */
export function whatChanged({
  pages,
  states,
  ledger,
  earlier,
  texts,
}: PublicationInput): readonly ChangedPage[] {
  const heads = new Map(pages.pages.map(({head}): [string, PageHead] => [head.id, head]))
  const now = Object.entries(ledger?.pages ?? {}).map(([id, entry]) => {
    const page = named(id, entry, texts)
    return {id, entry, before: earlier?.pages[id], page: {...page, path: heads.get(id)?.path ?? page.path}}
  })
  const standing = now.filter(({entry}) => !entry.withdrawn)
  const moved = standing.filter(
    ({entry, before}) => before && !before.withdrawn && before.hash !== entry.hash,
  )
  const groups = grouped(
    moved
      .filter(({entry, before}) => entry.revision !== before?.revision)
      .map(({entry, before, page}) => ({
        page,
        reasons: entry.reasons ?? [],
        changes: compareTexts(texts.get(before?.hash ?? '') ?? '', texts.get(entry.hash) ?? ''),
      })),
  )
  const chunks = chunked(groups)
  const parts = partsOf('changed', chunks.length)
  return parts.map(({number, path}, index) => ({
    kind: 'changed',
    head: publicationHead(partId(pages.vessel.id, 'changed', number), path, 'What changed'),
    issue: issueWords(ledger),
    against: issueWords(earlier),
    parts: parts.length > 1 ? parts : [],
    first: index === 0,
    urgent: index === 0 ? listedUrgent(pages, states) : [],
    changes: chunks[index] ?? [],
    ...(index > 0
      ? {added: [], wording: [], withdrawn: []}
      : {
          added: earlier
            ? alike(standing.filter(({before}) => !before || before.withdrawn).map(({page}) => page))
            : [],
          wording: alike(
            moved.filter(({entry, before}) => entry.revision === before?.revision).map(({page}) => page),
          ),
          withdrawn: alike(
            now.flatMap(({entry, before, page}) =>
              entry.withdrawn && !before?.withdrawn ? [{...page, reason: entry.withdrawn.reason}] : [],
            ),
          ),
        }),
  }))
}

interface MovedPage {
  readonly page: NamedPage
  readonly reasons: readonly string[]
  readonly changes: readonly LineChange[]
}

function grouped(moved: readonly MovedPage[]): readonly ChangeGroup[] {
  const groups = new Map<string, Omit<ChangeGroup, 'pages'> & {readonly pages: readonly NamedPage[]}>()
  for (const {page, reasons, changes} of moved) {
    const kept = changes.filter((one) => !isRenumbering(one))
    const key = JSON.stringify([reasons, kept])
    const known = groups.get(key)
    groups.set(key, {
      reasons,
      pages: [...(known?.pages ?? []), page],
      steps: linesOf('steps', kept),
      cautions: linesOf('cautions', kept),
      values: linesOf('values', kept),
    })
  }
  return [...groups.values()].map((group) => ({...group, pages: alike(group.pages)}))
}

/** Lines of one part of the group; what is neither of steps nor of cautions stands with the values. */
function linesOf(
  part: 'steps' | 'cautions' | 'values',
  changes: readonly LineChange[],
): readonly ChangedLine[] {
  return changes
    .filter((one) => {
      const area = areaOfLines(one.block, [one])
      return (area === 'steps' || area === 'cautions' ? area : 'values') === part
    })
    .map(changedLine)
}

function changedLine(change: LineChange): ChangedLine {
  const {block, kind, before, after} = change
  return {
    done: doneTo(change),
    block: block.replace(/^.*--/u, ''),
    kind,
    before: before ?? '',
    after: after ?? '',
  }
}

/** Groups in their order, as many to a page as it holds; one page at least. */
function chunked(groups: readonly ChangeGroup[]): readonly (readonly ChangeGroup[])[] {
  const chunks: ChangeGroup[][] = [[]]
  let size = 0
  for (const group of groups) {
    const own = JSON.stringify(group).length
    if (size > 0 && size + own > sizeOfPart) {
      chunks.push([])
      size = 0
    }
    size += own
    chunks.at(-1)?.push(group)
  }
  return chunks
}
