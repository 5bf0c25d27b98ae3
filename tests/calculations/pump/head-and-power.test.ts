import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {flowVelocity} from '../../../src/calculations/pump/flow-velocity.ts'
import {headFromPressure, pressureFromHead} from '../../../src/calculations/pump/head-and-pressure.ts'
import {type HeadFromGaugeInput, headFromGauge} from '../../../src/calculations/pump/head-from-gauge.ts'
import {pumpPower} from '../../../src/calculations/pump/pump-power.ts'
import {convertQuantity} from '../../../src/quantities/convert-quantity.ts'
import {
  bar,
  barGauge,
  cubicMetresPerHour,
  kilogramsPerCubicMetre,
  metres,
  metresPerSecond,
  millimetres,
  percent,
} from '../../../src/quantities/named-units.ts'
import {handbookConstants, shaftPowerRow, wrongHeadConstant} from '../../published-values/pump-rows.ts'

const water = kilogramsPerCubicMetre(1000)
const liquid = fc.double({min: 600, max: 1900, noNaN: true}).map(kilogramsPerCubicMetre)
const height = fc.double({min: 0, max: 200, noNaN: true}).map(metres)

describe('head and pressure', () => {
  test('does not reproduce the handbook constant of 10.2 for kg/cm², which belongs to bar (read)', () => {
    const {printed, ofBar, ofKilogramForce} = wrongHeadConstant
    const metresFor = (unit: string) =>
      headFromPressure({pressure: bar(convertQuantity(`1 ${unit}`, 'bar').value), density: water}).si
    expect(Math.abs(metresFor('bar') - ofBar)).toBeLessThanOrEqual(5e-4)
    expect(Math.abs(metresFor('kgf/cm²') - ofKilogramForce)).toBeLessThanOrEqual(1e-9)
    expect(Math.abs(metresFor('bar') / printed - 1)).toBeLessThan(5e-4)
    expect(Math.abs(printed / metresFor('kgf/cm²') - 1)).toBeGreaterThan(0.019)
  })

  test('turn into each other', () => {
    fc.assert(
      fc.property(height, liquid, (head, density) => {
        const pressure = pressureFromHead({head, density})
        expect(headFromPressure({pressure, density}).si).toBeCloseTo(head.si, 9)
      }),
    )
  })

  test('of a liquid without density are refused', () => {
    const density = kilogramsPerCubicMetre(0)
    expect(() => pressureFromHead({head: metres(1), density})).toThrow('Unexpected density of 0 kg/m³')
    expect(() => headFromPressure({pressure: bar(1), density})).toThrow('Unexpected density of 0 kg/m³')
  })
})

describe('head from the gauge at deck', () => {
  const input: HeadFromGaugeInput = {
    gauge: barGauge(8.2),
    tankPressure: barGauge(0.05),
    density: kilogramsPerCubicMetre(850),
    gaugeHeight: metres(11.3),
    velocity: metresPerSecond(3.1),
    riserLoss: metres(2.4),
  }

  test('is the energy that one kilogram holds at the gauge more than in the tank, and lost on the way', () => {
    const joules = (8.2e5 - 0.05e5) / 850 + 9.80665 * 11.3 + 3.1 ** 2 / 2 + 9.80665 * 2.4
    expect(headFromGauge(input).head.si).toBeCloseTo(joules / 9.80665, 9)
  })

  test('is found again from the pressure profile of a pump of known head', () => {
    fc.assert(
      fc.property(height, liquid, fc.double({min: 0, max: 6, noNaN: true}), (head, density, speed) => {
        const [up, lost, tank] = [12.5, 1.8, 0.14e5]
        const slices = 1000
        let pressure = tank + density.si * 9.80665 * head.si
        for (let slice = 0; slice < slices; slice++) pressure -= (density.si * 9.80665 * (up + lost)) / slices
        pressure -= (density.si * speed ** 2) / 2
        const found = headFromGauge({
          gauge: barGauge(pressure / 1e5),
          tankPressure: barGauge(tank / 1e5),
          density,
          gaugeHeight: metres(up),
          velocity: metresPerSecond(speed),
          riserLoss: metres(lost),
        })
        expect(found.head.si).toBeCloseTo(head.si, 6)
      }),
    )
  })

  test('falls by what the tank pressure already gives', () => {
    const more = headFromGauge({...input, tankPressure: barGauge(0.25)}).head.si
    expect(headFromGauge(input).head.si - more).toBeCloseTo(0.2e5 / (850 * 9.80665), 9)
  })

  test('shows pressure head and velocity head apart', () => {
    const parts = headFromGauge(input)
    expect(parts.velocityHead.si).toBeCloseTo(3.1 ** 2 / 19.6133, 9)
    expect(parts.head.si - parts.pressureHead.si - parts.velocityHead.si).toBeCloseTo(11.3 + 2.4, 9)
  })

  test('below the liquid, with a flow backwards, a gain on the way or no density is refused', () => {
    expect(() => headFromGauge({...input, gaugeHeight: metres(-1)})).toThrow('height of the gauge of −1 m')
    expect(() => headFromGauge({...input, velocity: metresPerSecond(-1)})).toThrow('velocity of −1 m/s')
    expect(() => headFromGauge({...input, riserLoss: metres(-1)})).toThrow(
      'riser loss of −1 m, expected zero',
    )
    expect(() => headFromGauge({...input, density: kilogramsPerCubicMetre(0)})).toThrow('density of 0 kg/m³')
  })

  test('velocity fills the pipe: 300 m³/h through 200 mm in a second is a cylinder of its length', () => {
    const velocity = flowVelocity({flow: cubicMetresPerHour(300), bore: millimetres(200)})
    expect(velocity.si * Math.PI * 0.1 ** 2 * 3600).toBeCloseTo(300, 9)
    expect(() => flowVelocity({flow: cubicMetresPerHour(300), bore: millimetres(0)})).toThrow('bore of 0 mm')
    expect(() => flowVelocity({flow: cubicMetresPerHour(-1), bore: millimetres(9)})).toThrow(
      'flow of −1 m³/h',
    )
  })
})

describe('power of a pump', () => {
  const powerOf = (flow: number, head: number, density: number, efficiency: number) =>
    pumpPower({
      flow: cubicMetresPerHour(flow),
      head: metres(head),
      density: kilogramsPerCubicMetre(density),
      efficiency: percent(efficiency),
    })

  test('500 m³/h, 120 m, 850 kg/m³ at 75 % is 185.24 kW, by the handbook constant 185.23 (computed check value)', () => {
    const {flow, head, density, efficiency, power, byHandbook} = shaftPowerRow
    const shaft = powerOf(flow, head, density, efficiency).shaftPower.si / 1000
    expect(Math.abs(shaft - power)).toBeLessThanOrEqual(0.005)
    const handbook = (flow * head * 0.85) / (0.75 * handbookConstants.kilowatts.printed)
    expect(Math.abs(handbook - byHandbook)).toBeLessThanOrEqual(0.005)
  })

  test('is pressure times flow for the liquid, and more at the shaft', () => {
    fc.assert(
      fc.property(fc.double({min: 1, max: 900, noNaN: true}), height, liquid, (flow, head, density) => {
        fc.pre(head.si > 0.01)
        const {liquidPower, shaftPower} = powerOf(flow, head.si, density.si, 70)
        expect(liquidPower.si / ((flow / 3600) * pressureFromHead({head, density}).si)).toBeCloseTo(1, 9)
        expect(liquidPower.si / shaftPower.si).toBeCloseTo(0.7, 9)
      }),
    )
  })

  test('of no flow, no head, no density or no efficiency is refused', () => {
    expect(() => powerOf(0, 120, 850, 75)).toThrow('Unexpected flow of 0 m³/h, expected one above zero')
    expect(() => powerOf(500, 0, 850, 75)).toThrow('Unexpected head of 0 m')
    expect(() => powerOf(500, 120, 0, 75)).toThrow('Unexpected density of 0 kg/m³')
    expect(() => powerOf(500, 120, 850, 0)).toThrow('Unexpected efficiency of 0 %, expected above 0 %')
  })
})
