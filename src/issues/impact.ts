import type {PageChange} from '../technical-text/compare-texts.ts'
import {identityIn} from '../technical-text/identity-in.ts'
import type {ValueMove} from '../technical-text/value-moves.ts'
import {differenceAreas, type PageDifference, pageDifferences} from './page-differences.ts'

/** A difference with every page on which it is the same. */
export interface Difference extends Omit<PageDifference, 'lines'> {
  readonly pages: readonly string[]
}

/** A value that moved, with the pages whose technical text shows it. */
export interface MovedValue extends ValueMove {
  readonly pages: readonly string[]
}

/** A page that an edit moves. */
export interface MovedPage {
  readonly page: string
  /** Name of the vessel, tag of the pump and title as the page says them. */
  readonly vessel: string
  readonly tag?: string
  readonly title: string
  readonly change: PageChange['kind']
  /** Lines of its technical text that differ. */
  readonly lines: number
  /** What the newest ledger calls it. */
  readonly revision?: string
}

/** What an edit moves. */
export interface Impact {
  readonly values: readonly MovedValue[]
  readonly differences: readonly Difference[]
  readonly pages: readonly MovedPage[]
}

/** Technical texts by page id before and after, with what differs between them. */
export interface ImpactInput {
  readonly before: ReadonlyMap<string, string>
  readonly after: ReadonlyMap<string, string>
  readonly pages: readonly PageChange[]
  readonly values: readonly ValueMove[]
  readonly pumps: ReadonlySet<string>
  readonly revisionOf: (page: string) => string | undefined
}

/**
 * Orders what differs so that each thing is judged once: a value with all its pages, then every other difference with
 * all pages on which it is the same.
 *
 * Each line that differs stands in exactly one value, difference, or page that came or went.
 */
export function impactOf(input: ImpactInput): Impact {
  const pagesOfMove = new Map<ValueMove, Set<string>>(input.values.map((move) => [move, new Set<string>()]))
  const grouped = new Map<string, {readonly difference: PageDifference; readonly pages: Set<string>}>()
  for (const change of input.pages) {
    if (change.kind !== 'changed') continue
    for (const difference of pageDifferences(change.lines)) {
      const move = input.values.find((one) => tells(one, difference, change.page, input.pumps))
      if (move) {
        pagesOfMove.get(move)?.add(change.page)
        continue
      }
      const {lines: _lines, ...shown} = difference
      const key = JSON.stringify(shown)
      const known = grouped.get(key)
      if (known) known.pages.add(change.page)
      else grouped.set(key, {difference, pages: new Set([change.page])})
    }
  }
  const differences = [...grouped.values()].map(
    ({difference: {lines: _lines, ...difference}, pages}): Difference => ({...difference, pages: [...pages]}),
  )
  return {
    values: input.values.map((move) => ({...move, pages: [...(pagesOfMove.get(move) ?? [])]})),
    differences: differenceAreas.flatMap((area) => differences.filter((one) => one.area === area)),
    pages: input.pages.map((change) => movedPage(change, input)),
  }
}

/** True where a difference on a page is nothing but a value that moved: its figure, a further figure or its condition. */
function tells(
  move: ValueMove,
  {area, block, before, after}: PageDifference,
  page: string,
  pumps: ReadonlySet<string>,
): boolean {
  if (area !== 'values') return false
  const [vessel = '', middle = ''] = page.split('/')
  if (vessel !== move.vessel) return false
  if (pumps.has(`${vessel}/${middle}`) && !move.positions.includes(middle)) return false
  const inTable = block.split('.').slice(1).join('.')
  const isOwn =
    block === move.value ||
    (inTable !== '' && (inTable === move.value || move.value.startsWith(`${inTable}.`)))
  return isOwn && isPartOf(before, move.before) && isPartOf(after, move.after)
}

function isPartOf(texts: readonly string[], printed: ValueMove['before']): boolean {
  const parts = printed ? [printed.figure, ...printed.figure.split(' · '), printed.condition] : []
  return texts.every((text) => parts.includes(text))
}

function movedPage(change: PageChange, {before, after, revisionOf}: ImpactInput): MovedPage {
  const text = after.get(change.page) ?? before.get(change.page) ?? ''
  const tag = identityIn(text, 'position')
  const revision = revisionOf(change.page)
  return {
    page: change.page,
    vessel: identityIn(text, 'vessel') ?? '',
    title: identityIn(text, 'title') ?? '',
    change: change.kind,
    lines: change.kind === 'changed' ? change.lines.length : 0,
    ...(tag === undefined ? {} : {tag}),
    ...(revision === undefined ? {} : {revision}),
  }
}
