import type {PocketCalculation} from './pocket-calculation.ts'
import {calculationsOfDesigns} from './pocket-of-designs.ts'
import {calculationsOfPumps} from './pocket-of-pumps.ts'

/**
 * What a reader with a pocket calculator makes of an explanation: the formula as it is printed, over the figures as they
 * are printed. Nothing of the library is used here.
 */
export const pocketCalculations: Readonly<Record<string, readonly PocketCalculation[]>> = {
  ...calculationsOfDesigns,
  ...calculationsOfPumps,
}

/** What is known of a value: by its own id, else by the last word of it. */
export function calculationsOf(id: string): readonly PocketCalculation[] {
  const own = id.startsWith('purge.least-') ? 'purge.lower-bound' : id
  return pocketCalculations[own] ?? pocketCalculations[`*.${own.slice(own.lastIndexOf('.') + 1)}`] ?? []
}
