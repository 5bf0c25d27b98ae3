import type {HandbookPages} from '../handbook-model/handbook-pages.ts'
import type {PageHead, PageState} from '../handbook-model/pages.ts'
import type {AlikePages, ListedUrgent, NamedPage, PartLink} from '../handbook-model/publication.ts'
import {identityIn} from '../technical-text/identity-in.ts'
import type {Ledger, PageEntry} from './ledger.ts'

/** What the pages about an issue are made from. */
export interface PublicationInput {
  readonly pages: HandbookPages
  readonly states: ReadonlyMap<string, PageState>
  readonly ledger: Ledger | undefined
  /** The issue before the newest one. */
  readonly earlier: Ledger | undefined
  /** Technical texts of issues by their hash. */
  readonly texts: ReadonlyMap<string, string>
}

/** "2031-03 of 2031-03-14"; blank before the first issue. */
export function issueWords(ledger: Ledger | undefined): string {
  return ledger ? `${ledger.issue} of ${ledger.date}` : ''
}

/** Addresses of the parts of a list: `effective.html`, `effective-2.html`. */
export function partsOf(name: string, count: number): readonly PartLink[] {
  return Array.from({length: count}, (_, index) => ({
    number: index + 1,
    path: index === 0 ? `${name}.html` : `${name}-${index + 1}.html`,
  }))
}

/** Id of a part of a list. */
export function partId(vessel: string, name: string, number: number): string {
  return `${vessel}/${name}${number === 1 ? '' : `-${number}`}`
}

/** Head of a page about the issue. */
export function publicationHead(id: string, path: string, title: string): PageHead {
  return {id, shownAs: title, path, title, language: 'en', madeFrom: []}
}

/** Urgent revisions of a folder with their pages, in order of their numbers. */
export function listedUrgent(
  pages: HandbookPages,
  states: ReadonlyMap<string, PageState>,
): readonly ListedUrgent[] {
  const found = new Map<string, Omit<ListedUrgent, 'pages'> & {readonly pages: readonly NamedPage[]}>()
  for (const {head} of pages.pages)
    for (const {number, title, validTo, from, to} of head.urgent ?? []) {
      const state = states.get(head.id)
      const page = {
        id: head.id,
        title: head.title,
        path: head.path,
        revision: state?.kind === 'issued' ? `${state.revision}${state.suffix}` : '',
      }
      const known = found.get(number)
      found.set(number, {number, title, validTo, from, to, pages: [...(known?.pages ?? []), page]})
    }
  return [...found.values()]
    .map((one) => ({...one, pages: alike(one.pages)}))
    .sort((a, b) => (a.number < b.number ? -1 : 1))
}

/** Pages in their order, those of one title, revision and reason together. */
export function alike(pages: readonly (NamedPage & {readonly reason?: string})[]): readonly AlikePages[] {
  const groups = new Map<string, AlikePages>()
  for (const {id, path, title, revision, reason = ''} of pages) {
    const key = JSON.stringify([title, revision, reason])
    const known = groups.get(key)
    groups.set(key, {title, revision, reason, pages: [...(known?.pages ?? []), {id, path}]})
  }
  return [...groups.values()]
}

/** A page of the ledger by name: its title is read from its technical text. */
export function named(id: string, entry: PageEntry, texts: ReadonlyMap<string, string>): NamedPage {
  return {
    id,
    title: identityIn(texts.get(entry.hash), 'title') ?? id,
    path: entry.path,
    revision: `${entry.revision}${entry.suffix ?? ''}`,
  }
}
