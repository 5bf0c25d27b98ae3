import {describe, expect, test} from 'vitest'
import {hydraulicMotor} from '../../../src/calculations/hydraulics/hydraulic-motor.ts'
import {powerBalance} from '../../../src/calculations/hydraulics/power-balance.ts'
import {
  bar,
  cubicCentimetresPerRevolution,
  kilowatts,
  litresPerMinute,
  percent,
  revolutionsPerMinute,
} from '../../../src/quantities/named-units.ts'

const motor = {
  displacement: cubicCentimetresPerRevolution(100),
  pressureDrop: bar(200),
  mechanicalEfficiency: percent(100),
}

test('what leaks inside a motor is the flow beyond what the turning takes', () => {
  // 100 cm³ at 1 000 turns a minute take 100 l/min.
  const measured = hydraulicMotor({...motor, flow: litresPerMinute(110), speed: revolutionsPerMinute(1000)})
  expect(measured.running?.leakFlow.si).toBeCloseTo(10 / 60_000, 12)
  expect(measured.running?.volumetricEfficiency.si).toBeCloseTo(100 / 110, 12)
})

test('a motor of which nobody states an efficiency turns by all its flow', () => {
  const turned = hydraulicMotor({...motor, flow: litresPerMinute(100)})
  expect(turned.running?.speed.si).toBeCloseTo(1000 / 60, 9)
  expect(turned.running?.leakFlow.si).toBeCloseTo(0, 12)
})

test('a flow that just turns the motor leaks nothing, less is refused', () => {
  const measured = (litres: number) =>
    hydraulicMotor({...motor, flow: litresPerMinute(litres), speed: revolutionsPerMinute(1000)})
  expect(measured(100).running?.volumetricEfficiency.si).toBeCloseTo(1, 12)
  expect(measured(100 * (1 - 1e-12)).running?.volumetricEfficiency.si).toBe(1)
  expect(() => measured(99.9)).toThrow('expected at least the 100.0 l/min')
})

describe('a balance of motor and pump', () => {
  // 100 cm³ and 200 bar give 318.31 N·m, at 1 000 turns a minute 33.333 kW.
  const balance = (pump: number, more: Partial<Parameters<typeof powerBalance>[0]> = {}) =>
    powerBalance({
      ...motor,
      speed: revolutionsPerMinute(1000),
      pumpShaftPower: kilowatts(pump),
      volumetricEfficiency: percent(100),
      tolerance: percent(10),
      ...more,
    })

  test('agrees up to its tolerance and not beyond', () => {
    expect(balance(100 / 3).agrees).toBe(true)
    expect(balance(100 / 3 / 1.0999).agrees).toBe(true)
    expect(balance(100 / 3 / 1.1001).agrees).toBe(false)
    expect(balance(100 / 3 / 0.9001).agrees).toBe(true)
    expect(balance(100 / 3 / 0.8999).agrees).toBe(false)
  })

  test('disagrees when one of its figures does', () => {
    // Half the flow: half the speed and half the power by the motor, the torque as the pump has it.
    const slow = balance(100 / 3, {oilFlow: litresPerMinute(50)})
    expect([slow.torque.agrees, slow.power.agrees, slow.speed?.agrees, slow.agrees]).toEqual([
      true,
      false,
      false,
      false,
    ])
    // A motor at half speed with a pump of half the power: power agrees, torque and speed do not.
    const heavy = balance(50 / 3, {oilFlow: litresPerMinute(50)})
    expect([heavy.torque.agrees, heavy.power.agrees, heavy.speed?.agrees, heavy.agrees]).toEqual([
      false,
      true,
      false,
      false,
    ])
  })

  test('of a pump at rest is refused', () => {
    expect(() => balance(30, {oilFlow: litresPerMinute(50), speed: revolutionsPerMinute(0)})).toThrow(
      'Unexpected speed of 0 rpm',
    )
  })
})
