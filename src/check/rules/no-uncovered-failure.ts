import {hasPart, partsOfDesign} from '../../conditions/has-part.ts'
import {serves} from '../../conditions/serves.ts'
import type {Design} from '../../handbook-model/design-content.ts'
import type {FailureRow, Part} from '../../handbook-model/office-content.ts'
import type {Procedure} from '../../handbook-model/procedure.ts'
import {addMessage, type ContentFiles} from '../../messages/add-message.ts'
import {refersTo} from '../identity.ts'
import type {KnownIds} from '../known-ids.ts'
import type {Pump} from '../pump.ts'

/** What the matrix is held against. */
interface Fleet {
  readonly parts: ReadonlyMap<string, Part>
  readonly procedures: ReadonlyMap<string, Procedure>
  readonly designs: ReadonlyMap<string, Design>
  /** Empty where not all of them could be read. */
  readonly pumps: readonly Pump[]
}

/**
 * Every way in which a fitted part fails has a procedure for each pump that has the part, or a written reason why there
 * is none; every fitted part has a row.
 *
 * What is not in the matrix is what the crew meets at night with nothing to read.
 *
 * Accepted: a row with `procedures: [wear-rings]`, or with `reason: exchanged by a yard`.
 * Rejected: a row with neither; one whose procedures are for other pumps; a part with a balloon, or that a design names
 * for a seal or an O-ring, and no row.
 */
export function noUncoveredFailure(
  failures: readonly FailureRow[],
  fleet: Fleet,
  known: {readonly procedures: KnownIds; readonly parts: KnownIds},
  files: ContentFiles,
): void {
  if (failures.length === 0) return
  for (const row of failures) {
    refersTo(row.part, known.parts, 'part', files)
    for (const reference of row.procedures) refersTo(reference, known.procedures, 'procedure', files)
    if (row.reason) continue
    if (row.procedures.length === 0) {
      addMessage(
        files,
        row.place,
        'no-uncovered-failure',
        `Unexpected failure \`${row.id}\` without a procedure, expected \`procedures:\` or a \`reason:\` why there is none`,
        {note: 'Name the procedure that finds or mends it, or write why the handbook has none'},
      )
    } else refuseUnserved(row, fleet, files)
  }
  refuseWithoutRow(failures, fleet, files)
}

/** One message for a row, at the first pump that has the part and none of the procedures. */
function refuseUnserved(row: FailureRow, fleet: Fleet, files: ContentFiles): void {
  const part = fleet.parts.get(row.part.id)
  const against = row.procedures.flatMap(({id}) => fleet.procedures.get(id) ?? [])
  if (!part || against.length < row.procedures.length) return
  const open = fleet.pumps.find(
    (pump) => hasPart(part, pump, fleet) && !against.some((procedure) => serves(procedure, pump.facts)),
  )
  if (!open) return
  addMessage(
    files,
    row.place,
    'no-uncovered-failure',
    `Unexpected failure \`${row.id}\` on pump \`${open.vessel.id}/${open.position.id}\` whose procedures are for other pumps, expected one for it or a \`reason:\` why there is none`,
    {
      note: 'Name a procedure that is for this pump, write the reason, or say by `when:` of the part which pumps have it',
    },
  )
}

function refuseWithoutRow(failures: readonly FailureRow[], fleet: Fleet, files: ContentFiles): void {
  const covered = new Set(failures.map((row) => row.part.id))
  const named = new Set([...fleet.designs.values()].flatMap(partsOfDesign))
  for (const part of fleet.parts.values()) {
    if ((part.balloon === undefined && !named.has(part.id)) || covered.has(part.id)) continue
    addMessage(
      files,
      part.place,
      'no-uncovered-failure',
      `Unexpected fitted part \`${part.id}\` that failures.yaml does not know, expected a row for each way in which it fails`,
      {note: 'Add a row to failures.yaml'},
    )
  }
}
