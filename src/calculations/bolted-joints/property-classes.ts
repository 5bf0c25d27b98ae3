import {newtonsPerSquareMillimetre} from '../../quantities/named-units.ts'
import type {Quantity} from '../../quantities/quantity.ts'
import type {HowKnown, NotedSource} from '../calculation-note.ts'

/** Strength of a property class within a range of diameters. */
export interface PropertyClassStrength {
  readonly propertyClass: string
  /** Range of nominal diameters in mm: above the first, up to and with the second. */
  readonly aboveMillimetres: number
  readonly upToMillimetres: number
  readonly tensileStrength: Quantity<'stress'>
  /** Yield stress, or 0.2 % proof stress. */
  readonly yieldStress: Quantity<'stress'>
  /** Stress under the proof load; the stainless classes have none. */
  readonly proofStress: Quantity<'stress'> | undefined
  readonly howKnown: HowKnown
}

/**
 * Strength of bolts by class. The stainless classes 70 and 80 end where the edition that was read ends; a larger bolt needs
 * the stress of its mill certificate. Duplex classes and A4-100 are left out: nobody here has read their values.
 *
 * Source: ISO 898-1 of 1999 (8.8 up to 16 mm from memory, the others read in a reprint); ISO 3506-1 of 1979 (70 and 80
 * read in a reprint; 50 from memory).
 */
export const propertyClasses: readonly PropertyClassStrength[] = [
  steel('8.8', 0, 16, 800, 640, 580, 'memory'),
  steel('8.8', 16, 39, 830, 660, 600, 'reprint'),
  steel('10.9', 0, 39, 1040, 940, 830, 'reprint'),
  steel('12.9', 0, 39, 1220, 1100, 970, 'reprint'),
  stainless('A1-50', 39, 500, 210, 'memory'),
  stainless('A2-50', 39, 500, 210, 'memory'),
  stainless('A4-50', 39, 500, 210, 'memory'),
  stainless('A2-70', 20, 700, 450, 'reprint'),
  stainless('A4-70', 20, 700, 450, 'reprint'),
  stainless('A2-80', 20, 800, 600, 'reprint'),
  stainless('A4-80', 20, 800, 600, 'reprint'),
]

/** Where the yield stress of a class comes from. */
export const classSources: readonly NotedSource[] = [
  {
    title: 'ISO 898-1 and ISO 3506-1, yield or proof stress of the class',
    edition: 'unknown',
    howKnown: 'reprint',
    status: 'unknown',
  },
]

/** Property classes that the library holds. */
export const heldClasses: readonly string[] = [...new Set(propertyClasses.map((row) => row.propertyClass))]

/**
 * Strength of a property class at a diameter.
 *
 * Source: ISO 898-1; ISO 3506-1; the row says how it is known.
 * Valid for: diameters that the class covers; stainless classes 70 and 80 up to 20 mm.
 *
 * @throws {RangeError}
 *   When the class is not in the table or does not reach the diameter.
 */
export function strengthOf(
  propertyClass: string,
  nominalDiameter: Quantity<'length'>,
): PropertyClassStrength {
  const rows = propertyClasses.filter((row) => row.propertyClass === propertyClass)
  if (rows.length === 0)
    throw new RangeError(`Unexpected class \`${propertyClass}\`, expected one of ${heldClasses.join(', ')}`)
  const diameter = Math.round(nominalDiameter.si * 1e6) / 1000
  const found = rows.find((row) => diameter > row.aboveMillimetres && diameter <= row.upToMillimetres)
  if (!found) {
    const most = Math.max(...rows.map((row) => row.upToMillimetres))
    throw new RangeError(
      `Unexpected class ${propertyClass} at ${diameter} mm, expected at most ${most} mm: take the stress of the mill certificate`,
    )
  }
  return found
}

/**
 * Yield stress of a property class at a diameter.
 *
 * Source: ISO 898-1; ISO 3506-1.
 * Valid for: diameters that the class covers; stainless classes 70 and 80 up to 20 mm.
 *
 * @throws {RangeError}
 *   When the class is not in the table or does not reach the diameter.
 */
export function yieldStressOf(
  propertyClass: string,
  nominalDiameter: Quantity<'length'>,
): Quantity<'stress'> {
  return strengthOf(propertyClass, nominalDiameter).yieldStress
}

function steel(
  propertyClass: string,
  aboveMillimetres: number,
  upToMillimetres: number,
  tensile: number,
  yielding: number,
  proof: number,
  howKnown: HowKnown,
): PropertyClassStrength {
  return {
    propertyClass,
    aboveMillimetres,
    upToMillimetres,
    tensileStrength: newtonsPerSquareMillimetre(tensile),
    yieldStress: newtonsPerSquareMillimetre(yielding),
    proofStress: newtonsPerSquareMillimetre(proof),
    howKnown,
  }
}

function stainless(
  propertyClass: string,
  upToMillimetres: number,
  tensile: number,
  yielding: number,
  howKnown: HowKnown,
): PropertyClassStrength {
  return {
    propertyClass,
    aboveMillimetres: 0,
    upToMillimetres,
    tensileStrength: newtonsPerSquareMillimetre(tensile),
    yieldStress: newtonsPerSquareMillimetre(yielding),
    proofStress: undefined,
    howKnown,
  }
}
