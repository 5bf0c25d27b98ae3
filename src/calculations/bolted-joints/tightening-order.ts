import type {CalculationNote} from '../calculation-note.ts'

export const tighteningOrderNote: CalculationNote = {
  name: 'tightening-order',
  words:
    'bolts are numbered clockwise; an even number is tightened in opposite pairs, each next pair as far from the tightened ones as possible; an odd number in a star',
  formula: ['even n: k, then k + n/2, pairs spread around the circle', 'odd n: step (n − 1)/2'],
  sources: [
    {title: 'cross pattern of the trade', edition: 'none', howKnown: 'common-practice', status: 'unknown'},
  ],
  validFor: 'bolt circles of 1 to 48 equal bolts',
}

/**
 * Order in which the bolts of a circle are tightened, numbered clockwise from 1.
 *
 * Even counts: opposite pairs, so that the sum of bolt loads is central after
 * each pair; with a count divisible by four the second pair lies at 90°. Odd
 * counts: a star, so that the sum never exceeds one bolt load by much.
 *
 * Source: common practice, no source; the balance is proved by tests.
 * Valid for: 1 to 48 bolts.
 *
 * @throws {RangeError}
 *   When the count is not a whole number from 1 to 48.
 */
export function tighteningOrder(bolts: number): readonly number[] {
  if (!Number.isInteger(bolts) || bolts < 1 || bolts > 48) {
    throw new RangeError(`Unexpected count of ${bolts} bolts, expected a whole number from 1 to 48`)
  }
  if (bolts % 2 === 1) return starOrder(bolts)
  const half = bolts / 2
  return spreadOrder(half).flatMap((first) => [first + 1, first + half + 1])
}

function starOrder(bolts: number): readonly number[] {
  const step = Math.max(1, (bolts - 1) / 2)
  return Array.from({length: bolts}, (_, index) => ((index * step) % bolts) + 1)
}

/** Starts of the pairs on the half circle: each next one farthest from those before, the earliest of equals first. */
function spreadOrder(half: number): readonly number[] {
  const chosen: number[] = [0]
  while (chosen.length < half) {
    let best = -1
    let bestDistance = -1
    for (let start = 0; start < half; start += 1) {
      if (chosen.includes(start)) continue
      const distance = Math.min(
        ...chosen.map((one) => Math.min(Math.abs(start - one), half - Math.abs(start - one))),
      )
      if (distance > bestDistance) {
        best = start
        bestDistance = distance
      }
    }
    chosen.push(best)
  }
  return chosen
}
