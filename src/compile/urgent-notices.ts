import {serves} from '../conditions/serves.ts'
import type {Page, UrgentNotice} from '../handbook-model/pages.ts'
import type {UrgentRevision} from '../handbook-model/urgent-content.ts'
import {rankOfWord} from './caution-numbers.ts'
import type {PumpDesk} from './desk.ts'
import {unique} from './made-from.ts'
import {standingSections} from './standing-items.ts'
import type {UrgentUse} from './urgent-use.ts'
import {wordsEn} from './words-en.ts'

/** A page with the urgent revisions that stand above it, the gravest first. */
export function withUrgent<P extends Page>(page: P, uses: readonly UrgentUse[], desk: PumpDesk): P {
  if (uses.length === 0) return page
  const sorted = [...uses].sort(
    (a, b) => rankOfWord[a.revision.word] - rankOfWord[b.revision.word] || compare(a.revision, b.revision),
  )
  return {
    ...page,
    head: {
      ...page.head,
      urgent: sorted.map((use) => urgentNotice(use, desk)),
      madeFrom: unique([...page.head.madeFrom, ...sorted.map(({revision}) => revision.place.path)]),
    },
  }
}

function compare(one: UrgentRevision, other: UrgentRevision): number {
  return one.id < other.id ? -1 : 1
}

function urgentNotice({revision, variant, pumps}: UrgentUse, desk: PumpDesk): UrgentNotice {
  const words = wordsEn.urgent
  const supersedes = revision.supersedes.map(({id}) => id)
  return {
    block: `urgent-${revision.id}`,
    number: revision.number,
    title: revision.title.en,
    validFrom: revision.validFrom.id,
    validTo: revision.validTo.id,
    from: words.from(revision.validFrom.id),
    to: words.to(revision.validTo.id),
    variant: variant ?? '',
    pumps: pumps.length === 0 ? '' : words.pumps(pumps),
    reason: words.reason(revision.reason.en),
    word: revision.word,
    hazard: revision.hazard.en,
    consequence: revision.consequence.en,
    actions: revision.do.map((line) => line.en),
    instead: [
      ...revision.values.flatMap(({value, instead}) => {
        const replaced = desk.values.get(value.id)
        return replaced ? [{what: words.instead(replaced.title), text: instead.id}] : []
      }),
      ...revision.steps.flatMap(({procedure, step, instead}) => {
        const place = placeOfStep(procedure.id, step.id, desk)
        return place === undefined ? [] : [{what: words.instead(place), text: instead.en}]
      }),
    ],
    supersedes: supersedes.length === 0 ? '' : words.supersedes(supersedes),
    cancelledBy: words.cancelledBy(revision.cancelledBy.en),
  }
}

/** "Wear ring check · step 4", where the step stands on this pump. */
function placeOfStep(procedureId: string, stepId: string, desk: PumpDesk): string | undefined {
  const procedure = desk.content.procedures.get(procedureId)
  if (!procedure || !serves(procedure, desk.facts)) return undefined
  for (const {items} of standingSections(procedure, desk))
    for (const item of items)
      if (item.kind === 'step' && item.step.id === stepId) return wordsEn.atStep(procedure.title, item.number)
  return undefined
}
