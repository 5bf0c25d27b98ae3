import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {oilCompression} from '../../../src/calculations/oil/oil-compression.ts'
import {oilExpansion} from '../../../src/calculations/oil/oil-expansion.ts'
import {trappedOilPressure} from '../../../src/calculations/oil/trapped-oil-pressure.ts'
import {convertQuantity} from '../../../src/quantities/convert-quantity.ts'
import {bar, kelvinDifference, litres, perKelvin} from '../../../src/quantities/named-units.ts'
import {quantityOf} from '../../../src/quantities/quantity.ts'
import {compressionRow, expansionRow, trappedOilRow} from '../../published-values/oil-rows.ts'

const psi = (value: number) => bar(convertQuantity(`${value} psi`, 'bar').value)
const mineralOil = {bulkModulus: bar(15_000), expansion: perKelvin(0.0007)}

describe('growth of oil with temperature', () => {
  test('180 l that warm by 40 K grow by 5.04 l (computed check value)', () => {
    const {volume, expansion, rise, change} = expansionRow
    const grown = oilExpansion({
      volume: litres(volume),
      expansion: perKelvin(expansion),
      rise: kelvinDifference(rise),
    })
    expect(Math.abs(grown.change.si * 1000 - change)).toBeLessThanOrEqual(0.005)
    expect(grown.after.si * 1000).toBeCloseTo(volume + change, 9)
  })

  test('cooling takes away what warming brought', () => {
    fc.assert(
      fc.property(fc.double({min: 0, max: 90, noNaN: true}), (rise) => {
        const by = (one: number) =>
          oilExpansion({...mineralOil, volume: litres(180), rise: kelvinDifference(one)}).change.si
        expect(by(rise)).toBeCloseTo(-by(-rise), 12)
        expect(by(rise)).toBeCloseTo(2 * by(rise / 2), 12)
      }),
    )
  })

  test('a fifth of the volume, no volume and no expansion are refused', () => {
    const input = {volume: litres(180), expansion: perKelvin(0.0007), rise: kelvinDifference(40)}
    expect(() => oilExpansion({...input, rise: kelvinDifference(300)})).toThrow(
      'Unexpected change of 21.0 % of the volume, expected less than 20 %',
    )
    expect(() => oilExpansion({...input, volume: litres(0)})).toThrow('Unexpected volume of 0 l')
    expect(() => oilExpansion({...input, expansion: perKelvin(0)})).toThrow('Unexpected expansion of 0 1/K')
  })
})

describe('oil under pressure', () => {
  test('3000 psi on a modulus of 300 000 psi take 1.0 % (page on hydraulic oil, read)', () => {
    const {bulkModulus, pressureRise, share} = compressionRow
    const pressed = oilCompression({
      volume: litres(100),
      bulkModulus: psi(bulkModulus),
      pressureRise: psi(pressureRise),
    })
    expect(Math.abs(pressed.share.si - share)).toBeLessThanOrEqual(5e-4)
    expect(pressed.change.si * 1000).toBeCloseTo(-1, 9)
  })

  test('more than a tenth of the modulus, no modulus and no volume are refused', () => {
    const input = {volume: litres(1), bulkModulus: bar(15_000), pressureRise: bar(220)}
    expect(() => oilCompression({...input, pressureRise: bar(1600)})).toThrow(
      'Unexpected pressure of 10.7 % of the bulk modulus, expected at most 10 %',
    )
    expect(() => oilCompression({...input, bulkModulus: bar(0)})).toThrow('Unexpected bulk modulus of 0 bar')
    expect(() => oilCompression({...input, volume: litres(0)})).toThrow('Unexpected volume of 0 l')
  })
})

describe('trapped oil', () => {
  test('15 000 bar and 0.0007 per kelvin rise by 10.5 bar a kelvin (computed check value)', () => {
    const {bulkModulus, expansion, barPerKelvin} = trappedOilRow
    const trapped = trappedOilPressure({
      bulkModulus: bar(bulkModulus),
      expansion: perKelvin(expansion),
      warming: kelvinDifference(1),
    })
    expect(Math.abs(trapped.risePerKelvin.si / 1e5 - barPerKelvin)).toBeLessThanOrEqual(0.05)
    expect(trapped.rise.si).toBe(trapped.risePerKelvin.si)
  })

  test('the rule of 90 psi a °F is 11.17 bar a kelvin, about the 11 bar it prints (page on trapped oil, read)', () => {
    const row = trappedOilRow
    const inBar = convertQuantity(`${row.psiPerFahrenheit} psi`, 'bar').value
    const perOneKelvin = inBar / convertQuantity('1 °F difference', 'K').value
    expect(Math.abs(perOneKelvin - row.barPerKelvinOfTheRule)).toBeLessThanOrEqual(0.005)
    expect(Math.abs(perOneKelvin - row.barPerKelvinRounded)).toBeLessThanOrEqual(0.5)
    const computed = trappedOilPressure({...mineralOil, warming: kelvinDifference(1)}).risePerKelvin.si / 1e5
    expect(Math.abs(computed / perOneKelvin - 1)).toBeLessThan(0.1)
  })

  test('does not reproduce the misprint of 90 bar a kelvin', () => {
    const computed = trappedOilPressure({...mineralOil, warming: kelvinDifference(1)}).risePerKelvin.si / 1e5
    expect(trappedOilRow.wrongBarPerKelvin / computed).toBeGreaterThan(8)
  })

  test('the rise just presses back what warming would have added', () => {
    fc.assert(
      fc.property(
        fc.double({min: 0.1, max: 60, noNaN: true}),
        fc.double({min: 9_000, max: 20_000, noNaN: true}),
        (warming, modulus) => {
          const oil = {bulkModulus: bar(modulus), expansion: perKelvin(0.0007)}
          const grown = oilExpansion({...oil, volume: litres(50), rise: kelvinDifference(warming)})
          const {rise} = trappedOilPressure({...oil, warming: kelvinDifference(warming)})
          const pressed = oilCompression({...oil, volume: litres(50), pressureRise: rise})
          expect(grown.change.si + pressed.change.si).toBeCloseTo(0, 12)
        },
      ),
    )
  })

  test('of no stiffness or no growth is refused', () => {
    const input = {...mineralOil, warming: kelvinDifference(1)}
    expect(() => trappedOilPressure({...input, bulkModulus: bar(0)})).toThrow('Unexpected bulk modulus of 0')
    expect(() => trappedOilPressure({...input, expansion: quantityOf('thermal-expansion', -1e-4)})).toThrow(
      'Unexpected expansion of −0.0001 1/K, expected one above zero',
    )
  })
})
