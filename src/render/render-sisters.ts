import Handlebars from 'handlebars'
import {chosenByBox} from './render-impact.ts'

/** The page of sister pumps as plain strings. */
export interface SistersView {
  readonly words: Readonly<Record<string, string | Readonly<Record<string, string>>>>
  readonly issuer: string
  readonly demonstration: string
  readonly designs: readonly {
    readonly id: string
    readonly title: string
    readonly lead: string
    readonly lengths: string
    readonly items: readonly {
      readonly id: string
      readonly title: string
      readonly sides: readonly {
        readonly usual: boolean
        readonly text: string
        readonly count: string
        readonly on: string
        readonly at: string
        readonly reasons: readonly {readonly reason: string; readonly on: string}[]
        readonly unexplained: string
      }[]
    }[]
  }[]
}

/**
 * Renders the page of what differs between sister pumps: one file that needs no other, and no script.
 *
 * @throws {Error}
 *   When one of its templates is missing.
 */
export function renderSisters(view: SistersView, templates: ReadonlyMap<string, string>): string {
  const found = (path: string): string => {
    const text = templates.get(path)
    if (text === undefined) throw new Error(`Unexpected templates without \`${path}\`, expected the file`)
    return text
  }
  const styles = [
    chosenByBox(found('styles/1-palettes.css')),
    found('alone/impact.css'),
    found('alone/sisters.css'),
  ].join('')
  return Handlebars.create().compile(found('alone/sisters.hbs'), {preventIndent: true})({...view, styles})
}
