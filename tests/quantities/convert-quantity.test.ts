import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {conversionUnits} from '../../src/quantities/conversion-units.ts'
import {convertQuantity} from '../../src/quantities/convert-quantity.ts'
import {
  type ConversionRow,
  definitionRows,
  factorRows,
  wrongFactorRows,
} from '../published-values/conversion-rows.ts'
import {secondlyKnown, secondOpinion} from './second-opinions.ts'

function expectRow({value, to, expected, tolerance}: ConversionRow): void {
  const converted = convertQuantity(value, to).value
  expect(Math.abs(converted / expected - 1)).toBeLessThanOrEqual(tolerance)
}

describe('a conversion', () => {
  test.each(wrongFactorRows)('does not reproduce the printed $printed $to for $value', (row) => {
    expectRow(row)
    const converted = convertQuantity(row.value, row.to).value
    expect(Math.abs(row.printed / converted - 1)).toBeGreaterThan(0.003)
    expect(Math.abs(row.printed / converted - 1 - row.off)).toBeLessThan(1e-4)
  })

  test.each(secondlyKnown)('of one $symbol ($kind) agrees with mathjs to 1e-9', (one) => {
    expect(Math.abs(one.factor / secondOpinion(one) - 1)).toBeLessThanOrEqual(1e-9)
  })

  test('has a second opinion by mathjs on nearly every unit', () => {
    expect(secondlyKnown.length).toBeGreaterThanOrEqual(105)
  })

  test('has a row where mathjs has no second opinion', () => {
    const rows = [...definitionRows, ...factorRows].map(({value}) => value.replace(/^1 /u, ''))
    for (const name of ['Torr', 'mmHg', 'imp gal']) expect(rows).toContain(name)
  })

  test('there and back gives the number that was written', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...conversionUnits),
        fc.nat(),
        fc.integer({min: 1, max: 1_000_000}),
        (from, pick, written) => {
          const sisters = conversionUnits.filter((one) => one.kind === from.kind)
          const to = sisters[pick % sisters.length] ?? from
          const there = convertQuantity(`${written} ${from.symbol}`, to.symbol)
          const si = there.value * there.to.factor + there.to.offset
          expect((si - there.from.offset) / there.from.factor / written).toBeCloseTo(1, 8)
        },
      ),
    )
  })

  test.each([
    ['1psi', 'Pa'],
    ['3barg', 'psig'],
    ['48 Nm', 'lbf ft'],
    ['20 degC', 'degF'],
    ['1 N/mm²', 'MPa'],
  ])('of `%s` to `%s` reads every spelling', (text, to) => {
    expect(convertQuantity(text, to).value).toBeGreaterThan(0)
  })
})

describe('a conversion is refused', () => {
  test.each([
    [
      '3 bar(g)',
      'bar(a)',
      'Unexpected unit `bar(g)`, expected a number such as `3.5` with one of the units `Pa(a)`',
    ],
    ['1 psi', 'bars', 'Unexpected unit `bars`, expected one of `Pa`, `bar`, `mbar`, `psi`, `kPa`'],
    ['0.3 mm radial', 'mm diametral', 'Unexpected unit `mm radial`, expected'],
    [
      '3 furlongs',
      'm',
      'Unexpected unit `furlongs`, expected a number such as `3.5` with one of the units `m`',
    ],
    ['3 furlongs', 'chains', 'Unexpected unit `chains`, expected one of `m`, `mm`'],
    ['much', 'm', 'Unexpected `much`, expected a number'],
    ['-300 °C', '°F', 'Unexpected `-300 °C` below absolute zero'],
    ['-1 m', 'ft', 'Unexpected negative value `-1 m`, expected zero or more'],
  ])('from `%s` to `%s`', (text, to, reason) => {
    expect(() => convertQuantity(text, to)).toThrow(reason)
  })
})

test('every unit has one proper form in its kind, and no spelling stands for two of a kind', () => {
  const spellings = conversionUnits.flatMap(({kind, symbol, alsoRead}) =>
    [symbol, ...alsoRead].map((spelling) => `${kind} ${spelling}`),
  )
  expect(spellings.length).toBe(new Set(spellings).size)
})
