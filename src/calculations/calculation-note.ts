/** How the source of a calculation is known. */
export type HowKnown = 'read' | 'reprint' | 'memory' | 'computed' | 'common-practice'

/** What a calculation rests on. */
export interface NotedSource {
  readonly title: string
  readonly edition: string
  readonly howKnown: HowKnown
  readonly status: 'current' | 'superseded' | 'unknown'
}

/** A symbol of a formula in words. */
export interface ExplainedSymbol {
  readonly symbol: string
  readonly meaning: string
}

/** A calculation explained: words, formula line by line, what the symbols mean, sources and range. */
export interface CalculationNote {
  /** Name on the command line. */
  readonly name: string
  readonly words: string
  readonly formula: readonly string[]
  /** Every symbol that the formula lines use, in the order of first use. */
  readonly symbols: readonly ExplainedSymbol[]
  readonly sources: readonly NotedSource[]
  readonly validFor: string
}
