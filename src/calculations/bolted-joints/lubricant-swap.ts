import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'
import {type TighteningInput, tighteningTorque} from './tightening-torque.ts'

/** A joint whose torque was set for one friction and is applied under another. */
export interface LubricantSwapInput extends Omit<TighteningInput, 'threadFriction' | 'headFriction'> {
  readonly setFor: FrictionOfJoint
  readonly appliedTo: FrictionOfJoint
}

/** Friction of thread and head of one lubrication state. */
export interface FrictionOfJoint {
  readonly threadFriction: Quantity<'ratio'>
  readonly headFriction: Quantity<'ratio'>
}

/** What a torque does to a bolt that is lubricated otherwise than the torque was set for. */
export interface LubricantSwap {
  readonly torque: Quantity<'torque'>
  /** Preload that the torque gives under the friction that is there. */
  readonly preload: Quantity<'force'>
  /** Preload that the stated utilisation allows under the friction that is there. */
  readonly allowedPreload: Quantity<'force'>
  readonly shareOfAllowed: Quantity<'ratio'>
  /** Yield force of the stress area under tension alone. */
  readonly yieldForce: Quantity<'force'>
  /** Combined stress of tension and torsion over the yield stress. */
  readonly combinedUtilisation: Quantity<'ratio'>
  readonly outcome: 'within' | 'above utilisation' | 'beyond yield'
}

export const lubricantSwapNote: CalculationNote = {
  name: 'lubricant-swap',
  words:
    'a torque set for one friction, applied to a bolt with another: less friction turns the same torque into more preload, and the bolt may yield',
  formula: ['F = T set·F allowed/T allowed', 'share = F/F allowed', 'combined = ν·share', 'Fy = As·Rp0.2'],
  symbols: [
    {symbol: 'F', meaning: 'preload that the set torque gives'},
    {symbol: 'T set', meaning: 'torque for the friction that it was set for'},
    {
      symbol: 'F allowed',
      meaning: 'preload for the friction that there is, by the exact form of the tightening torque',
    },
    {
      symbol: 'T allowed',
      meaning: 'torque for the friction that there is, by the exact form of the tightening torque',
    },
    {symbol: 'ν', meaning: 'stated utilisation'},
    {symbol: 'Fy', meaning: 'force at the yield stress'},
    {symbol: 'As', meaning: 'stress area'},
    {symbol: 'Rp0.2', meaning: 'yield stress'},
  ],
  sources: [
    {
      title: 'VDI 2230 part 1, exact form',
      edition: '2003 and later',
      howKnown: 'memory',
      status: 'unknown',
    },
  ],
  validFor: 'metric bolts tightened by torque, both frictions from 0.02 to 0.60',
}

/**
 * What a torque set for one lubrication does under another.
 *
 * Preload and torsion rise in step as long as the bolt is elastic, so the
 * combined stress is the stated utilisation times the share of the allowed preload.
 *
 * Source: VDI 2230 part 1, exact form; from memory.
 * Valid for: metric bolts tightened by torque; frictions from 0.02 to 0.60. Beyond yield the preload shown is not reached: the bolt stretches.
 *
 * @throws {RangeError}
 *   When friction or utilisation is out of range, or the hole is not smaller than the bearing face.
 */
export function lubricantSwap(input: LubricantSwapInput): LubricantSwap {
  const {setFor, appliedTo, ...joint} = input
  const set = tighteningTorque({...joint, ...setFor})
  const allowed = tighteningTorque({...joint, ...appliedTo})
  const share = set.torque.si / allowed.torque.si
  const combined = input.utilisation.si * share
  return {
    torque: set.torque,
    preload: quantityOf('force', allowed.preload.si * share),
    allowedPreload: allowed.preload,
    shareOfAllowed: quantityOf('ratio', share),
    yieldForce: quantityOf('force', allowed.geometry.stressArea.si * input.yieldStress.si),
    combinedUtilisation: quantityOf('ratio', combined),
    outcome: outcomeOf(share, combined),
  }
}

function outcomeOf(share: number, combined: number): LubricantSwap['outcome'] {
  if (combined > 1) return 'beyond yield'
  return share > 1 + 1e-9 ? 'above utilisation' : 'within'
}
