import type {HoldPoint, Procedure, Section, Step} from '../../handbook-model/procedure.ts'
import type {Place} from '../../messages/place.ts'

/** Steps and hold points of a procedure in order, each with what it stands in. */
export function stepsOf(
  procedure: Procedure,
): readonly {procedure: Procedure; section: Section; item: Step | HoldPoint}[] {
  return procedure.sections.flatMap((section) => section.items.map((item) => ({procedure, section, item})))
}

/** A place as a key. */
export function placeKey({path, line, column}: Place): string {
  return `${path}:${line}:${column}`
}
