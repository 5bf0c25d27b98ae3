import type {Design} from '../handbook-model/design-content.ts'
import type {FactDeclaration} from '../handbook-model/office-content.ts'
import type {Position, Vessel} from '../handbook-model/vessel-content.ts'
import type {Facts} from './decide-condition.ts'

/**
 * Facts of one pump: vessel, then design, then as fitted; a later one replaces an earlier one.
 *
 * A fact that is declared for the position is taken from the position alone: what vessel or design say of it is a
 * default, and a default is never taken as fitted. Where the position is silent the fact is unknown.
 */
export function factsOfPosition(
  vessel: Vessel,
  design: Design,
  position: Position,
  declared: readonly FactDeclaration[],
): Facts {
  const asFitted = new Set(declared.filter((one) => one.scope === 'position').map((one) => one.id))
  const shared = [...vessel.facts, ...design.facts].filter(({fact}) => !asFitted.has(fact.id))
  const facts = new Map<string, string | undefined>([
    ['vessel', vessel.id],
    ['design', design.id],
    ['role', position.role],
  ])
  for (const {fact, value} of [...shared, ...position.facts]) facts.set(fact.id, value)
  return facts
}
