import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
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
import {
  drumRow,
  efficiencyRow,
  lectureMotorComputed,
  lectureMotorRow,
  pumpMotorRow,
  slowPressureRow,
  textbookMotorRows,
  wrongMotorRow,
} from '../../published-values/motor-rows.ts'

const lossless = {volumetricEfficiency: percent(100), mechanicalEfficiency: percent(100)}

function running(input: MotorInput): RunningMotor {
  const result = hydraulicMotor(input).running
  if (!result) throw new Error('Unexpected motor at rest, expected one that runs')
  return result
}

const inLitresPerMinute = (flow: {readonly si: number}): number => flow.si * 60_000
const inRpm = (speed: {readonly si: number}): number => speed.si * 60

describe('published motors', () => {
  test('125 cm³/rev, 150 bar, 0.0015 m³/s: 720 rpm, 298.4 N·m, 22.5 kW (lecture, read)', () => {
    const row = lectureMotorRow
    const input = {
      displacement: cubicCentimetresPerRevolution(row.displacement),
      pressureDrop: bar(row.pressureDrop),
      flow: litresPerMinute(row.flow),
      ...lossless,
    }
    expect(Math.abs(inRpm(running(input).speed) - row.speed)).toBeLessThanOrEqual(0.5)
    expect(Math.abs(hydraulicMotor(input).torque.si - row.torque)).toBeLessThanOrEqual(0.05)
    expect(Math.abs(running(input).shaftPower.si / 1000 - row.power)).toBeLessThanOrEqual(0.05)
    expect(Math.abs(hydraulicMotor(input).torque.si - lectureMotorComputed.torque)).toBeLessThanOrEqual(5e-4)
    expect(Math.abs(running(input).shaftPower.si / 1000 - lectureMotorComputed.power)).toBeLessThanOrEqual(
      5e-4,
    )
  })

  test('80 cm³/rev, 1750 rpm, 7 bar: 140 l/min, 1.633 kW (inputs read, figures computed)', () => {
    const row = slowPressureRow
    const motor = running({
      displacement: cubicCentimetresPerRevolution(row.displacement),
      pressureDrop: bar(row.pressureDrop),
      speed: revolutionsPerMinute(row.speed),
      ...lossless,
    })
    expect(Math.abs(inLitresPerMinute(motor.flow) - row.flow)).toBeLessThanOrEqual(1e-9)
    expect(Math.abs(motor.shaftPower.si / 1000 - row.power)).toBeLessThanOrEqual(5e-4)
  })

  test('300 cm³/rev, 200 rpm, 200 bar, 90 % and 95 %: 60 and 66.67 l/min, 954.9 and 907.2 N·m, 20 and 19 kW (inputs read, figures computed)', () => {
    const row = efficiencyRow
    const input = {
      displacement: cubicCentimetresPerRevolution(row.displacement),
      pressureDrop: bar(row.pressureDrop),
      speed: revolutionsPerMinute(row.speed),
      volumetricEfficiency: percent(row.volumetricEfficiency),
      mechanicalEfficiency: percent(row.mechanicalEfficiency),
    }
    const motor = running(input)
    expect(Math.abs(inLitresPerMinute(motor.idealFlow) - row.idealFlow)).toBeLessThanOrEqual(1e-9)
    expect(Math.abs(inLitresPerMinute(motor.flow) - row.flow)).toBeLessThanOrEqual(0.005)
    expect(Math.abs(hydraulicMotor(input).idealTorque.si - row.idealTorque)).toBeLessThanOrEqual(0.05)
    expect(Math.abs(hydraulicMotor(input).torque.si - row.torque)).toBeLessThanOrEqual(0.05)
    expect(Math.abs(motor.idealPower.si / 1000 - row.idealPower)).toBeLessThanOrEqual(5e-4)
    expect(Math.abs(motor.shaftPower.si / 1000 - row.shaftPower)).toBeLessThanOrEqual(5e-4)
  })

  test('475 cm³/rev, 140 bar, 48 l/min, 90 % of which 94 %: 994.9 N·m, 10.08 kW, rope at 3.546 m/s (inputs read, figures computed)', () => {
    const row = drumRow
    const input = {
      displacement: cubicCentimetresPerRevolution(row.displacement),
      pressureDrop: bar(row.pressureDrop),
      flow: litresPerMinute(row.flow),
      volumetricEfficiency: ratio(row.overallEfficiency / (row.mechanicalEfficiency / 100)),
      mechanicalEfficiency: percent(row.mechanicalEfficiency),
    }
    const motor = running(input)
    expect(Math.abs(hydraulicMotor(input).torque.si - row.torque)).toBeLessThanOrEqual(0.05)
    expect(Math.abs(motor.shaftPower.si / 1000 - row.power)).toBeLessThanOrEqual(0.005)
    const rope = Math.PI * row.drumDiameter * motor.speed.si
    expect(Math.abs(rope - row.ropeSpeed)).toBeLessThanOrEqual(5e-4)
  })

  test('0.5 in³/rev at 2000 psi is 159.15 lb·in; the 160 that a textbook prints is its factor of 0.16 (read)', () => {
    const row = textbookMotorRows.torque
    const torque = hydraulicMotor({
      displacement: cubicCentimetresPerRevolution(convertQuantity(row.displacement, 'cm³/rev').value),
      pressureDrop: bar(convertQuantity(row.pressureDrop, 'bar').value),
      ...lossless,
    }).torque
    const poundInches = torque.si / convertQuantity('1 lbf·in', 'N·m').value
    expect(Math.abs(poundInches - row.exact)).toBeLessThanOrEqual(0.005)
    expect(Math.abs(poundInches * row.roundedFactor * 2 * Math.PI - row.printed)).toBeLessThanOrEqual(1e-6)
  })

  test.each(textbookMotorRows.speeds)('$flow into $displacement is $speed rpm (textbook, read)', (row) => {
    const motor = running({
      displacement: cubicCentimetresPerRevolution(convertQuantity(row.displacement, 'cm³/rev').value),
      flow: litresPerMinute(convertQuantity(row.flow, 'l/min').value),
      pressureDrop: bar(1),
      ...lossless,
    })
    expect(Math.abs(inRpm(motor.speed) - row.speed)).toBeLessThanOrEqual(row.tolerance)
  })

  test('0.55 in³/rev at 3400 rpm takes 8.095 US gal/min (textbook, read)', () => {
    const row = textbookMotorRows.flow
    const motor = running({
      displacement: cubicCentimetresPerRevolution(convertQuantity(row.displacement, 'cm³/rev').value),
      speed: revolutionsPerMinute(row.speed),
      pressureDrop: bar(1),
      ...lossless,
    })
    const gallons = inLitresPerMinute(motor.flow) / convertQuantity('1 US gal/min', 'l/min').value
    expect(Math.abs(gallons - row.flow)).toBeLessThanOrEqual(5e-4)
    expect(Math.abs(gallons - row.computed)).toBeLessThanOrEqual(5e-5)
  })

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

  test('160 cm³/rev is 560 N·m at 220 bar without losses, and 384 l/min at 2400 rpm (computed check value)', () => {
    const row = pumpMotorRow
    const input = {
      displacement: cubicCentimetresPerRevolution(row.displacement),
      pressureDrop: bar(row.pressureDrop),
      speed: revolutionsPerMinute(row.speed),
      ...lossless,
    }
    expect(Math.abs(hydraulicMotor(input).torque.si - row.torque)).toBeLessThanOrEqual(0.5)
    expect(Math.abs(inLitresPerMinute(running(input).flow) - row.flow)).toBeLessThanOrEqual(1e-9)
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
