import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {
  type BearingHeatingInput,
  bearingGrowth,
  bearingHeating,
  bearingSteelExpansion,
  highestBearingTemperatures,
} from '../../../src/calculations/heating/bearing-heating.ts'
import {
  degreesCelsius,
  micrometres,
  micrometresPerMetreKelvin,
  millimetres,
} from '../../../src/quantities/named-units.ts'
import {quantityOf} from '../../../src/quantities/quantity.ts'
import {growthRows, growthTemperatures, impliedExpansion} from '../../published-values/bearing-growth-rows.ts'

const tableRows = growthRows.flatMap(({bore, growth}) =>
  growthTemperatures.map((temperature, index) => ({bore, temperature, growth: growth[index] ?? Number.NaN})),
)

const usual: BearingHeatingInput = {
  bore: millimetres(100),
  growth: micrometres(90),
  ambient: degreesCelsius(20),
  expansion: micrometresPerMetreKelvin(11),
  highest: highestBearingTemperatures.open,
}

function grown(bore: number, temperature: number, expansion = bearingSteelExpansion): number {
  return (
    bearingGrowth({
      bore: millimetres(bore),
      temperature: degreesCelsius(temperature),
      ambient: degreesCelsius(20),
      expansion,
    }).si * 1000
  )
}

describe('growth of a bearing bore', () => {
  test.each(tableRows)(
    'a bore of $bore mm at $temperature °C grows by the printed $growth mm (table of bore growth, read in a reprint)',
    ({bore, temperature, growth}) => {
      expect(Math.abs(grown(bore, temperature) - growth)).toBeLessThanOrEqual(5e-5)
    },
  )

  test('the usual expansion is the one that the table implies (computed apart from this project)', () => {
    expect(bearingSteelExpansion.si / impliedExpansion).toBeCloseTo(1, 12)
  })

  test('70 mm warmed by 80 K at 11 µm/(m·K) grows by 61.6 µm (computed check value)', () => {
    expect(Math.abs(grown(70, 100, micrometresPerMetreKelvin(11)) - 0.0616)).toBeLessThanOrEqual(5e-5)
  })

  test('a bearing colder than ambient and a ring of nothing are refused', () => {
    expect(() => grown(70, 10)).toThrow(
      'Unexpected bearing of 10.0 °C colder than 20.0 °C, expected a warmer one',
    )
    expect(() => grown(0, 80)).toThrow('expected values above zero')
    expect(() => grown(70, 80, quantityOf('linear-expansion', 0))).toThrow('expected values above zero')
  })
})

describe('heating a bearing for fitting', () => {
  test.each(tableRows)(
    'a bore of $bore mm that grows by $growth mm is at $temperature °C (the same table, read backwards)',
    ({bore, temperature, growth}) => {
      const heated = bearingHeating({
        ...usual,
        bore: millimetres(bore),
        growth: millimetres(growth),
        expansion: bearingSteelExpansion,
        highest: degreesCelsius(160),
      })
      const oneDigit = 5e-5 / (bearingSteelExpansion.si * bore)
      expect(Math.abs(heated.temperature.si - 273.15 - temperature)).toBeLessThanOrEqual(oneDigit)
    },
  )

  test.each([
    [11, 81.8],
    [12, 75],
  ])(
    '100 mm, 60 µm interference and 30 µm play need %d µm/(m·K): %d K (computed check value)',
    (expansion, rise) => {
      const heated = bearingHeating({...usual, expansion: micrometresPerMetreKelvin(expansion)})
      expect(Math.abs(heated.rise.si - rise)).toBeLessThanOrEqual(0.05)
      expect(Math.abs(heated.temperature.si - 293.15 - rise)).toBeLessThanOrEqual(0.05)
    },
  )

  test('what was heated has grown by what was asked for', () => {
    fc.assert(
      fc.property(
        fc.double({min: 20, max: 300, noNaN: true}),
        fc.double({min: 1, max: 100, noNaN: true}),
        fc.double({min: -10, max: 40, noNaN: true}),
        (bore, rise, ambient) => {
          const input = {
            ...usual,
            bore: millimetres(bore),
            ambient: degreesCelsius(ambient),
            growth: quantityOf('length', usual.expansion.si * (bore / 1000) * rise),
            highest: degreesCelsius(200),
          }
          const heated = bearingHeating(input)
          expect(heated.rise.si).toBeCloseTo(rise, 6)
          const growth = bearingGrowth({...input, temperature: heated.temperature})
          expect(growth.si / input.growth.si).toBeCloseTo(1, 9)
        },
      ),
    )
  })

  test('above 120 °C it is refused, unless a higher temperature is stated (common practice)', () => {
    const hot = {...usual, growth: micrometres(111)}
    expect(() => bearingHeating(hot)).toThrow(
      'Unexpected temperature of 120.9 °C, expected at most 120.0 °C where no higher one is stated',
    )
    expect(bearingHeating({...hot, highest: degreesCelsius(125)}).temperature.si - 273.15).toBeCloseTo(
      120.909,
      3,
    )
    expect(bearingHeating({...usual, growth: micrometres(110)}).temperature.si - 273.15).toBeCloseTo(120, 6)
  })

  test('a sealed and greased bearing is refused above 80 °C (common practice)', () => {
    const sealed = {...usual, highest: highestBearingTemperatures.sealed}
    expect(() => bearingHeating(sealed)).toThrow('expected at most 80.0 °C')
    expect(bearingHeating({...sealed, growth: micrometres(60)}).temperature.si - 273.15).toBeLessThan(80)
  })

  test('no growth is refused', () => {
    expect(() => bearingHeating({...usual, growth: micrometres(0)})).toThrow(
      'Unexpected growth of nothing, expected one above zero',
    )
  })
})
