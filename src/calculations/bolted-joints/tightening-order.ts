import type {CalculationNote} from '../calculation-note.ts'

export const tighteningOrderNote: CalculationNote = {
  name: 'tightening-order',
  words:
    'bolts are numbered clockwise; an even number is tightened in opposite pairs, a number that four divides in crosses of four, each next start halving the angle that is left; an odd number in a star',
  formula: [
    'the order is that of n/2 with n/2 added after each',
    'even n: k, then k + n/2; where four divides n: k, k + n/2, k + n/4, k + 3·n/4',
    'odd n: step (n − 1)/2 around the circle',
  ],
  symbols: [
    {symbol: 'n', meaning: 'number of bolts'},
    {symbol: 'k', meaning: 'number of a bolt that has had its turn'},
  ],
  sources: [
    {
      title: 'cross pattern of ASME PCC-1 for 4, 8, 12, 16, 24 and 32 bolts',
      edition: '2010 and 2013',
      howKnown: 'memory',
      status: 'superseded',
    },
    {
      title: 'opposite pairs halving the angle, rule of the trade',
      edition: 'none',
      howKnown: 'common-practice',
      status: 'unknown',
    },
  ],
  validFor: 'bolt circles of 1 to 48 equal bolts',
}

/**
 * Order in which the bolts of a circle are tightened, numbered clockwise from 1.
 *
 * Even counts: opposite pairs, so that the sum of bolt loads is central after
 * each pair; with a count that four divides, two pairs at 90° follow each
 * other. Odd counts: a star, so that the sum never exceeds one bolt load by much.
 *
 * Source: cross pattern of ASME PCC-1 as remembered for six counts; other counts by the same halving, common
 * practice, no source. The balance is proved by tests.
 * Valid for: 1 to 48 bolts.
 *
 * @throws {RangeError}
 *   When the count is not a whole number from 1 to 48.
 */
export function tighteningOrder(bolts: number): readonly number[] {
  if (!Number.isInteger(bolts) || bolts < 1 || bolts > 48) {
    throw new RangeError(`Unexpected count of ${bolts} bolts, expected a whole number from 1 to 48`)
  }
  return spreadOrder(bolts).map((place) => place + 1)
}

/** Places on the circle from 0: an even count is the order of its half, each place followed by the opposite one. */
function spreadOrder(places: number): readonly number[] {
  if (places % 2 === 1) return starOrder(places)
  const half = places / 2
  return spreadOrder(half).flatMap((place) => [place, place + half])
}

function starOrder(places: number): readonly number[] {
  const step = (places - 1) / 2
  return Array.from({length: places}, (_, index) => (index * step) % places)
}
