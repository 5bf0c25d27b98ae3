import type {Content} from '../handbook-model/content.ts'
import type {PageLink} from '../handbook-model/pages.ts'
import type {Procedure} from '../handbook-model/procedure.ts'
import type {PumpDesk} from './desk.ts'
import {elementId, procedurePath} from './page-paths.ts'
import {valueIdsOf} from './procedure-page.ts'
import {standing} from './variant.ts'

/** Every step of every procedure that calls for a caution, on the first pump where it stands. */
export function stepsWithCaution(caution: string, desks: readonly PumpDesk[]): readonly PageLink[] {
  return proceduresOf(desks).flatMap((procedure) => {
    const links = new Map<string, {link: PageLink; pumps: number}>()
    for (const desk of desks) {
      for (const {id, text} of usesOf(caution, procedure, desk)) {
        const known = links.get(id)
        if (known) known.pumps += 1
        else links.set(id, {link: {text: `${procedure.title}: ${text}`, path: procedurePath(desk.position.id, procedure.id), fragment: elementId(procedure.id, id)}, pumps: 1})
      }
    }
    return [...links.values()].map(({link, pumps}) => ({...link, text: `${link.text} (${pumps} of ${desks.length} pumps)`}))
  })
}

function usesOf(caution: string, procedure: Procedure, desk: PumpDesk): readonly {id: string; text: string}[] {
  return procedure.sections.flatMap((section) => {
    if (!standing(section.when, desk).stands) return []
    const stands = (uses: typeof section.cautions): boolean => uses.some((use) => use.caution.id === caution && standing(use.when, desk).stands)
    const own = stands(section.cautions) ? [{id: section.id, text: `section ${section.title.toLowerCase()}`}] : []
    const steps = section.items.flatMap((item) => (item.kind === 'step' && standing(item.when, desk).stands && stands(item.cautions) ? [{id: item.id, text: `step ${item.id.replaceAll('-', ' ')}`}] : []))
    return [...own, ...steps]
  })
}

/** Procedures that use a tool or a part, linked on the first pump. */
export function proceduresUsing(uses: (procedure: Procedure) => boolean, desks: readonly PumpDesk[]): readonly PageLink[] {
  const [first] = desks
  if (!first) return []
  return proceduresOf(desks).filter(uses).map((procedure) => ({text: procedure.title, path: procedurePath(first.position.id, procedure.id)}))
}

/** Procedures that show a value. */
export function proceduresShowing(value: string, desk: PumpDesk): readonly PageLink[] {
  return proceduresOf([desk])
    .filter((procedure) => valueIdsOf(procedure).includes(value))
    .map((procedure) => ({text: procedure.title, path: procedurePath(desk.position.id, procedure.id)}))
}

/** Procedures of a vessel's pumps in order of their ids. */
export function proceduresOf(desks: readonly PumpDesk[]): readonly Procedure[] {
  const content: Content | undefined = desks[0]?.content
  return content ? [...content.procedures.values()].filter((procedure) => procedure.scope === 'position') : []
}
