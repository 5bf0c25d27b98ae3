import type {WrittenCondition} from '../../handbook-model/condition.ts'
import type {Reference} from '../../handbook-model/datum.ts'
import {drawnFigures} from '../../handbook-model/drawn-figures.ts'
import type {Procedure, RichText, SectionItem, Step, StepPart} from '../../handbook-model/procedure.ts'

/** An id in a procedure whose meaning belongs to the design of a pump, and the conditions under which it is printed. */
export interface DesignReference {
  readonly kind: 'value' | 'limit' | 'joint' | 'figure'
  readonly reference: Reference
  readonly under: readonly WrittenCondition[]
}

/** An id that a procedure names, of its design or of another procedure. */
type NamedReference = DesignReference | (Omit<DesignReference, 'kind'> & {readonly kind: 'procedure'})

type Conditional = {readonly when?: WrittenCondition}

/** Every value, limit, joint and drawing of a pump that a procedure asks for, in reading order. */
export function designReferences(procedure: Procedure): readonly DesignReference[] {
  return namedReferences(procedure).filter((one) => one.kind !== 'procedure')
}

/** Every procedure to which a procedure sends its reader, in reading order. */
export function procedureReferences(procedure: Procedure): readonly Omit<DesignReference, 'kind'>[] {
  return namedReferences(procedure).filter((one) => one.kind === 'procedure')
}

function namedReferences(procedure: Procedure): readonly NamedReference[] {
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

function inItem(item: SectionItem, above: readonly WrittenCondition[]): readonly NamedReference[] {
  const under = [...above, ...whenOf(item)]
  return item.kind === 'hold-point' ? item.text.flatMap((text) => inText(text, under)) : inStep(item, under)
}

function inStep(step: Step, under: readonly WrittenCondition[]): readonly NamedReference[] {
  return [...inText(step.instruction, under), ...step.parts.flatMap((part) => inPart(part, under))]
}

function inPart(part: StepPart, above: readonly WrittenCondition[]): readonly NamedReference[] {
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
      const [name, id = ''] = part.figure.split(':')
      const {place} = part
      if (part.figure in drawnFigures) return [{kind: 'figure', reference: {id: part.figure, place}, under}]
      if (name === 'tightening-order') return [{kind: 'joint', reference: {id, place}, under}]
      const lips = {id: `${id}.lips`, place}
      return name === 'seal-orientation' ? [{kind: 'value', reference: lips, under}] : []
    }
    default:
      return []
  }
}

function inText(text: RichText, under: readonly WrittenCondition[]): readonly NamedReference[] {
  return text.flatMap((inline): readonly NamedReference[] => {
    if (inline.kind === 'value') return [{kind: 'value', reference: inline.value, under}]
    if (inline.kind === 'procedure') return [{kind: 'procedure', reference: inline.procedure, under}]
    return inline.kind === 'strong' || inline.kind === 'emphasis' ? inText(inline.children, under) : []
  })
}
