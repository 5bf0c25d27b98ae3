import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'
import {wellMixedBalance} from '../gas/gas-sources.ts'
import {contentAfterChanges, type GasContent} from '../gas/well-mixed.ts'
import {airChangesWithin, type Ventilation} from './ventilation-time.ts'

/** A ventilated space into which gas flows. */
export interface GasBuildUp {
  readonly content: Quantity<'ratio'>
  /** Content that the space comes to in the end. */
  readonly steady: Quantity<'ratio'>
}

export const gasBuildUpNote: CalculationNote = {
  name: 'gas-build-up',
  words:
    'content of a ventilated space into which gas leaks all the time, and the content it comes to in the end',
  formula: ['n = k·Q/V', 'C end = Cs + q/(k·Q)', 'C = C end + (C0 − C end)·e^(−n·t)'],
  symbols: [
    {symbol: 'n', meaning: 'air changes in the unit of time'},
    {symbol: 'k', meaning: 'mixing, 1 when perfect'},
    {symbol: 'Q', meaning: 'air flow'},
    {symbol: 'V', meaning: 'volume of the space'},
    {symbol: 'q', meaning: 'flow of the gas that leaks in'},
    {symbol: 't', meaning: 'time'},
    {symbol: 'C', meaning: 'content'},
    {symbol: 'C0', meaning: 'content at the start'},
    {symbol: 'C end', meaning: 'content in the end'},
    {symbol: 'Cs', meaning: 'content of the same gas in the air that is blown in'},
  ],
  sources: [wellMixedBalance],
  validFor: 'a leak that is small beside the air flow',
}

/**
 * Content of a ventilated space with a source of gas.
 *
 * Source: balance of one gas in a well mixed space.
 * Valid for: a steady source that is small beside the air flow.
 *
 * @throws {RangeError}
 *   When volume or flow is not above zero, the mixing is not above zero and at most 1, a content, the source or the
 *   time is below none, or the source is so large that the content would pass the whole.
 */
export function gasBuildUp(
  input: Ventilation & {
    readonly source: Quantity<'volume-flow'>
    readonly from: GasContent
    readonly supply: GasContent
    readonly time: Quantity<'time'>
  },
): GasBuildUp {
  if (input.source.si < 0) throw new RangeError('Unexpected source below zero, expected none or more')
  const changes = airChangesWithin(input, input.time)
  const steady = quantityOf('ratio', input.supply.si + input.source.si / (input.mixing.si * input.flow.si))
  if (steady.si > 1)
    throw new RangeError('Unexpected source as large as the air flow, expected one that is small beside it')
  return {steady, content: contentAfterChanges({from: input.from, supply: steady, changes})}
}
