import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'

/** A bearing face that turns under the load: head, nut or collar. */
export interface ScrewCollar {
  readonly meanDiameter: Quantity<'length'>
  readonly friction: Quantity<'ratio'>
}

/** What the torque of a screw under load is computed from. */
export interface ScrewTorqueInput {
  readonly load: Quantity<'force'>
  readonly pitchDiameter: Quantity<'length'>
  /** Travel of one turn: the pitch times the count of starts. */
  readonly lead: Quantity<'length'>
  /** Angle of a flank against the cross-section: 0° square, 15° trapezoidal, 30° metric. */
  readonly flankAngle: Quantity<'angle'>
  readonly threadFriction: Quantity<'ratio'>
  readonly collar?: ScrewCollar
}

/** Torque of a screw under load, both ways. */
export interface ScrewTorque {
  readonly raising: Quantity<'torque'>
  /** Negative when the screw has to be held back. */
  readonly lowering: Quantity<'torque'>
  /** Work gained over work spent while raising. */
  readonly efficiency: Quantity<'ratio'>
  /** True when the thread alone keeps the load from coming down by itself. */
  readonly isSelfLocking: boolean
}

export const screwTorqueNote: CalculationNote = {
  name: 'screw-torque',
  words:
    'torque that raises and lowers a load on a screw against the friction of thread and collar, and whether the thread holds the load by itself',
  formula: [
    'TR = F·dm/2·(l + π·µ·dm/cos γ)/(π·dm − µ·l/cos γ) + F·µc·dc/2',
    'TL = F·dm/2·(π·µ·dm/cos γ − l)/(π·dm + µ·l/cos γ) + F·µc·dc/2',
    'e = F·l/(2·π·TR)',
    'holds by itself when π·µ·dm/cos γ > l',
  ],
  symbols: [
    {symbol: 'TR', meaning: 'raising torque'},
    {symbol: 'TL', meaning: 'lowering torque'},
    {symbol: 'F', meaning: 'load'},
    {symbol: 'dm', meaning: 'pitch diameter'},
    {symbol: 'l', meaning: 'travel of one turn'},
    {symbol: 'µ', meaning: 'thread friction'},
    {symbol: 'γ', meaning: 'angle of a flank'},
    {symbol: 'µc', meaning: 'friction of the collar'},
    {symbol: 'dc', meaning: 'mean diameter of the collar'},
    {symbol: 'e', meaning: 'efficiency'},
  ],
  sources: [
    {
      title: 'Mechanical Engineering Design, power screws; square-thread form also read in a reprint',
      edition: 'unknown',
      howKnown: 'memory',
      status: 'unknown',
    },
  ],
  validFor:
    'screws that turn slowly; friction up to 0.60, flanks up to 45°, a lead that does not jam the thread',
}

/**
 * Torque that raises and lowers a load on a screw.
 *
 * Source: Mechanical Engineering Design, power screws; from memory; square-thread form read in a reprint.
 * Valid for: slow turning; friction from 0 to 0.60; flank angles from 0° to 45°.
 *
 * @throws {RangeError}
 *   When load, diameter or lead is not above zero, friction or flank angle is outside the range, or the thread jams.
 */
export function screwTorque(input: ScrewTorqueInput): ScrewTorque {
  refuseOutOfRange(input)
  const [load, diameter, lead] = [input.load.si, input.pitchDiameter.si, input.lead.si]
  const friction = input.threadFriction.si / Math.cos(input.flankAngle.si)
  const turn = Math.PI * diameter
  if (turn <= friction * lead)
    throw new RangeError(
      'Unexpected lead at which the thread jams, expected a flatter thread or less friction',
    )
  const collar = input.collar ? (load * input.collar.friction.si * input.collar.meanDiameter.si) / 2 : 0
  const arm = (load * diameter) / 2
  const raising = (arm * (lead + friction * turn)) / (turn - friction * lead) + collar
  const lowering = (arm * (friction * turn - lead)) / (turn + friction * lead) + collar
  return {
    raising: quantityOf('torque', raising),
    lowering: quantityOf('torque', lowering),
    efficiency: quantityOf('ratio', (load * lead) / (2 * Math.PI * raising)),
    isSelfLocking: friction * turn > lead,
  }
}

function refuseOutOfRange(input: ScrewTorqueInput): void {
  if (input.load.si <= 0 || input.pitchDiameter.si <= 0 || input.lead.si <= 0)
    throw new RangeError('Unexpected load, diameter or lead of nothing, expected values above zero')
  for (const friction of [input.threadFriction, input.collar?.friction]) {
    if (friction && (friction.si < 0 || friction.si > 0.6))
      throw new RangeError(`Unexpected friction ${friction.si}, expected 0 to 0.60`)
  }
  if (input.collar && input.collar.meanDiameter.si <= 0)
    throw new RangeError('Unexpected collar of no diameter, expected a diameter above zero')
  if (input.flankAngle.si < 0 || input.flankAngle.si > Math.PI / 4 + 1e-9)
    throw new RangeError(
      `Unexpected flank angle of ${Math.round((input.flankAngle.si * 180) / Math.PI)}°, expected 0° to 45°`,
    )
}
