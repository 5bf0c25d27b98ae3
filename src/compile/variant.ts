import type {Condition, WrittenCondition} from '../handbook-model/condition.ts'
import {decideCondition} from './decide-condition.ts'
import type {PumpDesk} from './desk.ts'
import {wordsEn} from './words-en.ts'

/** Whether a conditional block stands on this pump's page, and under which heading when nobody knows. */
export type Standing = {readonly stands: false} | {readonly stands: true; readonly variant?: string}

/** Decides the condition of a block; an unknown one stands under its condition in words. */
export function standing(when: WrittenCondition | undefined, desk: PumpDesk): Standing {
  if (!when) return {stands: true}
  const truth = decideCondition(when.condition, desk.facts)
  if (truth === 'false') return {stands: false}
  return truth === 'true' ? {stands: true} : {stands: true, variant: conditionWords(when, desk)}
}

/** Condition in words of the facts: "only if backstop is fitted". */
function conditionWords(when: WrittenCondition, desk: PumpDesk): string {
  const {condition} = when
  if (condition.kind !== 'equals') return wordsEn.onlyIf(factTitle(firstFact(condition), desk), `as in: ${when.text}`)
  const fact = desk.content.office.facts.find((one) => one.id === condition.fact)
  const value = fact?.values.find((one) => one.id === condition.value)
  return wordsEn.onlyIf(fact?.title.en ?? condition.fact, value?.title.en ?? condition.value)
}

function firstFact(condition: Condition): string {
  if (condition.kind === 'and' || condition.kind === 'or') return condition.operands.map(firstFact)[0] ?? ''
  return condition.kind === 'not' ? firstFact(condition.operand) : condition.fact
}

function factTitle(id: string, desk: PumpDesk): string {
  return desk.content.office.facts.find((one) => one.id === id)?.title.en ?? id
}
