import type {CalculationNote} from '../calculations/calculation-note.ts'
import type {CalculationRun} from './calculate-result.ts'
import type {CalculationWords} from './calculate-words.ts'

/** A calculation of the library as the command line knows it. */
export interface ListedCalculation {
  readonly note: CalculationNote
  readonly keys: readonly string[]
  readonly optionalKeys: readonly string[]
  run(words: CalculationWords): CalculationRun
}
