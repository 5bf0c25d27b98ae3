import type {Procedure} from '../../handbook-model/procedure.ts'
import type {Trial} from '../../handbook-model/trial-content.ts'
import type {Vessel} from '../../handbook-model/vessel-content.ts'
import {addMessage, type ContentFiles} from '../../messages/add-message.ts'
import {refersTo} from '../identity.ts'
import type {KnownIds} from '../known-ids.ts'
import {nearestWord} from '../nearest-word.ts'

/**
 * A trial says where a procedure was tried, and by a role: a name of a person has no place in it.
 *
 * Accepted: `{procedure: wear-rings, vessel: vessel-a, position: 4s, role: second engineer, …}`.
 * Rejected: the same without `position` for a procedure on a pump; `role:` with a word that no procedure names.
 */
export function noUnplacedTrial(
  trial: Trial,
  known: {
    readonly procedures: ReadonlyMap<string, Procedure>
    readonly procedureIds: KnownIds
    readonly vessels: ReadonlyMap<string, Vessel>
    readonly vesselIds: KnownIds
  },
  files: ContentFiles,
): void {
  const isKnown = refersTo(trial.procedure, known.procedureIds, 'procedure', files)
  const isAboard = refersTo(trial.vessel, known.vesselIds, 'vessel', files)
  const procedure = known.procedures.get(trial.procedure.id)
  const vessel = known.vessels.get(trial.vessel.id)
  if (isKnown && isAboard && trial.position && vessel)
    refersTo(trial.position, new Map(vessel.positions.map((one) => [one.id, one])), 'position', files)
  if (procedure && !trial.position && procedure.scope !== 'vessel')
    addMessage(
      files,
      trial.place,
      'no-unplaced-trial',
      `Unexpected trial of \`${procedure.id}\` without \`position:\`, expected the pump on which it was tried`,
      {note: 'Name the pump: what is tried on one design is not tried on another'},
    )
  const roles = new Set(
    [...known.procedures.values()].flatMap((one) => [one.performedBy.en, one.supervisedBy.en]),
  )
  if (known.procedures.size === 0 || roles.has(trial.role.id)) return
  addMessage(
    files,
    trial.role.place,
    'no-unplaced-trial',
    `Unexpected role \`${trial.role.id}\` of a trial, expected \`${nearestWord(trial.role.id, [...roles]) ?? ''}\` or another role that a procedure names`,
    {note: 'Write a role of `performed-by` or `supervised-by`, never the name of a person'},
  )
}
