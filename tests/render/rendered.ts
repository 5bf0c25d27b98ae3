import type {PageState} from '../../src/handbook-model/pages.ts'
import {type RenderInput, renderHandbook} from '../../src/render/render-handbook.ts'
import {fixture} from './fixture-pages.ts'
import {publication} from './fixture-publication.ts'
import {templates} from './templates-on-disk.ts'

/** What rendering the fixture takes; every page is a draft. */
export function inputOf(more: Partial<RenderInput> = {}): RenderInput {
  const draft: PageState = {kind: 'draft'}
  return {
    pages: fixture,
    states: new Map(fixture.pages.map((page) => [page.head.id, draft])),
    templates,
    runtime: {head: 'head()', page: 'page()', hub: 'hub()', charts: 'charts()'},
    publication,
    issue: undefined,
    ...more,
  }
}

/** Text of every rendered file by its path. */
export function textsOf(input: RenderInput): ReadonlyMap<string, string> {
  const decoder = new TextDecoder()
  return new Map(renderHandbook(input).map(({path, bytes}) => [path, decoder.decode(bytes)]))
}

/** Text of one file. */
export function fileAt(files: ReadonlyMap<string, string>, path: string): string {
  const text = files.get(path)
  if (text === undefined) throw new Error(`Unexpected gap at ${path}, expected a rendered file`)
  return text
}
