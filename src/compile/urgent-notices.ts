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
  return {
    block: `urgent-${revision.id}`,
    number: revision.number,
    title: revision.title.en,
    validFrom: revision.validFrom.id,
    validTo: revision.validTo.id,
    variant: variant ?? '',
    pumps,
    reason: revision.reason.en,
    word: revision.word,
    hazard: revision.hazard.en,
    consequence: revision.consequence.en,
    actions: revision.do.map((line) => line.en),
    instead: [
      ...revision.values.flatMap(({value, instead}) => {
        const replaced = desk.values.get(value.id)
        return replaced ? [{what: replaced.title, text: instead.id}] : []
      }),
      ...revision.steps.flatMap(({procedure, step, instead}) => {
        const place = placeOfStep(procedure.id, step.id, desk)
        return place === undefined ? [] : [{what: place, text: instead.en}]
      }),
    ],
    supersedes: revision.supersedes.map(({id}) => id),
    cancelledBy: revision.cancelledBy.en,
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
