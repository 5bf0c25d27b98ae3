import type {CalculationNote} from '../calculations/calculation-note.ts'

/** Two calculations that one call runs, explained as one: the first gives name, words and range. */
export function notesTogether(first: CalculationNote, second: CalculationNote): CalculationNote {
  const known = new Set(first.symbols.map(({symbol}) => symbol))
  return {
    ...first,
    formula: [...first.formula, ...second.formula],
    symbols: [...first.symbols, ...second.symbols.filter(({symbol}) => !known.has(symbol))],
  }
}
