import {describe, expect, test} from 'vitest'
import {
  bar,
  barGauge,
  kelvinDifference,
  litresPerMinute,
  metres,
  millilitresPerMinute,
  minutes,
} from '../../src/quantities/named-units.ts'
import {tool} from '../compile/data-for-tests.ts'
import {vesselA} from '../compile/vessel-for-tests.ts'
import {
  byIdOfTools,
  type Changes,
  computed,
  figureOf,
  notKnown,
  stated,
  unknownIn,
  valueIn,
} from './content-for-tests.ts'

const {values} = computed()

/** The gas of the fixture by hand: π/4·(2.00² − 1.50²) dm²·120 dm and 3 l in the head. */
const litres = (Math.PI / 4) * (2 ** 2 - 1.5 ** 2) * 120 + 3
/** Gauge step and what half a kelvin is worth at 3 bar(g) and 20 °C, in mbar. */
const hidden = 10 + ((3000 + 1013.25) / 293.15) * 0.5
/** Minutes in which 20 ml/min take that much out of the gas. */
const byFormula = (litres * hidden) / (1013.25 * 0.02)

describe('the gas of the cofferdam', () => {
  test('is the annulus over the stack length and what the head holds', () => {
    expect(litres).toBeCloseTo(167.93, 2)
    expect(figureOf(values, 'cofferdam.volume')).toBe('167.9 l')
  })

  test('is that of the stack length of each pump', () => {
    const [first, second] = vesselA.positions
    if (!first || !second) throw new Error('Unexpected vessel, expected one with two pumps')
    const long = {...second, stackLength: stated(metres(13), '13', 'm')}
    const {values: ofLong, others} = computed({vessel: {positions: [first, long]}})
    expect(figureOf(ofLong, 'cofferdam.volume')).toBe('181.7 l')
    expect(figureOf(others, 'cofferdam.volume')).toBe('167.9 l')
  })
})

describe('the highest pressure in the cofferdam', () => {
  test.each<[string, string, Changes]>([
    ['3.46 bar(g)', 'seal lip', {}],
    ['3.20 bar(g)', 'cofferdam rating', {cofferdam: {rating: stated(barGauge(3.2), '3.2', 'bar(g)')}}],
    [
      '2.50 bar(g)',
      'regulator',
      {
        vessel: {
          hydraulics: {
            ...vesselA.hydraulics,
            purgeRegulatorMaximum: stated(barGauge(2.5), '2.5', 'bar(g)'),
          },
        },
      },
    ],
  ])('is %s where the %s is the lowest', (figure, governs, changes) => {
    const {values: ofCase} = computed(changes)
    expect(figureOf(ofCase, 'cofferdam.upper-bound')).toBe(figure)
    expect(valueIn(ofCase, 'cofferdam.upper-bound').condition).toBe(`the ${governs} governs`)
  })

  test('counts the seal lip from the lowest pressure of its own tank', () => {
    const [port, starboard] = vesselA.tanks
    if (!port || !starboard) throw new Error('Unexpected vessel, expected one with two tanks')
    const weak = {...starboard, vacuumValveSetting: stated(barGauge(-0.07), '−0.07', 'bar(g)')}
    const {values: ofWeak, others} = computed({vessel: {tanks: [port, weak]}})
    expect(figureOf(ofWeak, 'cofferdam.upper-bound')).toBe('3.43 bar(g)')
    expect(figureOf(others, 'cofferdam.upper-bound')).toBe('3.46 bar(g)')
  })

  test('is never printed higher than it is', () => {
    const {values: ofCase} = computed({cofferdam: {lipReverseLimit: stated(bar(3.504), '3.504', 'bar')}})
    expect(figureOf(ofCase, 'cofferdam.upper-bound')).toBe('3.46 bar(g)')
  })
})

describe('the test pressure', () => {
  test('is the house maximum while the cofferdam bears it', () => {
    expect(figureOf(values, 'cofferdam.test-pressure')).toBe('3.00 bar(g)')
    expect(valueIn(values, 'cofferdam.test-pressure').condition).toBe('the house rule governs')
  })

  test('is the upper bound of the cofferdam where that is lower, and not printed higher', () => {
    const {values: ofCase} = computed({cofferdam: {rating: stated(barGauge(2.468), '2.468', 'bar(g)')}})
    expect(figureOf(ofCase, 'cofferdam.test-pressure')).toBe('2.46 bar(g)')
    expect(valueIn(ofCase, 'cofferdam.test-pressure').condition).toBe(
      'the upper bound of the cofferdam governs',
    )
  })

  test('changes by 13.7 mbar for each kelvin at 3 bar(g) and 20 °C', () => {
    expect(figureOf(values, 'cofferdam.pressure-per-kelvin')).toBe('13.7 mbar')
  })
})

describe('the hold time of the tightness test', () => {
  test('is as long as the allowed leak needs to show, up to a whole minute', () => {
    expect(byFormula).toBeCloseTo(139.6, 1)
    expect(figureOf(values, 'cofferdam.hold-time')).toBe(`${Math.ceil(byFormula)} min`)
    expect(valueIn(values, 'cofferdam.hold-time').condition).toBe(
      'allowed leak, gauge and thermometer govern',
    )
  })

  test('is never shorter than the house rule', () => {
    const {values: leaky} = computed({cofferdam: {allowedLeak: stated(litresPerMinute(1), '1', 'l/min')}})
    expect(figureOf(leaky, 'cofferdam.hold-time')).toBe('30 min')
    expect(valueIn(leaky, 'cofferdam.hold-time').condition).toBe('the house rule governs')
  })

  test('shows no smaller leak than it says', () => {
    const smallest = (litres * hidden) / (1013.25 * 50)
    expect(smallest * 1000).toBeCloseTo(55.84, 2)
    const {values: leaky} = computed({
      cofferdam: {allowedLeak: stated(litresPerMinute(1), '1', 'l/min')},
      house: {tightnessHoldLeast: stated(minutes(50), '50', 'min')},
    })
    expect(figureOf(leaky, 'cofferdam.smallest-leak')).toBe('55.9 ml/min')
  })

  test('allows the drop that the allowed leak makes in it, never rounded up', () => {
    const drop = (0.02 * 1013.25 * Math.ceil(byFormula)) / litres
    expect(drop).toBeCloseTo(16.89, 2)
    expect(figureOf(values, 'cofferdam.allowed-drop')).toBe('16 mbar')
  })

  test('prints a small allowed drop with one decimal', () => {
    const drop = (0.001 * 1013.25 * 1500) / litres
    expect(drop).toBeCloseTo(9.05, 2)
    const fine = computed({
      cofferdam: {allowedLeak: stated(millilitresPerMinute(1), '1', 'ml/min')},
      content: {
        tools: byIdOfTools([
          tool('test-gauge', {
            graduation: stated(bar(0.001), '0.001', 'bar'),
            uncertainty: stated(bar(0.001), '0.001', 'bar'),
          }),
          tool('thermometer', {
            graduation: stated(kelvinDifference(0.1), '0.1', 'K'),
            uncertainty: stated(kelvinDifference(0.1), '0.1', 'K'),
          }),
        ]),
      },
      house: {tightnessHoldLeast: stated(minutes(1500), '1500', 'min')},
    })
    expect(figureOf(fine.values, 'cofferdam.hold-time')).toBe('1500 min')
    expect(figureOf(fine.values, 'cofferdam.allowed-drop')).toBe('9.0 mbar')
  })

  test('takes the step of the gauge and the uncertainty of the thermometer', () => {
    const coarse = tool('test-gauge', {
      graduation: stated(bar(0.02), '0.02', 'bar'),
      uncertainty: stated(bar(0.02), '0.02', 'bar'),
    })
    const fine = tool('thermometer', {
      graduation: stated(kelvinDifference(0.1), '0.1', 'K'),
      uncertainty: stated(kelvinDifference(0.2), '0.2', 'K'),
    })
    const {values: other} = computed({content: {tools: byIdOfTools([coarse, fine])}})
    const minutesOfOther = (litres * (20 + (4013.25 / 293.15) * 0.2)) / (1013.25 * 0.02)
    expect(figureOf(other, 'cofferdam.hold-time')).toBe(`${Math.ceil(minutesOfOther)} min`)
  })
})

describe('the explanation of the tightness test', () => {
  test.each([
    ['cofferdam.volume', ['200 mm', '150 mm', '12 m', '3 l', '164.93 l']],
    ['cofferdam.upper-bound', ['5 bar(g)', '3.5 bar', '−0.035 bar(g)', '4 bar(g)']],
    ['cofferdam.test-pressure', ['3.0 bar(g)', '3.460 bar(g)']],
    ['cofferdam.pressure-per-kelvin', ['293.15 K (20 °C)', '1.01325 bar(a)', '3.000 bar(g)']],
    [
      'cofferdam.hold-time',
      [
        ...['0.01 bar', '0.5 K', '20 ml/min', '30 min', '293.15 K (20 °C)', '1.01325 bar(a)'],
        ...['167.93 l', '3.000 bar(g)', '6.8450 mbar'],
      ],
    ],
    [
      'cofferdam.smallest-leak',
      [
        ...['0.01 bar', '0.5 K', '20 ml/min', '30 min', '293.15 K (20 °C)', '1.01325 bar(a)'],
        ...['167.93 l', '3.000 bar(g)', '6.8450 mbar', '140.00 min'],
      ],
    ],
  ])('of %s shows every number that a pocket calculator needs', (id, printed) => {
    const {calculation} = valueIn(values, id)
    const shown = [...(calculation?.inputs ?? []), ...(calculation?.steps ?? [])].map((one) => one.printed)
    expect(shown).toEqual(printed)
  })
})

describe('what is not known of the tightness test', () => {
  const purge4s = ['purge.free-gas', 'purge.per-bottle', 'purge.time']
  const test4s = ['allowed-drop', 'hold-time', 'smallest-leak'].map((one) => `cofferdam.${one}`)

  test.each<[string, Changes, readonly string[], string]>([
    [
      'the allowed leak',
      {cofferdam: {allowedLeak: notKnown('no drawing', 31)}},
      ['cofferdam.allowed-leak', ...test4s],
      'allowed leak of 4S (no drawing)',
    ],
    [
      'the bore of the outer pipe',
      {cofferdam: {outerPipeBore: notKnown('no drawing', 32)}},
      ['cofferdam.outer-pipe-bore', 'cofferdam.volume', ...purge4s, ...test4s].sort(),
      'bore of the outer pipe of 4S (no drawing)',
    ],
    [
      'the rating',
      {cofferdam: {rating: notKnown('no drawing', 33)}},
      [
        ...['pressure-per-kelvin', 'rating', 'test-pressure', 'upper-bound'].map((one) => `cofferdam.${one}`),
        ...purge4s,
        ...test4s,
      ].sort(),
      'rating of the cofferdam of 4S (no drawing)',
    ],
    [
      'the shortest hold time',
      {house: {tightnessHoldLeast: notKnown('not decided', 34)}},
      [...test4s, 'house.hold-least'],
      'shortest hold time by house rule of 4S (not decided)',
    ],
    [
      'the thermometer',
      {content: {tools: byIdOfTools([tool('test-gauge')])}},
      test4s,
      'smallest step of the test gauge of 4S (tools.yaml states no instrument class)',
    ],
  ])('%s leaves exactly what needs it not known', (_what, changes, ids, missing) => {
    const {values: partly} = computed(changes)
    expect(unknownIn(partly)).toEqual([...ids].sort())
    const {result} = valueIn(partly, 'cofferdam.hold-time')
    expect(result.kind === 'not-known' ? result.missing : []).toContain(missing)
  })
})

test('a hold time of exactly a whole minute is not made a minute longer', () => {
  const leak = (litres * hidden) / (1013.25 * 100)
  const {values: even} = computed({
    cofferdam: {allowedLeak: stated(litresPerMinute(leak), leak.toFixed(6), 'l/min')},
    house: {tightnessHoldLeast: stated(minutes(10), '10', 'min')},
  })
  expect(figureOf(even, 'cofferdam.hold-time')).toBe('100 min')
})

test('a value of the tightness test names the sources of its data and of its calculation', () => {
  const gauge = {status: 'common-practice' as const, source: 'common-practice'}
  const {values: named} = computed({
    house: {tightnessHoldLeast: stated(minutes(30), '30', 'min', {origin: gauge})},
  })
  expect(valueIn(named, 'cofferdam.hold-time').sources.map(({source}) => source)).toEqual([
    'drawing',
    'common-practice',
    'ideal-gas',
  ])
  expect(valueIn(named, 'cofferdam.volume').sources.map(({source}) => source)).toEqual([
    'drawing',
    'geometry',
  ])
})
