import {isDay, laterDay} from '../handbook-model/comparison-date.ts'
import type {ContentSources, PlacedNode} from '../handbook-model/sources.ts'

/** Keys under which content says when something happened. A day on which something will be due is none of them. */
const daysThatWere: ReadonlySet<string> = new Set(['built', 'installed', 'date', 'cured'])

/** The newest day on which anything in the files of the office, designs, vessels and procedures, or in a column of days, happened. */
export function newestDay(sources: ContentSources): string | undefined {
  const frontMatters = [...sources.markdown.values()].flatMap(({frontMatter}) => frontMatter ?? [])
  const days = [...sources.csv.values()].flatMap((csv) => {
    const column = csv.header.findIndex(({text}) => text === 'day')
    return csv.rows.flatMap((row) => (isDay(row[column]?.text ?? '') ? [row[column]?.text] : []))
  })
  return [...[...sources.yaml.values(), ...frontMatters].map(newestBelow), ...days].reduce(
    laterDay,
    undefined,
  )
}

function newestBelow(node: PlacedNode): string | undefined {
  if (node.kind === 'scalar') return undefined
  if (node.kind === 'list') return node.items.map(newestBelow).reduce(laterDay, undefined)
  return node.entries
    .map(({key, value}) => {
      if (value.kind !== 'scalar') return newestBelow(value)
      return daysThatWere.has(key.text) && isDay(value.text) ? value.text : undefined
    })
    .reduce(laterDay, undefined)
}
