import type {ResultLine} from './calculate-result.ts'
import type {CalculationWords} from './calculate-words.ts'

/** Lines of the inputs that were taken because nothing was given for them. */
export function notGiven(words: CalculationWords, lines: readonly ResultLine[]): readonly ResultLine[] {
  return lines.filter((one) => !words.has(one.name))
}
