import {printedText, printQuantity} from '../../quantities/print-quantity.ts'
import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'

/** Leak of liquid into a cofferdam, by running hours and by days. */
export interface LiquidLeak {
  /** Missing when the pump did not run since the last purge: then the leak is judged per day only. */
  readonly perRunningHour?: Quantity<'volume-flow'>
  readonly perDay: Quantity<'volume-flow'>
}

export const liquidLeakRateNote: CalculationNote = {
  name: 'liquid-leak-rate',
  words:
    'liquid purged out, divided by the running hours and by the days since the last purge: a leak past a turning seal follows the hours, a leaking joint the days',
  formula: ['q running = V/h', 'q day = V/d'],
  symbols: [
    {symbol: 'q running', meaning: 'leak in a running hour'},
    {symbol: 'q day', meaning: 'leak in a day'},
    {symbol: 'V', meaning: 'liquid purged out'},
    {symbol: 'h', meaning: 'running hours since the last purge; without them the leak is given per day only'},
    {symbol: 'd', meaning: 'days since the last purge'},
  ],
  sources: [{title: 'definition', edition: 'none', howKnown: 'computed', status: 'current'}],
  validFor: 'a purge with the flow of gas seen at the outlet; the whole volume since the last purge',
}

/**
 * Leak of liquid per running hour and per day.
 *
 * Source: definition.
 * Valid for: a purge with the flow of gas seen at the outlet.
 *
 * @throws {RangeError}
 *   When a figure is below zero, no time has passed, or the pump ran longer than time has passed.
 */
export function liquidLeakRate(input: {
  readonly volume: Quantity<'volume'>
  readonly running: Quantity<'time'>
  readonly elapsed: Quantity<'time'>
}): LiquidLeak {
  const {volume, running, elapsed} = input
  if (volume.si < 0 || running.si < 0)
    throw new RangeError('Unexpected volume or running hours below zero, expected none or more')
  if (elapsed.si <= 0)
    throw new RangeError('Unexpected time of nothing since the last purge, expected a time above zero')
  if (running.si > elapsed.si)
    throw new RangeError(
      `Unexpected ${hoursText(running)} of running within ${hoursText(elapsed)}, expected no more than has passed`,
    )
  const perDay = quantityOf('volume-flow', volume.si / elapsed.si)
  if (running.si === 0) return {perDay}
  return {perRunningHour: quantityOf('volume-flow', volume.si / running.si), perDay}
}

function hoursText(time: Quantity<'time'>): string {
  return printedText(printQuantity(time, 'h', 1))
}
