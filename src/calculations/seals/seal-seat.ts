import {micrometres, millimetres, rockwellHardness} from '../../quantities/named-units.ts'
import type {Quantity} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'

/** What the lip that runs on the seat is made of. */
export type LipMaterial = 'elastomer' | 'ptfe'

/** What the seat of a lip seal must be like. */
export interface SealSeat {
  readonly leastRoughness: Quantity<'length'>
  readonly greatestRoughness: Quantity<'length'>
  readonly leastHardness: Quantity<'hardness'>
  /** Total indicator reading at the lip. */
  readonly greatestRunOut: Quantity<'length'>
  /** Depth of a groove worn by the lip; deeper, the sleeve is renewed. */
  readonly greatestGroove: Quantity<'length'>
}

export const sealSeatNote: CalculationNote = {
  name: 'seal-seat',
  words:
    'what the seat of a lip seal must be like: roughness by the material of the lip, hardness by the speed at the lip, run-out and depth of a worn groove; ground without lead',
  formula: [
    'elastomer lip: Ra 0.2 to 0.8 µm; PTFE lip: Ra 0.1 to 0.4 µm',
    'hardness at least 45 HRC, at least 55 HRC where v > 4 m/s',
    'run-out at the lip at most 0.10 mm; worn groove at most 0.05 mm',
  ],
  symbols: [
    {symbol: 'Ra', meaning: 'mean roughness'},
    {symbol: 'v', meaning: 'speed at the lip'},
    {symbol: 'HRC', meaning: 'hardness by Rockwell, scale C'},
    {symbol: 'PTFE', meaning: 'polytetrafluoroethylene'},
  ],
  sources: [
    {
      title: 'DIN 3760 and ISO 6194-1, seat of radial lip seals',
      edition: 'unknown',
      howKnown: 'memory',
      status: 'unknown',
    },
    {title: 'depth of a worn groove', edition: 'none', howKnown: 'common-practice', status: 'unknown'},
  ],
  validFor: 'steel seats and sleeves of radial lip seals; a coated sleeve follows its own drawing',
}

/** Roughness Ra in µm, least and greatest. Source: DIN 3760 and ISO 6194-1; from memory. */
const roughness: Readonly<Record<LipMaterial, readonly [number, number]>> = {
  elastomer: [0.2, 0.8],
  ptfe: [0.1, 0.4],
}

/** Speed at the lip in m/s above which the seat must be harder. Source: DIN 3760; from memory. */
const fastLip = 4

/**
 * What the seat of a lip seal must be like.
 *
 * Source: DIN 3760 and ISO 6194-1, from memory; depth of a worn groove by common practice, no source.
 * Valid for: steel seats and sleeves of radial lip seals.
 *
 * @throws {RangeError}
 *   When the speed is negative.
 */
export function sealSeat(lip: LipMaterial, speed: Quantity<'speed'>): SealSeat {
  if (speed.si < 0) throw new RangeError('Unexpected speed below zero, expected zero or more')
  const [least, greatest] = roughness[lip]
  return {
    leastRoughness: micrometres(least),
    greatestRoughness: micrometres(greatest),
    leastHardness: rockwellHardness(speed.si > fastLip ? 55 : 45),
    greatestRunOut: millimetres(0.1),
    greatestGroove: millimetres(0.05),
  }
}
