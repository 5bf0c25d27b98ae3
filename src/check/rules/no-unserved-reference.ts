import {decideCondition} from '../../conditions/decide-condition.ts'
import {serves} from '../../conditions/serves.ts'
import type {Procedure} from '../../handbook-model/procedure.ts'
import {addMessage, type ContentFiles} from '../../messages/add-message.ts'
import type {Pump} from '../pump.ts'
import {procedureReferences} from './design-references.ts'

/**
 * A procedure sends nobody to a procedure that is not for this pump.
 *
 * Told once for each reference, at the first pump on whose page it would lead nowhere. A page of the ship or of a design
 * stands once for all its pumps: it names no procedure that one of them has not, whichever pump its links lead to.
 *
 * Accepted: `:procedure[lay out the hoses]{ref=hoses}` below `when="role = portable"`, where `hoses` has the same `when`.
 * Rejected: the same reference without the condition, in a procedure for every pump; a page of the ship for every pump that
 * leads to the isolation of pumps in tanks.
 */
export function noUnservedReference(
  procedure: Procedure,
  procedures: ReadonlyMap<string, Procedure>,
  pumps: readonly Pump[],
  files: ContentFiles,
): void {
  const served = pumps.filter(({facts}) => serves(procedure, facts))
  for (const {reference, under} of procedureReferences(procedure)) {
    const other = procedures.get(reference.id)
    const lost =
      other &&
      served.find(
        ({facts}) =>
          !serves(other, facts) &&
          under.every(({condition}) => decideCondition(condition, facts) !== 'false'),
      )
    if (!other || !lost) continue
    addMessage(
      files,
      reference.place,
      'no-undefined-reference',
      `Unexpected reference to \`${other.id}\` on position \`${lost.position.id}\` of \`${lost.vessel.id}\`, which it is not for, expected a procedure of this pump`,
      {
        note: `Write the condition \`${other.when?.text ?? ''}\` at the step, or widen the \`when:\` of \`${other.id}\``,
        cause: other.place,
      },
    )
  }
}
