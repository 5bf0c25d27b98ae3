import type {HoldPoint, Procedure, Section, Step} from '../handbook-model/procedure.ts'
import type {PumpDesk} from './desk.ts'
import {onceOnEachPump} from './once-on-each-pump.ts'
import {standing} from './variant.ts'

/** A section of a procedure with those of its items that stand on one pump; steps carry their number on the page. */
export interface StandingSection {
  readonly section: Section
  readonly items: readonly StandingItem[]
}

export type StandingItem =
  | {readonly kind: 'step'; readonly step: Step; readonly number: number}
  | {readonly kind: 'hold-point'; readonly hold: HoldPoint}

/**
 * What of a procedure stands on one pump, numbered as on its page.
 *
 * A section of which nothing stands is left out, so that no link leads to it.
 */
export const standingSections: (procedure: Procedure, desk: PumpDesk) => readonly StandingSection[] =
  onceOnEachPump(sectionsStanding)

function sectionsStanding(procedure: Procedure, desk: PumpDesk): readonly StandingSection[] {
  let number = 0
  return procedure.sections.flatMap((section) => {
    if (!standing(section.when, desk).stands) return []
    const items = section.items.flatMap((item): readonly StandingItem[] => {
      if (!standing(item.when, desk).stands) return []
      if (item.kind === 'hold-point') return [{kind: item.kind, hold: item}]
      number += 1
      return [{kind: item.kind, step: item, number}]
    })
    return items.length > 0 ? [{section, items}] : []
  })
}
