import {contractVersion} from '../browser-contract/page-contract.ts'
import type {HandbookPages} from '../handbook-model/handbook-pages.ts'
import type {VesselHead} from '../handbook-model/pages.ts'
import type {PublicationPage} from '../handbook-model/publication.ts'
import {interfaceWords} from './words-en.ts'

/** What the templates of pages about the issue can reach as `@root`. */
export interface PublicationView {
  readonly page: PublicationPage
  readonly vessel: VesselHead
  readonly words: typeof interfaceWords
  readonly contract: number
  readonly base: string
  readonly body: string
  readonly documentTitle: string
  /** Has no title block: neither revision nor code. */
  readonly ofIssue: true
}

/** Makes a page about the issue ready for its template. */
export function publicationView(page: PublicationPage, {vessel}: HandbookPages): PublicationView {
  return {
    page,
    vessel,
    words: interfaceWords,
    contract: contractVersion,
    base: '../'.repeat(page.head.path.split('/').length - 1),
    body: page.kind,
    documentTitle: `${page.head.title} · ${vessel.name}`,
    ofIssue: true,
  }
}
