import {describe, expect, test} from 'vitest'
import {runCalculate} from '../../src/commands/calculate.ts'
import {wearCalls} from './example-calls-wear.ts'

const calls = new Map(wearCalls)

function told(name: string, ...more: readonly string[]): string {
  return toldOf(name, ...(calls.get(name) ?? []), ...more)
}

function toldOf(...words: readonly string[]): string {
  const outcome = runCalculate(words, false)
  expect([outcome.exitStatus, outcome.err]).toEqual([0, ''])
  return outcome.out
}

function refused(...words: readonly string[]): string {
  const outcome = runCalculate(words, false)
  expect([outcome.exitStatus, outcome.out]).toEqual([2, ''])
  return outcome.err
}

describe('clearances, wear, planning and verdicts on the command line', () => {
  test.each([
    ['annular-gap-leakage', 'leakage = 11.018 m³/h\nvelocity = 19.484 m/s\n'],
    ['judge-reading', 'verdict = RENEW\ndecided-by = not-above\nroom = −0.0100 mm diametral\n'],
    ['least-running-clearance', 'clearance = 0.510 mm diametral\nstep-from = 200 mm\nstep-below = 225 mm\n'],
    ['order-by-date', 'order-by = 2031-01-15\n'],
    ['service-interval', 'interval = 1500 h\nused = 0.0 %\nleft = 1500 h\n'],
    ['spares-for-service', 'stock = 4\nserved = 97.63 %\nserved-with-one-less = 92.12 %\n'],
    ['stripping-ceiling', 'ceiling = 100 l\ntest-tolerance = 50 l\nregulation = 12.2\n'],
    ['wear-forecast', 'due = 11115 h\ngoverned-by = line less uncertainty\ntrust = beyond one and a half'],
  ])('%s begins with its result in the proper unit', (name, beginning) => {
    expect(told(name).slice(0, beginning.length)).toBe(beginning)
  })

  test('a smooth gap finds its friction, and one way to state the friction is asked for', () => {
    const gap = ['diameter=200mm', 'gap=0.25 mm radial', 'length=20mm', 'head=60m'] as const
    const out = toldOf('annular-gap-leakage', ...gap, 'viscosity=1 mm²/s')
    expect(out).toMatch(/^leakage = 11\.690 m³\/h\nvelocity = 20\.673 m\/s\nfriction = 0\.03134\n/u)
    expect(refused('annular-gap-leakage', ...gap)).toContain('Unexpected call with neither of `friction=`')
    expect(refused('annular-gap-leakage', ...gap, 'friction=0.04', 'viscosity=1 mm²/s')).toContain(
      'Unexpected call with both of `friction=`',
    )
  })

  test('the metric column and a galling pair are asked for by word, and the source follows', () => {
    const out = told('least-running-clearance', 'table=own metric', 'pair=galling')
    expect(out).toMatch(/^clearance = 0\.625 mm diametral\n/u)
    expect(out).toContain('metric column, edition unknown; known: memory')
  })

  test('five readings use the band, and hours asked for show it', () => {
    const out = toldOf(
      'wear-forecast',
      'hours=0,4000,8000,12000,16000 h',
      'clearances=0.50,0.56,0.61,0.69,0.74 mm diametral',
      'limit=0.90 mm diametral',
      'at=20000 h',
    )
    expect(out).toMatch(/^due = 2361[89] h\ngoverned-by = prediction band\ntrust = within/u)
    expect(out).toContain('\nline-meets-limit = 26361 h\n')
    expect(out).toContain('\nband-lower = 0.7663 mm diametral\nband-upper = 0.8397 mm diametral\n')
    expect(out).toContain('\n    uncertainty = 0.00 mm diametral\n')
  })

  test('a renewal splits the readings, so that the old ring does not count', () => {
    const renewed = toldOf(
      'wear-forecast',
      'hours=0,4000,8000,8000,10100,12300,14500 h',
      'clearances=0.48,0.6,0.7,0.48,0.56,0.66,0.74 mm diametral',
      'limit=0.96 mm diametral',
      'uncertainty=0.03 mm diametral',
      'renewed-at=8000 h',
    )
    expect(renewed).toContain('\nreadings = 5\n')
    const after = toldOf(
      'wear-forecast',
      'hours=0,4000,7999,8000,10100,12300,14500 h',
      'clearances=0.48,0.6,0.7,0.48,0.56,0.66,0.74 mm diametral',
      'limit=0.96 mm diametral',
      'uncertainty=0.03 mm diametral',
      'renewed-at=8000 h',
    )
    expect(after).toContain('\nreadings = 4\n')
    expect(after).toMatch(/^due = 19115 h\n/u)
  })

  test('a ring that does not wear reaches no limit', () => {
    const out = toldOf(
      'wear-forecast',
      'hours=0,1000,2000 h',
      'clearances=0.5,0.5,0.49 mm diametral',
      'limit=0.9 mm diametral',
    )
    expect(out).toMatch(/^limit = not reached: the line does not rise\n/u)
  })

  test('hours ahead and mean lives give the expected use', () => {
    const out = toldOf('spares-for-service', 'hours-ahead=6000,6000,2000 h', 'mean-lives=10000,10000,5000 h')
    expect(out).toMatch(/^stock = 4\n/u)
    expect(out).toContain('\nexpected-use = 1.600\n')
    expect(out).toContain('\n    service-level = 95 %\n')
  })

  test('runs since the last service are taken off', () => {
    const out = toldOf(
      'service-interval',
      'shares=100%',
      'intervals=4000 h',
      'run=1000,500 h',
      'run-intervals=8000,2000 h',
    )
    expect(out).toMatch(/^interval = 4000 h\nused = 37\.5 %\nleft = 2500 h\n/u)
  })

  test.each<[readonly string[], string]>([
    [['reading=0.95 mm diametral', 'not-above=0.96 mm diametral', 'uncertainty=0.03 mm diametral'], 'WATCH'],
    [['reading=0.95 mm diametral', 'not-above=0.96 mm diametral'], 'CANNOT JUDGE'],
    [['reading=0.39 mm diametral', 'not-below=0.4 mm diametral', 'below=STOP'], 'STOP'],
    [['reading=59 °C', 'not-above=60 °C', 'uncertainty=1 K'], 'WITHIN LIMITS'],
    [['reading=2.98 bar(g)', 'not-below=2.97 bar(g)', 'uncertainty=0.02 bar'], 'WATCH'],
    [['reading=0 l', 'not-above=0.5 l', 'uncertainty=0.05 l', 'gas-flow=not confirmed'], 'NOT VALID'],
    [['reading=0.04 mm', 'not-above=0.05 mm', 'limit-form=holds the uncertainty'], 'WITHIN LIMITS'],
    [['reading=0.04 mm'], 'CANNOT JUDGE'],
  ])('a reading with %j is told as %s', (words, verdict) => {
    expect(toldOf('judge-reading', ...words)).toMatch(new RegExp(`^verdict = ${verdict}\\n`, 'u'))
  })

  test('the unit of a list is written once behind it, or behind each number', () => {
    const once = toldOf('service-interval', 'shares=25,75%', 'intervals=1000,3000 h')
    const each = toldOf('service-interval', 'shares=25%,75%', 'intervals=1000 h, 3000 h')
    expect(once.split('\nformula:')[0]).toBe(each.split('\nformula:')[0])
    expect(refused('service-interval', 'shares=25,75%', 'intervals=1000 h,3000')).toContain(
      'Unexpected `3000` without a unit',
    )
  })

  test.each<[readonly string[], string]>([
    [['judge-reading', 'reading=0.5 mm diametral', 'not-above=0.3 mm radial'], 'Unexpected unit `mm radial`'],
    [['judge-reading', 'reading=five'], 'Unexpected `five`, expected a number'],
    [
      ['judge-reading', 'reading=1 mm', 'not-above=2 mm', 'above=WAIT'],
      'Unexpected above `WAIT`, expected `RENEW`',
    ],
    [['least-running-clearance', 'diameter=650mm'], 'Unexpected running diameter of 650 mm'],
    [
      ['wear-forecast', 'hours=0,1 h', 'clearances=0.5 mm diametral', 'limit=1 mm diametral'],
      'Unexpected 2 hours with 1 clearances, expected as many of each',
    ],
    [
      ['wear-forecast', 'hours=0,1 h', 'clearances=0.5,0.6 mm diametral', 'limit=1 mm diametral'],
      'Unexpected 2 readings since the renewal, expected at least 3',
    ],
    [['spares-for-service'], 'Unexpected call without `hours-ahead=`'],
    [['spares-for-service', 'expected-use=1', 'hours-ahead=1 h'], 'Unexpected `expected-use=` with'],
    [['stripping-ceiling', 'built=1998-05-01', 'category=A'], 'Unexpected category `A`, expected `X`'],
    [['stripping-ceiling', 'built=1998-02-30', 'category=X'], 'Unexpected date `1998-02-30`'],
    [['service-interval', 'shares=50,50%', 'intervals=1000 h'], 'Unexpected 2 and 1 values of `shares` and'],
    [
      ['service-interval', 'shares=100%', 'intervals=1000 h', 'run=1 h'],
      'Unexpected call without `run-intervals=',
    ],
  ])('%s is refused', (words, reason) => {
    expect(refused(...words).slice(0, reason.length)).toBe(reason)
  })
})
