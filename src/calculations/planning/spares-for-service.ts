import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'
import {refuseBelowZero, refuseUnlessAboveZero} from '../refuse-inputs.ts'

/** Hours that one fitted part will run in the time ahead, and how long such parts live. */
export interface PartInService {
  readonly hoursAhead: Quantity<'time'>
  readonly meanLife: Quantity<'time'>
}

/** Stock that serves, and how well. */
export interface SparesForService {
  readonly stock: Quantity<'count'>
  /** Probability that no more than the stock is used. */
  readonly served: Quantity<'ratio'>
  /** The same with one piece less; undefined where no stock is needed. */
  readonly servedWithOneLess: Quantity<'ratio'> | undefined
}

export const sparesForServiceNote: CalculationNote = {
  name: 'spares-for-service',
  words:
    'smallest stock with which, at the asked probability, no part is missing: failures come by chance, their number follows Poisson',
  formula: [
    'λ = Σ(hours ahead/mean life)',
    'P(k) = Σ from i = 0 to k of e^(−λ)·λ^i/i!',
    'stock = smallest k with P(k) ≥ service level',
  ],
  symbols: [
    {symbol: 'λ', meaning: 'expected use'},
    {symbol: 'P(k)', meaning: 'probability that at most k are used'},
    {symbol: 'k', meaning: 'number of spares'},
    {symbol: 'i', meaning: 'number used, from 0 to k'},
  ],
  sources: [
    {
      title: 'textbooks of statistics, Poisson distribution and its table',
      edition: 'unknown',
      howKnown: 'memory',
      status: 'unknown',
    },
  ],
  validFor:
    'parts that fail by chance and one by one; expected use up to 500, service levels from 50 % to 99.99 %',
}

/**
 * Expected use of a part: hours ahead over mean life, summed over all fitted ones.
 *
 * Source: renewal theory, many parts in steady service; from memory.
 * Valid for: parts whose mean life is known.
 *
 * @throws {RangeError}
 *   When hours ahead are negative or a mean life is not above zero.
 */
export function expectedUse(parts: readonly PartInService[]): Quantity<'count'> {
  for (const part of parts) {
    refuseBelowZero('running time ahead', part.hoursAhead, 'h')
    refuseUnlessAboveZero('mean life', part.meanLife, 'h')
  }
  return quantityOf(
    'count',
    parts.reduce((sum, part) => sum + part.hoursAhead.si / part.meanLife.si, 0),
  )
}

/**
 * Smallest stock that serves at the asked probability.
 *
 * Source: textbooks of statistics, Poisson distribution; from memory, compared with printed tables.
 * Valid for: expected use up to 500; service levels from 50 % to 99.99 %.
 *
 * @throws {RangeError}
 *   When the expected use is negative or above 500, or the service level is out of range.
 */
export function sparesForService(input: {
  readonly expectedUse: Quantity<'count'>
  readonly serviceLevel: Quantity<'ratio'>
}): SparesForService {
  const {si: mean} = input.expectedUse
  const {si: level} = input.serviceLevel
  if (mean < 0 || mean > 500) throw new RangeError(`Unexpected use of ${mean} pieces, expected 0 to 500`)
  if (level < 0.5 || level > 0.9999)
    throw new RangeError(`Unexpected service level of ${level}, expected 0.5 to 0.9999`)
  let stock = 0
  while (poissonAtMost(stock, mean) < level) stock += 1
  return {
    stock: quantityOf('count', stock),
    served: quantityOf('ratio', poissonAtMost(stock, mean)),
    servedWithOneLess: stock === 0 ? undefined : quantityOf('ratio', poissonAtMost(stock - 1, mean)),
  }
}

/**
 * Probability that at most so many events happen by chance when a mean number is expected. Plain numbers.
 *
 * Source: textbooks of statistics, Poisson distribution; from memory, compared with printed tables.
 * Valid for: whole numbers of events from 0 on; means from 0 to 500.
 */
export function poissonAtMost(events: number, mean: number): number {
  let term = Math.exp(-mean)
  let sum = term
  for (let count = 1; count <= events; count += 1) {
    term *= mean / count
    sum += term
  }
  return sum
}
