import type {WrittenCondition} from '../../handbook-model/condition.ts'
import type {Reference} from '../../handbook-model/datum.ts'
import type {Procedure, RichText, SectionItem, Step, StepPart} from '../../handbook-model/procedure.ts'

/** An id in a procedure whose meaning belongs to the design of a pump, and the conditions under which it is printed. */
export interface DesignReference {
  readonly kind: 'value' | 'limit' | 'joint'
  readonly reference: Reference
  readonly under: readonly WrittenCondition[]
}

type Conditional = {readonly when?: WrittenCondition}

/** Every value, limit and joint that a procedure asks for, in reading order. */
export function designReferences(procedure: Procedure): readonly DesignReference[] {
  return [
    ...[...procedure.purpose, ...procedure.before].flatMap((text) => inText(text, [])),
    ...procedure.sections.flatMap((section) => [
      ...section.intro.flatMap((text) => inText(text, whenOf(section))),
      ...section.items.flatMap((item) => inItem(item, whenOf(section))),
    ]),
    ...procedure.after.flatMap((text) => inText(text, [])),
  ]
}

function whenOf({when}: Conditional): readonly WrittenCondition[] {
  return when ? [when] : []
}

function inItem(item: SectionItem, above: readonly WrittenCondition[]): readonly DesignReference[] {
  const under = [...above, ...whenOf(item)]
  return item.kind === 'hold-point' ? item.text.flatMap((text) => inText(text, under)) : inStep(item, under)
}

function inStep(step: Step, under: readonly WrittenCondition[]): readonly DesignReference[] {
  return [...inText(step.instruction, under), ...step.parts.flatMap((part) => inPart(part, under))]
}

function inPart(part: StepPart, above: readonly WrittenCondition[]): readonly DesignReference[] {
  const under = [...above, ...('when' in part ? whenOf(part) : [])]
  switch (part.kind) {
    case 'note':
      return inText(part.text, under)
    case 'value':
      return [{kind: 'value', reference: part.value, under}]
    case 'wait':
      return [{kind: 'value', reference: part.least, under}]
    case 'alternatives':
      return part.items.flatMap((one) => inText(one.text, [...under, ...whenOf(one)]))
    case 'reading':
    case 'derived':
      return part.limits.map((reference) => ({kind: 'limit', reference, under}))
    case 'figure': {
      const [name, joint = ''] = part.figure.split(':')
      const reference = {id: joint, place: part.place}
      return name === 'tightening-order' ? [{kind: 'joint', reference, under}] : []
    }
    default:
      return []
  }
}

function inText(text: RichText, under: readonly WrittenCondition[]): readonly DesignReference[] {
  return text.flatMap((inline): readonly DesignReference[] => {
    if (inline.kind === 'value') return [{kind: 'value', reference: inline.value, under}]
    return inline.kind === 'strong' || inline.kind === 'emphasis' ? inText(inline.children, under) : []
  })
}
