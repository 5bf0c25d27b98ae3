import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'

export const leastPreloadNote: CalculationNote = {
  name: 'least-preload',
  words:
    'the least preload to reckon with when bolts are tightened by torque: the intended one over the tightening factor',
  formula: ['FM min = FM max/αA'],
  symbols: [
    {symbol: 'FM min', meaning: 'least preload'},
    {symbol: 'FM max', meaning: 'intended preload'},
    {symbol: 'αA', meaning: 'tightening factor, about 1.6 to 1.8 for a torque wrench'},
  ],
  sources: [
    {
      title: 'worked example on the tables of VDI 2230 part 1, M12 class 8.8',
      edition: 'unknown',
      howKnown: 'reprint',
      status: 'unknown',
    },
  ],
  validFor: 'tightening factors from 1 to 4',
}

/**
 * Least preload of a bolt tightened by a scattering method.
 *
 * Source: VDI 2230 part 1, tightening factor; a worked example read in a reprint.
 * Valid for: tightening factors from 1 to 4.
 *
 * @throws {RangeError}
 *   When the factor is out of range or the preload is not above zero.
 */
export function leastPreload(input: {
  readonly preload: Quantity<'force'>
  readonly tighteningFactor: Quantity<'ratio'>
}): Quantity<'force'> {
  const {preload, tighteningFactor} = input
  if (tighteningFactor.si < 1 || tighteningFactor.si > 4)
    throw new RangeError(`Unexpected tightening factor ${tighteningFactor.si}, expected 1 to 4`)
  if (preload.si <= 0) throw new RangeError(`Unexpected preload of ${preload.si} N, expected one above zero`)
  return quantityOf('force', preload.si / tighteningFactor.si)
}
