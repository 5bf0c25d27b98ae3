import type {Reference} from '../handbook-model/datum.ts'
import type {ContentSources, PlacedNode, PlacedScalar} from '../handbook-model/sources.ts'

/**
 * Every place at which data names the source of a value: origins, values with an origin of their own, cautions, tables.
 *
 * A value whose source is not in sources.yaml would be printed with a source that nobody can look up.
 */
export function sourceReferences(sources: ContentSources): readonly Reference[] {
  const inYaml = [...sources.yaml].flatMap(([path, node]) =>
    path === 'sources.yaml' ? [] : sourcesBelow(node),
  )
  const inTables = [...sources.csv.values()].flatMap((csv) => {
    const column = csv.header.findIndex((cell) => cell.text === 'source')
    return [csv.head.get('source'), ...csv.rows.map((row) => row[column])]
  })
  return [...inYaml, ...inTables].flatMap((cell) => (cell ? [{id: cell.text.trim(), place: cell.place}] : []))
}

function sourcesBelow(node: PlacedNode): readonly PlacedScalar[] {
  if (node.kind === 'scalar') return []
  if (node.kind === 'list') return node.items.flatMap(sourcesBelow)
  return node.entries.flatMap(({key, value}) =>
    key.text === 'source' && value.kind === 'scalar' ? [value] : sourcesBelow(value),
  )
}
