import {decideCondition} from '../../conditions/decide-condition.ts'
import {serves} from '../../conditions/serves.ts'
import type {Design} from '../../handbook-model/design-content.ts'
import type {Procedure} from '../../handbook-model/procedure.ts'
import {addMessage, type ContentFiles} from '../../messages/add-message.ts'
import type {Pump} from '../pump.ts'
import {type DesignReference, designReferences} from './design-references.ts'
import {figuresOfDesign} from './figures-of-design.ts'
import {knownValueIds} from './known-value-ids.ts'

const words = {
  value: 'the id of a value',
  limit: 'the id of a limit of the design',
  joint: 'the id of a joint',
  figure: 'a figure',
} as const

/**
 * A value, limit, joint or drawing that a procedure asks for exists on every pump on which it is printed.
 *
 * The procedure of one design is otherwise a procedure of all: on the others the figure would be missing.
 * What exists on no pump at all is told by `noUndefinedReference`.
 *
 * Accepted: `::value{ref=inducer.torque when="design = design-b"}` with a joint `inducer` in design-b alone.
 * Rejected: the same without the condition, as soon as a pump of another design is aboard.
 */
export function noAbsentReference(procedure: Procedure, pumps: readonly Pump[], files: ContentFiles): void {
  const served = pumps.filter(({facts}) => serves(procedure, facts))
  const known = new Map(pumps.map(({design}) => [design, idsOf(design)]))
  // A figure asks for many values at one place: the first one that a design lacks is told.
  const toldAt = new Set<string>()
  for (const asked of designReferences(procedure)) {
    const {kind, reference, under} = asked
    const has = (design: Design): boolean => known.get(design)?.[kind].has(reference.id) ?? false
    if (!pumps.some(({design}) => has(design))) continue
    const told = new Set<string>()
    for (const {design, position, vessel, facts} of served) {
      if (told.has(design.id) || has(design)) continue
      if (under.some(({condition}) => decideCondition(condition, facts) === 'false')) continue
      told.add(design.id)
      const at = `${reference.place.line}:${reference.place.column} ${design.id}`
      if (toldAt.has(at)) continue
      toldAt.add(at)
      addMessage(
        files,
        reference.place,
        'no-undefined-reference',
        `Unexpected \`${reference.id}\` on position \`${position.id}\` of \`${vessel.id}\`, whose design \`${design.id}\` has none, expected ${words[kind]} that every pump of this procedure has`,
        {
          note: `Add it to the design, or write \`when="design ≠ ${design.id}"\``,
          cause: design.place,
        },
      )
    }
  }
}

function idsOf(design: Design): Readonly<Record<DesignReference['kind'], ReadonlySet<string>>> {
  return {
    value: knownValueIds(design),
    limit: new Set(design.limits.map(({id}) => id)),
    joint: new Set(design.joints.map(({id}) => id)),
    figure: new Set(figuresOfDesign(design)),
  }
}
