import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote, ExplainedSymbol, NotedSource} from '../calculation-note.ts'

const symbols: readonly ExplainedSymbol[] = [
  {symbol: 'T', meaning: 'tightening torque'},
  {symbol: 'K', meaning: 'nut factor, a test result for one lubrication'},
  {symbol: 'd', meaning: 'nominal diameter'},
  {symbol: 'F', meaning: 'preload'},
]

const nutFactorSources: readonly NotedSource[] = [
  {
    title: 'textbook on fastening, torque from nut factor, p. 85',
    edition: 'unknown',
    howKnown: 'reprint',
    status: 'unknown',
  },
]

const validFor =
  'nut factors from 0.05 to 0.50 that were tested with the bolt, coating and lubrication in use'

export const nutFactorTorqueNote: CalculationNote = {
  name: 'nut-factor-torque',
  words: 'torque for a preload when friction is known only as one nut factor from a test',
  formula: ['T = K·d·F'],
  symbols,
  sources: nutFactorSources,
  validFor,
}

export const nutFactorPreloadNote: CalculationNote = {
  name: 'nut-factor-preload',
  words: 'preload that a torque gives when friction is known only as one nut factor from a test',
  formula: ['F = T/(K·d)'],
  symbols,
  sources: nutFactorSources,
  validFor,
}

/**
 * Torque for a preload by nut factor.
 *
 * The nut factor holds thread, friction of thread and head and the geometry in
 * one number: it is a test result, and printed tables of it contradict each other.
 *
 * Source: textbook on fastening, p. 85; read in a reprint.
 * Valid for: nut factors from 0.05 to 0.50; preload and diameter above zero.
 *
 * @throws {RangeError}
 *   When the nut factor is out of range, or diameter or preload is not above zero.
 */
export function nutFactorTorque(input: {
  readonly nutFactor: Quantity<'ratio'>
  readonly diameter: Quantity<'length'>
  readonly preload: Quantity<'force'>
}): Quantity<'torque'> {
  refuseNutFactor(input.nutFactor)
  refuseNothing('diameter', input.diameter.si)
  refuseNothing('preload', input.preload.si)
  return quantityOf('torque', input.nutFactor.si * input.diameter.si * input.preload.si)
}

/**
 * Preload that a torque gives by nut factor.
 *
 * Source: textbook on fastening, p. 85; read in a reprint.
 * Valid for: nut factors from 0.05 to 0.50; torque and diameter above zero.
 *
 * @throws {RangeError}
 *   When the nut factor is out of range, or diameter or torque is not above zero.
 */
export function nutFactorPreload(input: {
  readonly nutFactor: Quantity<'ratio'>
  readonly diameter: Quantity<'length'>
  readonly torque: Quantity<'torque'>
}): Quantity<'force'> {
  refuseNutFactor(input.nutFactor)
  refuseNothing('diameter', input.diameter.si)
  refuseNothing('torque', input.torque.si)
  return quantityOf('force', input.torque.si / (input.nutFactor.si * input.diameter.si))
}

/**
 * Nut factor of a torque that gave a preload.
 *
 * Source: textbook on fastening, p. 85 (torque from nut factor, turned round); read in a reprint.
 * Valid for: torque, preload and diameter above zero.
 *
 * @throws {RangeError}
 *   When one of them is not above zero.
 */
export function nutFactorOf(input: {
  readonly torque: Quantity<'torque'>
  readonly preload: Quantity<'force'>
  readonly diameter: Quantity<'length'>
}): Quantity<'ratio'> {
  refuseNothing('torque', input.torque.si)
  refuseNothing('preload', input.preload.si)
  refuseNothing('diameter', input.diameter.si)
  return quantityOf('ratio', input.torque.si / (input.preload.si * input.diameter.si))
}

/**
 * Torque for the same preload under another nut factor.
 *
 * Source: textbook on fastening, p. 85 (same preload, same diameter); read in a reprint.
 * Valid for: two nut factors from 0.05 to 0.50 of one joint.
 *
 * @throws {RangeError}
 *   When a nut factor is out of range or the torque is not above zero.
 */
export function torqueUnderOtherNutFactor(input: {
  readonly torque: Quantity<'torque'>
  readonly nutFactor: Quantity<'ratio'>
  readonly otherNutFactor: Quantity<'ratio'>
}): Quantity<'torque'> {
  refuseNutFactor(input.nutFactor)
  refuseNutFactor(input.otherNutFactor)
  refuseNothing('torque', input.torque.si)
  return quantityOf('torque', (input.torque.si * input.otherNutFactor.si) / input.nutFactor.si)
}

function refuseNutFactor(nutFactor: Quantity<'ratio'>): void {
  if (nutFactor.si < 0.05 || nutFactor.si > 0.5)
    throw new RangeError(`Unexpected nut factor ${nutFactor.si}, expected 0.05 to 0.50`)
}

function refuseNothing(what: string, si: number): void {
  if (si <= 0) throw new RangeError(`Unexpected ${what} of ${si}, expected one above zero`)
}
