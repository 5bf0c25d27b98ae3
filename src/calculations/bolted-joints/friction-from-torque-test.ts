import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'
import {type MetricThread, threadGeometry} from './thread-geometry.ts'

/** What a torque and clamp-force test reads at one point of its curve. */
export interface TorqueTestInput {
  readonly thread: MetricThread
  readonly bearingDiameter: Quantity<'length'>
  readonly holeDiameter: Quantity<'length'>
  readonly clampForce: Quantity<'force'>
  readonly torque: Quantity<'torque'>
  /** Share of the torque that the thread takes, where the rig measures it; the bearing face takes the rest. */
  readonly threadTorque?: Quantity<'torque'>
}

/** Friction that a test shows; thread and bearing face apart only where the thread torque was measured. */
export interface FrictionFromTorqueTest {
  readonly totalFriction: Quantity<'ratio'>
  readonly nutFactor: Quantity<'ratio'>
  readonly threadFriction?: Quantity<'ratio'>
  readonly headFriction?: Quantity<'ratio'>
}

export const frictionFromTorqueTestNote: CalculationNote = {
  name: 'friction-from-torque-test',
  words:
    'friction from a test that reads torque and clamp force together; what the pitch takes is no friction and comes off first',
  formula: [
    'Db = (Do + dh)/2',
    'µtot = (T/F − P/(2·π))/(0.577·d2 + 0.5·Db)',
    'µth = (Tth/F − P/(2·π))/(0.577·d2)',
    'µb = (T − Tth)/(0.5·Db·F)',
    'K = T/(F·d)',
  ],
  symbols: [
    {symbol: 'T', meaning: 'torque'},
    {symbol: 'Tth', meaning: 'torque of the thread'},
    {symbol: 'F', meaning: 'clamp force'},
    {symbol: 'P', meaning: 'pitch'},
    {symbol: 'd', meaning: 'nominal diameter'},
    {symbol: 'd2', meaning: 'pitch diameter'},
    {symbol: 'Db', meaning: 'mean diameter of the bearing face'},
    {symbol: 'Do', meaning: 'outside of the bearing face'},
    {symbol: 'dh', meaning: 'hole'},
    {symbol: 'µtot', meaning: 'friction of thread and bearing face together'},
    {symbol: 'µth', meaning: 'friction of the thread'},
    {symbol: 'µb', meaning: 'friction of the bearing face'},
    {symbol: 'K', meaning: 'nut factor'},
  ],
  sources: [
    {title: 'ISO 16047, clause 9, and DIN 946', edition: 'unknown', howKnown: 'memory', status: 'unknown'},
  ],
  validFor: '60° metric threads in the elastic range',
}

const flank = 0.577

/**
 * Friction from a torque and clamp-force test.
 *
 * Source: ISO 16047 clause 9 and DIN 946; from memory.
 * Valid for: 60° metric threads; a clamp force in the elastic range.
 *
 * @throws {RangeError}
 *   When force or torque is not above zero, the hole is not smaller than the bearing face, the thread takes more than
 *   the whole torque, or the torque is less than the pitch alone takes.
 */
export function frictionFromTorqueTest(input: TorqueTestInput): FrictionFromTorqueTest {
  refuseOutOfRange(input)
  const {thread, clampForce, torque, threadTorque} = input
  const pitchDiameter = threadGeometry(thread).pitchDiameter.si
  const meanBearing = (input.bearingDiameter.si + input.holeDiameter.si) / 2
  const lead = thread.pitch.si / (2 * Math.PI)
  const total = (torque.si / clampForce.si - lead) / (flank * pitchDiameter + 0.5 * meanBearing)
  refuseNoFriction(total)
  const result: FrictionFromTorqueTest = {
    totalFriction: quantityOf('ratio', total),
    nutFactor: quantityOf('ratio', torque.si / (clampForce.si * thread.nominalDiameter.si)),
  }
  if (!threadTorque) return result
  const inThread = (threadTorque.si / clampForce.si - lead) / (flank * pitchDiameter)
  refuseNoFriction(inThread)
  return {
    ...result,
    threadFriction: quantityOf('ratio', inThread),
    headFriction: quantityOf('ratio', (torque.si - threadTorque.si) / (0.5 * meanBearing * clampForce.si)),
  }
}

function refuseOutOfRange(input: TorqueTestInput): void {
  if (input.clampForce.si <= 0 || input.torque.si <= 0)
    throw new RangeError('Unexpected clamp force or torque of nothing, expected both above zero')
  if (input.holeDiameter.si >= input.bearingDiameter.si)
    throw new RangeError('Unexpected hole as large as the bearing face, expected a smaller hole')
  if (input.threadTorque && input.threadTorque.si >= input.torque.si)
    throw new RangeError('Unexpected thread torque as large as the whole torque, expected a smaller one')
}

function refuseNoFriction(friction: number): void {
  if (friction <= 0)
    throw new RangeError(
      'Unexpected torque below what the pitch alone takes, expected more torque for this clamp force',
    )
}
