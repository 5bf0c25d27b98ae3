import type {WrittenCondition} from '../../handbook-model/condition.ts'
import type {Reference} from '../../handbook-model/datum.ts'
import {drawnFigures} from '../../handbook-model/drawn-figures.ts'
import {portableValueIds} from '../../handbook-model/portable-lengths.ts'
import type {Procedure, RichText, SectionItem, Step, StepPart} from '../../handbook-model/procedure.ts'
import {valuesBehindStations} from '../../handbook-model/station-places.ts'

/** An id in a procedure whose meaning belongs to the design of a pump, and the conditions under which it is printed. */
export interface DesignReference {
  readonly kind: 'value' | 'limit' | 'joint' | 'figure'
  readonly reference: Reference
  readonly under: readonly WrittenCondition[]
}

/** An id that a procedure names, of its design, of another procedure or of the parts list. */
type NamedReference = DesignReference | OtherReference<'procedure'> | OtherReference<'part'>

type OtherReference<Kind> = Omit<DesignReference, 'kind'> & {readonly kind: Kind}

type Conditional = {readonly when?: WrittenCondition}

/** Every value, limit, joint and drawing of a pump that a procedure asks for, in reading order. */
export function designReferences(procedure: Procedure): readonly DesignReference[] {
  return namedReferences(procedure).filter((one) => one.kind !== 'procedure' && one.kind !== 'part')
}

/** Every procedure to which a procedure sends its reader, in reading order. */
export function procedureReferences(procedure: Procedure): readonly Omit<DesignReference, 'kind'>[] {
  return namedReferences(procedure).filter((one) => one.kind === 'procedure')
}

/** Every part to which a text points, in reading order. */
export function partReferences(procedure: Procedure): readonly Omit<DesignReference, 'kind'>[] {
  return namedReferences(procedure).filter((one) => one.kind === 'part')
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
    case 'figure':
      return ofFigure(part, under)
    default:
      return []
  }
}

/** What a figure is drawn from; a pump without it is told. */
function ofFigure(
  {figure, place}: Extract<StepPart, {readonly kind: 'figure'}>,
  under: readonly WrittenCondition[],
): readonly NamedReference[] {
  const [name = '', id = ''] = figure.split(':')
  if (name === 'tightening-order') return [{kind: 'joint', reference: {id, place}, under}]
  if (figure in drawnFigures) return [{kind: 'figure', reference: {id: figure, place}, under}]
  if (name === 'portable-arrangement')
    return portableValueIds.map((value) => ({kind: 'value', reference: {id: value, place}, under}))
  if (name === 'stations')
    return valuesBehindStations(figure).map((value) => ({
      kind: 'value',
      reference: {id: value, place},
      under,
    }))
  if (figure === 'lowering' || figure === 'raising')
    return [
      {kind: 'value', reference: {id: `lowering.${name}-torque`, place}, under},
      {kind: 'joint', reference: {id: 'head-flange-bolts', place}, under},
    ]
  const value = {'seal-orientation': 'lips', lift: 'rated-load'}[name]
  return value ? [{kind: 'value', reference: {id: `${id}.${value}`, place}, under}] : []
}

function inText(text: RichText, under: readonly WrittenCondition[]): readonly NamedReference[] {
  return text.flatMap((inline): readonly NamedReference[] => {
    if (inline.kind === 'value') return [{kind: 'value', reference: inline.value, under}]
    if (inline.kind === 'procedure') return [{kind: 'procedure', reference: inline.procedure, under}]
    if (inline.kind === 'part') return [{kind: 'part', reference: inline.part, under}]
    return inline.kind === 'strong' || inline.kind === 'emphasis' ? inText(inline.children, under) : []
  })
}
