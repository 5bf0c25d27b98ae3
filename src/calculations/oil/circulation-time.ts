import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'
import {refuseUnlessAboveZero} from '../refuse-inputs.ts'

/** How long oil is circulated to flush and vent a pump. */
export interface CirculationTime {
  readonly time: Quantity<'time'>
  /** Oil that passes in this time. */
  readonly circulated: Quantity<'volume'>
}

export const circulationTimeNote: CalculationNote = {
  name: 'circulation-time',
  words:
    'time in which the oil of a pump is changed so many times while it is flushed and vented at low pressure',
  formula: ['t = n·V/Q'],
  symbols: [
    {symbol: 't', meaning: 'time'},
    {symbol: 'n', meaning: 'changes of the volume'},
    {symbol: 'V', meaning: 'oil content of the pump'},
    {symbol: 'Q', meaning: 'flow of the oil through it'},
  ],
  sources: [
    {
      title: 'at least ten changes of the volume at low pressure',
      edition: 'none',
      howKnown: 'common-practice',
      status: 'unknown',
    },
  ],
  validFor:
    'a steady flow through the whole content; venting ends when no more air is seen, not by the clock',
}

/**
 * Time of circulation for flushing and venting.
 *
 * Source: definition of a change of volume; the ten changes are common practice, no source.
 * Valid for: a steady flow through the whole content; one change or more.
 *
 * @throws {RangeError}
 *   When volume or flow is not above zero, or there is less than one change.
 */
export function circulationTime(input: {
  readonly volume: Quantity<'volume'>
  readonly flow: Quantity<'volume-flow'>
  readonly changes: Quantity<'count'>
}): CirculationTime {
  refuseUnlessAboveZero('volume', input.volume, 'l')
  refuseUnlessAboveZero('flow', input.flow, 'l/min')
  if (input.changes.si < 1)
    throw new RangeError(`Unexpected ${input.changes.si} changes of the volume, expected one or more`)
  const circulated = input.changes.si * input.volume.si
  return {
    time: quantityOf('time', circulated / input.flow.si),
    circulated: quantityOf('volume', circulated),
  }
}
