import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'
import {type MetricThread, type ThreadGeometry, threadGeometry} from './thread-geometry.ts'

/** Edition of the guideline: from 2003 on the torsion is shared plastically, before that elastically. */
export type TorqueEdition = '2003' | '1986'

/** What a tightening torque is computed from. */
export interface TighteningInput {
  readonly thread: MetricThread
  /** Outer diameter of the bearing face below the head. */
  readonly bearingDiameter: Quantity<'length'>
  readonly holeDiameter: Quantity<'length'>
  /** Yield stress, or 0.2 % proof stress. */
  readonly yieldStress: Quantity<'stress'>
  /** Share of the yield stress that tension and torsion together use. */
  readonly utilisation: Quantity<'ratio'>
  readonly threadFriction: Quantity<'ratio'>
  readonly headFriction: Quantity<'ratio'>
  readonly edition: TorqueEdition
}

/** Preload and torque with the intermediate results that explain them. */
export interface TighteningResult {
  readonly preload: Quantity<'force'>
  readonly torque: Quantity<'torque'>
  readonly geometry: ThreadGeometry
  readonly leadAngle: Quantity<'angle'>
  readonly frictionAngle: Quantity<'angle'>
  readonly meanHeadDiameter: Quantity<'length'>
  /** Combined stress of tension and torsion over the yield stress; equals the utilisation asked for. */
  readonly combinedUtilisation: Quantity<'ratio'>
}

/** The calculation by the edition of 2003 and later. */
export const tighteningTorqueNote: CalculationNote = tighteningTorqueNoteOf('2003')

/**
 * The calculation explained as one edition has it: factor of the torsion and edition are those of the printed torque.
 *
 * Source: VDI 2230 part 1; from memory.
 * Valid for: both editions.
 */
export function tighteningTorqueNoteOf(edition: TorqueEdition): CalculationNote {
  const factor = edition === '2003' ? '3/2' : '2'
  return {
    name: 'tightening-torque',
    words:
      'the preload at which tension and torsion together use the stated share of the yield stress, and the torque that gives this preload against thread and head friction',
    formula: [
      'tan φ = P/(π·d2)',
      'ρ′ = atan(µG/cos 30°)',
      `FM = As·ν·Rp0.2/√(1 + 3·[${factor}·(d2/d0)·tan(φ + ρ′)]²)`,
      'DKm = (dw + dh)/2',
      'MA = FM·[d2/2·tan(φ + ρ′) + µK·DKm/2]',
    ],
    symbols: [
      {symbol: 'φ', meaning: 'lead angle'},
      {symbol: 'P', meaning: 'pitch'},
      {symbol: 'd2', meaning: 'pitch diameter'},
      {symbol: 'd0', meaning: 'stress diameter'},
      {symbol: 'ρ′', meaning: 'friction angle of the thread'},
      {symbol: 'µG', meaning: 'thread friction'},
      {symbol: 'µK', meaning: 'head friction'},
      {symbol: 'FM', meaning: 'preload'},
      {symbol: 'As', meaning: 'stress area'},
      {symbol: 'ν', meaning: 'utilisation of the yield stress'},
      {symbol: 'Rp0.2', meaning: 'yield stress'},
      {symbol: 'DKm', meaning: 'mean diameter of the bearing face'},
      {symbol: 'dw', meaning: 'outside of the bearing face'},
      {symbol: 'dh', meaning: 'hole'},
      {symbol: 'MA', meaning: 'tightening torque'},
    ],
    sources: [
      {
        title: 'VDI 2230 part 1, exact form',
        edition: edition === '2003' ? '2003 and later' : '1986',
        howKnown: 'memory',
        status: edition === '2003' ? 'unknown' : 'superseded',
      },
    ],
    validFor: 'metric bolts with the plain shank not thinner than the stress diameter, tightened by torque',
  }
}

/**
 * Assembly preload and tightening torque of a bolt, by the exact form.
 *
 * Torsion counts with the plastic section modulus π·d0³/12 (factor 3/2) in the
 * 2003 edition and later, with the elastic one π·d0³/16 (factor 2) in the 1986
 * edition, which gives torques eight to ten percent lower.
 *
 * Source: VDI 2230 part 1; formula from memory, compared with its tables row by row.
 * Valid for: metric bolts tightened by torque; friction from 0.02 to 0.60; utilisation up to 1.
 *
 * @throws {RangeError}
 *   When friction or utilisation is outside the range, or the hole is not smaller than the bearing face.
 */
export function tighteningTorque(input: TighteningInput): TighteningResult {
  refuseOutOfRange(input)
  const geometry = threadGeometry(input.thread)
  const pitchDiameter = geometry.pitchDiameter.si
  const stressDiameter = geometry.stressDiameter.si
  const leadAngle = Math.atan(input.thread.pitch.si / (Math.PI * pitchDiameter))
  const frictionAngle = Math.atan(input.threadFriction.si / Math.cos(Math.PI / 6))
  const wedge = Math.tan(leadAngle + frictionAngle)
  const torsionFactor = input.edition === '2003' ? 1.5 : 2
  const torsion = torsionFactor * (pitchDiameter / stressDiameter) * wedge
  const tension = (input.utilisation.si * input.yieldStress.si) / Math.sqrt(1 + 3 * torsion ** 2)
  const preload = geometry.stressArea.si * tension
  const meanHeadDiameter = (input.bearingDiameter.si + input.holeDiameter.si) / 2
  const torque = preload * ((pitchDiameter / 2) * wedge + (input.headFriction.si * meanHeadDiameter) / 2)
  const combined = Math.sqrt(tension ** 2 + 3 * (tension * torsion) ** 2) / input.yieldStress.si
  return {
    preload: quantityOf('force', preload),
    torque: quantityOf('torque', torque),
    geometry,
    leadAngle: quantityOf('angle', leadAngle),
    frictionAngle: quantityOf('angle', frictionAngle),
    meanHeadDiameter: quantityOf('length', meanHeadDiameter),
    combinedUtilisation: quantityOf('ratio', combined),
  }
}

function refuseOutOfRange(input: TighteningInput): void {
  for (const friction of [input.threadFriction, input.headFriction]) {
    if (friction.si < 0.02 || friction.si > 0.6) {
      throw new RangeError(`Unexpected friction ${friction.si}, expected 0.02 to 0.60`)
    }
  }
  if (input.utilisation.si <= 0 || input.utilisation.si > 1) {
    throw new RangeError(`Unexpected utilisation ${input.utilisation.si}, expected above 0 and at most 1`)
  }
  if (input.holeDiameter.si >= input.bearingDiameter.si) {
    throw new RangeError('Unexpected hole as large as the bearing face, expected a smaller hole')
  }
}
