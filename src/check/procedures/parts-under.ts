import type {WrittenCondition} from '../../handbook-model/condition.ts'
import type {StepPart} from '../../handbook-model/procedure.ts'
import {addMessage} from '../../messages/add-message.ts'
import type {Desk} from './directive.ts'

/**
 * What stands below `:::only`: each part under its condition, and under its own where it has one.
 *
 * A point that is isolated and a fact that is found out stand on every pump of their step: under a condition of their
 * own nobody would miss their other half.
 */
export function partsUnder(
  when: WrittenCondition | undefined,
  parts: readonly StepPart[],
  desk: Desk,
): readonly StepPart[] {
  return parts.flatMap((part): readonly StepPart[] => {
    if ('role' in part || 'fact' in part) {
      addMessage(
        desk.files,
        part.place,
        'no-misplaced-directive',
        `Unexpected \`${part.kind}\` inside \`only\`, expected it outside`,
        {note: 'Write a step of its own with `when`'},
      )
      return []
    }
    if (!when) return [part]
    return [{...part, when: part.when ? both(when, part.when) : when}]
  })
}

function both(outer: WrittenCondition, inner: WrittenCondition): WrittenCondition {
  const operands = [outer.condition, inner.condition]
  return {
    condition: {kind: 'and', operands, place: inner.condition.place},
    text: `(${outer.text}) and (${inner.text})`,
  }
}
