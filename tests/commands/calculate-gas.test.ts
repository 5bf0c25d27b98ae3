import {describe, expect, test} from 'vitest'
import {runCalculate} from '../../src/commands/calculate.ts'
import {listedCalculations} from '../../src/commands/calculate-list.ts'
import {gasCalls} from './example-calls-gas.ts'

const calls = new Map(gasCalls)

/** What a call says, with the example call of its name where no words are given. */
function told(name: string, ...words: readonly string[]): string {
  const outcome = runCalculate([name, ...(words.length > 0 ? words : (calls.get(name) ?? []))], false)
  expect([outcome.exitStatus, outcome.err]).toEqual([0, ''])
  return outcome.out
}

function refused(...words: readonly string[]): string {
  const outcome = runCalculate(words, false)
  expect([outcome.exitStatus, outcome.out]).toEqual([2, ''])
  return outcome.err
}

describe('gas, purging and ventilation on the command line', () => {
  test.each<[string, string]>([
    ['air-changes', 'air-changes = 3.892\nformula:'],
    ['bottle-content', 'content = 9.474 m³\nformula:'],
    ['dilution', 'content = 4.104 ppm\nair-changes = 2.500\nhalf-life = 4.16 min\nformula:'],
    ['entry-limit', 'content = 2.500 ppm\nformula:'],
    ['fill-gas', 'free-gas = 0.7402 m³\nmass = 0.862 kg\nformula:'],
    ['gas-build-up', 'content = 0.4056 %\nin-the-end = 0.5000 %\nformula:'],
    ['gas-mass', 'mass = 0.8620 kg\nformula:'],
    ['liquid-leak-rate', 'per-running-hour = 4.00 ml/h\nper-day = 40.0 ml/d\nformula:'],
    ['molar-leak-rate', 'leak-rate = 0.000296571 mol/s\nformula:'],
    ['purge-gas', 'free-gas = 0.4163 m³\npurges-per-bottle = 21\nbottles = 1\nformula:'],
    ['purge-lower-bound', 'lower-bound = 1.873 bar(g)\nformula:'],
    ['purge-sweep', 'volumes = 3.045\nformula:'],
    ['purge-time', 'time = 8.3 min\ngoverned-by = formula\nfree-gas = 0.4163 m³\nformula:'],
    [
      'purge-window',
      'lower = 1.873 bar(g)\nupper = 2.965 bar(g)\ngoverned-by = seal lip\nwindow = safe\nformula:',
    ],
    ['riser-purge-pressure', 'pressure = 2.471 bar(g)\nformula:'],
    ['seal-pressure', 'pressure = 2.740 bar\nformula:'],
    ['ventilation-time', 'time = 2.00 h\nhalf-life = 4.16 min\nformula:'],
  ])('%s begins with its results', (name, beginning) => {
    const out = told(name)
    expect(out.slice(0, beginning.length)).toBe(beginning)
  })

  test('a leak is told in three units', () => {
    expect(told('gas-leak-rate')).toMatch(
      /^leak-rate = 0\.15555556 Pa·m³\/s\nleak-rate-in-mbar = 1\.5555556 mbar·l\/s\nleak-flow = 92\.113 ml\/min\n/u,
    )
  })

  test('the content is told after each cycle', () => {
    expect(told('purge-cycles')).toMatch(
      /^cycles = 4\nby-formula = 3\.881\nvolumes = 11\.843\nafter-1 = 5\.277 %\nafter-2 = 1\.332 %\nafter-3 = 0\.3364 %\nafter-4 = 0\.08492 %\n/u,
    )
  })

  test('vacuum cycles take absolute pressures and an aim in ppm', () => {
    const out = told(
      'purge-cycles',
      'from=21 %',
      'to=5 ppm',
      'low=8 mbar(a)',
      'high=1 bar(a)',
      'reference=1 bar(a)',
    )
    expect(out).toMatch(/^cycles = 3\nby-formula = 2\.205\nvolumes = 2\.976\n/u)
  })

  test('no safe window is a result that says what to do', () => {
    const words = (calls.get('purge-window') ?? []).map((one) =>
      one.startsWith('density') ? 'density=1850 kg/m³' : one,
    )
    expect(told('purge-window', ...words)).toContain(
      'upper = 2.965 bar(g)\ngoverned-by = seal lip\nwindow = NO SAFE WINDOW: do not lift by pressure, ask office\n',
    )
    const strongLip = words.map((one) => (one.startsWith('lip') ? 'lip=6 bar' : one))
    expect(told('purge-window', ...strongLip)).toContain(
      'lower = 3.040 bar(g)\nupper = 5.000 bar(g)\ngoverned-by = regulator\nwindow = safe\n',
    )
  })

  test('without running hours the leak is told per day only', () => {
    expect(told('liquid-leak-rate', 'volume=120 ml', 'running=0 h', 'elapsed=3 d')).toMatch(
      /^per-running-hour = none: no running hours since the last purge, judge per day only\nper-day = 40\.0 ml\/d\n/u,
    )
  })

  test('what was taken where nothing was given is shown', () => {
    for (const [name, ...lines] of [
      ['air-changes'],
      [
        'bottle-content',
        'compressibility = 1.00',
        'reference = 1.01325 bar(a)',
        'barometer = 1.01325 bar(a)',
      ],
      ['dilution', 'supply = 0 ppm', 'mixing = 1.00'],
      ['fill-gas', 'temperature = 20.0 °C', 'molar-mass = 28.0134 g/mol'],
      ['gas-build-up', 'from = 0 %', 'supply = 0 %', 'mixing = 1.00'],
      ['gas-mass', 'molar-mass = 28.0134 g/mol'],
      ['purge-cycles', 'supply = 0 %', 'reference = 1.01325 bar(a)', 'barometer = 1.01325 bar(a)'],
      ['purge-gas', 'changes = 5', 'reference = 1.01325 bar(a)'],
      ['purge-sweep', 'supply = 0 %'],
      ['purge-time', 'changes = 5', 'least = 5 min'],
      ['purge-window', 'margin = 0.5 bar'],
      ['riser-purge-pressure', 'back-pressure = 1.0 bar(g)'],
      ['ventilation-time', 'changes = 20', 'mixing = 1.00'],
    ] as const) {
      const out = told(name)
      for (const line of lines) expect(out, name).toContain(`\n    ${line}\n`)
      expect(out.includes('taken where nothing was given')).toBe(lines.length > 0)
    }
    expect(told('purge-gas', 'volume=28 l', 'pressure=2 bar(g)', 'bottle=9 m³')).toContain(
      '\n    purges = 1\n',
    )
  })

  test('given figures take the place of what is else taken', () => {
    expect(
      told('bottle-content', 'volume=50 l', 'full=200 bar(g)', 'least=8 bar(g)', 'compressibility=1.05'),
    ).toContain('content = 9.002 m³\n')
    expect(told('fill-gas', 'volume=250 l', 'from=0 bar(g)', 'to=3 bar(g)', 'reference=1 bar(a)')).toContain(
      'free-gas = 0.7500 m³\n',
    )
    expect(
      told('fill-gas', 'volume=250 l', 'from=0.9 bar(a)', 'to=3 bar(g)', 'barometer=0.9 bar(a)'),
    ).toContain('free-gas = 0.7402 m³\n')
    expect(told('purge-time', 'volume=28 l', 'pressure=2 bar(g)', 'flow=500 l/min')).toContain(
      'time = 5.0 min\ngoverned-by = least time\n',
    )
    expect(
      told('purge-time', 'volume=28 l', 'pressure=2 bar(g)', 'flow=500 l/min', 'least=1 s', 'changes=50'),
    ).toContain('time = 8.3 min\ngoverned-by = formula\n')
    expect(told('gas-mass', 'volume=250 l', 'rise=3 bar', 'temperature=0 °C', 'molar-mass=14 g/mol')).toMatch(
      /^mass = 0\.4623 kg\n/u,
    )
    expect(told('ventilation-time', 'volume=600 m³', 'flow=6000 m³/h', 'changes=10', 'mixing=0.5')).toMatch(
      /^time = 2\.00 h\nhalf-life = 8\.32 min\n/u,
    )
    expect(told('purge-lower-bound', 'density=1000 kg/m³', 'lift=14 m', 'margin=0 bar')).toContain(
      'lower-bound = 1.373 bar(g)\n',
    )
    expect(
      told('riser-purge-pressure', 'density=1000 kg/m³', 'height=15 m', 'back-pressure=0 bar(g)'),
    ).toContain('pressure = 1.471 bar(g)\n')
    expect(
      told('gas-build-up', 'source=3 m³/h', 'volume=60 m³', 'flow=600 m³/h', 'time=0 min', 'from=700 ppm'),
    ).toContain('content = 700.0 ppm\nin-the-end = 5000 ppm\n')
  })

  test('an entry limit and a ventilated space get no judgement: the permit decides', () => {
    for (const name of ['entry-limit', 'air-changes', 'dilution', 'ventilation-time']) {
      expect(listedCalculations.find((one) => one.note.name === name)?.note.words).toContain(
        'the permit decides',
      )
      expect(told(name)).not.toMatch(/\b(?:pass|fail|safe|enter)\b/iu)
    }
    expect(told('entry-limit')).toContain('known: read; status superseded')
  })
})

describe('a wrong call on gas', () => {
  test.each<[readonly string[], string]>([
    [
      ['air-changes', 'from=16 %', 'to=20.8 %'],
      'Unexpected aim of 20.8 %, expected one between 16.0 % at the start and 0 % of the supply',
    ],
    [['air-changes', 'from=16', 'to=20.8 %', 'supply=high'], 'Unexpected `high`, expected a number such as'],
    [['purge-sweep', 'from=21 bar', 'to=1 %'], 'Unexpected unit `bar`, expected a number such as'],
    [
      ['fill-gas', 'volume=250 l', 'from=0 bar', 'to=3 bar(g)'],
      'Unexpected unit `bar`, expected a number such as',
    ],
    [
      ['fill-gas', 'volume=250 l', 'from=-2 bar(g)', 'to=3 bar(g)'],
      'Unexpected gauge pressure below a vacuum, expected a pressure above it',
    ],
    [
      ['purge-gas', 'volume=28 l', 'pressure=2 bar(g)', 'purges=20'],
      'Unexpected call without `bottle=`, expected it',
    ],
    [
      ['liquid-leak-rate', 'volume=1 l', 'running=30 h', 'elapsed=1 d'],
      'Unexpected 30.0 h of running within 24.0 h',
    ],
    [
      ['ventilation-time', 'volume=600 m³', 'flow=6000 m³/h', 'mixing=2'],
      'Unexpected mixing of 2, expected one above 0',
    ],
    [['entry-limit', 'limit=5 ppm'], 'Unexpected call without `share=`, expected it'],
  ])('%s is refused with what is expected', (words, reason) => {
    const message = refused(...words)
    expect(message.startsWith(reason)).toBe(true)
    expect(message).toContain(', expected ')
  })
})
