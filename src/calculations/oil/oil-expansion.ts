import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'
import {refuseUnlessAboveZero} from '../refuse-inputs.ts'

/** What warming does to a volume of oil that is free to expand. */
export interface OilExpansion {
  /** Growth of the volume; below zero when the oil cools. */
  readonly change: Quantity<'volume'>
  readonly share: Quantity<'ratio'>
  readonly after: Quantity<'volume'>
}

export const oilExpansionNote: CalculationNote = {
  name: 'oil-expansion',
  words: 'volume by which oil grows when it warms and nothing holds it',
  formula: ['ΔV = V·α·ΔT', 'V after = V + ΔV'],
  symbols: [
    {symbol: 'V', meaning: 'volume'},
    {symbol: 'ΔV', meaning: 'growth of the volume'},
    {symbol: 'V after', meaning: 'volume when warm'},
    {symbol: 'α', meaning: 'volume expansion of the oil'},
    {symbol: 'ΔT', meaning: 'rise of the temperature'},
  ],
  sources: [
    {
      title: 'page on thermal expansion and compression of hydraulic oil',
      edition: 'unknown',
      howKnown: 'read',
      status: 'unknown',
    },
  ],
  validFor: 'oil free to expand, changes of volume of a few per cent; mineral oil has about 0.0007 1/K',
}

/**
 * Growth of a volume of oil with its temperature.
 *
 * Linear in the temperature: α is that of the oil over the range meant.
 *
 * Source: definition of volume expansion; read with an example on a page on hydraulic oil.
 * Valid for: oil free to expand; changes of volume below a fifth.
 *
 * @throws {RangeError}
 *   When volume or expansion is not above zero, or the change is a fifth of the volume or more.
 */
export function oilExpansion(input: {
  readonly volume: Quantity<'volume'>
  readonly expansion: Quantity<'thermal-expansion'>
  readonly rise: Quantity<'temperature-difference'>
}): OilExpansion {
  refuseUnlessAboveZero('volume', input.volume, 'l')
  refuseUnlessAboveZero('expansion', input.expansion, '1/K')
  const share = input.expansion.si * input.rise.si
  if (Math.abs(share) >= 0.2)
    throw new RangeError(
      `Unexpected change of ${(share * 100).toFixed(1)} % of the volume, expected less than 20 %, where growth follows the temperature in a straight line`,
    )
  const change = input.volume.si * share
  return {
    change: quantityOf('volume', change),
    share: quantityOf('ratio', share),
    after: quantityOf('volume', input.volume.si + change),
  }
}
