import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {roundDecimal, roundSignificant, roundToStep} from '../../src/quantities/round-decimal.ts'

describe('rounding to a step', () => {
  test('is done in one go: 12.251 does not become 12.2 by way of 12.25', () => {
    expect(roundToStep(12.251, 0.1)).toBe('12.3')
    expect(roundToStep(Number(roundToStep(12.251, 0.01)), 0.1)).toBe('12.2')
  })

  test('down never rises and up never falls, whatever the sign', () => {
    expect([roundToStep(47.99, 0.5, 'down'), roundToStep(47.51, 0.5, 'up')]).toEqual(['47.5', '48.0'])
    expect([roundToStep(-47.6, 1, 'down'), roundToStep(-47.6, 1, 'up')]).toEqual(['-48', '-47'])
    expect(roundToStep(48, 1, 'down')).toBe('48')
    expect([0.1 + 0.7 < 0.8, roundToStep(0.1 + 0.7, 0.8, 'down')]).toEqual([true, '0.8'])
  })

  test('the nearest whole multiple is found, and a tie falls on the even one', () => {
    fc.assert(
      fc.property(
        fc.integer({min: -100_000, max: 100_000}),
        fc.constantFrom(1, 2, 4),
        fc.constantFrom(0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10),
        (quarters, part, step) => {
          const multiples = quarters / 4
          const whole = Math.floor(multiples)
          const rest = multiples - whole
          const even = whole % 2 === 0 ? whole : whole + 1
          const expected = rest === 0.5 ? even : rest < 0.5 ? whole : whole + 1
          const printed = roundToStep((multiples * step * part) / part, step)
          expect(Math.abs(Number(printed) - expected * step)).toBeLessThan(1e-9)
        },
      ),
    )
  })
})

describe('rounding to significant digits', () => {
  test.each([
    [0, 3, '0'],
    [9.996, 3, '10.0'],
    [0.0012345, 3, '0.00123'],
    [1_234_567, 3, '1230000'],
    [-60.25132, 3, '-60.3'],
    [0.25, 1, '0.2'],
  ])('%d to %d digits is %s without an exponent', (value, digits, printed) => {
    expect(roundSignificant(value, digits)).toBe(printed)
  })
})

describe('traps of binary numbers', () => {
  test('a tie that has no exact binary form falls as the written digits say, unlike toFixed', () => {
    expect([(1.005).toFixed(2), (2.675).toFixed(2), (12.25).toFixed(1), (12.35).toFixed(1)]).toEqual([
      '1.00',
      '2.67',
      '12.3',
      '12.3',
    ])
    const [first, second, third, fourth] = [
      roundDecimal(1.005, 2, 'half-up'),
      roundDecimal(2.675, 2),
      roundDecimal(12.25, 1),
      roundDecimal(12.35, 1),
    ]
    expect([first, second, third, fourth]).toEqual(['1.01', '2.68', '12.2', '12.4'])
    expect([roundDecimal(1.655, 2), roundDecimal(1.625, 2)]).toEqual(['1.66', '1.62'])
  })

  test('a negative tie goes to the even number, or away from zero, unlike Math.round', () => {
    expect(Math.round(-2.5)).toBe(-2)
    expect(roundDecimal(-2.5, 0)).toBe('-2')
    expect(roundDecimal(-2.5, 0, 'half-up')).toBe('-3')
    expect(roundDecimal(-3.5, 0)).toBe('-4')
    expect(Math.round(-3.5)).toBe(-3)
  })

  test('what rounds to nothing has no sign', () => {
    expect([roundDecimal(-0.004, 2), roundToStep(-4, 10), roundSignificant(-0, 2)]).toEqual([
      '0.00',
      '0',
      '0',
    ])
  })
})

describe('what cannot be rounded', () => {
  test.each([Number.NaN, Number.POSITIVE_INFINITY])('%d is refused', (value) => {
    for (const round of [
      () => roundDecimal(value, 1),
      () => roundToStep(value, 1),
      () => roundSignificant(value, 3),
    ])
      expect(round).toThrow(`Unexpected number \`${value}\` to be rounded, expected a finite number`)
  })

  test('a step of nothing and a count of no digits are refused', () => {
    for (const step of [0, -1, Number.NaN, Number.POSITIVE_INFINITY])
      expect(() => roundToStep(1, step)).toThrow(`Unexpected step of \`${step}\`, expected a step above zero`)
    for (const digits of [0, 1.5, 13])
      expect(() => roundSignificant(1, digits)).toThrow(`count of ${digits} significant digits, expected 1`)
  })
})
