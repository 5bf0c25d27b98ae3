import type {Condition, Truth} from '../handbook-model/condition.ts'

/** Facts of one pump: a value, or undefined where nobody knows it. */
export type Facts = ReadonlyMap<string, string | undefined>

/**
 * Decides a condition for one pump in three values: a fact that nobody knows makes it unknown, never false.
 *
 * `false and unknown` is false, `true or unknown` is true; `known fact` is never unknown.
 */
export function decideCondition(condition: Condition, facts: Facts): Truth {
  switch (condition.kind) {
    case 'equals':
      return compare(facts.get(condition.fact), (value) => value === condition.value)
    case 'differs':
      return compare(facts.get(condition.fact), (value) => value !== condition.value)
    case 'in':
      return compare(facts.get(condition.fact), (value) => condition.values.includes(value))
    case 'known':
      return facts.get(condition.fact) === undefined ? 'false' : 'true'
    case 'not':
      return negate(decideCondition(condition.operand, facts))
    case 'and':
      return join(
        condition.operands.map((one) => decideCondition(one, facts)),
        'false',
        'true',
      )
    case 'or':
      return join(
        condition.operands.map((one) => decideCondition(one, facts)),
        'true',
        'false',
      )
    default:
      return neverReached(condition)
  }
}

function compare(value: string | undefined, holds: (value: string) => boolean): Truth {
  return value === undefined ? 'unknown' : holds(value) ? 'true' : 'false'
}

function negate(truth: Truth): Truth {
  return truth === 'unknown' ? 'unknown' : truth === 'true' ? 'false' : 'true'
}

/** `decisive` in one operand settles the whole; otherwise unknown wins over the neutral value. */
function join(truths: readonly Truth[], decisive: Truth, neutral: Truth): Truth {
  if (truths.includes(decisive)) return decisive
  return truths.includes('unknown') ? 'unknown' : neutral
}

function neverReached(value: never): never {
  throw new Error(`Unexpected condition ${JSON.stringify(value)}`)
}
