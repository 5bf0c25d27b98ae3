import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'
import {wellMixedBalance} from './gas-sources.ts'
import {type ContentChange, changesToReach, contentAfterChanges} from './well-mixed.ts'
import {wholeUp} from './whole-count.ts'

/** What a purge by pressure or vacuum cycles is computed from. */
export interface PurgeCyclesInput extends ContentChange {
  readonly low: Quantity<'absolute-pressure'>
  readonly high: Quantity<'absolute-pressure'>
  /** Pressure at which the free gas is counted. */
  readonly reference: Quantity<'absolute-pressure'>
}

/** A purge by pressure or vacuum cycles. */
export interface PurgeCycles {
  /** Cycles by the formula, not rounded. */
  readonly exact: Quantity<'count'>
  /** Whole cycles that are enough. */
  readonly cycles: Quantity<'count'>
  /** Content after each of the cycles. */
  readonly contents: readonly Quantity<'ratio'>[]
  /** Free gas of one cycle and of all, in volumes of the space. */
  readonly volumesPerCycle: Quantity<'count'>
  readonly volumes: Quantity<'count'>
}

/** More cycles are no way of purging. */
const mostCycles = 100

export const purgeCyclesNote: CalculationNote = {
  name: 'purge-cycles',
  words:
    'cycles between two pressures that bring a space from one content to another; with the lower pressure a vacuum these are vacuum cycles',
  formula: [
    'n = ln[(C0 − Cs)/(C − Cs)]/ln(p high/p low), next whole cycle',
    'C after n cycles = Cs + (C0 − Cs)·(p low/p high)^n',
    'volumes = n·(p high − p low)/p ref',
  ],
  symbols: [
    {symbol: 'n', meaning: 'cycles'},
    {symbol: 'C0', meaning: 'content at the start'},
    {symbol: 'C', meaning: 'content aimed at'},
    {symbol: 'Cs', meaning: 'content of the same gas in the purge gas'},
    {symbol: 'p low', meaning: 'absolute pressure at which a cycle begins'},
    {symbol: 'p high', meaning: 'absolute pressure up to which it is filled'},
    {symbol: 'p ref', meaning: 'reference pressure of the free gas'},
  ],
  sources: [wellMixedBalance],
  validFor: 'a space mixed at the high pressure of each cycle; absolute pressures; one temperature',
}

/**
 * Purge by pressure cycles, or by vacuum cycles where the lower pressure is a vacuum.
 *
 * Source: balance of one gas in a well mixed space.
 * Valid for: a space mixed at the high pressure of each cycle, at one temperature.
 *
 * @throws {RangeError}
 *   When the pressures do not rise from low to high above a vacuum, the aim does not lie between the content at the
 *   start and that of the purge gas, or more than a hundred cycles are needed.
 */
export function purgeCycles({from, to, supply, low, high, reference}: PurgeCyclesInput): PurgeCycles {
  if (low.si <= 0 || high.si <= low.si || reference.si <= 0)
    throw new RangeError(
      'Unexpected low pressure not below the high one, expected both above a vacuum, rising',
    )
  const changesOfCycle = Math.log(high.si / low.si)
  const exact = changesToReach({from, to, supply}).si / changesOfCycle
  const cycles = wholeUp(exact)
  if (cycles.si > mostCycles)
    throw new RangeError(
      `Unexpected ${cycles.si} cycles, expected at most ${mostCycles}: put low and high pressure further apart`,
    )
  const volumesPerCycle = (high.si - low.si) / reference.si
  return {
    exact: quantityOf('count', exact),
    cycles,
    contents: Array.from({length: cycles.si}, (_, index) =>
      contentAfterChanges({from, supply, changes: quantityOf('count', (index + 1) * changesOfCycle)}),
    ),
    volumesPerCycle: quantityOf('count', volumesPerCycle),
    volumes: quantityOf('count', cycles.si * volumesPerCycle),
  }
}
