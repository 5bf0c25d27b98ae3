import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'
import {commonPractice, textbookGasLaw} from './gas-sources.ts'

/** How long a purge takes, and whether the flow or the least time says so. */
export interface PurgeTime {
  readonly time: Quantity<'time'>
  readonly governs: 'formula' | 'least'
}

export const purgeTimeNote: CalculationNote = {
  name: 'purge-time',
  words: 'time in which the flow of gas brings the changes of one purge, never shorter than the least time',
  formula: ['V free = n·V·p/p ref', 't = V free/q, at least the least time'],
  symbols: [
    {symbol: 'V free', meaning: 'free gas of one purge'},
    {symbol: 'n', meaning: 'changes of the gas in the space'},
    {symbol: 'V', meaning: 'volume of the space'},
    {symbol: 'p', meaning: 'absolute pressure while purging'},
    {symbol: 'p ref', meaning: 'reference pressure of the free gas'},
    {symbol: 'q', meaning: 'flow of free gas'},
    {symbol: 't', meaning: 'time'},
  ],
  sources: [textbookGasLaw, commonPractice],
  validFor: 'a purge whose flow of gas is seen at the outlet; after it two checks some minutes apart are dry',
}

/**
 * Time of one purge.
 *
 * Source: ideal gas law; from memory. Count of changes and least time are common practice, no source.
 * Valid for: a purge whose flow of gas is seen at the outlet.
 *
 * @throws {RangeError}
 *   When free gas or flow is not above zero.
 */
export function purgeTime(input: {
  readonly freeGas: Quantity<'volume'>
  readonly freeFlow: Quantity<'volume-flow'>
  readonly least: Quantity<'time'>
}): PurgeTime {
  const {freeGas, freeFlow, least} = input
  if (freeGas.si <= 0 || freeFlow.si <= 0)
    throw new RangeError('Unexpected free gas or flow of nothing, expected values above zero')
  const byFormula = freeGas.si / freeFlow.si
  return {
    time: quantityOf('time', Math.max(byFormula, least.si)),
    governs: byFormula > least.si ? 'formula' : 'least',
  }
}
