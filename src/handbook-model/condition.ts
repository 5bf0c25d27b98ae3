import type {Place} from '../messages/place.ts'

/**
 * A condition over typed facts, as parsed from `when="backstop = fitted and cargo-seal in (double-lip, single-lip)"`.
 *
 * Grammar: `fact = value`, `fact ≠ value` (also `!=`), `fact in (value, value)`, `known fact`, `not …`,
 * `… and …`, `… or …`, parentheses. `not` binds before `and`, `and` before `or`.
 */
export type Condition =
  | {readonly kind: 'equals'; readonly fact: string; readonly value: string; readonly place: Place}
  | {readonly kind: 'differs'; readonly fact: string; readonly value: string; readonly place: Place}
  | {readonly kind: 'in'; readonly fact: string; readonly values: readonly string[]; readonly place: Place}
  | {readonly kind: 'known'; readonly fact: string; readonly place: Place}
  | {readonly kind: 'not'; readonly operand: Condition; readonly place: Place}
  | {readonly kind: 'and'; readonly operands: readonly Condition[]; readonly place: Place}
  | {readonly kind: 'or'; readonly operands: readonly Condition[]; readonly place: Place}

/** Three-valued: a condition over a fact that nobody knows is unknown, never false. */
export type Truth = 'true' | 'false' | 'unknown'

/** Condition as written, for print: every variant of an unknown fact is headed by it. */
export interface WrittenCondition {
  readonly condition: Condition
  readonly text: string
}
