import {printedText, printQuantity} from '../../quantities/print-quantity.ts'
import {type Quantity, quantityOf} from '../../quantities/quantity.ts'

/** A ring on the ground of an outside groove. */
export interface StretchedRing {
  readonly section: Quantity<'length'>
  readonly insideDiameter: Quantity<'length'>
  readonly grooveDiameter: Quantity<'length'>
}

/** Stretch of a ring and what it leaves of the section. */
export interface ORingStretch {
  readonly stretch: Quantity<'ratio'>
  readonly reducedSection: Quantity<'length'>
  /** Section lost over the section as made. */
  readonly sectionLoss: Quantity<'ratio'>
}

/** Greatest stretch of a ring at rest in an outside groove. Source: trade page on O-rings; read in a reprint. */
export const greatestStretch: Quantity<'ratio'> = quantityOf('ratio', 0.05)

/**
 * Stretch of an O-ring on its groove, and the section that is left.
 *
 * The ring keeps its volume while it is stretched. Whether the stretch is too much is told by `greatestStretch`, not refused.
 *
 * Source: geometry of a ring of constant volume; computed apart from this project.
 * Valid for: outside grooves at least as large as the inside diameter of the ring.
 *
 * @throws {RangeError}
 *   When a size is not above zero or the ring would hang loose on the groove.
 */
export function oRingStretch({section, insideDiameter, grooveDiameter}: StretchedRing): ORingStretch {
  if (section.si <= 0 || insideDiameter.si <= 0)
    throw new RangeError('Unexpected ring of no section or diameter, expected sizes above zero')
  if (grooveDiameter.si < insideDiameter.si)
    throw new RangeError(
      `Unexpected groove of ${inMillimetres(grooveDiameter)} in a ring of ${inMillimetres(insideDiameter)}, expected a groove at least as large as the inside diameter`,
    )
  const ratio = Math.sqrt((insideDiameter.si + section.si) / (grooveDiameter.si + section.si))
  return {
    stretch: quantityOf('ratio', (grooveDiameter.si - insideDiameter.si) / insideDiameter.si),
    reducedSection: quantityOf('length', section.si * ratio),
    sectionLoss: quantityOf('ratio', 1 - ratio),
  }
}

/**
 * How full a groove is: volume of the ring over volume of the groove.
 *
 * Source: geometry; computed apart from this project.
 * Valid for: rectangular outside grooves that hold the ring.
 *
 * @throws {RangeError}
 *   When a size is not above zero, the ring hangs loose or does not go into the groove.
 */
export function oRingFill(
  input: StretchedRing & {readonly depth: Quantity<'length'>; readonly width: Quantity<'length'>},
): Quantity<'ratio'> {
  oRingStretch(input)
  if (input.depth.si <= 0 || input.width.si <= 0)
    throw new RangeError('Unexpected groove of no depth or width, expected sizes above zero')
  const ring = (Math.PI / 4) * input.section.si ** 2 * Math.PI * (input.insideDiameter.si + input.section.si)
  const groove = Math.PI * input.width.si * input.depth.si * (input.grooveDiameter.si + input.depth.si)
  if (ring > groove)
    throw new RangeError(
      `Unexpected ring of ${(ring / groove).toFixed(2)} times the volume of its groove, expected one that goes in`,
    )
  return quantityOf('ratio', ring / groove)
}

function inMillimetres(length: Quantity<'length'>): string {
  return printedText(printQuantity(length, 'mm', 3))
}
