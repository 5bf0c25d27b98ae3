import {desksOfVessel} from '../compile/desk.ts'
import {pagesStandingOn} from '../compile/used-in.ts'
import type {ComputedValues} from '../handbook-model/computed.ts'
import type {Content} from '../handbook-model/content.ts'

/** A source with the values that stand on it. */
export interface SourceUseRow {
  readonly source: string
  readonly values: readonly string[]
}

/** A superseded source with the pages that show a value standing on it. */
export interface SupersededRow extends SourceUseRow {
  readonly pages: readonly string[]
}

/** Superseded sources under the values of some vessels, with the pages of these vessels that stand on them. */
export function supersededSources(
  content: Content,
  values: ComputedValues,
  vessels: readonly string[],
): readonly SupersededRow[] {
  const used = sourcesUsed(values, vessels)
  return [...content.sources.values()].flatMap(({id: source, status}) => {
    const ids = used.get(source)
    return ids && status === 'superseded'
      ? [
          {
            source,
            values: [...ids].sort(),
            pages: vessels.flatMap((vessel) =>
              pagesStandingOn(source, desksOfVessel(content, values, vessel)),
            ),
          },
        ]
      : []
  })
}

/** Every page of each superseded source, a line each. */
export function supersededPagesText(rows: readonly SupersededRow[]): readonly string[] {
  return rows.flatMap(({source, pages}) => [
    `pages that stand on ${source}: ${pages.length}`,
    ...pages.map((page) => `    ${page}`),
  ])
}

/** Ids of the values of some vessels by the sources that they stand on. */
export function sourcesUsed(
  values: ComputedValues,
  vessels: readonly string[] = [...values.vessels.keys()],
): ReadonlyMap<string, ReadonlySet<string>> {
  const used = new Map<string, Set<string>>()
  for (const vessel of vessels)
    for (const ofPump of values.vessels.get(vessel)?.values() ?? [])
      for (const {id, sources} of ofPump.values())
        for (const {source} of sources) used.set(source, (used.get(source) ?? new Set<string>()).add(id))
  return used
}
