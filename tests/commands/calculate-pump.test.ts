import {describe, expect, test} from 'vitest'
import {runCalculate} from '../../src/commands/calculate.ts'
import {pumpCalls} from './example-calls-pump.ts'

const calls = new Map(pumpCalls)

function told(...words: readonly string[]): string {
  const outcome = runCalculate(words, false)
  expect([outcome.exitStatus, outcome.err]).toEqual([0, ''])
  return outcome.out
}

function refused(...words: readonly string[]): string {
  const outcome = runCalculate(words, false)
  expect([outcome.exitStatus, outcome.out]).toEqual([2, ''])
  return outcome.err
}

const example = (name: string, ...more: readonly string[]): readonly string[] => [
  name,
  ...(calls.get(name) ?? []),
  ...more,
]

/** The example without some of its words. */
const without = (name: string, ...keys: readonly string[]): readonly string[] =>
  example(name).filter((word) => !keys.some((key) => word.startsWith(`${key}=`)))

describe('a conversion on the command line', () => {
  test.each([
    ['1 psi', 'Pa', '6894.75729317 Pa'],
    ['1 bar', 'psi', '14.503773773 psi'],
    ['1 in', 'mm', '25.4 mm'],
    ['1 N/mm²', 'MPa', '1 N/mm²'],
    ['100 °C', '°F', '212 °F'],
    ['-40degF', '°C', '−40 °C'],
    ['65 %', '1', '0.65'],
    ['1 thou', 'µm', '25.4 µm'],
    ['48 Nm', 'lbf·ft', '35.4029831653 lbf·ft'],
    ['1 mm²/s', 'm²/s', '0.000001 m²/s'],
  ])('of `%s` to %s is %s', (value, to, printed) => {
    expect(told('convert', `value=${value}`, `to=${to}`).startsWith(`converted = ${printed}\n`)).toBe(true)
  })

  test('shows the kind, and the factors by which it can be computed again', () => {
    const out = told('convert', 'value=1 °F', 'to=K')
    for (const line of [
      'kind = temperature',
      'factor of °F = 0.555555555556',
      'offset of °F = 255.372222222',
    ])
      expect(out).toContain(`\n    ${line}\n`)
  })

  test('keeps all digits as data', () => {
    const outcome = runCalculate(['convert', 'value=1 lbf·ft', 'to=N·m'], true)
    const data: unknown = JSON.parse(outcome.out)
    expect(data).toMatchObject({
      results: {converted: {value: expect.closeTo(1.3558179483314, 13), unit: 'N·m'}},
    })
  })

  test.each([
    ['3 bar(g)', 'bar(a)', 'Unexpected unit `bar(g)`, expected'],
    ['1 psi', 'bars', 'Unexpected unit `bars`, expected one of `Pa`, `bar`'],
  ])('of `%s` to %s is refused', (value, to, reason) => {
    expect(refused('convert', `value=${value}`, `to=${to}`).startsWith(reason)).toBe(true)
  })
})

describe('hydraulics on the command line', () => {
  test('a motor with a flow tells torque, speed, flow and power, as published', () => {
    expect(told(...example('motor'))).toMatch(
      /^torque = 298\.4 N·m\nideal-torque = 298\.4 N·m\nspeed = 720\.0 rpm\nflow = 90\.00 l\/min\n(?:.*\n)*?shaft-power = 22\.500 kW\n/u,
    )
  })

  test('a motor at rest tells its torque alone, and what was taken', () => {
    const out = told(...without('motor', 'flow'))
    expect(out).not.toContain('speed = ')
    expect(out).not.toContain('volumetric-efficiency')
    expect(out).toContain('\ntaken where nothing was given:\n    mechanical-efficiency = 100 %\n')
  })

  test('a motor of which flow and speed are measured tells its volumetric efficiency', () => {
    const out = told(...example('motor', 'speed=684 rpm'))
    expect(out).toContain('\nvolumetric-efficiency = 95.0 %\nformula:')
    expect(refused(...example('motor', 'speed=684 rpm', 'volumetric-efficiency=95 %'))).toContain(
      'expected two of them: they give the third',
    )
  })

  test('units of old plates are read: 7.5 US gal/min into 2 in³/rev turns at 866.2 rpm (textbook, read)', () => {
    const out = told('motor', 'displacement=2 in³/rev', 'pressure-drop=2000 psi', 'flow=7.5 US gal/min')
    expect(out).toContain('\nspeed = 866.2 rpm\n')
  })

  test('the pressure at duty is the one at which the motor gives that power', () => {
    const pressure = /^pressure-drop = (\S+) bar\n/u.exec(told(...example('duty-pressure')))?.[1]
    const motor = told(
      'motor',
      'displacement=160 cm³/rev',
      `pressure-drop=${pressure} bar`,
      'speed=2400 rpm',
      'mechanical-efficiency=92 %',
    )
    expect(Number(/shaft-power = (\S+) kW/u.exec(motor)?.[1])).toBeCloseTo(140.1, 1)
    expect(told(...without('duty-pressure', 'mechanical-efficiency'))).toContain(
      '    mechanical-efficiency = 100 %',
    )
  })

  test('data that cannot both be right are told with both figures', () => {
    const most = ['mechanical-efficiency=92 %', 'volumetric-efficiency=95 %']
    expect(told(...example('power-balance', ...most))).toMatch(
      /^agree = yes\ntorque-by-motor = 557\.6 N·m\n/u,
    )
    const off = told(...without('power-balance', 'pressure-drop'), ...most, 'pressure-drop=310 bar')
    expect(off).toMatch(/^agree = no: hydraulic and pump data do not agree\n/u)
    expect(off).toContain('\ntorque-difference = 30.3 %\n')
    expect(off).toContain('\n    tolerance = 15 %\n')
    const slow = told(...example('power-balance', ...most, 'oil-flow=300 l/min'))
    expect(slow).toContain(
      '\nspeed-by-motor = 1781.2 rpm\nspeed-by-pump = 2400.0 rpm\nspeed-difference = −25.8 %\n',
    )
  })
})

describe('the pump on the command line', () => {
  test.each<[readonly string[], string]>([
    [example('affinity'), 'ratio = 0.85714\nflow = 428.57 m³/h\nhead = 88.163 m\npower = 114.36 kW\n'],
    [
      ['affinity', 'head=120 m', 'from-diameter=400 mm', 'to-diameter=380 mm'],
      'ratio = 0.95000\nhead = 108.300 m\n',
    ],
    [example('flow-from-ullage'), 'flow = 300.0 m³/h\n'],
    [example('flow-velocity'), 'velocity = 2.653 m/s\n'],
    [example('head-from-pressure'), 'head = 100.004 m\n'],
    [example('pressure-from-head'), 'pressure = 8.336 bar\n'],
    [example('pump-power'), 'shaft-power = 185.24 kW\nliquid-power = 138.93 kW\n'],
  ])('%s begins with its result', (words, beginning) => {
    expect(told(...words).startsWith(beginning)).toBe(true)
  })

  test('the head from the gauge takes a velocity, or the flow and bore that give it, and says when it has neither', () => {
    const still = told(...example('head-from-gauge'))
    expect(still).toMatch(/^head = 109\.07 m\npressure-head = 97\.77 m\nvelocity-head = 0\.000 m\n/u)
    expect(still).toContain('    velocity = 0.000 m/s\n    riser-loss = 0.0 m\n')
    const byVelocity = told(...example('head-from-gauge', 'velocity=2.6526 m/s', 'riser-loss=2.4 m'))
    const byFlow = told(...example('head-from-gauge', 'flow=300 m³/h', 'bore=200 mm', 'riser-loss=2.4 m'))
    expect(byVelocity).toMatch(/^head = 111\.83 m\n/u)
    expect(byFlow).toMatch(/^head = 111\.83 m\n(?:.*\n)*? {4}velocity = 2\.653 m\/s\n/u)
    expect(byVelocity).not.toContain('taken where')
  })

  test('a test run tells its share of the curve and the bands', () => {
    const out = told(...example('test-run'))
    expect(out).toMatch(
      /^share = 97\.1 %\nscaled-head = 133\.92 m\nscaled-flow = 180\.0 m³\/h\ncurve-head = 137\.92 m\n/u,
    )
    expect(out).toContain('    watch-below = 95 %\n    act-below = 90 %\n')
  })

  test('a test run by ullage and time is that at the flow they give', () => {
    const ullage = ['start-volume=100 m³', 'end-volume=75 m³', 'duration=10 min']
    const results = (out: string) => out.split('formula:', 1)[0]
    const byUllage = told(...without('test-run', 'flow'), ...ullage)
    expect(results(byUllage)).toBe(results(told(...example('test-run'))))
  })

  test('a test run that cannot be judged says CANNOT JUDGE and why', () => {
    expect(told(...without('test-run', 'flow'))).toMatch(
      /^judgement = CANNOT JUDGE: the flow is not known and the pump was not run at shut-off\n/u,
    )
    expect(told(...without('test-run', 'speed'))).toMatch(
      /^judgement = CANNOT JUDGE: the speed was not measured\n/u,
    )
    expect(told(...without('test-run', 'flow'), 'shut-off=yes')).toMatch(/^share = 90\.5 %\n/u)
  })

  test.each<[readonly string[], string]>([
    [example('affinity', 'from-diameter=1 m'), 'Unexpected speed and diameter together, expected one'],
    [['affinity', 'head=1 m'], 'Unexpected call without `from-speed=`'],
    [
      example('head-from-gauge', 'velocity=1 m/s', 'bore=1 m'),
      'Unexpected velocity beside flow or bore, expected',
    ],
    [example('head-from-gauge', 'flow=1 m³/h'), 'Unexpected call without `bore=`'],
    [example('test-run', 'shut-off=yes'), 'Unexpected flow told in two ways, expected'],
    [example('test-run', 'duration=1 min'), 'Unexpected flow told in two ways, expected'],
    [
      without('test-run', 'flow').concat('shut-off=perhaps'),
      'Unexpected shut-off `perhaps`, expected `yes` or `no`',
    ],
    [
      without('test-run', 'curve-heads').concat('curve-heads=148 m'),
      'Unexpected 2 flows and 1 heads of the curve, expected as many',
    ],
    [
      without('motor', 'pressure-drop').concat('pressure-drop=150 bar(g)'),
      'Unexpected unit `bar(g)`, expected',
    ],
    [without('head-from-gauge', 'gauge').concat('gauge=8.2 bar'), 'Unexpected unit `bar`, expected'],
  ])('%s is refused', (words, reason) => {
    expect(refused(...words).startsWith(reason)).toBe(true)
  })
})
