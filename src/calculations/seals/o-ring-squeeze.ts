import {printedText, printQuantity} from '../../quantities/print-quantity.ts'
import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'

/** Section of a ring and depth of its gland. */
export interface ORingGland {
  readonly section: Quantity<'length'>
  readonly depth: Quantity<'length'>
}

/** How far section and depth may lie from what is stated, to either side. */
export interface ORingTolerances {
  readonly section: Quantity<'length'>
  readonly depth: Quantity<'length'>
}

/** Squeeze of a ring, as a length and as a share of the section that it is taken from. */
export interface ORingSqueeze {
  readonly length: Quantity<'length'>
  readonly share: Quantity<'ratio'>
}

export const oRingGlandNote: CalculationNote = {
  name: 'o-ring-gland',
  words:
    'squeeze of an O-ring in its gland, least and greatest with the tolerances; with the diameters, stretch and what it leaves of the section; with the width, how full the groove is',
  formula: [
    'squeeze = (CS − h)/CS',
    'least = (CS − t − h − u)/(CS − t), greatest = (CS + t − h + u)/(CS + t)',
    'stretch = (dg − ID)/ID',
    'CS reduced = CS·√((ID + CS)/(dg + CS))',
    'fill = π·CS²·(ID + CS)/(4·w·h·(dg + h))',
  ],
  symbols: [
    {symbol: 'CS', meaning: 'section of the ring'},
    {symbol: 'CS reduced', meaning: 'section of the stretched ring'},
    {symbol: 'h', meaning: 'depth of the gland'},
    {symbol: 't', meaning: 'tolerance of the section to either side'},
    {symbol: 'u', meaning: 'tolerance of the depth to either side'},
    {symbol: 'ID', meaning: 'inside diameter of the ring'},
    {symbol: 'dg', meaning: 'diameter of the groove ground'},
    {symbol: 'w', meaning: 'width of the groove'},
  ],
  sources: [
    {
      title: 'gland table for O-rings in inches, 48 printed limits of squeeze',
      edition: 'unknown',
      howKnown: 'reprint',
      status: 'unknown',
    },
    {
      title: 'ISO 3601-1 and AS568, tolerances of sections',
      edition: 'unknown',
      howKnown: 'memory',
      status: 'unknown',
    },
    {
      title: 'ring of constant volume; stretch at most 5 % of the inside diameter (reprint)',
      edition: 'none',
      howKnown: 'computed',
      status: 'current',
    },
  ],
  validFor:
    'glands shallower than the section in every tolerance; squeeze of the section as made, before stretch thins it',
}

/**
 * Squeeze of an O-ring.
 *
 * Source: gland table for O-rings in inches, read in a reprint.
 * Valid for: glands shallower than the section.
 *
 * @throws {RangeError}
 *   When section or depth is not above zero or the gland is not shallower than the section.
 */
export function oRingSqueeze({section, depth}: ORingGland): ORingSqueeze {
  if (section.si <= 0 || depth.si <= 0)
    throw new RangeError('Unexpected section or depth of nothing, expected values above zero')
  if (depth.si >= section.si)
    throw new RangeError(
      `Unexpected gland of ${inMillimetres(depth)} for a section of ${inMillimetres(section)}, expected a gland shallower than the section`,
    )
  return {
    length: quantityOf('length', section.si - depth.si),
    share: quantityOf('ratio', (section.si - depth.si) / section.si),
  }
}

/**
 * Least and greatest squeeze of an O-ring with the tolerances of section and gland.
 *
 * Each share is taken of the section that belongs to it: the thinnest for the least, the thickest for the greatest.
 *
 * Source: gland table for O-rings in inches, read in a reprint.
 * Valid for: glands shallower than the section in every tolerance.
 *
 * @throws {RangeError}
 *   When a tolerance is negative, or the deepest gland is not shallower than the thinnest section.
 */
export function oRingSqueezeLimits(
  gland: ORingGland,
  tolerances: ORingTolerances,
): {readonly least: ORingSqueeze; readonly greatest: ORingSqueeze} {
  if (tolerances.section.si < 0 || tolerances.depth.si < 0)
    throw new RangeError('Unexpected tolerance below zero, expected zero or more')
  const at = (side: 1 | -1): ORingSqueeze =>
    oRingSqueeze({
      section: quantityOf('length', gland.section.si + side * tolerances.section.si),
      depth: quantityOf('length', gland.depth.si - side * tolerances.depth.si),
    })
  return {least: at(-1), greatest: at(1)}
}

export const oRingDepthNote: CalculationNote = {
  name: 'o-ring-depth',
  words: 'depth of the gland that squeezes an O-ring by a stated share of its section',
  formula: ['h = CS·(1 − s)'],
  symbols: [
    {symbol: 'h', meaning: 'depth of the gland'},
    {symbol: 'CS', meaning: 'section of the ring'},
    {symbol: 's', meaning: 'squeeze'},
  ],
  sources: [
    {
      title: 'example of a groove depth, trade page on O-rings',
      edition: 'unknown',
      howKnown: 'reprint',
      status: 'unknown',
    },
  ],
  validFor: 'squeeze above 0 and below 100 %',
}

/**
 * Depth of the gland that gives a squeeze.
 *
 * Source: definition of squeeze; an example read in a reprint.
 * Valid for: squeeze above 0 and below 100 %.
 *
 * @throws {RangeError}
 *   When the section is not above zero or the squeeze is outside the range.
 */
export function oRingDepth(section: Quantity<'length'>, squeeze: Quantity<'ratio'>): Quantity<'length'> {
  if (section.si <= 0) throw new RangeError('Unexpected section of nothing, expected a section above zero')
  if (squeeze.si <= 0 || squeeze.si >= 1)
    throw new RangeError(`Unexpected squeeze of ${squeeze.si}, expected above 0 and below 1`)
  return quantityOf('length', section.si * (1 - squeeze.si))
}

function inMillimetres(length: Quantity<'length'>): string {
  return printedText(printQuantity(length, 'mm', 3))
}
