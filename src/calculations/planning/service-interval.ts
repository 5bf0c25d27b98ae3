import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'
import {refuseBelowZero, refuseUnlessAboveZero} from '../refuse-inputs.ts'

/** How large a share of the running time goes to one cargo, and the interval that cargo alone would allow. */
export interface CargoShare {
  readonly share: Quantity<'ratio'>
  readonly interval: Quantity<'time'>
}

/** Hours run with one cargo since the last service, and the interval that cargo alone would allow. */
export interface CargoRun {
  readonly run: Quantity<'time'>
  readonly interval: Quantity<'time'>
}

/** Interval of a mix of cargoes, and what of it is left. */
export interface ServiceInterval {
  readonly interval: Quantity<'time'>
  /** Share of the life used since the last service; above 1 when the service is past due. */
  readonly used: Quantity<'ratio'>
  /** Running time left with the mix ahead; negative when the service is past due. */
  readonly left: Quantity<'time'>
}

export const serviceIntervalNote: CalculationNote = {
  name: 'service-interval',
  words:
    'each hour uses up a share of the life that depends on the cargo; the shares add up, and the service is due when they make the whole',
  formula: ['1/L = Σ(w/Li)', 'used = Σ(h/Li)', 'left = (1 − used)·L'],
  symbols: [
    {symbol: 'L', meaning: 'interval of the mix'},
    {symbol: 'Li', meaning: 'interval with one cargo alone'},
    {symbol: 'w', meaning: 'share of the running time with that cargo'},
    {symbol: 'h', meaning: 'hours run with that cargo'},
  ],
  sources: [
    {
      title: 'linear damage rule of Palmgren and Miner, textbook form',
      edition: 'unknown',
      howKnown: 'memory',
      status: 'unknown',
    },
  ],
  validFor: 'wear that does not depend on the order of the cargoes',
}

/**
 * Service interval of a pump that carries a mix of cargoes, and what is left of it.
 *
 * Source: linear damage rule of Palmgren and Miner; from memory. No published check: compared with a sum hour by hour.
 * Valid for: wear that does not depend on the order of the cargoes; intervals stated per cargo.
 *
 * @throws {RangeError}
 *   When the mix is empty, a share is negative, the shares do not make the whole, an interval is not above zero, or run
 *   hours are negative.
 */
export function serviceInterval(input: {
  readonly mix: readonly CargoShare[]
  readonly runs: readonly CargoRun[]
}): ServiceInterval {
  const {mix, runs} = input
  for (const {share} of mix) refuseBelowZero('share', share, '%')
  for (const {run} of runs) refuseBelowZero('running time', run, 'h')
  for (const {interval} of [...mix, ...runs]) refuseUnlessAboveZero('interval', interval, 'h')
  const whole = mix.reduce((sum, one) => sum + one.share.si, 0)
  if (Math.abs(whole - 1) > 1e-6)
    throw new RangeError(`Unexpected shares that make ${(whole * 100).toFixed(2)} %, expected 100 %`)
  const interval = 1 / mix.reduce((sum, one) => sum + one.share.si / one.interval.si, 0)
  const used = runs.reduce((sum, one) => sum + one.run.si / one.interval.si, 0)
  return {
    interval: quantityOf('time', interval),
    used: quantityOf('ratio', used),
    left: quantityOf('time', (1 - used) * interval),
  }
}
