import {expect} from 'vitest'

/** An input with figures at the very ends of its range, which count as inside, and figures just beyond them. */
export type RangeEnds = readonly [
  what: string,
  run: (figure: number) => unknown,
  accepted: readonly number[],
  refused: readonly number[],
]

/** Each accepted figure gives a result, each refused one a RangeError. */
export function holdEnds(run: RangeEnds[1], accepted: readonly number[], refused: readonly number[]): void {
  for (const figure of accepted) expect(() => run(figure), `${figure} is inside`).not.toThrow()
  for (const figure of refused) expect(() => run(figure), `${figure} is outside`).toThrow(RangeError)
}
