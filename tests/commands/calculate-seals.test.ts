import {describe, expect, test} from 'vitest'
import {runCalculate} from '../../src/commands/calculate.ts'
import {sealAndBearingCalls} from './example-calls-seals.ts'

const calls = new Map(sealAndBearingCalls)

function toldOf(...words: readonly string[]): string {
  const outcome = runCalculate(words, false)
  expect([outcome.exitStatus, outcome.err]).toEqual([0, ''])
  return outcome.out
}

function told(name: string, ...more: readonly string[]): string {
  return toldOf(name, ...(calls.get(name) ?? []), ...more)
}

function refused(...words: readonly string[]): string {
  const outcome = runCalculate(words, false)
  expect([outcome.exitStatus, outcome.out]).toEqual([2, ''])
  expect(outcome.err).toContain('expected ')
  return outcome.err
}

describe('a calculation on seals and bearings on the command line', () => {
  test.each([
    ['bearing-growth', 'growth = 0.0873 mm\n'],
    ['bearing-heating', 'temperature = 101.8 °C\nrise = 81.8 K\n'],
    ['lip-speed', 'lip-speed = 7.54 m/s\n'],
    ['o-ring-depth', 'depth = 3.106 mm\n'],
    [
      'o-ring-gland',
      'squeeze = 11.9 %\nsqueeze-length = 0.420 mm\nleast-squeeze = 9.3 %\ngreatest-squeeze = 14.4 %\n',
    ],
    [
      'run-out',
      'total-indicator-reading = 0.0900 mm\neccentricity = 0.0441 mm\nphase = 97.9 °\nmean = 0.0050 mm\n',
    ],
    [
      'seal-seat',
      'lip-speed = 7.54 m/s\nleast-roughness = 0.1 µm\ngreatest-roughness = 0.4 µm\nleast-hardness = 55 HRC\n',
    ],
    ['shelf-life', 'valid-to = 2031-06-15\nvalid-to-after-inspection = 2034-06-15\ngroup = B\n'],
  ])('%s begins with its result in the proper unit', (name, beginning) => {
    expect(told(name).startsWith(beginning)).toBe(true)
  })

  test('an oval part has no phase, in words and as data', () => {
    const oval = ['run-out', 'readings=0.02mm,0mm,-0.02mm,0mm,0.02mm,0mm,-0.02mm,0mm'] as const
    expect(toldOf(...oval)).toContain('\neccentricity = 0.0000 mm\nphase = undefined\n')
    expect(JSON.parse(runCalculate(oval, true).out)).toMatchObject({
      results: {phase: {value: 'undefined', unit: ''}},
    })
  })

  test('the tolerance of a series section is taken and shown; beside the series there are no limits', () => {
    expect(told('o-ring-gland')).toContain(
      '\n    section-tolerance = 0.102 mm\n    depth-tolerance = 0.000 mm\n',
    )
    const other = ['o-ring-gland', 'section=4 mm', 'depth=3.2 mm'] as const
    const out = toldOf(...other)
    expect(out).toMatch(/^squeeze = 20\.0 %\nsqueeze-length = 0\.800 mm\nformula:/u)
    expect(out).toContain('\n    section-tolerance = not known: no limits of squeeze\n')
    expect(toldOf(...other, 'section-tolerance=0.1 mm')).toContain('\nleast-squeeze = 17.9 %\n')
  })

  test('a gland of the inch table gives its printed limits (14 and 23 % of section .139)', () => {
    const out = toldOf('o-ring-gland', 'section=0.139in', 'depth=0.113in', 'depth-tolerance=0.003in')
    expect(out).toContain('\nleast-squeeze = 14.1 %\ngreatest-squeeze = 23.1 %\n')
  })

  test('diameters add the stretch, a width adds the fill, and one diameter alone is refused', () => {
    const ring = ['o-ring-gland', 'section=3.53 mm', 'depth=2.87 mm', 'inside-diameter=24.99 mm'] as const
    const stretched = toldOf(...ring, 'groove-diameter=25.7 mm')
    expect(stretched).toContain('\nstretch = 2.84 %\nstretch-judged = at most 5 %\n')
    expect(stretched).not.toContain('\nfill = ')
    expect(toldOf(...ring, 'groove-diameter=25.4 mm', 'groove-width=4.75 mm')).toContain('\nfill = 72.4 %\n')
    expect(toldOf(...ring, 'groove-diameter=26.3 mm')).toContain('\nstretch-judged = above 5 %\n')
    expect(refused(...ring)).toBe('Unexpected call without `groove-diameter=`, expected it\n')
  })

  test('a bearing above its highest temperature is refused, unless that is stated', () => {
    const hot = ['bearing-heating', 'bore=100 mm', 'growth=0.1418 mm'] as const
    expect(refused(...hot)).toBe(
      'Unexpected temperature of 150.0 °C, expected at most 120.0 °C where no higher one is stated\n',
    )
    expect(toldOf(...hot, 'highest=150 °C')).toMatch(/^temperature = 150\.0 °C\n/u)
    expect(refused(...hot, 'bearing=sealed')).toContain('expected at most 80.0 °C')
    expect(refused(...hot, 'bearing=closed')).toBe(
      'Unexpected bearing `closed`, expected `open` or `sealed`\n',
    )
    expect(told('bearing-heating')).toContain(
      '\n    ambient = 20.0 °C\n    bearing = open\n    highest = 120.0 °C\n',
    )
  })

  test('a day is told where it lies in the storage period', () => {
    expect(told('shelf-life', 'on=2031-06-15')).toContain('\nstate = in the first storage period\n')
    expect(told('shelf-life', 'on=2031-06-16')).toContain('\nstate = inspect before use\n')
    expect(told('shelf-life', 'on=2034-06-16')).toContain('\nstate = not for use\n')
  })

  test.each<[readonly string[], string]>([
    [['run-out', 'readings=0 mm,0.1 mm'], 'Unexpected 2 readings, expected at least three'],
    [['run-out', 'readings=0 mm,0.1'], 'Unexpected `0.1` without a unit'],
    [
      ['o-ring-gland', 'section=3.53 mm', 'depth=3.6 mm'],
      'Unexpected gland of 3.600 mm for a section of 3.530 mm',
    ],
    [['shelf-life', 'material=PTFE', 'cured=2024-06-15'], 'Unexpected material `PTFE`'],
    [['shelf-life', 'material=NBR', 'cured=2Q24'], 'Unexpected date `2Q24`, expected a day like'],
    [['seal-seat', 'diameter=60 mm', 'speed=2400 rpm'], 'Unexpected call without `lip=`'],
    [
      ['seal-seat', 'lip=felt', 'diameter=60 mm', 'speed=2400 rpm'],
      'Unexpected lip `felt`, expected `elastomer` or `ptfe`',
    ],
    [['lip-speed', 'diameter=0 mm', 'speed=2400 rpm'], 'Unexpected diameter of nothing'],
  ])('%s is refused with what is expected', (words, reason) => {
    expect(refused(...words).startsWith(reason)).toBe(true)
  })
})
