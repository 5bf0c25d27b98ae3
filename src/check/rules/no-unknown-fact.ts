import {decideCondition} from '../../conditions/decide-condition.ts'
import {serves} from '../../conditions/serves.ts'
import type {Condition, WrittenCondition} from '../../handbook-model/condition.ts'
import type {FactDeclaration} from '../../handbook-model/office-content.ts'
import type {Procedure, SectionItem} from '../../handbook-model/procedure.ts'
import {type FactValue, type Position, positionRoles} from '../../handbook-model/vessel-content.ts'
import {addMessage, type ContentFiles} from '../../messages/add-message.ts'
import type {Place} from '../../messages/place.ts'
import {expectedWord} from '../nearest-word.ts'
import type {Pump} from '../pump.ts'

/** Declared facts by id, each with its values; `design`, `vessel` and `role` are built in. */
export type FactValues = ReadonlyMap<string, readonly string[]>

/** The facts of the office and the three that every pump has. */
export function factValuesOf(
  facts: readonly FactDeclaration[],
  designs: Iterable<string>,
  vessels: Iterable<string>,
): FactValues {
  return new Map([
    ...facts.map((fact): [string, readonly string[]] => [fact.id, fact.values.map((value) => value.id)]),
    ['design', [...designs]],
    ['vessel', [...vessels]],
    ['role', positionRoles],
  ])
}

/**
 * Conditions and data ask only for facts and values that are declared.
 *
 * Accepted: `when="backstop = fitted"` with the fact declared in office.yaml.
 * Rejected: `when="backstop = fited"`; the nearest value is named.
 */
export function noUndeclaredFact(procedure: Procedure, facts: FactValues, files: ContentFiles): void {
  noUndeclaredFactIn(conditionsOf(procedure), facts, files)
}

/** The same for conditions that stand outside procedures. */
export function noUndeclaredFactIn(
  conditions: readonly WrittenCondition[],
  facts: FactValues,
  files: ContentFiles,
): void {
  for (const {condition} of conditions) checkCondition(condition, facts, files)
}

/** The same for the facts that a vessel, design or position states. */
export function noUndeclaredFactValue(
  values: readonly FactValue[],
  facts: FactValues,
  files: ContentFiles,
): void {
  for (const {fact, value, place} of values) {
    const known = facts.get(fact.id)
    if (!known)
      addMessage(
        files,
        fact.place,
        'no-unknown-fact',
        `Unexpected fact \`${fact.id}\`, ${expectedWord(fact.id, facts.keys(), 'a fact')}`,
        {note: 'Declare the fact in office.yaml'},
      )
    else if (value !== undefined && !known.includes(value)) {
      addMessage(
        files,
        place,
        'no-unknown-fact',
        `Unexpected value \`${value}\` of fact \`${fact.id}\`, ${expectedWord(value, known, 'a value')}`,
        {note: `The values are ${known.join(', ')}`},
      )
    }
  }
}

function checkCondition(condition: Condition, facts: FactValues, files: ContentFiles): void {
  if (condition.kind === 'and' || condition.kind === 'or') {
    for (const operand of condition.operands) checkCondition(operand, facts, files)
  } else if (condition.kind === 'not') checkCondition(condition.operand, facts, files)
  else {
    const known = facts.get(condition.fact)
    const values =
      condition.kind === 'in' ? condition.values : condition.kind === 'known' ? [] : [condition.value]
    if (!known)
      addMessage(
        files,
        condition.place,
        'no-unknown-fact',
        `Unexpected fact \`${condition.fact}\`, ${expectedWord(condition.fact, facts.keys(), 'a fact')}`,
        {note: 'Declare the fact in office.yaml'},
      )
    else {
      for (const value of values.filter((one) => !known.includes(one))) {
        addMessage(
          files,
          condition.place,
          'no-unknown-fact',
          `Unexpected value \`${value}\` of fact \`${condition.fact}\`, ${expectedWord(value, known, 'a value')}`,
          {note: `The values are ${known.join(', ')}`},
        )
      }
    }
  }
}

/**
 * A condition that a fact leaves open on some pump, because nobody knows it, stands behind an `::identify` of that fact
 * and a hold point.
 *
 * Unknown is never false: without the identify step the crew would silently get one variant. A condition that other
 * facts settle asks for nothing more, and what does not stand on the pump finds out nothing. A fact that is not declared
 * is told where it is asked for, and not again for each pump.
 *
 * Accepted: `::identify{fact=backstop}`, a hold point, then `when="backstop = fitted"`.
 * Rejected: the same condition on a pump whose backstop is not known, with no identify step before it.
 */
export function noUnidentifiedFact(
  procedure: Procedure,
  {position, facts}: Pick<Pump, 'position' | 'facts'>,
  declared: FactValues,
  files: ContentFiles,
): void {
  if (!serves(procedure, facts)) return
  const identified = new Set<string>()
  const held = new Set<string>()
  const stands = ({when}: {readonly when?: WrittenCondition}): boolean =>
    !when || decideCondition(when.condition, facts) !== 'false'
  const refuse = (conditions: readonly WrittenCondition[]): void => {
    for (const {condition} of conditions) {
      if (decideCondition(condition, facts) !== 'unknown') continue
      const open = factsAsked(condition).filter(
        (fact) => declared.has(fact) && facts.get(fact) === undefined && !held.has(fact),
      )
      for (const fact of new Set(open)) refuseUnknown(fact, condition, procedure, position, files)
    }
  }
  for (const section of procedure.sections) {
    if (!stands(section)) continue
    refuse([section, ...section.cautions].flatMap((one) => (one.when ? [one.when] : [])))
    for (const item of section.items) {
      if (!stands(item)) continue
      refuse(conditionsOfItem(item))
      if (item.kind === 'hold-point') for (const fact of identified) held.add(fact)
      else for (const part of item.parts) if (part.kind === 'identify') identified.add(part.fact.id)
    }
  }
}

/**
 * Whether a procedure or job is for a pump is settled for every pump.
 *
 * There is no page on which a crew could find it out first.
 *
 * Accepted: `when: design = design-b`; a fact that vessel, design or position states for each pump.
 * Rejected: `when: backstop = fitted` as soon as the backstop of one pump is not known.
 */
export function noOpenService(
  {id, when, place}: {readonly id: string; readonly when?: WrittenCondition; readonly place: Place},
  pumps: readonly Pick<Pump, 'position' | 'facts'>[],
  declared: FactValues,
  files: ContentFiles,
): void {
  if (!when) return
  const {condition} = when
  const open = pumps.find(({facts}) => decideCondition(condition, facts) === 'unknown')
  if (!open) return
  for (const fact of new Set(factsAsked(condition))) {
    if (!declared.has(fact) || open.facts.get(fact) !== undefined) continue
    addMessage(
      files,
      condition.place,
      'no-unknown-fact',
      `Unexpected \`when:\` of \`${id}\` on fact \`${fact}\` that is not known for position \`${open.position.id}\`, expected a fact that is known for every pump`,
      {note: 'State the fact as fitted, or ask for it at a step behind `::identify`', cause: place},
    )
  }
}

function refuseUnknown(
  fact: string,
  condition: Condition,
  procedure: Procedure,
  position: Position,
  files: ContentFiles,
): void {
  addMessage(
    files,
    condition.place,
    'no-unknown-fact',
    `Unexpected condition on fact \`${fact}\` that is not known for position \`${position.id}\`, expected an \`::identify{fact=${fact}}\` step and a hold point before it in \`${procedure.id}\``,
    {note: 'Let the crew find out first, or state the fact as fitted', cause: position.place},
  )
}

function factsAsked(condition: Condition): readonly string[] {
  if (condition.kind === 'and' || condition.kind === 'or') return condition.operands.flatMap(factsAsked)
  if (condition.kind === 'not') return factsAsked(condition.operand)
  return condition.kind === 'known' ? [] : [condition.fact]
}

function conditionsOf(procedure: Procedure): readonly WrittenCondition[] {
  const lines = [...procedure.tools, ...procedure.parts].flatMap(({when}) => (when ? [when] : []))
  const inSections = procedure.sections.flatMap((section) => [
    ...(section.when ? [section.when] : []),
    ...section.cautions.flatMap((use) => (use.when ? [use.when] : [])),
    ...section.items.flatMap(conditionsOfItem),
  ])
  return [...(procedure.when ? [procedure.when] : []), ...lines, ...inSections]
}

function conditionsOfItem(item: SectionItem): readonly WrittenCondition[] {
  const own = item.when ? [item.when] : []
  if (item.kind === 'hold-point') return own
  return [
    ...own,
    ...item.cautions.flatMap((use) => (use.when ? [use.when] : [])),
    ...item.parts.flatMap((part) => [
      ...('when' in part && part.when ? [part.when] : []),
      ...(part.kind === 'alternatives' ? part.items.flatMap((one) => (one.when ? [one.when] : [])) : []),
    ]),
  ]
}
