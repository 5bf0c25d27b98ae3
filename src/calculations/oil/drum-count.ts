import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'
import {refuseUnlessAboveZero} from '../refuse-inputs.ts'

/** How many drums hold a volume. */
export interface DrumCount {
  /** Volume in drums, not rounded. */
  readonly fills: Quantity<'ratio'>
  /** Whole drums to have at hand. */
  readonly drums: Quantity<'count'>
  /** What is left free in the last drum, or left over of it. */
  readonly rest: Quantity<'volume'>
}

export const drumCountNote: CalculationNote = {
  name: 'drum-count',
  words: 'whole drums that a volume of oil needs, and the room that is left in the last one',
  formula: ['fills = V/V drum', 'drums = fills rounded up to a whole number', 'rest = drums·V drum − V'],
  symbols: [
    {symbol: 'V', meaning: 'volume of oil'},
    {symbol: 'V drum', meaning: 'volume of one drum'},
  ],
  sources: [{title: 'arithmetic', edition: 'none', howKnown: 'computed', status: 'current'}],
  validFor: 'drums of one size, filled to their stated volume',
}

/** A hair above a whole number is the noise of the conversion to SI, not another drum. */
const noise = 1e-12

/**
 * Whole drums that a volume of oil needs.
 *
 * Source: arithmetic.
 * Valid for: drums of one size.
 *
 * @throws {RangeError}
 *   When the volume or the drum is not above zero.
 */
export function drumCount(input: {
  readonly volume: Quantity<'volume'>
  readonly drum: Quantity<'volume'>
}): DrumCount {
  refuseUnlessAboveZero('volume', input.volume, 'l')
  refuseUnlessAboveZero('drum', input.drum, 'l')
  const fills = input.volume.si / input.drum.si
  const drums = Math.ceil(fills * (1 - noise))
  return {
    fills: quantityOf('ratio', fills),
    drums: quantityOf('count', drums),
    rest: quantityOf('volume', Math.max(0, drums * input.drum.si - input.volume.si)),
  }
}
