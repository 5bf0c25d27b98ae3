import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {dutyPressure} from '../../../src/calculations/hydraulics/duty-pressure.ts'
import {hydraulicMotor} from '../../../src/calculations/hydraulics/hydraulic-motor.ts'
import {type PowerBalanceInput, powerBalance} from '../../../src/calculations/hydraulics/power-balance.ts'
import {
  bar,
  cubicCentimetresPerRevolution,
  kilowatts,
  litresPerMinute,
  percent,
  ratio,
  revolutionsPerMinute,
} from '../../../src/quantities/named-units.ts'

const share = (least: number) => fc.double({min: least, max: 1, noNaN: true})
const anyDuty = fc.record({
  shaftPower: fc.double({min: 5, max: 400, noNaN: true}).map(kilowatts),
  displacement: fc.double({min: 40, max: 300, noNaN: true}).map(cubicCentimetresPerRevolution),
  speed: fc.double({min: 500, max: 3600, noNaN: true}).map(revolutionsPerMinute),
  mechanicalEfficiency: share(0.5).map(ratio),
})
const duty = {
  shaftPower: kilowatts(140.1),
  displacement: cubicCentimetresPerRevolution(160),
  speed: revolutionsPerMinute(2400),
  mechanicalEfficiency: percent(92),
}

describe('pressure drop expected at duty', () => {
  test('is the one at which the motor gives the power that the pump needs', () => {
    fc.assert(
      fc.property(anyDuty, share(0.5), (one, volumetric) => {
        const motor = {
          displacement: one.displacement,
          speed: one.speed,
          mechanicalEfficiency: one.mechanicalEfficiency,
          volumetricEfficiency: ratio(volumetric),
        }
        let [low, high] = [0, 100_000]
        for (let step = 0; step < 80; step++) {
          const middle = (low + high) / 2
          const given = hydraulicMotor({...motor, pressureDrop: bar(middle)}).running?.shaftPower.si ?? 0
          if (given < one.shaftPower.si) low = middle
          else high = middle
        }
        expect(dutyPressure(one).si / 1e5 / low).toBeCloseTo(1, 9)
      }),
    )
  })

  test('follows from the oil power of 600 l/min·bar a kilowatt', () => {
    const oilFlow = (0.16 * 2400) / 0.95
    const expected = (600 * 140.1) / (oilFlow * 0.95 * 0.92)
    expect(dutyPressure(duty).si / 1e5).toBeCloseTo(expected, 9)
  })

  test('grows with the power and falls with the displacement', () => {
    fc.assert(
      fc.property(anyDuty, fc.double({min: 1.01, max: 3, noNaN: true}), (one, times) => {
        const more = dutyPressure({...one, shaftPower: kilowatts((one.shaftPower.si / 1000) * times)})
        const larger = dutyPressure({
          ...one,
          displacement: cubicCentimetresPerRevolution(one.displacement.si * 1e6 * times),
        })
        expect(more.si / dutyPressure(one).si).toBeCloseTo(times, 9)
        expect(dutyPressure(one).si / larger.si).toBeCloseTo(times, 9)
      }),
    )
  })

  test('without power, oil, speed or efficiency is refused', () => {
    expect(() => dutyPressure({...duty, shaftPower: kilowatts(0)})).toThrow('shaft power of 0 kW, expected')
    expect(() => dutyPressure({...duty, displacement: cubicCentimetresPerRevolution(0)})).toThrow(
      'displacement of 0 cm³/rev',
    )
    expect(() => dutyPressure({...duty, speed: revolutionsPerMinute(0)})).toThrow('speed of 0 rpm')
    expect(() => dutyPressure({...duty, mechanicalEfficiency: percent(120)})).toThrow(
      'mechanical efficiency of 120 %, expected above 0 % and at most 100 %',
    )
  })
})

describe('hydraulic data against pump data', () => {
  const input: PowerBalanceInput = {
    displacement: duty.displacement,
    pressureDrop: dutyPressure(duty),
    volumetricEfficiency: percent(95),
    mechanicalEfficiency: duty.mechanicalEfficiency,
    speed: duty.speed,
    pumpShaftPower: duty.shaftPower,
    tolerance: percent(15),
  }

  test('agree where the pressure is the one expected at duty', () => {
    const balance = powerBalance(input)
    expect(balance.agrees).toBe(true)
    expect(balance.torque.difference.si).toBeCloseTo(0, 12)
    expect(balance.power.difference.si).toBeCloseTo(0, 12)
    expect(balance.speed).toBeUndefined()
    const oilFlow = litresPerMinute((0.16 * 2400) / 0.95)
    expect(powerBalance({...input, oilFlow}).speed?.difference.si).toBeCloseTo(0, 12)
  })

  test('do not agree when the motor gives 30 % more torque than the pump takes', () => {
    const balance = powerBalance({...input, pressureDrop: bar((input.pressureDrop.si / 1e5) * 1.3)})
    expect([balance.agrees, balance.torque.agrees, balance.power.agrees]).toEqual([false, false, false])
    expect(balance.torque.difference.si).toBeCloseTo(0.3, 9)
    expect(balance.torque.byMotor.si / balance.torque.byPump.si).toBeCloseTo(1.3, 9)
  })

  test.each([
    [15, true],
    [15.01, false],
    [-15, true],
    [-15.01, false],
  ])('at a difference of %d % with a tolerance of 15 % agree: %s', (difference, agrees) => {
    const pressureDrop = bar((input.pressureDrop.si / 1e5) * (1 + difference / 100))
    expect(powerBalance({...input, pressureDrop}).agrees).toBe(agrees)
  })

  test('do not agree when the oil turns the motor at another speed, although the torque does', () => {
    const balance = powerBalance({...input, oilFlow: litresPerMinute(300)})
    expect(balance.torque.agrees).toBe(true)
    expect(balance.speed?.agrees).toBe(false)
    expect((balance.speed?.byMotor.si ?? 0) * 60).toBeCloseTo((300 * 0.95) / 0.16, 6)
    expect(balance.agrees).toBe(false)
  })

  test('do not agree when the speed alone is off, because a torque as much too high hides it in the power', () => {
    const balance = powerBalance({
      ...input,
      pressureDrop: bar((input.pressureDrop.si / 1e5) * 1.12),
      oilFlow: litresPerMinute(((0.16 * 2400) / 0.95) * 0.84),
    })
    expect([balance.torque.agrees, balance.power.agrees, balance.speed?.agrees]).toEqual([true, true, false])
    expect(balance.agrees).toBe(false)
  })

  test('power is torque times angular speed on either side', () => {
    fc.assert(
      fc.property(anyDuty, fc.double({min: 20, max: 350, noNaN: true}), (one, pressure) => {
        const {power, torque} = powerBalance({
          ...input,
          displacement: one.displacement,
          speed: one.speed,
          pumpShaftPower: one.shaftPower,
          pressureDrop: bar(pressure),
        })
        const angular = 2 * Math.PI * one.speed.si
        expect(power.byMotor.si / (torque.byMotor.si * angular)).toBeCloseTo(1, 9)
        expect(power.byPump.si / (torque.byPump.si * angular)).toBeCloseTo(1, 9)
        expect(power.difference.si).toBeCloseTo(torque.difference.si, 9)
      }),
    )
  })

  test('without power, speed or tolerance is refused', () => {
    expect(() => powerBalance({...input, pumpShaftPower: kilowatts(0)})).toThrow(
      'shaft power of the pump of 0',
    )
    expect(() => powerBalance({...input, speed: revolutionsPerMinute(0)})).toThrow('speed of 0 rpm')
    expect(() => powerBalance({...input, tolerance: percent(0)})).toThrow('tolerance of 0 %, expected one')
  })
})
