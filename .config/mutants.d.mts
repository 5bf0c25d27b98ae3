/** A small change of a source: what stands in for the text between two places. */
export interface Mutant {
  readonly start: number
  readonly end: number
  readonly text: string
}

/** Small changes of a TypeScript source, in the order of their places. */
export function mutantsOf(source: string): readonly Mutant[]
/** The source with all of them in it behind a switch `__mutant`; the first has the number `first`. */
export function withAllMutants(source: string, first: number): string
