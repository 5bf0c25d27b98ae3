import {describe, expect, test} from 'vitest'
import {runCalculate} from '../../src/commands/calculate.ts'
import {boltCalls} from './example-calls-bolts.ts'

const calls = new Map(boltCalls)

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

describe('a calculation on bolts on the command line', () => {
  test.each([
    ['bolt-group', 'greatest-share = 2.746 kN\nleast-clamp = 17.254 kN\njoint = stays closed\n'],
    ['bolt-strength', 'proof-load = 11.60 kN\nproof-load-computed = 11.66 kN\nyield-force = 12.86 kN\n'],
    ['friction-from-torque-test', 'total-friction = 0.1204\nnut-factor = 0.1589\n'],
    ['least-preload', 'least-preload = 23.28 kN\n'],
    ['lubricant-swap', 'outcome = beyond yield\ntorque = 93.'],
    ['nut-factor-from-friction', 'nut-factor = 0.1657\nbearing-friction-diameter = 13.212 mm\n'],
    ['nut-factor-preload', 'preload = 68.28 kN\n'],
    ['nut-factor-torque', 'torque = 218.56 N·m\n'],
    ['tightening-passes', 'pass-1 = 61.7 N·m\npass-2 = 123.5 N·m\npass-3 = 205.8 N·m\n'],
    ['torque-window', 'setting = 48.00 N·m\nleast = 46.08 N·m\nmost = 49.92 N·m\n'],
    ['wrench-covers', 'covers = no\ntorque-lies = above the range\nleast-used = 40.0 N·m\n'],
    ['wrench-extension', 'setting = 100.00 N·m\n'],
    ['yield-clamp-force', 'clamp-force = 83.8'],
  ])('%s begins with its result in the proper unit', (name, beginning) => {
    expect(told(name).slice(0, beginning.length)).toBe(beginning)
  })

  test('a load that the standard prints stands before the computed one and brings its source', () => {
    expect(told('bolt-strength')).toContain('as printed, edition unknown; known: reprint')
    const stainless = runCalculate(['bolt-strength', 'size=M8', 'class=A2-70'], false).out
    expect(stainless.startsWith('yield-force = 16.47 kN\ntensile-load = 25.62 kN\n')).toBe(true)
    expect(stainless).not.toContain('as printed')
  })

  test('each bolt of a group is told', () => {
    const out = told('bolt-group')
    for (const line of ['bolt-1 = 2.746 kN', 'bolt-2 = 1.569 kN', 'bolt-3 = 1.569 kN'])
      expect(out).toContain(`\n${line}\n`)
  })

  test('a measured thread torque brings friction of thread and head', () => {
    const out = told('friction-from-torque-test', 'thread-torque=100 N·m')
    expect(out).toMatch(/\nthread-friction = 0\.10\d\d\nhead-friction = 0\.13\d\d\n/u)
    expect(told('friction-from-torque-test')).not.toContain('thread-friction =')
  })

  test('given shares replace the usual ones, and a maximum is rounded down', () => {
    expect(told('tightening-passes', 'shares=30%,70%,100%')).toContain('\npass-2 = 144.1 N·m\n')
    expect(told('tightening-passes')).toContain('\n    shares = 30 %, 60 %, 100 %\n')
    expect(told('torque-window', 'torque-is=maximum')).toMatch(/^setting = 47\.00 N·m\n/u)
  })

  test.each<[readonly string[], string]>([
    [['bolt-strength', 'size=M22', 'class=A4-80'], 'Unexpected class A4-80 at 22 mm, expected at most 20 mm'],
    [
      ['bolt-group', 'bolts=2', 'bolt-circle=1m', 'pull=1 N', 'least-preload=1 N'],
      'Unexpected count of 2 bolts',
    ],
    [['nut-factor-torque', 'nut-factor=2', 'diameter=16mm', 'preload=1 kN'], 'Unexpected nut factor 2'],
    [['tightening-passes', 'torque=10 N·m', 'shares=60%,30%'], 'Unexpected passes that do not rise'],
    [
      ['torque-window', 'torque=10 N·m', 'torque-is=least'],
      'Unexpected torque-is `least`, expected `target`',
    ],
    [['wrench-covers', 'torque=10 N·m', 'begin=5 N·m'], 'Unexpected call without `most=`'],
  ])('%s is refused', (words, reason) => {
    expect(refused(...words).startsWith(reason)).toBe(true)
  })
})
