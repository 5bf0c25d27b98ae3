import {expect, test} from 'vitest'
import {powerBalance} from '../../../src/calculations/hydraulics/power-balance.ts'
import {
  bar,
  cubicCentimetresPerRevolution,
  litresPerMinute,
  percent,
  revolutionsPerMinute,
} from '../../../src/quantities/named-units.ts'
import {quantityOf} from '../../../src/quantities/quantity.ts'

const motor = {
  displacement: cubicCentimetresPerRevolution(100),
  pressureDrop: bar(200),
  mechanicalEfficiency: percent(100),
  volumetricEfficiency: percent(100),
}

/**
 * A motor of 100 cm³ on 200 bar without losses, driving a pump that takes its torque times a share at its speed times a
 * share: agreement of torque, power, speed and all of it, to 15 %.
 */
function agreements(torque: number, speed: number): readonly (boolean | undefined)[] {
  const turns = speed * (1000 / 60)
  const balance = powerBalance({
    ...motor,
    oilFlow: litresPerMinute(100),
    speed: revolutionsPerMinute(speed * 1000),
    pumpShaftPower: quantityOf('power', torque * (2000 / (2 * Math.PI)) * 2 * Math.PI * turns),
    tolerance: percent(15),
  })
  return [balance.torque.agrees, balance.power.agrees, balance.speed?.agrees, balance.agrees]
}

test('a balance agrees only when torque, power and speed do, each by itself', () => {
  expect(agreements(1, 1)).toEqual([true, true, true, true])
  // A fifth too much torque at a tenth too little speed: the power is near enough, the torque is not.
  expect(agreements(1.2, 0.9)).toEqual([false, true, true, false])
  // A tenth too much of both makes a fifth too much power.
  expect(agreements(1.12, 1.12)).toEqual([true, false, true, false])
  // A tenth too little torque at a quarter too much speed.
  expect(agreements(0.9, 1.25)).toEqual([true, true, false, false])
})

test('a motor that gives 15 % less than the pump takes still agrees to 15 %, whatever the last digits say', () => {
  const balance = (share: number) =>
    powerBalance({
      ...motor,
      speed: revolutionsPerMinute(1000),
      pumpShaftPower: quantityOf('power', 100_000 / 3 / share),
      tolerance: percent(15),
    })
  expect(balance(0.85).agrees).toBe(true)
  expect(balance(0.85 * (1 - 1e-9)).agrees).toBe(false)
})
