import {describe, expect, test} from 'vitest'
import {runCalculate} from '../../src/commands/calculate.ts'
import {liftingCalls} from './example-calls-lifting.ts'

const calls = new Map(liftingCalls)

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
  expect(outcome.err).toContain(', expected ')
  return outcome.err
}

describe('a calculation on lifting on the command line', () => {
  test.each([
    ['eyebolt-limit', 'limit = 500 kg\n'],
    ['gear-limit', 'required-limit = 721.2 kg\njudged = strong enough\n'],
    ['load-share', 'loads = 0.392 0.588 kN\nshares = 40.0 60.0 %\n'],
    [
      'lowering-bolts',
      'load-of-each = 5.000 kN\nturns = 160.0\nraising-torque = 10.02 N·m\nlowering-torque = 5.92 N·m\n',
    ],
    [
      'screw-torque',
      'raising-torque = 26.18 N·m\nlowering-torque = 9.77 N·m\nefficiency = 31.1 %\nholds-by-itself = no\n',
    ],
    ['shackle-limit', 'limit = 1400.0 kg\nshare = 70 %\n'],
    [
      'sling-angle',
      'angle-from-vertical = 36.9 °\nangle-from-horizontal = 53.1 °\ntension-factor = 1.2500\n',
    ],
    ['sling-limit', 'limit = 6300.0 kg\nmode-factor = 1.4\n'],
    ['sling-tension', 'tension = 5.662 kN\ncarried = 577.4 kg\nrequired-limit = 721.7 kg\n'],
  ])('%s begins with its result in the proper unit', (name, beginning) => {
    expect(told(name).startsWith(beginning)).toBe(true)
  })

  test('a load is a mass or the force of its weight', () => {
    const asMass = toldOf('sling-tension', 'load=1t', 'legs=2', 'angle-from-vertical=30deg')
    const asForce = toldOf('sling-tension', 'load=9.80665kN', 'legs=2', 'angle-from-vertical=30deg')
    expect(asMass.split('formula:')[0]).toBe(asForce.split('formula:')[0])
    expect(refused('sling-tension', 'load=1 bar', 'legs=2', 'angle-from-vertical=30°')).toMatch(
      /^Unexpected unit `bar`, expected a number such as .*`kg`.*`kN`.* for `load`\n$/u,
    )
  })

  test('of four legs two count where nothing else is said, and three where all legs are said to carry', () => {
    const four = ['sling-tension', 'load=900 kg', 'legs=4', 'angle-from-vertical=0 °'] as const
    expect(toldOf(...four)).toMatch(
      /\ncarried = 450\.0 kg\n[\s\S]*\ncounted-legs = 2\n[\s\S]*\n {4}share = two-legs\n/u,
    )
    expect(toldOf(...four, 'share=all-legs')).toMatch(/\ncarried = 300\.0 kg\n[\s\S]*\ncounted-legs = 3\n/u)
    expect(refused(...four, 'share=one')).toBe('Unexpected share `one`, expected `two-legs` or `all-legs`\n')
  })

  test('the reserve is taken as 1.25, shown, and can be stated', () => {
    expect(told('sling-tension')).toContain('\n    reserve = 1.25\n')
    expect(told('sling-tension', 'reserve=150 %')).toContain('\nrequired-limit = 866.0 kg\n')
    expect(told('gear-limit', 'reserve=2')).toContain('\njudged = too weak\n')
    expect(toldOf('gear-limit', 'carried=577 kg')).not.toContain('judged')
  })

  test('gear that is marked with exactly what is required is strong enough', () => {
    expect(toldOf('gear-limit', 'carried=800 kg', 'limit=1000 kg')).toContain('\njudged = strong enough\n')
    expect(toldOf('gear-limit', 'carried=800 kg', 'limit=999.9 kg')).toContain('\njudged = too weak\n')
  })

  test('a sling in another hitch or with all legs has another limit', () => {
    const one = ['sling-limit', 'one-leg=2 t', 'legs=1', 'angle-from-vertical=0 °'] as const
    expect(toldOf(...one, 'hitch=choke')).toMatch(/^limit = 1600\.0 kg\n/u)
    expect(toldOf(...one, 'hitch=basket')).toMatch(/^limit = 4000\.0 kg\n/u)
    const four = ['sling-limit', 'one-leg=2 t', 'legs=4', 'angle-from-vertical=45 °'] as const
    expect(toldOf(...four, 'share=all-legs')).toMatch(/^limit = 4200\.0 kg\n/u)
    expect(toldOf(...four)).toMatch(/^limit = 2800\.0 kg\n/u)
  })

  test('a shackle is asked by one of two angles', () => {
    expect(toldOf('shackle-limit', 'limit=2 t', 'included-angle=120 °')).toMatch(/^limit = 2000\.0 kg\n/u)
    expect(refused('shackle-limit', 'limit=2 t')).toBe(
      'Unexpected call with no angle, expected `side-angle=` or `included-angle=`\n',
    )
    expect(refused('shackle-limit', 'limit=2 t', 'side-angle=0 °', 'included-angle=0 °')).toContain(
      'both angles',
    )
  })

  test('four supports on a plate share by place, and lists of different length are refused', () => {
    const four = ['load-share', 'load=800 kg', 'x=-0.2m,0.2m,0.2m,-0.2m'] as const
    expect(toldOf(...four, 'y=-0.2m,-0.2m,0.2m,0.2m', 'centre-x=0.05m')).toMatch(
      /^loads = 1\.471 2\.452 2\.452 1\.471 kN\n/u,
    )
    expect(refused(...four, 'y=0m')).toBe('Unexpected 1 places in `y`, expected 4 as in `x`\n')
  })

  test('a collar needs diameter and friction, and that none was counted is shown', () => {
    expect(told('lowering-bolts')).toContain('\n    pitch = 2.50 mm\n    collar = none\n')
    const collar = ['collar-diameter=25 mm', 'collar-friction=0.15'] as const
    expect(told('lowering-bolts', ...collar)).toContain(
      '\nraising-torque = 19.40 N·m\nlowering-torque = 15.30 N·m\n',
    )
    expect(told('lowering-bolts', ...collar)).not.toContain('collar = none')
    expect(refused('lowering-bolts', ...(calls.get('lowering-bolts') ?? []), collar[0])).toBe(
      'Unexpected call without `collar-friction=`, expected it\n',
    )
    expect(refused('lowering-bolts', ...(calls.get('lowering-bolts') ?? []), collar[1])).toBe(
      'Unexpected call without `collar-diameter=`, expected it\n',
    )
  })

  test.each<[readonly string[], string]>([
    [
      ['sling-tension', 'load=1 t', 'legs=2', 'angle-from-vertical=65 °'],
      'Unexpected leg at 65.0 ° from the vertical',
    ],
    [['sling-tension', 'load=1 t', 'legs=2.5', 'angle-from-vertical=5 °'], 'Unexpected count `2.5`'],
    [['sling-tension', 'load=1 t', 'legs=5', 'angle-from-vertical=5 °'], 'Unexpected sling with 5 legs'],
    [['eyebolt-limit', 'size=M11', 'angle-from-axis=0 °'], 'Unexpected size `M11`, expected one of M8'],
    [
      ['load-share', 'load=1 t', 'x=0 m,1 m', 'centre-x=2 m'],
      'Unexpected centre of mass that lifts a support',
    ],
  ])('%s is refused with what is expected', (words, reason) => {
    expect(refused(...words).startsWith(reason)).toBe(true)
  })
})
