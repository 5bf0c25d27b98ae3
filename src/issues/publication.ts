import type {PageHead} from '../handbook-model/pages.ts'
import type {
  EffectiveLine,
  EffectivePage,
  EffectiveStatus,
  PublicationPage,
  WithdrawnPage,
} from '../handbook-model/publication.ts'
import {identityIn} from '../technical-text/identity-in.ts'
import type {PageEntry} from './ledger.ts'
import {
  issueWords,
  listedUrgent,
  named,
  type PublicationInput,
  partId,
  partsOf,
  publicationHead,
} from './publication-head.ts'
import {whatChanged} from './what-changed.ts'

/** Lines of the list on one page. */
const linesOfPart = 300

/** List of effective pages, what changed, a stub for each withdrawn page that the ledger lists, and the records. */
export function publicationPages(input: PublicationInput): readonly PublicationPage[] {
  const stubs = stubsOf(input)
  const changed = whatChanged(input)
  const {records} = input.pages
  const own = [...changed, ...records].map(({head}) => head)
  return [...effectivePages(input, stubs, own), ...changed, ...stubs, ...records]
}

function effectivePages(
  {pages, states, ledger, earlier, texts}: PublicationInput,
  stubs: readonly WithdrawnPage[],
  others: readonly PageHead[],
): readonly EffectivePage[] {
  const present = pages.pages.map(({head}): EffectiveLine => {
    const state = states.get(head.id)
    const issued = state?.kind === 'issued' ? state : undefined
    return {
      id: head.id,
      title: head.title,
      path: head.path,
      revision: issued ? `${issued.revision}${issued.suffix}` : '',
      date: issued?.date ?? '',
      code: issued?.checkCode ?? '',
      status: issued ? statusOf(ledger?.pages[head.id], earlier?.pages[head.id]) : 'draft',
    }
  })
  const here = new Set(present.map(({id}) => id))
  const gone = Object.entries(ledger?.pages ?? {}).filter(([id]) => !here.has(id))
  const lines = [
    ...present,
    ...gone.map(
      ([id, entry]): EffectiveLine => ({
        ...named(id, entry, texts),
        path: stubs.find(({head}) => head.id === id)?.head.path ?? '',
        date: entry.date,
        code: entry.code,
        status: entry.withdrawn ? 'withdrawn' : 'gone',
      }),
    ),
  ].sort((a, b) => (a.id < b.id ? -1 : 1))
  const without = [
    ...others.map(({id, title, path}) => ({id, title, path})),
    {id: `${pages.vessel.id}/issue`, title: 'issue in its frame', path: 'issue.html'},
    {id: `${pages.vessel.id}/store`, title: 'memory of this computer', path: 'hub/store.html'},
  ].map((one): EffectiveLine => ({...one, revision: '', date: '', code: '', status: 'publication'}))
  const total = lines.length + without.length
  const count = Math.max(1, Math.ceil(total / (linesOfPart - 1)))
  const parts = partsOf('effective', count)
  const own = parts.map(({number, path}): EffectiveLine => {
    const id = partId(pages.vessel.id, 'effective', number)
    return {
      id,
      title: 'list of effective pages',
      path,
      revision: '',
      date: '',
      code: '',
      status: 'publication',
    }
  })
  const all = [...lines, ...without, ...own]
  const urgent = listedUrgent(pages, states)
  return parts.map(({number, path}) => ({
    kind: 'effective',
    head: publicationHead(partId(pages.vessel.id, 'effective', number), path, 'List of effective pages'),
    issue: issueWords(ledger),
    parts: parts.length > 1 ? parts : [],
    first: number === 1,
    urgent: number === 1 ? urgent : [],
    count: all.length,
    lines: all.slice(Math.ceil(all.length / count) * (number - 1), Math.ceil(all.length / count) * number),
  }))
}

function statusOf(now: PageEntry | undefined, before: PageEntry | undefined): EffectiveStatus {
  if (!now || !before || before.withdrawn) return 'new'
  if (now.hash === before.hash) return 'same'
  return now.revision === before.revision ? 'wording' : 'changed'
}

function stubsOf({pages, ledger, texts}: PublicationInput): readonly WithdrawnPage[] {
  const taken = new Set(pages.pages.map(({head}) => head.path))
  return Object.entries(ledger?.pages ?? {}).flatMap(([id, entry]): WithdrawnPage[] => {
    const {withdrawn, path} = entry
    if (!withdrawn || taken.has(path)) return []
    const replacing = withdrawn.replacedBy
    const page = pages.pages.find(({head}) => head.id === replacing)?.head
    const later = replacing === undefined ? undefined : ledger?.pages[replacing]
    const replacedBy = page
      ? {id: page.id, title: page.title, path: page.path, revision: ''}
      : replacing !== undefined && later
        ? named(replacing, later, texts)
        : undefined
    return [
      {
        kind: 'withdrawn',
        head: publicationHead(id, path, stubTitle(id, texts.get(entry.hash))),
        revision: `${entry.revision}${entry.suffix ?? ''}`,
        code: entry.code,
        date: withdrawn.date,
        reason: withdrawn.reason,
        ...(replacedBy ? {replacedBy} : {}),
      },
    ]
  })
}

/** Tag of the pump, where it is a page of one, and the title that the page had. */
function stubTitle(id: string, text: string | undefined): string {
  const tag = identityIn(text, 'position')
  const title = identityIn(text, 'title') ?? id
  return tag === undefined ? title : `${tag} · ${title}`
}
