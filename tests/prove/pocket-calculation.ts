/** The figures of an explanation by their symbol. */
export type Inputs = (symbol: string) => number

/** An explanation that the pocket calculator knows. */
export interface PocketCalculation {
  /** Formula lines as the page prints them: another line is another calculation, and nobody has worked it here. */
  readonly formula: readonly string[]
  /** The printed figures before they were rounded; from what is given wherever the page gives it. */
  readonly result: (of: Inputs) => readonly number[]
  /** The intermediate results that the page prints, by symbol. */
  readonly steps?: Readonly<Record<string, (of: Inputs) => number>>
}
