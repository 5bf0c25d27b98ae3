import {type Quantity, quantityOf} from '../../quantities/quantity.ts'
import type {CalculationNote} from '../calculation-note.ts'
import {refuseUnlessAboveZero, refuseUnlessShare} from '../refuse-inputs.ts'

/** What a hydraulic motor is computed from. Flow or speed, or both, in which case they give the volumetric efficiency. */
export interface MotorInput {
  readonly displacement: Quantity<'displacement'>
  /** Pressure at the inlet less pressure at the outlet. */
  readonly pressureDrop: Quantity<'pressure-difference'>
  /** Oil into the motor, what leaks inside it included. */
  readonly flow?: Quantity<'volume-flow'>
  readonly speed?: Quantity<'rotational-speed'>
  readonly volumetricEfficiency?: Quantity<'ratio'>
  readonly mechanicalEfficiency: Quantity<'ratio'>
}

/** What a hydraulic motor gives. */
export interface MotorResult {
  /** Torque without friction. */
  readonly idealTorque: Quantity<'torque'>
  readonly torque: Quantity<'torque'>
  /** What needs a flow or a speed. */
  readonly running?: RunningMotor
}

/** A hydraulic motor that turns. */
export interface RunningMotor {
  readonly speed: Quantity<'rotational-speed'>
  readonly volumetricEfficiency: Quantity<'ratio'>
  /** Oil that the turning itself takes. */
  readonly idealFlow: Quantity<'volume-flow'>
  /** Oil into the motor: more than the ideal flow by what leaks inside it. */
  readonly flow: Quantity<'volume-flow'>
  readonly leakFlow: Quantity<'volume-flow'>
  /** Power that the oil gives up. */
  readonly fluidPower: Quantity<'power'>
  /** Power without losses at this speed. */
  readonly idealPower: Quantity<'power'>
  readonly shaftPower: Quantity<'power'>
}

export const hydraulicMotorNote: CalculationNote = {
  name: 'motor',
  words:
    'torque of a hydraulic motor from its displacement and pressure drop; with the flow its speed, or with the speed its flow, and the power of oil and shaft. A motor takes in more oil than it displaces: the flow is divided by the volumetric efficiency, not multiplied as for a pump',
  formula: [
    'T = D·Δp·ηm/(2π)',
    'Q = D·n/ηv, so n = Q·ηv/D',
    'P oil = Q·Δp',
    'P shaft = 2π·n·T = ηv·ηm·P oil',
    'in bar, cm³/rev and N·m: T = D·Δp·ηm/(20π)',
  ],
  symbols: [
    {symbol: 'T', meaning: 'torque'},
    {symbol: 'D', meaning: 'displacement for one turn'},
    {symbol: 'Δp', meaning: 'pressure drop'},
    {symbol: 'ηm', meaning: 'mechanical efficiency'},
    {symbol: 'ηv', meaning: 'volumetric efficiency'},
    {symbol: 'Q', meaning: 'flow into the motor'},
    {symbol: 'n', meaning: 'speed'},
    {symbol: 'P oil', meaning: 'power of the oil'},
    {symbol: 'P shaft', meaning: 'power at the shaft'},
  ],
  sources: [
    {
      title: 'lecture on hydraulic motors with worked examples; symbols of ISO 4391',
      edition: 'unknown',
      howKnown: 'read',
      status: 'unknown',
    },
  ],
  validFor:
    'motors of fixed displacement in steady running; efficiencies are those at this pressure, speed and oil',
}

/**
 * Torque, and with a flow or a speed the running, of a hydraulic motor.
 *
 * A motor takes in more oil than it displaces. Multiplying by the volumetric
 * efficiency, as for a pump, is the mistake of a solution that was published.
 *
 * Source: lecture on hydraulic motors with worked examples, read; symbols of ISO 4391, from memory.
 * Valid for: motors of fixed displacement in steady running.
 *
 * @throws {RangeError}
 *   When displacement, pressure drop, flow or speed is not above zero, an efficiency is not above 0 % and at most 100 %, or
 *   flow, speed and volumetric efficiency are all given.
 */
export function hydraulicMotor(input: MotorInput): MotorResult {
  const {displacement, pressureDrop, mechanicalEfficiency} = input
  refuseUnlessAboveZero('displacement', displacement, 'cm³/rev')
  refuseUnlessAboveZero('pressure drop', pressureDrop, 'bar')
  refuseUnlessShare('mechanical efficiency', mechanicalEfficiency)
  const ideal = (displacement.si * pressureDrop.si) / (2 * Math.PI)
  const torque = quantityOf('torque', ideal * mechanicalEfficiency.si)
  const result = {idealTorque: quantityOf('torque', ideal), torque}
  const running = runningOf(input)
  if (!running) return result
  const {speed, efficiency} = running
  const idealFlow = displacement.si * speed
  const flow = idealFlow / efficiency
  return {
    ...result,
    running: {
      speed: quantityOf('rotational-speed', speed),
      volumetricEfficiency: quantityOf('ratio', efficiency),
      idealFlow: quantityOf('volume-flow', idealFlow),
      flow: quantityOf('volume-flow', flow),
      leakFlow: quantityOf('volume-flow', flow - idealFlow),
      fluidPower: quantityOf('power', flow * pressureDrop.si),
      idealPower: quantityOf('power', idealFlow * pressureDrop.si),
      shaftPower: quantityOf('power', 2 * Math.PI * speed * torque.si),
    },
  }
}

/** Speed and volumetric efficiency from what is given; nothing when neither flow nor speed is. */
function runningOf(input: MotorInput): {readonly speed: number; readonly efficiency: number} | undefined {
  const {flow, speed, displacement} = input
  if (flow) refuseUnlessAboveZero('flow', flow, 'l/min')
  if (speed) refuseUnlessAboveZero('speed', speed, 'rpm')
  if (input.volumetricEfficiency) refuseUnlessShare('volumetric efficiency', input.volumetricEfficiency)
  if (flow && speed) return {speed: speed.si, efficiency: measuredEfficiency(input, flow, speed)}
  const efficiency = input.volumetricEfficiency?.si ?? 1
  if (flow) return {speed: (flow.si * efficiency) / displacement.si, efficiency}
  return speed && {speed: speed.si, efficiency}
}

function measuredEfficiency(
  input: MotorInput,
  flow: Quantity<'volume-flow'>,
  speed: Quantity<'rotational-speed'>,
): number {
  if (input.volumetricEfficiency)
    throw new RangeError(
      'Unexpected flow, speed and volumetric efficiency together, expected two of them: they give the third',
    )
  const share = (input.displacement.si * speed.si) / flow.si
  if (share > 1 + 1e-9)
    throw new RangeError(
      `Unexpected flow of ${(flow.si * 60_000).toFixed(1)} l/min, expected at least the ${(input.displacement.si * speed.si * 60_000).toFixed(1)} l/min that the turning takes`,
    )
  return Math.min(1, share)
}
