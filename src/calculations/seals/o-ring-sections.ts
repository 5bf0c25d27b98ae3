import {inches, millimetres} from '../../quantities/named-units.ts'
import type {Quantity} from '../../quantities/quantity.ts'

/** A section of the standard series. */
export interface ORingSection {
  readonly section: Quantity<'length'>
  /** The section may be thicker or thinner by this. */
  readonly tolerance: Quantity<'length'>
}

/**
 * Sections in mm and their tolerances in inches.
 *
 * Source: ISO 3601-1 and AS568, sections read in a reprint; tolerances from memory, compared with a printed table of squeeze.
 */
const series: readonly (readonly [number, number])[] = [
  [1.78, 0.003],
  [2.62, 0.003],
  [3.53, 0.004],
  [5.33, 0.005],
  [6.99, 0.006],
]

/** How far a section may lie from the series and still be the one of the series, in metres: the step from inches to rounded millimetres. */
const sameSection = 1e-5

/** Sections of the standard series. */
export const oRingSections: readonly ORingSection[] = series.map(([section, tolerance]) => ({
  section: millimetres(section),
  tolerance: inches(tolerance),
}))

/**
 * Tolerance of a section of the standard series.
 *
 * Source: ISO 3601-1 and AS568; from memory, compared with a printed table of squeeze.
 * Valid for: 1.78, 2.62, 3.53, 5.33 and 6.99 mm; other sections have none here.
 */
export function oRingSectionTolerance(section: Quantity<'length'>): Quantity<'length'> | undefined {
  return oRingSections.find((one) => Math.abs(one.section.si - section.si) <= sameSection)?.tolerance
}
