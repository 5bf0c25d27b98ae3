import type {WrittenCondition} from '../handbook-model/condition.ts'
import {decideCondition, type Facts} from './decide-condition.ts'

/**
 * Whether a procedure or job is for a pump with these facts; without a condition it is for all.
 *
 * The check has refused a condition that a fact leaves open: what is open here is settled by no other pump either, and
 * stays in.
 */
export function serves({when}: {readonly when?: WrittenCondition}, facts: Facts): boolean {
  return !when || decideCondition(when.condition, facts) !== 'false'
}
