import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'
import {refuseUnlessAboveZero} from '../refuse-inputs.ts'

/** What a rise of pressure does to a volume of oil. */
export interface OilCompression {
  /** Change of the volume as a share; below zero when the pressure rises. */
  readonly share: Quantity<'ratio'>
  readonly change: Quantity<'volume'>
}

export const oilCompressionNote: CalculationNote = {
  name: 'oil-compression',
  words: 'volume by which oil shrinks under pressure, and so what springs back when the pressure is let off',
  formula: ['ΔV/V = −Δp/K'],
  symbols: [
    {symbol: 'V', meaning: 'volume'},
    {symbol: 'ΔV', meaning: 'change of the volume'},
    {symbol: 'Δp', meaning: 'rise of the pressure'},
    {symbol: 'K', meaning: 'bulk modulus of the oil'},
  ],
  sources: [
    {
      title: 'page on thermal expansion and compression of hydraulic oil',
      edition: 'unknown',
      howKnown: 'read',
      status: 'unknown',
    },
  ],
  validFor: 'oil without air, pressures far below the bulk modulus',
}

/**
 * Change of a volume of oil with its pressure.
 *
 * Source: definition of the bulk modulus; read with an example on a page on hydraulic oil.
 * Valid for: oil without air; rises of pressure up to a tenth of the bulk modulus.
 *
 * @throws {RangeError}
 *   When volume or bulk modulus is not above zero, or the pressure exceeds a tenth of the bulk modulus.
 */
export function oilCompression(input: {
  readonly volume: Quantity<'volume'>
  readonly bulkModulus: Quantity<'pressure-difference'>
  readonly pressureRise: Quantity<'pressure-difference'>
}): OilCompression {
  refuseUnlessAboveZero('volume', input.volume, 'l')
  refuseUnlessAboveZero('bulk modulus', input.bulkModulus, 'bar')
  const share = -input.pressureRise.si / input.bulkModulus.si
  if (Math.abs(share) > 0.1)
    throw new RangeError(
      `Unexpected pressure of ${(-share * 100).toFixed(1)} % of the bulk modulus, expected at most 10 %`,
    )
  return {share: quantityOf('ratio', share), change: quantityOf('volume', input.volume.si * share)}
}
