import type {Truth} from '../handbook-model/condition.ts'
import type {Content} from '../handbook-model/content.ts'
import type {Design} from '../handbook-model/design-content.ts'
import type {Part} from '../handbook-model/office-content.ts'
import {decideCondition, type Facts} from './decide-condition.ts'
import {serves} from './serves.ts'

/** A pump, with what is known of it. */
interface PumpOfPart {
  readonly design: Design
  readonly facts: Facts
}

type PartsOfContent = Pick<Content, 'designs' | 'procedures'>

/** Whether a pump has a part, or may have it: one for which a fact is open counts as fitted. */
export function hasPart(part: Part, pump: PumpOfPart, content: PartsOfContent): boolean {
  return isFitted(part, pump, content) !== 'false'
}

/**
 * Whether a part is fitted to a pump; `unknown` where a fact is open.
 *
 * Its own condition says so. Without one the procedures for the pump decide that list it anywhere, by the conditions of
 * their lines; then the seals and O-rings of its design. A part that no procedure lists and no design names is on all pumps.
 */
export function isFitted(
  part: Part,
  {design, facts}: PumpOfPart,
  {designs, procedures}: PartsOfContent,
): Truth {
  if (part.when) return decideCondition(part.when.condition, facts)
  const lines = [...procedures.values()].flatMap((procedure) =>
    procedure.parts.filter((line) => line.part.id === part.id).map((line) => ({procedure, line})),
  )
  const listed = lines
    .filter(({procedure}) => serves(procedure, facts))
    .map(({line}): Truth => (line.when ? decideCondition(line.when.condition, facts) : 'true'))
  if (listed.length > 0)
    return listed.find((one) => one === 'true') ?? listed.find((one) => one === 'unknown') ?? 'false'
  if (partsOfDesign(design).includes(part.id)) return 'true'
  const isToldOf =
    lines.length > 0 || [...designs.values()].some((one) => partsOfDesign(one).includes(part.id))
  return isToldOf ? 'false' : 'true'
}

/** Ids of the parts that a design states by itself: seals and O-rings. */
export function partsOfDesign({seals, oRings}: Design): readonly string[] {
  return [...seals, ...oRings].map(({part}) => part.id)
}
