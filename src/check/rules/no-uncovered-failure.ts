import type {FailureRow, Part} from '../../handbook-model/office-content.ts'
import {addMessage, type ContentFiles} from '../../messages/add-message.ts'
import {refersTo} from '../identity.ts'
import type {KnownIds} from '../known-ids.ts'

/**
 * Every way in which a fitted part fails has a procedure, or a written reason why there is none; every fitted part has a row.
 *
 * What is not in the matrix is what the crew meets at night with nothing to read.
 *
 * Accepted: a row with `procedures: [wear-rings]`, or with `reason: exchanged by a yard`.
 * Rejected: a row with neither; a part with a balloon and no row.
 */
export function noUncoveredFailure(
  failures: readonly FailureRow[],
  parts: ReadonlyMap<string, Part>,
  procedures: KnownIds,
  knownParts: KnownIds,
  files: ContentFiles,
): void {
  if (failures.length === 0) return
  for (const row of failures) {
    refersTo(row.part, knownParts, 'part', files)
    for (const reference of row.procedures) refersTo(reference, procedures, 'procedure', files)
    if (row.procedures.length > 0 || row.reason) continue
    addMessage(
      files,
      row.place,
      'no-uncovered-failure',
      `Unexpected failure \`${row.id}\` without a procedure, expected \`procedures:\` or a \`reason:\` why there is none`,
      {note: 'Name the procedure that finds or mends it, or write why the handbook has none'},
    )
  }
  const covered = new Set(failures.map((row) => row.part.id))
  for (const part of parts.values()) {
    if (part.balloon === undefined || covered.has(part.id)) continue
    addMessage(
      files,
      part.place,
      'no-uncovered-failure',
      `Unexpected fitted part \`${part.id}\` that failures.yaml does not know, expected a row for each way in which it fails`,
      {note: 'Add a row to failures.yaml'},
    )
  }
}
