import Handlebars from 'handlebars'
import type {RenderedFile} from '../handbook-model/files.ts'
import type {HandbookPages} from '../handbook-model/handbook-pages.ts'
import type {BoundText, PageState} from '../handbook-model/pages.ts'
import type {PublicationPage} from '../handbook-model/publication.ts'
import {type PublicationView, publicationView} from './publication-view.ts'
import {richText} from './rich-text.ts'
import {stationRows} from './station-rows.ts'
import {type PageView, pageView} from './views.ts'

/** Styles of paper, a file of their own: linked for print, and for all media while sheets are measured. */
const paperStyles = 'styles/paper.css'

/** What rendering needs besides the page models. */
export interface RenderInput {
  readonly pages: HandbookPages
  readonly states: ReadonlyMap<string, PageState>
  /** Text of every template by path below templates/. */
  readonly templates: ReadonlyMap<string, string>
  /** Compiled scripts of the page runtime. */
  readonly runtime: {
    readonly head: string
    readonly page: string
    readonly hub: string
    readonly charts: string
  }
  /** Pages about the issue: effective pages, what changed, stubs of withdrawn pages. */
  readonly publication: readonly PublicationPage[]
  readonly issue: {readonly number: string; readonly date: string} | undefined
}

/**
 * Renders all files of one vessel.
 *
 * Templates print strings that stand ready; the one raw block is bound text, escaped by its own library.
 *
 * @throws {Error}
 *   When a template or a page's state is missing.
 */
export function renderHandbook(input: RenderInput): readonly RenderedFile[] {
  const engine = makeEngine(input.templates)
  const shell = engine.compile<PageView | PublicationView>('{{> shell}}', {
    strict: false,
    preventIndent: true,
  })
  const encoder = new TextEncoder()
  const file = (path: string, text: string): RenderedFile => ({path, bytes: encoder.encode(text)})
  const pages = input.pages.pages.map((page) => {
    const state = input.states.get(page.head.id)
    if (!state)
      throw new Error(`Unexpected page \`${page.head.id}\` without a state, expected one for every page`)
    return file(page.head.path, shell(pageView(page, input.pages, state)))
  })
  const paper = input.templates.get(paperStyles)
  if (paper === undefined)
    throw new Error(`Unexpected templates without \`${paperStyles}\`, expected the styles of paper`)
  const styles = [...input.templates]
    .filter(([path]) => path.startsWith('styles/') && path !== paperStyles)
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([, text]) => text)
  const issue = engine.compile('{{> issue}}', {preventIndent: true})({
    issue: input.issue,
    vessel: input.pages.vessel,
  })
  return [
    ...pages,
    ...input.publication.map((page) => file(page.head.path, shell(publicationView(page, input.pages)))),
    ...input.pages.figures.map(({path, svg}) => file(path, svg)),
    file('assets/site.css', styles.join('\n')),
    file('assets/paper.css', paper),
    file('assets/head.js', input.runtime.head),
    file('assets/page.js', input.runtime.page),
    file('assets/charts.js', input.runtime.charts),
    file('hub/store.js', input.runtime.hub),
    file('hub/store.html', engine.compile('{{> store}}')({})),
    file('issue.html', issue),
    file(
      'issue.js',
      `window.sheetanchor=window.sheetanchor||{};\nwindow.sheetanchor.issue=${JSON.stringify({version: 1, vessel: input.pages.vessel.id, number: input.issue?.number ?? null, date: input.issue?.date ?? null})};\n`,
    ),
  ]
}

function makeEngine(templates: ReadonlyMap<string, string>): typeof Handlebars {
  const engine = Handlebars.create()
  for (const [path, text] of templates) {
    const name = /^(?:pages|parts)\/(.+)\.hbs$/u.exec(path)?.[1]
    if (name !== undefined) engine.registerPartial(name, text.replace(/>\n</gu, '><'))
    const sign = /^signs\/(.+)\.svg$/u.exec(path)?.[1]
    if (sign !== undefined) engine.registerPartial(`sign-${sign}`, text.trim())
  }
  engine.registerHelper(
    'rich',
    (text: BoundText, options: Handlebars.HelperOptions) =>
      new Handlebars.SafeString(richText(text, baseOf(options))),
  )
  engine.registerHelper('each-row', (stations: readonly string[], options: Handlebars.HelperOptions) =>
    stationRows(stations)
      .map((row) => options.fn(row))
      .join(''),
  )
  engine.registerHelper('each-box', (count: number, options: Handlebars.HelperOptions) =>
    Array.from({length: count}, (_, index) => options.fn({number: index + 1})).join(''),
  )
  return engine
}

function baseOf(options: Handlebars.HelperOptions): string {
  const root: unknown = options.data?.root
  return typeof root === 'object' && root !== null && 'base' in root && typeof root.base === 'string'
    ? root.base
    : ''
}
