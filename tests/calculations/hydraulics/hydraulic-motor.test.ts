import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {
  hydraulicMotor,
  type MotorInput,
  type RunningMotor,
} from '../../../src/calculations/hydraulics/hydraulic-motor.ts'
import {
  bar,
  cubicCentimetresPerRevolution,
  litresPerMinute,
  percent,
  ratio,
  revolutionsPerMinute,
} from '../../../src/quantities/named-units.ts'
import {wrongMotorRow} from '../../published-values/motor-rows.ts'

const lossless = {volumetricEfficiency: percent(100), mechanicalEfficiency: percent(100)}

function running(input: MotorInput): RunningMotor {
  const result = hydraulicMotor(input).running
  if (!result) throw new Error('Unexpected motor at rest, expected one that runs')
  return result
}

const inLitresPerMinute = (flow: {readonly si: number}): number => flow.si * 60_000

describe('a published solution that is wrong', () => {
  test('does not reproduce the published 0.9 l/min and 120 W that treat a motor as a pump', () => {
    const row = wrongMotorRow
    const motor = running({
      displacement: cubicCentimetresPerRevolution(row.displacement),
      pressureDrop: bar(row.pressureDrop),
      speed: revolutionsPerMinute(row.speed),
      volumetricEfficiency: percent(row.volumetricEfficiency),
      mechanicalEfficiency: ratio(row.overallEfficiency / (row.volumetricEfficiency / 100)),
    })
    expect(Math.abs(inLitresPerMinute(motor.idealFlow) - row.idealFlow)).toBeLessThanOrEqual(0.05)
    expect(Math.abs(inLitresPerMinute(motor.flow) - row.flow)).toBeLessThanOrEqual(0.05)
    expect(Math.abs(motor.fluidPower.si - row.fluidPower)).toBeLessThanOrEqual(0.05)
    expect(Math.abs(motor.shaftPower.si - row.shaftPower)).toBeLessThanOrEqual(0.05)
    expect(Math.abs(inLitresPerMinute(motor.flow) - row.printedFlow)).toBeGreaterThan(1)
    expect(Math.abs(motor.shaftPower.si - row.printedShaftPower)).toBeGreaterThan(200)
  })
})

const efficiency = fc.double({min: 0.3, max: 1, noNaN: true})
const anyMotor = fc.record({
  displacement: fc.double({min: 5, max: 400, noNaN: true}).map(cubicCentimetresPerRevolution),
  pressureDrop: fc.double({min: 1, max: 350, noNaN: true}).map(bar),
  volumetricEfficiency: efficiency.map(ratio),
  mechanicalEfficiency: efficiency.map(ratio),
})
const anyFlow = fc.double({min: 1, max: 600, noNaN: true}).map(litresPerMinute)

describe('any motor', () => {
  test('gives to the shaft both efficiencies of what the oil gives, whatever is known', () => {
    fc.assert(
      fc.property(anyMotor, anyFlow, (motor, flow) => {
        const byFlow = running({...motor, flow})
        const share = motor.volumetricEfficiency.si * motor.mechanicalEfficiency.si
        expect(byFlow.shaftPower.si / byFlow.fluidPower.si).toBeCloseTo(share, 9)
        expect(byFlow.flow.si).toBeCloseTo(flow.si, 12)
        expect(byFlow.flow.si).toBeGreaterThanOrEqual(byFlow.idealFlow.si)
        const bySpeed = running({...motor, speed: byFlow.speed})
        expect(bySpeed.flow.si / flow.si).toBeCloseTo(1, 9)
      }),
    )
  })

  test('turns out the same energy when one turn is followed drop by drop', () => {
    fc.assert(
      fc.property(anyMotor, (motor) => {
        const drops = 1000
        const work = Array.from(
          {length: drops},
          () => (motor.displacement.si / drops) * motor.pressureDrop.si,
        ).reduce((sum, one) => sum + one, 0)
        const torque = (work * motor.mechanicalEfficiency.si) / (2 * Math.PI)
        expect(hydraulicMotor(motor).torque.si / torque).toBeCloseTo(1, 9)
      }),
    )
  })

  test('gives its volumetric efficiency when flow and speed are both measured', () => {
    fc.assert(
      fc.property(anyMotor, anyFlow, ({volumetricEfficiency, ...motor}, flow) => {
        const {speed} = running({...motor, volumetricEfficiency, flow})
        const measured = running({...motor, flow, speed}).volumetricEfficiency
        expect(measured.si).toBeCloseTo(volumetricEfficiency.si, 9)
      }),
    )
  })

  test('at rest has a torque and no running', () => {
    const motor = hydraulicMotor({
      displacement: cubicCentimetresPerRevolution(160),
      pressureDrop: bar(220),
      ...lossless,
    })
    expect(motor.running).toBeUndefined()
    expect(motor.torque.si).toBeGreaterThan(0)
  })
})

describe('a motor is refused', () => {
  const input = {
    displacement: cubicCentimetresPerRevolution(160),
    pressureDrop: bar(220),
    mechanicalEfficiency: percent(92),
  }
  test.each<[string, MotorInput, string]>([
    [
      'without displacement',
      {...input, displacement: cubicCentimetresPerRevolution(0)},
      'displacement of 0 cm³/rev',
    ],
    [
      'without pressure drop',
      {...input, pressureDrop: bar(-5)},
      'pressure drop of −5 bar, expected one above',
    ],
    ['without flow', {...input, flow: litresPerMinute(0)}, 'flow of 0 l/min'],
    ['without speed', {...input, speed: revolutionsPerMinute(0)}, 'speed of 0 rpm'],
    [
      'that gains',
      {...input, mechanicalEfficiency: percent(101)},
      'mechanical efficiency of 101 %, expected above',
    ],
    ['that keeps nothing', {...input, volumetricEfficiency: percent(0)}, 'volumetric efficiency of 0 %'],
    [
      'told three times what two tell',
      {
        ...input,
        flow: litresPerMinute(400),
        speed: revolutionsPerMinute(2400),
        volumetricEfficiency: percent(95),
      },
      'flow, speed and volumetric efficiency together, expected two',
    ],
    [
      'that turns on less oil than it displaces',
      {...input, flow: litresPerMinute(380), speed: revolutionsPerMinute(2400)},
      'flow of 380.0 l/min, expected at least the 384.0 l/min',
    ],
  ])('%s', (_, wrong, reason) => {
    expect(() => hydraulicMotor(wrong)).toThrow(`Unexpected ${reason}`)
  })
})
