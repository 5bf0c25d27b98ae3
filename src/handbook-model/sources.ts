import type {Root} from 'mdast'
import type {Place} from '../messages/place.ts'

/**
 * Product of `read`: every content file as a tree whose leaves know their place.
 *
 * YAML scalars are kept as text (no guessing of types), each with its place.
 */
export interface ContentSources {
  /** YAML files by path below the content folder, sorted. */
  readonly yaml: ReadonlyMap<string, PlacedNode>
  readonly csv: ReadonlyMap<string, CsvSource>
  readonly markdown: ReadonlyMap<string, MarkdownSource>
  /** Ledgers: issues/<vessel>/<issue>.json as text. */
  readonly ledgers: ReadonlyMap<string, string>
}

export type PlacedNode = PlacedScalar | PlacedList | PlacedMap

export interface PlacedScalar {
  readonly kind: 'scalar'
  readonly text: string
  readonly place: Place
}

export interface PlacedList {
  readonly kind: 'list'
  readonly items: readonly PlacedNode[]
  readonly place: Place
}

export interface PlacedMap {
  readonly kind: 'map'
  readonly entries: readonly {readonly key: PlacedScalar; readonly value: PlacedNode}[]
  readonly place: Place
}

/** A CSV file: `# key: value` lines of its head, then header cells, then rows of cells. */
export interface CsvSource {
  readonly head: ReadonlyMap<string, PlacedScalar>
  readonly header: readonly PlacedScalar[]
  readonly rows: readonly (readonly PlacedScalar[])[]
  readonly place: Place
}

/** A Markdown file: front matter as a placed tree, the rest as a Markdown tree with positions in the whole file. */
export interface MarkdownSource {
  readonly frontMatter: PlacedNode | undefined
  readonly tree: Root
  readonly place: Place
}
