import fc from 'fast-check'
import {describe, expect, expectTypeOf, test} from 'vitest'
import {absoluteFromGauge} from '../../src/calculations/gas/standard-air.ts'
import {barAbsolute, barGauge, degreesCelsius, millimetres} from '../../src/quantities/named-units.ts'
import {parseQuantity} from '../../src/quantities/parse-quantity.ts'
import {printedText, printQuantity} from '../../src/quantities/print-quantity.ts'
import {type Quantity, type QuantityKind, quantityOf} from '../../src/quantities/quantity.ts'
import {roundDecimal} from '../../src/quantities/round-decimal.ts'
import {units} from '../../src/quantities/units.ts'

describe('reading a quantity', () => {
  test.each<[string, QuantityKind, number, string]>([
    ['3 bar(g)', 'gauge-pressure', 3e5, '3 bar(g)'],
    ['3bar(g)', 'gauge-pressure', 3e5, '3 bar(g)'],
    ['3 barg', 'gauge-pressure', 3e5, '3 bar(g)'],
    ['1.013 bar a', 'absolute-pressure', 101_300, '1.013 bar(a)'],
    ['0.30 mm', 'length', 3e-4, '0.30 mm'],
    ['0.30 mm radial', 'radial-clearance', 3e-4, '0.30 mm radial'],
    ['48 N·m', 'torque', 48, '48 N·m'],
    ['48 Nm', 'torque', 48, '48 N·m'],
    ['48 N m', 'torque', 48, '48 N·m'],
    ['5 um', 'length', 5e-6, '5 µm'],
    ['-0.035 bar(g)', 'gauge-pressure', -3500, '−0.035 bar(g)'],
    ['20 °C', 'temperature', 293.15, '20 °C'],
    ['-273.15 °C', 'temperature', 0, '−273.15 °C'],
    ['65 %', 'ratio', 0.65, '65 %'],
    ['8', 'count', 8, '8'],
    ['-0 mm', 'length', 0, '0 mm'],
    ['−0.0 bar(g)', 'gauge-pressure', 0, '0.0 bar(g)'],
  ])('`%s` is a %s and prints in its proper form', (text, kind, si, printed) => {
    const parsed = parseQuantity(text, [kind])
    expect(parsed.ok && parsed.written.quantity.si).toBeCloseTo(si, 9)
    expect(parsed.ok && printedText(parsed.written)).toBe(printed)
  })

  test.each<[string, QuantityKind, string]>([
    ['NaN', 'length', 'Unexpected `NaN`'],
    ['1e999', 'length', 'Unexpected unit `e999`'],
    ['3 bars', 'gauge-pressure', 'Unexpected unit `bars`'],
    ['-0.3 mm', 'length', 'Unexpected negative value `-0.3 mm`'],
    ['3 bar', 'gauge-pressure', 'Unexpected unit `bar`'],
    ['3 bar(a)', 'gauge-pressure', 'Unexpected unit `bar(a)`'],
    ['0.3 mm', 'diametral-clearance', 'Unexpected unit `mm`'],
    ['0.3', 'length', 'Unexpected `0.3` without a unit'],
    ['1,5 mm', 'length', 'Unexpected unit `,5 mm`'],
    ['', 'length', 'Unexpected ``'],
    [`${'9'.repeat(307)} t`, 'mass', 'Unexpected `9'],
    ['-273.16 °C', 'temperature', 'Unexpected `-273.16 °C` below absolute zero'],
  ])('`%s` is refused as %s with what is expected', (text, kind, reason) => {
    const parsed = parseQuantity(text, [kind])
    expect(parsed.ok).toBe(false)
    if (!parsed.ok) {
      expect(parsed.reason.startsWith(reason)).toBe(true)
      expect(parsed.reason).toContain(', expected ')
    }
  })

  test('whatever is printed is read again as the same quantity', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...units.filter((unit) => unit.symbol !== '1')),
        fc.integer({min: 0, max: 10_000_000}),
        (unit, hundredths) => {
          const value = hundredths / 100
          const printed = printedText({figure: roundDecimal(value, 2), unit: unit.symbol})
          const parsed = parseQuantity(printed, [unit.kind])
          expect(parsed.ok && (parsed.written.quantity.si - unit.offset) / unit.factor).toBeCloseTo(value, 6)
        },
      ),
    )
  })

  test('any text is read or refused, never thrown at', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        expect(typeof parseQuantity(text, ['length']).ok).toBe('boolean')
      }),
    )
  })
})

describe('kinds', () => {
  test('gauge and absolute pressure, bare numbers and lengths do not stand for each other', () => {
    expectTypeOf(barGauge(3)).not.toExtend<Quantity<'absolute-pressure'>>()
    expectTypeOf(millimetres(3)).not.toExtend<Quantity<'diametral-clearance'>>()
    expectTypeOf<Parameters<typeof absoluteFromGauge>[0]>().not.toExtend<number>()
    expectTypeOf<number>().not.toExtend<Quantity<'length'>>()
    expect(absoluteFromGauge(barGauge(3), barAbsolute(1)).kind).toBe('absolute-pressure')
  })

  test.each([Number.NaN, Number.POSITIVE_INFINITY])('%d makes no quantity', (value) => {
    expect(() => quantityOf('length', value)).toThrow('expected a finite number')
    expect(() => millimetres(value)).toThrow('expected a finite number')
  })
})

describe('rounding', () => {
  test.each([
    [12.223, 1, '12.2'],
    [12.251, 1, '12.3'],
    [12.275, 1, '12.3'],
    [12.25, 1, '12.2'],
    [12.35, 1, '12.4'],
    [123.455, 2, '123.46'],
    [1.005, 2, '1.00'],
    [2.675, 2, '2.68'],
    [0.5, 0, '0'],
    [1.5, 0, '2'],
    [-0.001, 2, '0.00'],
  ])(
    '%d to %d decimals is %s, half to even (ISO 80000-1 annex B, from memory)',
    (value, decimals, expected) => {
      expect(roundDecimal(value, decimals)).toBe(expected)
    },
  )

  test('a value that went through SI and back still falls to the right side', () => {
    expect(printQuantity(millimetres(12.35), 'mm', 1).figure).toBe('12.4')
    expect(printQuantity(degreesCelsius(12.25), '°C', 1).figure).toBe('12.2')
  })
})
