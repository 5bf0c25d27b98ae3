import {describe, expect, test} from 'vitest'
import {runCalculate} from '../../src/commands/calculate.ts'
import {listedCalculations} from '../../src/commands/calculate-list.ts'
import {exampleCalls} from './example-calls.ts'

const names = listedCalculations.map((one) => one.note.name)

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

function asData(...words: readonly string[]): unknown {
  const outcome = runCalculate(words, true)
  expect([outcome.exitStatus, outcome.err]).toEqual([0, ''])
  return JSON.parse(outcome.out)
}

/** The torque as printed, in N·m. */
function torqueOf(...words: readonly string[]): number {
  return Number(/^torque = (\S+) N·m\n/u.exec(told(...words))?.[1])
}

function preloadOf(...words: readonly string[]): string | undefined {
  return /^preload = (.+)$/mu.exec(told(...words))?.[1]
}

const torque = ['tightening-torque', 'size=M16', 'class=8.8', 'friction=0.14'] as const
const hold = [
  'pressure-hold',
  'start=3 bar(g)',
  'end=2.95 bar(g)',
  'start-temperature=20 °C',
  'end-temperature=18 °C',
] as const
const holdTime = [
  'tightness-hold-time',
  'volume=28 l',
  'test-pressure=3 bar(g)',
  'gauge-step=0.02 bar',
  'temperature-uncertainty=0.5 K',
  'allowed-leak=10 ml/min',
] as const
const bounds = ['rating=6 bar(g)', 'lip=4 bar', 'tank=-0.035 bar(g)', 'regulator=5 bar(g)'] as const

describe('calculate without a name', () => {
  test('lists every calculation, sorted, with its keys and what it does', () => {
    const heads = told()
      .split('\n')
      .filter((line) => line !== '' && !line.startsWith(' '))
    expect(heads.map((line) => line.split(' ')[0])).toEqual([...names].sort())
    expect(heads).toContain('thread-geometry size= [pitch=]')
    expect(heads.every((line) => line === line.trimEnd())).toBe(true)
  })

  test('lists them as data too', () => {
    const listed = runCalculate([], true)
    expect(JSON.parse(listed.out)).toHaveLength(names.length)
    expect(JSON.parse(listed.out)).toContainEqual(
      expect.objectContaining({name: 'clearance', keys: ['bores', 'hubs'], optional: []}),
    )
  })

  test('asked for help with one name, shows that one alone', () => {
    expect(told('clearance', '--help')).toMatch(/^clearance bores= hubs=\n {4}diametral clearance.*\n$/u)
  })
})

describe('a calculation on the command line', () => {
  test.each<[readonly string[], string]>([
    [['tightening-order', 'bolts=8'], 'order = 1 5 3 7 2 6 4 8\n'],
    [['clearance', 'bores=200.50mm,200.54mm', 'hubs=200.02mm, 199.98mm'], 'clearance = 0.520 mm diametral\n'],
    [['annulus-volume', 'outer=150mm', 'inner=100mm', 'length=1m'], 'volume = 9.817 l\n'],
    [hold, 'expected-end = 2.97262 bar(g)\ncorrected-loss = 0.02278 bar\n'],
    [['purge-upper-bound', ...bounds], 'upper-bound = 3.965 bar(g)\ngoverned-by = seal lip\n'],
    [holdTime, 'hold-time = 74.2 min\ngoverned-by = formula\n'],
    [['thread-geometry', 'size=M12'], 'pitch-diameter = 10.863 mm\n'],
    [['thread-geometry', 'size=M12', 'pitch=1.5mm'], 'pitch-diameter = 11.026 mm\n'],
  ])('%s begins with its result in the proper unit', (words, beginning) => {
    expect(told(...words).startsWith(beginning)).toBe(true)
  })

  test.each(listedCalculations)(
    '$note.name shows its formula, source and range after the result',
    ({note}) => {
      const words = exampleCalls.get(note.name)
      expect(words, `a call of ${note.name} in example-calls.ts`).toBeDefined()
      const out = told(note.name, ...(words ?? []))
      for (const line of note.formula) expect(out).toContain(`\n    ${line}\n`)
      for (const {symbol, meaning} of note.symbols) expect(out).toContain(`\n        ${symbol}: ${meaning}\n`)
      for (const {title, howKnown, status} of note.sources) {
        expect(out).toContain(`\n    ${title}, edition `)
        expect(out).toContain(`; known: ${howKnown}; status ${status}\n`)
      }
      expect(out).toContain(`\nvalid for: ${note.validFor}\nfor study: `)
    },
  )

  test('M16 8.8 at friction 0.14 is 230 N·m and 78.8 kN, or 210 N·m by the edition of 1986, as printed in tables', () => {
    expect(asData(...torque)).toMatchObject({
      results: {
        torque: {value: expect.closeTo(230, 0), unit: 'N·m'},
        preload: {value: expect.closeTo(78.8, 1), unit: 'kN'},
      },
    })
    expect(Math.abs(torqueOf(...torque, 'edition=1986') / 210 - 1)).toBeLessThanOrEqual(0.015)
  })

  test('the edition printed beside a torque is the one it was computed by', () => {
    const later = told(...torque)
    expect(later).toContain('1 + 3·[3/2·(d2/d0)')
    expect(later).toContain('edition 2003 and later; known: memory; status unknown')
    const earlier = told(...torque, 'edition=1986')
    expect(earlier).toContain('1 + 3·[2·(d2/d0)')
    expect(earlier).toContain('edition 1986; known: memory; status superseded')
    expect(earlier).not.toContain('2003')
  })

  test('what was taken where nothing was given is shown, so that the figure can be computed again', () => {
    const out = told(...torque)
    for (const line of [
      'head-friction = 0.140',
      'utilisation = 90 %',
      'edition = 2003',
      'head = 22.49 mm',
      'hole = 17.50 mm',
      'pitch = 2.00 mm',
      'yield-stress = 640 N/mm²',
    ])
      expect(out).toContain(`\n    ${line}\n`)
    expect(told(...hold)).toContain('\n    start-barometer = 1.01325 bar(a)\n')
    expect(told(...holdTime)).toContain('\n    least = 30 min\n')
    expect(told(...hold, 'start-barometer=0.98 bar(a)').match(/start-barometer/gu)).toHaveLength(1)
  })

  test('a given head and hole reach sizes beyond the table and leave its sources out', () => {
    const out = told(
      'tightening-torque',
      'size=M33',
      'class=8.8',
      'friction=0.12',
      'head=46.55mm',
      'hole=36mm',
    )
    expect(out).not.toContain('ISO 4014')
    expect(told(...torque)).toContain('ISO 4014')
  })

  test('a head wider than the table adds its longer lever to the torque and leaves the preload', () => {
    const lever = (0.14 * (24 - 22.49)) / 4
    const widened = torqueOf(...torque, 'head=24mm')
    expect(widened - torqueOf(...torque)).toBeCloseTo(78.8 * lever, 0)
    expect(preloadOf(...torque, 'head=24mm')).toBe(preloadOf(...torque))
  })

  test('volume and duration add the leak, and one without the other is refused', () => {
    expect(told(...hold, 'volume=50 l', 'duration=30 min')).toContain('leak-rate = 0.06326 Pa·m³/s\n')
    expect(refused(...hold, 'volume=50 l')).toContain('Unexpected call without `duration=`')
    expect(refused(...hold, 'duration=30 min')).toContain('Unexpected call without `volume=`')
  })

  test('the house rule is named where it governs the hold time', () => {
    expect(told(...holdTime, 'least=2 h')).toContain('hold-time = 120.0 min\ngoverned-by = house rule\n')
  })
})

describe('a calculation as data', () => {
  test('has name, inputs, results, formula, source and status, each value in the unit beside it', () => {
    const data = asData(...hold, 'volume=50 l', 'duration=30 min')
    expect(data).toMatchObject({
      name: 'pressure-hold',
      inputs: {start: '3 bar(g)', volume: '50 l', 'start-barometer': '1.01325 bar(a)'},
      results: {
        'expected-end': {value: expect.closeTo(2.97262, 5), unit: 'bar(g)', printed: '2.97262 bar(g)'},
        'corrected-loss': {value: expect.closeTo(0.022775, 6), unit: 'bar'},
        'leak-rate': {value: expect.closeTo(0.06326, 5), unit: 'Pa·m³/s'},
        'leak-flow': {value: expect.closeTo(37.46, 2), unit: 'ml/min'},
      },
      formula: expect.arrayContaining(['p abs = p gauge + p barometer']),
      symbols: {V: 'volume', 'p abs': 'absolute pressure'},
      source: [{edition: '1999', howKnown: 'memory'}],
      status: 'unknown',
    })
  })

  test('an order is a row of numbers and a bound names what governs', () => {
    expect(asData('tightening-order', 'bolts=4')).toMatchObject({
      results: {order: {value: [1, 3, 2, 4], unit: '', printed: '1 3 2 4'}},
    })
    expect(asData('purge-upper-bound', ...bounds)).toMatchObject({
      results: {
        'upper-bound': {value: expect.closeTo(3.965, 9), unit: 'bar(g)'},
        'governed-by': {value: 'seal lip'},
      },
    })
  })

  test('different states of sources are each named once', () => {
    expect(asData(...torque, 'edition=1986')).toMatchObject({status: 'superseded, unknown'})
  })
})

describe('a wrong call', () => {
  test.each<[readonly string[], string]>([
    [['presure-hold'], 'Unexpected calculation `presure-hold`, expected `pressure-hold` or another of '],
    [['annulus-volume', 'outr=150mm'], 'Unexpected `outr=150mm`, expected `outer=…` or another of outer'],
    [['annulus-volume', 'outer'], 'Unexpected `outer`, expected `outer=…`'],
    [[...torque, 'friction=0.1'], 'Unexpected second `friction=0.1`, expected `friction=` once'],
    [['thread-geometry'], 'Unexpected call without `size=`, expected it'],
    [['thread-geometry', 'size=M11'], 'Unexpected size `M11`, expected one of M6'],
    [[...torque, 'edition=1999'], 'Unexpected edition `1999`, expected `2003` or `1986`'],
    [['tightening-order', 'bolts=1e1'], 'Unexpected count `1e1`, expected a whole number from 1 to 48'],
    [['tightening-order', 'bolts='], 'Unexpected count ``, expected a whole number from 1 to 48'],
    [['tightening-order', 'bolts=49'], 'Unexpected count of 49 bolts'],
    [['pressure-hold', 'start=3 bar'], 'Unexpected unit `bar`, expected a number such as'],
    [['clearance', 'bores=200mm', 'hubs=200.1mm'], 'Unexpected hub of 200.100 mm in a bore of 200.000 mm'],
    [
      ['pressure-hold', 'start=3barg', 'end=3barg', 'start-temperature=-300 °C', 'end-temperature=20 °C'],
      'Unexpected `-300 °C` below absolute zero',
    ],
  ])('%s is refused with what is expected', (words, reason) => {
    const message = refused(...words)
    expect(message.startsWith(reason)).toBe(true)
    expect(message).toContain(', expected ')
    expect(message.trimEnd()).not.toMatch(/\.$/u)
  })
})
