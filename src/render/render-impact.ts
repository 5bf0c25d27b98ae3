import {diffArrays} from 'diff'
import Handlebars from 'handlebars'

/** One difference: a number, what it is, both sides line by line, and where it stands. */
export interface ImpactItem {
  readonly number: number
  readonly name: string
  readonly title: string
  readonly change: string
  readonly before: readonly string[]
  readonly after: readonly string[]
  readonly places: readonly {readonly label: string; readonly text: string}[]
  /** True where both sides are figures, printed large. */
  readonly figure: boolean
}

/** Differences of one kind. */
export interface ImpactSection {
  readonly id: string
  readonly title: string
  readonly hint: string
  readonly items: readonly ImpactItem[]
}

/** The reviewer's page as plain strings. */
export interface ImpactView {
  readonly words: Readonly<Record<string, string | Readonly<Record<string, string>>>>
  readonly issuer: string
  readonly demonstration: string
  readonly bases: readonly {readonly name: string; readonly against: string}[]
  readonly counts: readonly {readonly label: string; readonly count: string}[]
  readonly sections: readonly ImpactSection[]
  readonly total: string
  readonly pages: readonly {
    readonly id: string
    readonly pump: string
    readonly title: string
    readonly revision: string
    readonly change: string
  }[]
}

/** Words of one side; those that the other side does not have are marked. */
interface MarkedWords {
  readonly text: string
  readonly only: boolean
}

/**
 * Renders the page of what an edit moves: one file that needs no other, and no script.
 *
 * @throws {Error}
 *   When one of its templates is missing.
 */
export function renderImpact(view: ImpactView, templates: ReadonlyMap<string, string>): string {
  const found = (path: string): string => {
    const text = templates.get(path)
    if (text === undefined) throw new Error(`Unexpected templates without \`${path}\`, expected the file`)
    return text
  }
  const styles = [chosenByBox(found('styles/1-palettes.css')), found('alone/impact.css')].join('')
  const engine = Handlebars.create()
  return engine.compile(found('alone/impact.hbs'), {preventIndent: true})({
    ...view,
    styles,
    sections: view.sections.map((section) => ({
      ...section,
      items: section.items.map((item) => ({...item, ...markedSides(item)})),
    })),
  })
}

/** The palettes of the handbooks, chosen by a box of the page itself: nothing is remembered, no script is asked. */
export function chosenByBox(palettes: string): string {
  return palettes
    .replace(/\[data-palette=([a-z]+)\]/gu, ':root:has(#palette-$1:checked)')
    .replaceAll(':root:not([data-palette])', ':root:has(#palette-pc:checked)')
}

function markedSides({before, after}: ImpactItem): {
  readonly was: readonly (readonly MarkedWords[])[]
  readonly is: readonly (readonly MarkedWords[])[]
} {
  const plain = (text: string): readonly MarkedWords[] => [{text, only: false}]
  const [was, is] = [before[0], after[0]]
  if (was === undefined || is === undefined || before.length > 1 || after.length > 1)
    return {was: before.map(plain), is: after.map(plain)}
  const parts = diffArrays(wordsOf(was), wordsOf(is))
  const side = (other: 'added' | 'removed', own: 'added' | 'removed'): readonly MarkedWords[] =>
    parts.filter((part) => !part[other]).map((part) => ({text: part.value.join(''), only: part[own]}))
  return {was: [side('added', 'removed')], is: [side('removed', 'added')]}
}

/** Words and the blanks between them, each on its own. */
function wordsOf(text: string): string[] {
  return text.match(/\s+|\S+/gu) ?? []
}
