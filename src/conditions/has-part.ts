import type {Content} from '../handbook-model/content.ts'
import type {Design} from '../handbook-model/design-content.ts'
import type {Part} from '../handbook-model/office-content.ts'
import type {Facts} from './decide-condition.ts'
import {serves} from './serves.ts'

/**
 * Whether a part is fitted to a pump; one for which a fact is open counts as fitted.
 *
 * Its own condition says so. Without one a pump has what the seals and O-rings of its design name and what a procedure
 * for it lists; a part that no design names and no procedure lists is on all of them.
 */
export function hasPart(
  part: Part,
  {design, facts}: {readonly design: Design; readonly facts: Facts},
  {designs, procedures}: Pick<Content, 'designs' | 'procedures'>,
): boolean {
  if (part.when) return serves(part, facts)
  if (partsOfDesign(design).includes(part.id)) return true
  const lines = [...procedures.values()].flatMap((procedure) =>
    procedure.parts.filter((line) => line.part.id === part.id).map((line) => ({procedure, line})),
  )
  if (lines.length > 0)
    return lines.some(({procedure, line}) => serves(procedure, facts) && serves(line, facts))
  return ![...designs.values()].some((one) => partsOfDesign(one).includes(part.id))
}

/** Ids of the parts that a design states by itself: seals and O-rings. */
export function partsOfDesign({seals, oRings}: Design): readonly string[] {
  return [...seals, ...oRings].map(({part}) => part.id)
}
