import {decideCondition} from '../conditions/decide-condition.ts'
import type {Condition, WrittenCondition} from '../handbook-model/condition.ts'
import type {PumpDesk} from './desk.ts'
import {wordsEn} from './words-en.ts'

/** Whether a conditional block stands on this pump's page, and under which heading when nobody knows. */
export type Standing = {readonly stands: false} | {readonly stands: true; readonly variant?: string}

/** Decides the condition of a block; an unknown one stands under its condition in words. */
export function standing(when: WrittenCondition | undefined, desk: PumpDesk): Standing {
  if (!when) return {stands: true}
  const truth = decideCondition(when.condition, desk.facts)
  if (truth === 'false') return {stands: false}
  return truth === 'true'
    ? {stands: true}
    : {stands: true, variant: wordsEn.onlyIf(conditionWords(when.condition, desk))}
}

/** Condition in words of the facts; what is settled on this pump is left out, so that only the open question is put. */
function conditionWords(condition: Condition, desk: PumpDesk): string {
  switch (condition.kind) {
    case 'equals':
      return wordsEn.factIs(factTitle(condition.fact, desk), [
        valueTitle(condition.fact, condition.value, desk),
      ])
    case 'differs':
      return wordsEn.factIsNot(factTitle(condition.fact, desk), [
        valueTitle(condition.fact, condition.value, desk),
      ])
    case 'in':
      return wordsEn.factIs(
        factTitle(condition.fact, desk),
        condition.values.map((value) => valueTitle(condition.fact, value, desk)),
      )
    case 'known':
      return wordsEn.factIsKnown(factTitle(condition.fact, desk))
    case 'not':
      return negationWords(condition.operand, desk)
    case 'and':
    case 'or': {
      const open = condition.operands.filter((one) => decideCondition(one, desk.facts) === 'unknown')
      const words = open.map((one) =>
        open.length > 1 && isJoined(one) ? `(${conditionWords(one, desk)})` : conditionWords(one, desk),
      )
      return words.join(wordsEn.joints[condition.kind])
    }
    default:
      return neverReached(condition)
  }
}

function negationWords(operand: Condition, desk: PumpDesk): string {
  if (operand.kind === 'not') return conditionWords(operand.operand, desk)
  if (operand.kind === 'equals') return conditionWords({...operand, kind: 'differs'}, desk)
  if (operand.kind === 'differs') return conditionWords({...operand, kind: 'equals'}, desk)
  if (operand.kind === 'in') {
    return wordsEn.factIsNot(
      factTitle(operand.fact, desk),
      operand.values.map((value) => valueTitle(operand.fact, value, desk)),
    )
  }
  return wordsEn.notSo(conditionWords(operand, desk))
}

function isJoined(condition: Condition): boolean {
  return condition.kind === 'and' || condition.kind === 'or'
}

function factTitle(id: string, desk: PumpDesk): string {
  return desk.content.office.facts.find((one) => one.id === id)?.title.en ?? id
}

function valueTitle(fact: string, value: string, desk: PumpDesk): string {
  const declared = desk.content.office.facts.find((one) => one.id === fact)
  return declared?.values.find((one) => one.id === value)?.title.en ?? value
}

function neverReached(value: never): never {
  throw new Error(`Unexpected condition ${JSON.stringify(value)}`)
}
