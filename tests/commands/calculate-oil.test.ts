import {describe, expect, test} from 'vitest'
import {runCalculate} from '../../src/commands/calculate.ts'
import {oilCalls} from './example-calls-oil.ts'

const calls = new Map(oilCalls)

function told(name: string, ...more: readonly string[]): string {
  const outcome = runCalculate([name, ...(calls.get(name) ?? []), ...more], false)
  expect([outcome.exitStatus, outcome.err]).toEqual([0, ''])
  return outcome.out
}

function refused(...words: readonly string[]): string {
  const outcome = runCalculate(words, false)
  expect([outcome.exitStatus, outcome.out]).toEqual([2, ''])
  return outcome.err
}

describe('a calculation on oil on the command line', () => {
  test.each([
    ['air-to-vent', 'air = 7.00 l\n'],
    ['circulation-time', 'time = 26.2 min\ncirculated = 1570.0 l\n'],
    ['drum-count', 'drums = 3\nfills = 2.600\nrest = 80.0 l\n'],
    ['oil-compression', 'change = −1.000 l\nshare = −1.000 %\n'],
    ['oil-deviation', 'deviation = 8.9 %\n'],
    ['oil-expansion', 'change = 5.040 l\nafter = 185.040 l\nshare = 2.800 %\n'],
    ['trapped-oil-pressure', 'rise = 10.50 bar\nrise-per-kelvin = 10.500 bar\n'],
  ])('%s begins with its result in the proper unit', (name, beginning) => {
    expect(told(name).startsWith(beginning)).toBe(true)
  })

  test('a sum shows each part below the total', () => {
    const out = told('oil-volume')
    expect(out.startsWith('total = 21.526 l\n')).toBe(true)
    for (const part of [
      'pipe-1 = 5.027 l',
      'pipe-2 = 0.982 l',
      'annulus-1 = 9.817 l',
      'casing-1 = 4.200 l',
      'casing-2 = 1.500 l',
    ])
      expect(out).toContain(`\n${part}\n`)
  })

  test('the content of a pump shows pipe, annulus and casing, and says that no valve was counted', () => {
    const out = told('pump-oil-content')
    expect(out).toMatch(
      /^total = \d+\.\d{3} l\npressure-pipe = 35\.4\d\d l\nreturn-annulus = 100\.9\d\d l\n/u,
    )
    expect(out).toContain('\ntaken where nothing was given:\n    control-valve = 0.0 l\n')
    const withValve = told('pump-oil-content', 'control-valve=1.5 l')
    expect(withValve).toContain('\ncontrol-valve = 1.500 l\n')
    expect(withValve).not.toContain('taken where')
  })

  test('what was taken is shown, and not where it was given', () => {
    expect(told('circulation-time')).toContain('\n    changes = 10\n')
    expect(told('circulation-time', 'changes=20')).toMatch(/^time = 52\.3 min\n/u)
    expect(told('trapped-oil-pressure')).toContain('\n    warming = 1 K\n')
    expect(told('trapped-oil-pressure', 'warming=20 K')).toMatch(/^rise = 210\.00 bar\n/u)
  })

  test.each<[readonly string[], string]>([
    [
      ['oil-volume', 'pipe-bores=80mm,25mm', 'pipe-lengths=1m'],
      'Unexpected 2 and 1 values of `pipe-bores`, `pipe-lengths`, expected as many of each',
    ],
    [['oil-volume'], 'Unexpected oil volume of no space, expected one or more'],
    [['drum-count', 'volume=520 l'], 'Unexpected call without `drum=`'],
    [['oil-expansion', 'volume=1 l', 'expansion=0.0007', 'rise=1 K'], 'Unexpected `0.0007` without a unit'],
    [['air-to-vent', 'content=1 l', 'filled=2 l'], 'Unexpected filled volume above the content'],
  ])('%s is refused', (words, reason) => {
    expect(refused(...words).startsWith(reason)).toBe(true)
  })
})
