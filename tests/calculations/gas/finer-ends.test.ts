import {expect, test} from 'vitest'
import {pressureHold} from '../../../src/calculations/gas/pressure-hold.ts'
import {tightnessTestPressure} from '../../../src/calculations/gas/purge-upper-bound.ts'
import {tightnessHoldTime} from '../../../src/calculations/gas/tightness-hold-time.ts'
import {quantityOf} from '../../../src/quantities/quantity.ts'

const barometer = quantityOf('absolute-pressure', 101_325)
const nothing = quantityOf('temperature', 0)
const holding = {
  volume: quantityOf('volume', 0.07),
  testPressure: quantityOf('gauge-pressure', 3e5),
  barometer,
  temperature: quantityOf('temperature', 293),
  temperatureUncertainty: quantityOf('temperature-difference', 0.5),
  gaugeResolution: quantityOf('pressure-difference', 1000),
  allowedLeak: quantityOf('volume-flow', 1e-7),
  least: quantityOf('time', 60),
}

test('a temperature of absolute zero is refused by its name', () => {
  const hold = {
    start: holding.testPressure,
    end: holding.testPressure,
    startTemperature: holding.temperature,
    endTemperature: nothing,
    startBarometer: barometer,
    endBarometer: barometer,
  }
  expect(() => pressureHold(hold)).toThrow('at or below absolute zero')
  expect(() => tightnessHoldTime({...holding, temperature: nothing})).toThrow('temperature of nothing')
})

test('a least time as long as the formula asks for is the one that is named', () => {
  const byFormula = tightnessHoldTime(holding)
  expect(byFormula.governs).toBe('formula')
  expect(tightnessHoldTime({...holding, least: byFormula.holdTime}).governs).toBe('least')
})

test('a house rule as low as the upper bound is the one that is named', () => {
  const bound = quantityOf('gauge-pressure', 2e5)
  expect(tightnessTestPressure(bound, {bound, governs: 'seal lip'}).governs).toBe('house rule')
})
