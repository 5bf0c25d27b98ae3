import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'
import {strengthOf} from './property-classes.ts'
import {type MetricThread, threadGeometry} from './thread-geometry.ts'

/** Loads that a bolt carries by its class. */
export interface BoltStrength {
  /** Stress area as the standard prints it, to three digits. */
  readonly nominalStressArea: Quantity<'area'>
  readonly yieldForce: Quantity<'force'>
  /** Stainless classes have no proof load. */
  readonly proofLoad: Quantity<'force'> | undefined
  readonly tensileLoad: Quantity<'force'>
}

export const boltStrengthNote: CalculationNote = {
  name: 'bolt-strength',
  words:
    'loads of a bolt from its nominal stress area and the stresses of its class; where the standard prints a load, the printed one counts',
  formula: ['Fp = As nom·Sp', 'Fy = As nom·Rp0.2', 'Fm = As nom·Rm'],
  symbols: [
    {symbol: 'Fp', meaning: 'proof load'},
    {symbol: 'Fy', meaning: 'load at the yield stress'},
    {symbol: 'Fm', meaning: 'least load at which it breaks'},
    {symbol: 'As nom', meaning: 'nominal stress area to three digits'},
    {symbol: 'Sp', meaning: 'proof stress'},
    {symbol: 'Rp0.2', meaning: 'yield or 0.2 % proof stress'},
    {symbol: 'Rm', meaning: 'least tensile strength'},
  ],
  sources: [
    {
      title: 'ISO 898-1, mechanical properties of steel bolts',
      edition: '1999',
      howKnown: 'reprint',
      status: 'superseded',
    },
    {
      title: 'ISO 3506-1, mechanical properties of stainless bolts',
      edition: '1979',
      howKnown: 'reprint',
      status: 'superseded',
    },
  ],
  validFor: 'metric bolts of the held classes, other than structural bolts',
}

/**
 * Loads of a bolt from nominal stress area and class.
 *
 * The standard multiplies the area printed to three digits; its own printed
 * loads are rounded once more and lie up to 0.5 % beside the product.
 *
 * Source: ISO 898-1; ISO 3506-1; read in reprints.
 * Valid for: metric threads in the diameters that the class covers; not for structural bolts.
 *
 * @throws {RangeError}
 *   When the class is not held or does not reach the diameter, or the pitch leaves no core.
 */
export function boltStrength(input: {
  readonly thread: MetricThread
  readonly propertyClass: string
}): BoltStrength {
  const strength = strengthOf(input.propertyClass, input.thread.nominalDiameter)
  const area = nominalStressArea(input.thread)
  const load = (stress: Quantity<'stress'>): Quantity<'force'> => quantityOf('force', area.si * stress.si)
  return {
    nominalStressArea: area,
    yieldForce: load(strength.yieldStress),
    proofLoad: strength.proofStress && load(strength.proofStress),
    tensileLoad: load(strength.tensileStrength),
  }
}

/**
 * Nominal stress area of a thread: the stress area to three digits, as the standard prints it and multiplies with it.
 *
 * Source: ISO 898-1, nominal stress area; read in a reprint.
 * Valid for: 60° ISO metric threads.
 *
 * @throws {RangeError}
 *   When the pitch leaves no core.
 */
export function nominalStressArea(thread: MetricThread): Quantity<'area'> {
  const squareMillimetres = threadGeometry(thread).stressArea.si * 1e6
  return quantityOf('area', Number(squareMillimetres.toPrecision(3)) / 1e6)
}
