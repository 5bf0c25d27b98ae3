import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {gasLeakRate} from '../../../src/calculations/gas/gas-leak-rate.ts'
import {gasMass} from '../../../src/calculations/gas/gas-mass.ts'
import {absoluteTemperature, nitrogenMolarMass} from '../../../src/calculations/gas/molar-gas.ts'
import {molarLeakRate} from '../../../src/calculations/gas/molar-leak-rate.ts'
import {pressureHold} from '../../../src/calculations/gas/pressure-hold.ts'
import {standardAtmosphere} from '../../../src/calculations/gas/standard-air.ts'
import {
  bar,
  barGauge,
  cubicMetres,
  degreesCelsius,
  gramsPerMole,
  litres,
  minutes,
  seconds,
} from '../../../src/quantities/named-units.ts'
import {quantityOf} from '../../../src/quantities/quantity.ts'
import {gasLeakRows, misprintedLeakRate, tenGrams, vacuumDecay} from '../../published-values/gas-leak-rows.ts'

const pascal = (value: number) => quantityOf('pressure-difference', value)
const pascalAbsolute = (value: number) => quantityOf('absolute-pressure', value)
const kelvin = (value: number) => quantityOf('temperature', value)

function leakOf(row: {readonly litres: number; readonly dropPascal: number; readonly seconds: number}) {
  return gasLeakRate({
    volume: litres(row.litres),
    drop: pascal(row.dropPascal),
    duration: seconds(row.seconds),
  })
}

describe('leak of gas', () => {
  test('the misprinted 7.95e-4 mbar·l/s beside 7.8757e-4 atm·cm³/s is not reproduced', () => {
    const row = gasLeakRows[1]
    const milliBarLitres = (row ? leakOf(row).rate.si : Number.NaN) / 0.1
    expect(Math.abs(milliBarLitres - 7.98e-4)).toBeLessThanOrEqual(0.005e-4)
    expect(Math.abs(milliBarLitres / misprintedLeakRate - 1)).toBeGreaterThan(0.003)
  })

  test('28 l losing 0.05 bar in 15 min is 92 ml/min of free gas (computed check value)', () => {
    const {flow} = gasLeakRate({volume: litres(28), drop: bar(0.05), duration: minutes(15)})
    expect(Math.abs(flow.si * 60e6 - 92)).toBeLessThanOrEqual(0.5)
  })

  test('a leak that fills a bag at the pressure of the air fills as much as the space lost', () => {
    fc.assert(
      fc.property(
        fc.double({min: 1, max: 500, noNaN: true}),
        fc.double({min: 10, max: 1e5, noNaN: true}),
        fc.double({min: 1, max: 1e6, noNaN: true}),
        (volume, drop, time) => {
          const {flow} = leakOf({litres: volume, dropPascal: drop, seconds: time})
          expect((flow.si * time * standardAtmosphere.si) / ((volume / 1000) * drop)).toBeCloseTo(1, 9)
        },
      ),
    )
  })

  test('no volume and no duration are refused with what is expected', () => {
    expect(() => leakOf({litres: 0, dropPascal: 1, seconds: 1})).toThrow(
      'Unexpected volume of nothing, expected a volume above zero',
    )
    expect(() => leakOf({litres: 1, dropPascal: 1, seconds: 0})).toThrow(
      'Unexpected duration of nothing, expected a time above zero',
    )
  })
})

describe('leak in moles', () => {
  const example = {
    volume: litres(vacuumDecay.litres),
    start: pascalAbsolute(vacuumDecay.startPascal),
    end: pascalAbsolute(vacuumDecay.endPascal),
    startTemperature: kelvin(vacuumDecay.kelvin),
    endTemperature: kelvin(vacuumDecay.kelvin),
    duration: seconds(vacuumDecay.seconds),
  }

  test('it agrees with the pressure hold, which corrects pressures and not moles', () => {
    fc.assert(
      fc.property(
        fc.double({min: 0, max: 8, noNaN: true}),
        fc.double({min: 0, max: 8, noNaN: true}),
        fc.double({min: -10, max: 60, noNaN: true}),
        fc.double({min: -10, max: 60, noNaN: true}),
        (start, end, from, to) => {
          const common = {volume: litres(28), duration: minutes(30)}
          const temperatures = {startTemperature: degreesCelsius(from), endTemperature: degreesCelsius(to)}
          const {leakRate} = pressureHold({
            ...common,
            ...temperatures,
            start: barGauge(start),
            end: barGauge(end),
            startBarometer: standardAtmosphere,
            endBarometer: standardAtmosphere,
          })
          const moles = molarLeakRate({
            ...common,
            ...temperatures,
            start: pascalAbsolute(start * 1e5 + standardAtmosphere.si),
            end: pascalAbsolute(end * 1e5 + standardAtmosphere.si),
          })
          expect(-moles.si * 8.314462618 * (from + 273.15)).toBeCloseTo(leakRate?.si ?? Number.NaN, 6)
        },
      ),
    )
  })

  test('no volume, no duration and absolute zero are refused', () => {
    const refusal = 'Unexpected volume or duration of nothing, expected values above zero'
    expect(() => molarLeakRate({...example, volume: litres(0)})).toThrow(refusal)
    expect(() => molarLeakRate({...example, duration: seconds(0)})).toThrow(refusal)
    expect(() => molarLeakRate({...example, endTemperature: kelvin(0)})).toThrow('absolute zero')
    expect(() => absoluteTemperature(kelvin(0))).toThrow(
      'Unexpected temperature at or below absolute zero, expected one above it',
    )
  })
})

describe('mass of gas', () => {
  const massAt = (celsius: number, pascalCubicMetres: number) =>
    gasMass({
      volume: cubicMetres(1),
      rise: pascal(pascalCubicMetres),
      molarMass: gramsPerMole(tenGrams.gramsPerMole),
      temperature: degreesCelsius(celsius),
    }).si * 1000

  test('the printed "10 g are about 224 Pa·m³" (read) holds near 0 °C and not at 20 °C', () => {
    expect(Math.abs(massAt(0, tenGrams.printed) - 10)).toBeLessThanOrEqual(0.1)
    expect(Math.abs(massAt(20, tenGrams.printed) - 10)).toBeGreaterThan(0.5)
  })

  test('two masses let in one after the other are one mass of both rises', () => {
    const of = (rise: number) =>
      gasMass({
        volume: litres(250),
        rise: pascal(rise),
        molarMass: nitrogenMolarMass,
        temperature: degreesCelsius(20),
      }).si
    fc.assert(
      fc.property(
        fc.double({min: 0, max: 1e6, noNaN: true}),
        fc.double({min: 0, max: 1e6, noNaN: true}),
        (one, other) => {
          expect(of(one) + of(other)).toBeCloseTo(of(one + other), 9)
        },
      ),
    )
  })

  test('no volume, no molar mass, a fall and absolute zero are refused', () => {
    const input = {
      volume: litres(250),
      rise: bar(3),
      molarMass: nitrogenMolarMass,
      temperature: degreesCelsius(20),
    }
    const refusal = 'Unexpected volume or molar mass of nothing, expected values above zero'
    expect(() => gasMass({...input, volume: litres(0)})).toThrow(refusal)
    expect(() => gasMass({...input, molarMass: gramsPerMole(0)})).toThrow(refusal)
    expect(() => gasMass({...input, rise: bar(-1)})).toThrow('Unexpected fall of pressure, expected a rise')
    expect(() => gasMass({...input, temperature: kelvin(0)})).toThrow('absolute zero')
  })
})
