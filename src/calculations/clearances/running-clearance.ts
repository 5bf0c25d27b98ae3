import {printedText, printQuantity} from '../../quantities/print-quantity.ts'
import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'

/** Clearance of a ring on its hub, always on the diameter. */
export interface RunningClearance {
  /** Mean of the bores less mean of the hubs. */
  readonly mean: Quantity<'diametral-clearance'>
  /** Least bore less greatest hub. */
  readonly smallest: Quantity<'diametral-clearance'>
  readonly largest: Quantity<'diametral-clearance'>
  readonly boreOvality: Quantity<'length'>
  readonly hubOvality: Quantity<'length'>
}

export const runningClearanceNote: CalculationNote = {
  name: 'clearance',
  words:
    'diametral clearance from measured diameters: mean of the ring bores less mean of the hub diameters; the smallest gap is the least bore less the greatest hub',
  formula: [
    'c = mean(bores) − mean(hubs)',
    'c smallest = min(bores) − max(hubs)',
    'c largest = max(bores) − min(hubs)',
    'ovality = max − min',
  ],
  symbols: [
    {symbol: 'c', meaning: 'mean diametral clearance'},
    {symbol: 'c smallest', meaning: 'smallest diametral clearance'},
    {symbol: 'c largest', meaning: 'largest diametral clearance'},
  ],
  sources: [
    {
      title: 'naval training manual on centrifugal pumps, wear-ring measurement',
      edition: 'unknown',
      howKnown: 'reprint',
      status: 'unknown',
    },
  ],
  validFor: 'diameters of one ring and its hub, measured at one temperature',
}

/**
 * Diametral running clearance of a wear ring from measured diameters.
 *
 * Source: naval training manual on centrifugal pumps (difference of measured diameters); read in a reprint.
 * Valid for: diameters taken at one temperature with instruments of one class.
 *
 * @throws {RangeError}
 *   When a list is empty or the greatest hub does not pass through the least bore.
 */
export function runningClearance(input: {
  readonly bores: readonly Quantity<'length'>[]
  readonly hubs: readonly Quantity<'length'>[]
}): RunningClearance {
  const bores = input.bores.map((one) => one.si)
  const hubs = input.hubs.map((one) => one.si)
  if (bores.length === 0 || hubs.length === 0)
    throw new RangeError('Unexpected empty list of diameters, expected at least one bore and one hub')
  const smallest = Math.min(...bores) - Math.max(...hubs)
  if (smallest < 0) {
    throw new RangeError(
      `Unexpected hub of ${inMillimetres(Math.max(...hubs))} in a bore of ${inMillimetres(Math.min(...bores))}, expected hubs smaller than bores`,
    )
  }
  return {
    mean: quantityOf('diametral-clearance', mean(bores) - mean(hubs)),
    smallest: quantityOf('diametral-clearance', smallest),
    largest: quantityOf('diametral-clearance', Math.max(...bores) - Math.min(...hubs)),
    boreOvality: quantityOf('length', Math.max(...bores) - Math.min(...bores)),
    hubOvality: quantityOf('length', Math.max(...hubs) - Math.min(...hubs)),
  }
}

function inMillimetres(metres: number): string {
  return printedText(printQuantity(quantityOf('length', metres), 'mm', 3))
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length
}
