import {decideCondition} from '../../conditions/decide-condition.ts'
import {hasPart} from '../../conditions/has-part.ts'
import {serves} from '../../conditions/serves.ts'
import type {Design} from '../../handbook-model/design-content.ts'
import type {Part} from '../../handbook-model/office-content.ts'
import type {Procedure} from '../../handbook-model/procedure.ts'
import {addMessage, type ContentFiles} from '../../messages/add-message.ts'
import type {Pump} from '../pump.ts'
import {partReferences} from './design-references.ts'

/** What the parts that texts point at are held against. */
interface Numbered {
  readonly parts: ReadonlyMap<string, Part>
  readonly procedures: ReadonlyMap<string, Procedure>
  readonly designs: ReadonlyMap<string, Design>
  readonly pumps: readonly Pump[]
}

/**
 * A part that a text points at has a balloon, and the parts list of each pump on which the text stands has that balloon.
 *
 * A part of another design counts under the same balloon: the cover of the small pump is 1 as that of the large one. Told
 * once for each reference, at the first pump that has no such balloon; an id of no part is told by `noUndefinedReference`.
 *
 * Accepted: `:part[lower wear ring]{ref=lower-ring}`, `:part[screws]{ref=lower-ring-screws}` under
 * `when="wear-ring-fit = screwed"`.
 * Rejected: `:part[cloth]{ref=cloth}`, which no drawing numbers; the screws without the condition, where the rings of a
 * pump are pressed in.
 */
export function noUnnumberedPart(
  procedures: Iterable<Procedure>,
  {pumps, ...content}: Numbered,
  files: ContentFiles,
): void {
  const balloons = new Map<Pump, ReadonlySet<string>>()
  const balloonsOf = (pump: Pump): ReadonlySet<string> => {
    const known = balloons.get(pump) ?? balloonsOfPump(pump, content)
    balloons.set(pump, known)
    return known
  }
  for (const procedure of procedures) {
    const served = pumps.filter(({facts}) => serves(procedure, facts))
    for (const {reference, under} of partReferences(procedure)) {
      const part = content.parts.get(reference.id)
      if (!part) continue
      const {balloon} = part
      if (balloon === undefined) {
        addMessage(
          files,
          reference.place,
          'no-undefined-reference',
          `Unexpected part \`${part.id}\` without a balloon, expected one that the drawing numbers`,
          {
            note: 'Write its words without the directive, or give it a `balloon:` in parts.yaml',
            cause: part.place,
          },
        )
        continue
      }
      const without = served.find(
        (pump) =>
          !balloonsOf(pump).has(balloon) &&
          under.every(({condition}) => decideCondition(condition, pump.facts) !== 'false'),
      )
      if (!without) continue
      addMessage(
        files,
        reference.place,
        'no-undefined-reference',
        `Unexpected part \`${part.id}\` on position \`${without.position.id}\` of \`${without.vessel.id}\`, whose parts list has no balloon ${balloon}, expected a part of every pump of this procedure`,
        {
          note: `Write ${part.when ? `the condition \`${part.when.text}\`` : 'a condition'} at the step, or say by \`when:\` of the part which pumps have it`,
          cause: part.place,
        },
      )
    }
  }
}

function balloonsOfPump(pump: Pump, {parts, ...content}: Omit<Numbered, 'pumps'>): ReadonlySet<string> {
  return new Set(
    [...parts.values()].flatMap((part) =>
      part.balloon !== undefined && hasPart(part, pump, content) ? [part.balloon] : [],
    ),
  )
}
