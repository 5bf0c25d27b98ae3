/** Names of functions and constants of mathematics, which need no words. */
const mathematics = new Set([
  'Σ',
  'π',
  'e',
  'ln',
  'cos',
  'sin',
  'sec',
  'tan',
  'atan',
  'atan2',
  'min',
  'max',
  'mean',
])

/** What a verdict says in capitals. */
const verdicts = new Set(['RENEW', 'STOP', 'WATCH', 'WITHIN', 'LIMITS'])

/** Units that stand in formula lines. */
const units = new Set(['bar', 'cm', 'm', 'mm', 'N', 'kg', 'kW', 'h', 'l', 'rev', 'kgf', 'µm', 's', 'N·m'])

const token = /[\p{L}\p{M}][\p{L}\p{M}\p{Nd}′]*(?:\.\d+)?/gu

/**
 * Symbols of formula lines that nobody explains.
 *
 * What is explained is taken out of a line, the longest first. Of what is left, numbers with their units, names of
 * mathematics and whole words of small letters pass; a single letter, a capital, a Greek letter or a letter with a
 * digit is a symbol that was forgotten.
 */
export function unexplainedSymbols(
  formula: readonly string[],
  explained: readonly string[],
): readonly string[] {
  const longestFirst = [...explained].sort((a, b) => b.length - a.length)
  return formula.flatMap((line) => {
    const rest = longestFirst.reduce(takenOut, withoutQuantities(line))
    return [...rest.matchAll(token)].map(([found]) => found).filter(isSymbol)
  })
}

/** Takes a symbol out wherever it stands for itself. */
function takenOut(line: string, symbol: string): string {
  const parts = line.split(symbol)
  return parts.reduce((before, after) => {
    const cut =
      !/[\p{L}\p{M}\p{Nd}′]$/u.test(before.replace(/[Σπ]$/u, ' ')) && !/^[\p{L}\p{M}\p{Nd}′]/u.test(after)
    return `${before}${cut ? ' # ' : symbol}${after}`
  })
}

/** Numbers with a unit behind them, and units behind "in". */
function withoutQuantities(line: string): string {
  return line
    .replaceAll(
      /(?<![\p{L}\d.])\d[\d.]* ?(?:[\p{L}µ°%]+[²³]?(?:[/·][\p{L}]+[²³]?)*)(?![\p{L}\p{Nd}])/gu,
      (found) => (found.includes(' ') ? ' ' : found),
    )
    .replaceAll(/\bin [^:]*:/gu, (found) => found.replaceAll(token, (word) => (units.has(word) ? ' ' : word)))
}

function isSymbol(word: string): boolean {
  if (mathematics.has(word)) return false
  return !/^(?:[A-Z]?[a-z]{2,}|a)$/u.test(word) && !verdicts.has(word)
}
