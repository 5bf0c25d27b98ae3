import {expect, test} from 'vitest'
import {refuseBelowZero} from '../../../src/calculations/refuse-inputs.ts'
import {symbolsUsed} from '../../../src/calculations/symbols-used.ts'
import {millimetres} from '../../../src/quantities/named-units.ts'

test('a refused figure is told to six digits, without idle noughts', () => {
  const told = (mm: number) => () => refuseBelowZero('gap', millimetres(mm), 'mm')
  expect(told(-1.23456789)).toThrow('Unexpected gap of −1.23457 mm, expected zero or more')
  expect(told(-0.5)).toThrow('Unexpected gap of −0.5 mm, expected zero or more')
})

test('the symbols of a formula are those that stand in it by themselves, each once', () => {
  const symbols = ['V', 'V free', 'd', 'd2', 'n', 'V free'].map((symbol) => ({
    symbol,
    meaning: `meaning of ${symbol}`,
  }))
  const used = (...formula: string[]) => symbolsUsed(formula, symbols).map((one) => one.symbol)
  expect(used('V free = π·d2²')).toEqual(['V free', 'd2'])
  expect(used('d = 2', 'V = d³')).toEqual(['V', 'd'])
  expect(used('1 + 1')).toEqual([])
})
