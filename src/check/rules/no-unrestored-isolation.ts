import type {Job} from '../../handbook-model/office-content.ts'
import type {Procedure} from '../../handbook-model/procedure.ts'
import {addMessage, type ContentFiles} from '../../messages/add-message.ts'
import type {Place} from '../../messages/place.ts'

interface Move {
  readonly kind: 'isolate' | 'restore'
  readonly role: string
  readonly procedure: string
  readonly step: string
  /** Conditions of section and step, as written. */
  readonly under: readonly string[]
  readonly place: Place
}

/**
 * Within a job every isolation has its restoration after it, and nothing is restored that was not isolated.
 *
 * Every isolation is half a sentence: a blind left in a vent line, or a lock taken off early, injures the next crew.
 * Both stand under the same conditions, so that no pump prints one without the other.
 *
 * Accepted: `::isolate{role=pressure}` in one procedure and `::restore{role=pressure}` in a later one of the job.
 * Rejected: the same job with the restore line removed.
 */
export function noUnrestoredIsolation(
  job: Job,
  procedures: ReadonlyMap<string, Procedure>,
  files: ContentFiles,
): void {
  const open = new Map<string, Move>()
  for (const reference of job.procedures) {
    for (const move of movesOf(procedures.get(reference.id))) {
      const isolation = open.get(move.role)
      if (move.kind === 'isolate') {
        open.set(move.role, move)
      } else if (isolation) {
        open.delete(move.role)
        if (conditionsOf(isolation) !== conditionsOf(move)) refuseOtherConditions(isolation, move, files)
      } else {
        addMessage(
          files,
          move.place,
          'no-unmatched-restoration',
          `Unexpected restoration of \`${move.role}\` in step \`${move.step}\`, expected an isolation of it earlier in job \`${job.id}\``,
          {note: `Add \`::isolate{role=${move.role}}\` before it, or remove the restoration`},
        )
      }
    }
  }
  for (const move of open.values()) {
    addMessage(
      files,
      move.place,
      'no-unrestored-isolation',
      `Unexpected isolation of \`${move.role}\` in step \`${move.step}\` that job \`${job.id}\` never restores, expected \`::restore{role=${move.role}}\` in a later step`,
      {note: `Add the restore step to the procedure that hands the pump back`, cause: job.place},
    )
  }
}

function refuseOtherConditions(isolation: Move, restoration: Move, files: ContentFiles): void {
  addMessage(
    files,
    restoration.place,
    'no-unrestored-isolation',
    `Unexpected restoration of \`${restoration.role}\` in step \`${restoration.step}\` ${conditionsOf(restoration)}, expected it ${conditionsOf(isolation)} as its isolation in step \`${isolation.step}\``,
    {note: 'Put both under the same `when`, or under none', cause: isolation.place},
  )
}

function conditionsOf({under}: Move): string {
  return under.length === 0 ? 'without a condition' : `under \`${under.join(' and ')}\``
}

/** A procedure that isolates stands in a job, so that the pair can be proved. */
export function noJoblessIsolation(
  procedures: ReadonlyMap<string, Procedure>,
  jobs: ReadonlyMap<string, Job>,
  files: ContentFiles,
): void {
  const inJobs = new Set([...jobs.values()].flatMap((job) => job.procedures.map((one) => one.id)))
  for (const procedure of procedures.values()) {
    const [first] = movesOf(procedure)
    if (!first || inJobs.has(procedure.id)) continue
    addMessage(
      files,
      first.place,
      'no-unrestored-isolation',
      `Unexpected isolation in procedure \`${procedure.id}\` that no job holds, expected a job with its restoration`,
      {note: 'Name the procedure in a file of content/jobs'},
    )
  }
}

function movesOf(procedure: Procedure | undefined): readonly Move[] {
  if (!procedure) return []
  return procedure.sections.flatMap((section) =>
    section.items.flatMap((step) =>
      step.kind === 'step'
        ? step.parts.flatMap((part): readonly Move[] =>
            part.kind === 'isolate' || part.kind === 'restore'
              ? [
                  {
                    kind: part.kind,
                    role: part.role,
                    procedure: procedure.id,
                    step: step.id,
                    under: [section, step].flatMap((one) => (one.when ? [one.when.text] : [])),
                    place: part.place,
                  },
                ]
              : [],
          )
        : [],
    ),
  )
}
