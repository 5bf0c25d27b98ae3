import {barKey, type PageUpdate} from '../handbook-model/page-update.ts'
import type {Page} from '../handbook-model/pages.ts'

/** A page whose changed blocks say `bar: true`, for its template. */
export interface BarredPage {
  readonly page: Page
  /** Blocks without an id of their own: purpose, people, states, heading. */
  readonly blocks: Readonly<Record<string, true>>
}

/** Where the walk stands: the section, step or hold point, and what the ids of blocks begin with there. */
interface Place {
  readonly within: string
  readonly prefix: string
}

/** Marks the blocks of a page that an update changed; a page without one is given back as it is. */
export function withBars(page: Page, update: PageUpdate | undefined): BarredPage {
  const bars = update?.bars ?? new Set<string>()
  if (bars.size === 0) return {page, blocks: {}}
  const blocks = [...bars].filter((key) => key.startsWith(barKey('', ''))).map((key) => key.slice(1))
  const copy = structuredClone(page)
  markBelow(copy, {within: '', prefix: ''}, bars, page.kind)
  return {page: copy, blocks: Object.fromEntries(blocks.map((block) => [block, true]))}
}

function markBelow(value: unknown, place: Place, bars: ReadonlySet<string>, kind: Page['kind']): void {
  if (Array.isArray(value)) for (const one of value) markBelow(one, place, bars, kind)
  else if (typeof value === 'object' && value !== null) markObject(value, place, bars, kind)
}

function markObject(
  value: object,
  {within, prefix}: Place,
  bars: ReadonlySet<string>,
  kind: Page['kind'],
): void {
  const id = 'id' in value && typeof value.id === 'string' ? value.id : ''
  const isItem = 'kind' in value && (value.kind === 'step' || value.kind === 'hold')
  const isSection = 'items' in value && 'cautions' in value
  const inner = isItem || isSection ? id : within
  for (const [key, child] of Object.entries(value)) {
    if (key === 'head' || key === 'figure') continue
    const ofDesign = 'torques' in value ? `${id}.` : undefined
    markBelow(child, {within: inner, prefix: ofDesign ?? prefixOf(key, inner, kind)}, bars, kind)
  }
  if (id !== '' && bars.has(barKey(inner, `${prefix}${id}`))) Object.assign(value, {bar: true})
}

/** What the technical text puts before the ids of a list. */
function prefixOf(key: string, within: string, kind: Page['kind']): string {
  if (key === 'cautions' || key === 'caution') return 'caution-'
  if (within !== '' || (kind !== 'procedure' && kind !== 'job')) return ''
  return key === 'tools' ? 'tool-' : key === 'parts' ? 'part-' : ''
}
