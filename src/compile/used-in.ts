import {serves} from '../conditions/serves.ts'
import type {WrittenCondition} from '../handbook-model/condition.ts'
import type {Content} from '../handbook-model/content.ts'
import type {Job} from '../handbook-model/office-content.ts'
import {onceForEach} from '../handbook-model/once-for-each.ts'
import type {PageLink, PlacesInProcedure} from '../handbook-model/pages.ts'
import type {CautionUse, Procedure} from '../handbook-model/procedure.ts'
import type {PumpDesk} from './desk.ts'
import {elementId, procedurePageId, procedurePath} from './page-paths.ts'
import {standingSections} from './standing-items.ts'
import {type ValueUse, valuesShown} from './values-shown.ts'
import {standing} from './variant.ts'
import {wordsEn} from './words-en.ts'

/** Every section and step that calls for a caution, by its number on the first pump where it stands. */
export function stepsWithCaution(caution: string, desks: readonly PumpDesk[]): readonly PlacesInProcedure[] {
  return proceduresOf(desks).flatMap((procedure) => {
    const links = new Map<string, {link: PageLink; pumps: number}>()
    const served = desks.filter(({facts}) => serves(procedure, facts))
    for (const desk of served) {
      for (const {id, text} of cautionUses(caution, procedure, desk)) {
        const known = links.get(id)
        if (known) known.pumps += 1
        else
          links.set(id, {
            link: {
              text,
              path: procedurePath(procedure, desk),
              fragment: elementId(procedure.id, id),
            },
            pumps: 1,
          })
      }
    }
    const places = [...links.values()].map(({link, pumps}) => ({
      ...link,
      text: wordsEn.onPumps(link.text, pumps, ofTheirKind(served, desks).length),
    }))
    return places.length > 0 ? [{procedure: procedure.title, places}] : []
  })
}

/** Pumps that hang in tanks, portable ones, or both, as those that are served. */
function ofTheirKind(served: readonly PumpDesk[], desks: readonly PumpDesk[]): readonly PumpDesk[] {
  return desks.filter(({tank}) => served.some((one) => (one.tank === undefined) === (tank === undefined)))
}

function cautionUses(
  caution: string,
  procedure: Procedure,
  desk: PumpDesk,
): readonly {id: string; text: string}[] {
  const stands = (uses: readonly CautionUse[]): boolean =>
    uses.some((use) => use.caution.id === caution && standing(use.when, desk).stands)
  return standingSections(procedure, desk).flatMap(({section, items}) => {
    const own = stands(section.cautions) ? [{id: section.id, text: wordsEn.section(section.title)}] : []
    const steps = items.flatMap((item) =>
      item.kind === 'step' && stands(item.step.cautions)
        ? [{id: item.step.id, text: wordsEn.step(item.number)}]
        : [],
    )
    return [...own, ...steps]
  })
}

/** Procedures that use a tool or a part, linked on the first pump on which they do. */
export function proceduresUsing(
  linesOf: (procedure: Procedure) => readonly {readonly when?: WrittenCondition}[],
  desks: readonly PumpDesk[],
): readonly PageLink[] {
  return proceduresOf(desks).flatMap((procedure) => {
    const lines = linesOf(procedure)
    const first = desks.find(
      (desk) => serves(procedure, desk.facts) && lines.some(({when}) => standing(when, desk).stands),
    )
    return first ? [{text: procedure.title, path: procedurePath(procedure, first)}] : []
  })
}

/** Every place of this pump's procedures that shows a value: step, hold point, section, or the page where it stands outside them. */
export function proceduresShowing(value: string, desk: PumpDesk): readonly PageLink[] {
  return placesOfValues(desk).get(value) ?? []
}

const placesOfValues = onceForEach((desk: PumpDesk): ReadonlyMap<string, readonly PageLink[]> => {
  const places = new Map<string, PageLink[]>()
  for (const procedure of proceduresOf([desk])) {
    const seen = new Set<string>()
    for (const use of valuesShown(procedure, desk)) {
      const key = `${use.value} ${use.at?.id ?? ''}`
      if (seen.has(key)) continue
      seen.add(key)
      const link = linkOf(use, procedure, desk)
      const links = places.get(use.value)
      if (links) links.push(link)
      else places.set(use.value, [link])
    }
  }
  return places
})

/** Ids of the procedure pages of a vessel that show a value standing on a source, in page order. */
export function pagesStandingOn(source: string, desks: readonly PumpDesk[]): readonly string[] {
  const ids = desks.flatMap((desk) =>
    proceduresOf([desk])
      .filter((procedure) =>
        valuesShown(procedure, desk).some(({value}) =>
          desk.values.get(value)?.sources.some((use) => use.source === source),
        ),
      )
      .map((procedure) => procedurePageId(procedure, desk)),
  )
  return [...new Set(ids)]
}

function linkOf({at}: ValueUse, procedure: Procedure, desk: PumpDesk): PageLink {
  const path = procedurePath(procedure, desk)
  if (!at) return {text: procedure.title, path}
  const fragment = elementId(procedure.id, at.id)
  if (at.kind === 'step') return {text: wordsEn.atStep(procedure.title, at.number), path, fragment}
  const words = at.kind === 'section' ? wordsEn.atSection : wordsEn.atHold
  return {text: words(procedure.title, at.title), path, fragment}
}

/**
 * Procedures for any of these pumps, whatever their scope, in the order of the work: as the longest job that holds them
 * has them, then those of no job by their ids.
 */
export function proceduresOf(desks: readonly PumpDesk[]): readonly Procedure[] {
  const content: Content | undefined = desks[0]?.content
  if (!content) return []
  const jobs = [...content.jobs.values()].sort((a, b) => b.procedures.length - a.procedures.length)
  const order: string[] = []
  for (const job of jobs) {
    let last = -1
    for (const {id} of job.procedures) {
      const known = order.indexOf(id)
      if (known === -1) order.splice(last + 1, 0, id)
      last = order.indexOf(id)
    }
  }
  return [...content.procedures.values()]
    .filter((procedure) => desks.some((desk) => serves(procedure, desk.facts)))
    .sort((a, b) => placeIn(order, a.id) - placeIn(order, b.id))
}

/** Jobs for any of these pumps. */
export function jobsOf(desks: readonly PumpDesk[]): readonly Job[] {
  const jobs = [...(desks[0]?.content.jobs.values() ?? [])]
  return jobs.filter((job) => desks.some((desk) => serves(job, desk.facts)))
}

function placeIn(order: readonly string[], id: string): number {
  const place = order.indexOf(id)
  return place === -1 ? order.length : place
}
