import type {Design, Position, Vessel} from '../handbook-model/vessel-content.ts'
import type {Facts} from './decide-condition.ts'

/**
 * Facts of one pump: vessel, then design, then as fitted; a later one replaces an earlier one.
 *
 * A fact that the position does not state and that is not of vessel or design stays unknown: the design default is never taken as fitted.
 */
export function factsOfPosition(vessel: Vessel, design: Design, position: Position): Facts {
  const facts = new Map<string, string | undefined>([
    ['vessel', vessel.id],
    ['design', design.id],
  ])
  for (const {fact, value} of [...vessel.facts, ...design.facts, ...position.facts]) facts.set(fact.id, value)
  return facts
}
