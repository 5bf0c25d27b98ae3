import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'

/** A 60° ISO metric thread by nominal diameter and pitch. */
export interface MetricThread {
  readonly nominalDiameter: Quantity<'length'>
  readonly pitch: Quantity<'length'>
}

/** Diameters and areas of a thread. */
export interface ThreadGeometry {
  readonly pitchDiameter: Quantity<'length'>
  /** Basic minor diameter of the nut thread. */
  readonly minorDiameter: Quantity<'length'>
  /** Minor diameter of the bolt thread, at the root radius. */
  readonly coreDiameter: Quantity<'length'>
  readonly stressDiameter: Quantity<'length'>
  readonly stressArea: Quantity<'area'>
  readonly coreArea: Quantity<'area'>
}

export const threadGeometryNote: CalculationNote = {
  name: 'thread-geometry',
  words:
    'diameters of an ISO metric thread from nominal diameter and pitch, and the cross-section that carries the load',
  formula: [
    'H = P·√3/2',
    'd2 = d − 3/4·H',
    'd1 = d − 5/4·H',
    'd3 = d1 − H/6',
    'd0 = (d2 + d3)/2',
    'As = π/4·d0²',
  ],
  symbols: [
    {symbol: 'H', meaning: 'height of the thread triangle'},
    {symbol: 'P', meaning: 'pitch'},
    {symbol: 'd', meaning: 'nominal diameter'},
    {symbol: 'd2', meaning: 'pitch diameter'},
    {symbol: 'd1', meaning: 'minor diameter of the nut thread'},
    {symbol: 'd3', meaning: 'core diameter of the bolt thread'},
    {symbol: 'd0', meaning: 'stress diameter'},
    {symbol: 'As', meaning: 'stress area'},
  ],
  sources: [
    {
      title: 'ISO 724, basic dimensions of metric threads',
      edition: '1993',
      howKnown: 'reprint',
      status: 'unknown',
    },
    {title: 'ISO 898-1, nominal stress area', edition: '2013', howKnown: 'reprint', status: 'unknown'},
  ],
  validFor: '60° ISO metric threads; not for bolts with a reduced shank',
}

/**
 * Diameters and areas of a metric bolt thread.
 *
 * The core that carries the load is taken as a round bar whose diameter is
 * halfway between the pitch diameter and the core diameter.
 *
 * Source: ISO 724 (diameters); ISO 898-1 (stress area); read in reprints.
 * Valid for: 60° ISO metric threads. Not for reduced-shank bolts.
 *
 * @throws {RangeError}
 *   When the pitch leaves no core.
 */
export function threadGeometry(thread: MetricThread): ThreadGeometry {
  const diameter = thread.nominalDiameter.si
  const height = (thread.pitch.si * Math.sqrt(3)) / 2
  const pitchDiameter = diameter - 0.75 * height
  const minorDiameter = diameter - 1.25 * height
  const coreDiameter = minorDiameter - height / 6
  if (thread.pitch.si <= 0 || coreDiameter <= 0) {
    throw new RangeError(
      'Unexpected pitch that leaves no core, expected a pitch above zero and below the diameter',
    )
  }
  const stressDiameter = (pitchDiameter + coreDiameter) / 2
  return {
    pitchDiameter: quantityOf('length', pitchDiameter),
    minorDiameter: quantityOf('length', minorDiameter),
    coreDiameter: quantityOf('length', coreDiameter),
    stressDiameter: quantityOf('length', stressDiameter),
    stressArea: quantityOf('area', (Math.PI / 4) * stressDiameter ** 2),
    coreArea: quantityOf('area', (Math.PI / 4) * coreDiameter ** 2),
  }
}
