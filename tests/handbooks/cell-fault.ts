import type {Change, RuleCase} from '../check/each-rule/rule-case.ts'

/** A line of a record with one cell that cannot be, what is said of it, and the words at which. */
export interface CellFault {
  readonly what: string
  readonly rule: RuleCase['rule']
  /** A line that is accepted, where it is not the usual one. */
  readonly accepted?: string
  readonly rejected: string
  readonly words: string
  readonly reason: string
  readonly mend: string
}

/** Makes the twins of a fault in a line of a record. */
export function cellFaultsOf(
  path: string,
  usual: string,
  written: (line: string) => Change,
): (fault: CellFault) => RuleCase {
  return ({accepted = usual, rejected, words, ...rest}) => ({
    ...rest,
    accepted: written(accepted),
    rejected: written(rejected),
    at: [path, words],
  })
}
