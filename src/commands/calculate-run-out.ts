import {runOut, runOutNote} from '../calculations/run-out/run-out.ts'
import {type CalculationRun, quantityLine, wordLine} from './calculate-result.ts'
import type {CalculationWords} from './calculate-words.ts'
import type {ListedCalculation} from './listed-calculation.ts'

/** Run-out from dial readings at even steps of one turn. */
export const runOutCalculations: readonly ListedCalculation[] = [
  {note: runOutNote, keys: ['readings'], optionalKeys: [], run: runRunOut},
]

function runRunOut(words: CalculationWords): CalculationRun {
  const result = runOut(words.list('readings', 'length-difference'))
  return {
    results: [
      quantityLine('total-indicator-reading', result.totalIndicatorReading, 'mm', 4),
      quantityLine('eccentricity', result.eccentricity, 'mm', 4),
      result.phase ? quantityLine('phase', result.phase, '°', 1) : wordLine('phase', 'undefined'),
      quantityLine('mean', result.mean, 'mm', 4),
      quantityLine('residual-range', result.residualRange, 'mm', 4),
    ],
    taken: [],
    note: runOutNote,
  }
}
