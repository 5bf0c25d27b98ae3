import {
  hydraulicMotor,
  type MotorInput,
  type RunningMotor,
} from '../../../src/calculations/hydraulics/hydraulic-motor.ts'
import {convertQuantity} from '../../../src/quantities/convert-quantity.ts'
import {
  bar,
  cubicCentimetresPerRevolution,
  litresPerMinute,
  percent,
  ratio,
  revolutionsPerMinute,
} from '../../../src/quantities/named-units.ts'
import {type HeldRows, heldTo, near} from '../../published-values/agreement.ts'
import {lectureMotorRow, published} from '../../published-values/motor-rows.ts'

const lossless = {volumetricEfficiency: percent(100), mechanicalEfficiency: percent(100)}

function running(input: MotorInput): RunningMotor {
  const result = hydraulicMotor(input).running
  if (!result) throw new Error('Unexpected motor at rest, expected one that runs')
  return result
}

function displacementOf(text: string) {
  return cubicCentimetresPerRevolution(convertQuantity(text, 'cm³/rev').value)
}

const inLitresPerMinute = (flow: {readonly si: number}): number => flow.si * 60_000
const inRpm = (speed: {readonly si: number}): number => speed.si * 60

const lecture = {
  displacement: cubicCentimetresPerRevolution(lectureMotorRow.displacement),
  pressureDrop: bar(lectureMotorRow.pressureDrop),
  flow: litresPerMinute(lectureMotorRow.flow),
  ...lossless,
}

/** Hydraulic motors against every published row. */
export const agreements: readonly HeldRows[] = [
  heldTo(published.lecture, (row) => [
    near('speed in rpm', inRpm(running(lecture).speed), row.speed, 0.5),
    near('torque in N·m', hydraulicMotor(lecture).torque.si, row.torque, 0.05),
    near('power in kW', running(lecture).shaftPower.si / 1000, row.power, 0.05),
  ]),
  heldTo(published.lectureComputed, (row) => [
    near('torque in N·m', hydraulicMotor(lecture).torque.si, row.torque, 5e-4),
    near('power in kW', running(lecture).shaftPower.si / 1000, row.power, 5e-4),
  ]),
  heldTo(published.slowPressure, (row) => {
    const motor = running({
      displacement: cubicCentimetresPerRevolution(row.displacement),
      pressureDrop: bar(row.pressureDrop),
      speed: revolutionsPerMinute(row.speed),
      ...lossless,
    })
    return [
      near('flow in l/min', inLitresPerMinute(motor.flow), row.flow, 1e-9),
      near('power in kW', motor.shaftPower.si / 1000, row.power, 5e-4),
    ]
  }),
  heldTo(published.efficiency, (row) => {
    const input = {
      displacement: cubicCentimetresPerRevolution(row.displacement),
      pressureDrop: bar(row.pressureDrop),
      speed: revolutionsPerMinute(row.speed),
      volumetricEfficiency: percent(row.volumetricEfficiency),
      mechanicalEfficiency: percent(row.mechanicalEfficiency),
    }
    const motor = running(input)
    return [
      near('ideal flow in l/min', inLitresPerMinute(motor.idealFlow), row.idealFlow, 1e-9),
      near('flow in l/min', inLitresPerMinute(motor.flow), row.flow, 0.005),
      near('ideal torque in N·m', hydraulicMotor(input).idealTorque.si, row.idealTorque, 0.05),
      near('torque in N·m', hydraulicMotor(input).torque.si, row.torque, 0.05),
      near('ideal power in kW', motor.idealPower.si / 1000, row.idealPower, 5e-4),
      near('shaft power in kW', motor.shaftPower.si / 1000, row.shaftPower, 5e-4),
    ]
  }),
  heldTo(published.drum, (row) => {
    const input = {
      displacement: cubicCentimetresPerRevolution(row.displacement),
      pressureDrop: bar(row.pressureDrop),
      flow: litresPerMinute(row.flow),
      volumetricEfficiency: ratio(row.overallEfficiency / (row.mechanicalEfficiency / 100)),
      mechanicalEfficiency: percent(row.mechanicalEfficiency),
    }
    const motor = running(input)
    return [
      near('torque in N·m', hydraulicMotor(input).torque.si, row.torque, 0.05),
      near('power in kW', motor.shaftPower.si / 1000, row.power, 0.005),
      near('rope in m/s', Math.PI * row.drumDiameter * motor.speed.si, row.ropeSpeed, 5e-4),
    ]
  }),
  heldTo(published.textbookTorque, (row) => {
    const torque = hydraulicMotor({
      displacement: displacementOf(row.displacement),
      pressureDrop: bar(convertQuantity(row.pressureDrop, 'bar').value),
      ...lossless,
    }).torque.si
    const poundInches = torque / convertQuantity('1 lbf·in', 'N·m').value
    // The book takes 0.16 for 1/(2π).
    return [
      near('torque in lbf·in', poundInches, row.exact, 0.005),
      near('as the book rounds', poundInches * row.roundedFactor * 2 * Math.PI, row.printed, 1e-6),
    ]
  }),
  heldTo(published.textbookSpeeds, (row) => {
    const motor = running({
      displacement: displacementOf(row.displacement),
      flow: litresPerMinute(convertQuantity(row.flow, 'l/min').value),
      pressureDrop: bar(1),
      ...lossless,
    })
    return [near('speed in rpm', inRpm(motor.speed), row.speed, row.tolerance)]
  }),
  heldTo(published.textbookFlow, (row) => {
    const motor = running({
      displacement: displacementOf(row.displacement),
      speed: revolutionsPerMinute(row.speed),
      pressureDrop: bar(1),
      ...lossless,
    })
    const gallons = inLitresPerMinute(motor.flow) / convertQuantity('1 US gal/min', 'l/min').value
    return [
      near('flow in US gal/min', gallons, row.flow, 5e-4),
      near('flow, computed apart', gallons, row.computed, 5e-5),
    ]
  }),
  heldTo(published.pumpMotor, (row) => {
    const input = {
      displacement: cubicCentimetresPerRevolution(row.displacement),
      pressureDrop: bar(row.pressureDrop),
      speed: revolutionsPerMinute(row.speed),
      ...lossless,
    }
    return [
      near('torque in N·m', hydraulicMotor(input).torque.si, row.torque, 0.5),
      near('flow in l/min', inLitresPerMinute(running(input).flow), row.flow, 1e-9),
    ]
  }),
]
