import {litres} from '../../quantities/named-units.ts'
import type {Quantity} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'
import {dayNumber} from './calendar-day.ts'

/** Pollution category of a noxious liquid. */
export type PollutionCategory = 'X' | 'Y' | 'Z'

/** Residue that the regulation allows in a tank and its piping. */
export interface StrippingCeiling {
  readonly ceiling: Quantity<'volume'>
  /** What a performance test by water may show above the ceiling; nothing for the newest ships. */
  readonly testTolerance: Quantity<'volume'>
  readonly paragraph: '12.1' | '12.2' | '12.3'
}

interface Tier {
  readonly from: string
  readonly paragraph: StrippingCeiling['paragraph']
  readonly ceilings: Readonly<Record<PollutionCategory, Quantity<'volume'>>>
  readonly testTolerance: Quantity<'volume'>
}

export const strippingCeilingNote: CalculationNote = {
  name: 'stripping-ceiling',
  words:
    'greatest residue that the regulation allows in a tank and its piping after stripping, by the day the ship was built and the category of the cargo; the manual of the vessel may ask for less',
  formula: [
    'built before 1986-07-01: 300 l for X and Y, 900 l for Z',
    'built from 1986-07-01 to 2006-12-31: 100 l for X and Y, 300 l for Z',
    'built from 2007-01-01: 75 l for X, Y and Z',
    'tolerance of the water test: 50 l in the first two tiers, none in the third',
  ],
  symbols: [
    {symbol: 'X', meaning: 'category of the substance'},
    {symbol: 'Y', meaning: 'category of the substance'},
    {symbol: 'Z', meaning: 'category of the substance'},
  ],
  sources: [
    {
      title:
        'MARPOL annex II regulation 12; the figures of the first two tiers also read in an older national text for the former categories',
      edition: 'in force from 2007',
      howKnown: 'memory',
      status: 'unknown',
    },
  ],
  validFor: 'tanks certified for noxious liquids of the categories X, Y and Z',
}

/** The newest tier first. */
const tiers: readonly Tier[] = [
  tier('2007-01-01', '12.3', 75, 75, 0),
  tier('1986-07-01', '12.2', 100, 300, 50),
  tier('1900-01-01', '12.1', 300, 900, 50),
]

/**
 * Greatest residue after stripping that the regulation allows.
 *
 * Source: MARPOL annex II regulation 12; tiers from memory, 100/300 and 300/900 l read in an older national text for the
 * former categories B and C; the tolerance of 50 l for the first two tiers only.
 * Valid for: ships built from 1900 on, categories X, Y and Z.
 *
 * @throws {RangeError}
 *   When the date does not exist.
 */
export function strippingCeiling(input: {
  readonly built: string
  readonly category: PollutionCategory
}): StrippingCeiling {
  const day = dayNumber(input.built)
  const found = tiers.find((one) => day >= dayNumber(one.from))
  if (!found) throw new RangeError(`Unexpected date \`${input.built}\`, expected one from 1900 on`)
  return {
    ceiling: found.ceilings[input.category],
    testTolerance: found.testTolerance,
    paragraph: found.paragraph,
  }
}

function tier(
  from: string,
  paragraph: StrippingCeiling['paragraph'],
  strict: number,
  lenient: number,
  tolerance: number,
): Tier {
  return {
    from,
    paragraph,
    ceilings: {X: litres(strict), Y: litres(strict), Z: litres(lenient)},
    testTolerance: litres(tolerance),
  }
}
