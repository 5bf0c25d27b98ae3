import type {ExplainedSymbol} from './calculation-note.ts'

/**
 * The symbols of a list that formula lines use, each once, in the order of the list.
 *
 * A longer symbol wins: `V free` is not `V`, and `d2` is not `d`. Σ stands before what is summed.
 *
 * Source: none; words of an explanation.
 * Valid for: formula lines of a calculation.
 */
export function symbolsUsed(
  formula: readonly string[],
  symbols: readonly ExplainedSymbol[],
): readonly ExplainedSymbol[] {
  const unique = symbols.filter(
    ({symbol}, index) =>
      formula.some((line) => line.includes(symbol)) &&
      symbols.findIndex((one) => one.symbol === symbol) === index,
  )
  const oneOf = [...unique].sort((a, b) => b.symbol.length - a.symbol.length).map(escaped)
  const pattern = new RegExp(`(?<!${letter}|${letter}\\.)(?:${oneOf.join('|')})(?!${letter})`, 'gu')
  const used = new Set(unique.length === 0 ? [] : formula.flatMap((line) => line.match(pattern) ?? []))
  return unique.filter(({symbol}) => used.has(symbol))
}

/** Letters, digits and marks that go on with a symbol. */
const letter = String.raw`(?:(?![ΣΠπ])[\p{L}\p{M}\p{Nd}′])`

function escaped({symbol}: ExplainedSymbol): string {
  return symbol.replaceAll(/[.*+?^${}()|[\]\\]/gu, String.raw`\$&`)
}
