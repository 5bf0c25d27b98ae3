import {describe, expect, test} from 'vitest'
import {knownValueIds} from '../../src/check/rules/known-value-ids.ts'
import {computeValues} from '../../src/compute/compute-values.ts'
import {millimetres, percent} from '../../src/quantities/named-units.ts'
import {english} from '../compile/data-for-tests.ts'
import {vesselA} from '../compile/vessel-for-tests.ts'
import {
  atLine,
  type Changes,
  computed,
  contentWith,
  figureOf,
  notKnown,
  stated,
  unknownIn,
  valueIn,
} from './content-for-tests.ts'

const {values, others, said} = computed()

/** The first pump as it is, the second, 4S, without a stack length; both in one vessel file. */
function withoutStackLength(): Changes {
  const [first, second] = vesselA.positions
  if (!first || !second) throw new Error('Unexpected vessel, expected one with two pumps')
  const unknown = {
    ...notKnown('not measured'),
    place: {path: 'vessels/vessel-a/vessel.yaml', line: 77, column: 9},
  }
  return {vessel: {positions: [first, {...second, stackLength: unknown}]}}
}

describe('the values of a pump', () => {
  test('have each id that a procedure may refer to, and no other', () => {
    const [design] = contentWith({}).designs.values()
    if (!design) throw new Error('Unexpected content without a design, expected one')
    expect([...values.keys()].sort()).toEqual([...knownValueIds(design), 'purge.least-oil'].sort())
  })

  test('are filed under their own ids, with a title, a source and a rounding each', () => {
    for (const [id, value] of values) {
      expect(value.id).toBe(id)
      expect(value.title, id).not.toBe('')
      expect(value.rounding, id).not.toBe('')
      expect(value.sources.length, id).toBeGreaterThan(0)
    }
  })

  test('that are computed name words, formula and inputs', () => {
    const bare = [...values.values()].filter(
      ({calculation}) => calculation && (calculation.words === '' || calculation.formula.length === 0),
    )
    expect(bare.map(({id}) => id)).toEqual([])
    expect(
      [...values.values()]
        .filter(({calculation}) => calculation)
        .map(({id}) => id)
        .sort(),
    ).toEqual(
      [
        ...['torque', 'preload', 'passes', 'order'].map((name) => `hub-bolts.${name}`),
        'lower-ring.renewal',
        ...['volume', 'upper-bound', 'test-pressure', 'hold-time'].map((name) => `cofferdam.${name}`),
        ...['smallest-leak', 'allowed-drop', 'pressure-per-kelvin'].map((name) => `cofferdam.${name}`),
        ...['lower-bound', 'least-oil', 'free-gas', 'time', 'per-bottle'].map((name) => `purge.${name}`),
        'tank.ventilation-time',
      ].sort(),
    )
  })

  test('that are stated repeat the digits as written', () => {
    const length = stated(millimetres(60), '60.00', 'mm')
    const changed = computed({
      design: {
        geometry: [
          {id: 'gap', title: english('gap'), value: length, condition: english('cold'), place: atLine(40)},
        ],
      },
    })
    expect(figureOf(changed.values, 'geometry.gap')).toBe('60.00 mm')
    expect(valueIn(changed.values, 'geometry.gap').condition).toBe('cold')
    expect(figureOf(values, 'tank.vacuum-valve')).toBe('−0.035 bar(g)')
    expect(figureOf(values, 'mass.head')).toBe('186 kg')
  })

  test('raise no message while everything is known', () => {
    expect(said).toBe('')
    expect(unknownIn(values)).toEqual([])
  })
})

describe('a stack length that is not known', () => {
  const gap = computed(withoutStackLength())
  const dependent = [
    ...['allowed-drop', 'hold-time', 'smallest-leak', 'stack-length', 'volume'].map(
      (name) => `cofferdam.${name}`,
    ),
    ...['free-gas', 'least-oil', 'lower-bound', 'per-bottle', 'time'].map((name) => `purge.${name}`),
  ]

  test('leaves exactly what needs it not known, on that pump alone', () => {
    expect(unknownIn(gap.values)).toEqual(dependent)
    expect(unknownIn(gap.others)).toEqual([])
  })

  test('says in words what is missing', () => {
    for (const id of dependent)
      expect(valueIn(gap.values, id).result, id).toEqual({
        kind: 'not-known',
        missing: ['stack length of 4S (not measured)'],
      })
  })

  test('leaves every other value as it was', () => {
    for (const [id, value] of values)
      if (!dependent.includes(id)) expect(valueIn(gap.values, id), id).toEqual(value)
    expect([...gap.others]).toEqual([...others])
  })

  test('is told once, with every value that waits for it, at the line that states the gap', () => {
    const lines = gap.said.split('\n').filter((one) => one.includes('no-uncomputable-value'))
    const waiting = [
      ...['volume', 'hold-time', 'smallest-leak', 'allowed-drop'].map((name) => `cofferdam.${name}`),
      ...['lower-bound', 'least-oil', 'free-gas', 'time', 'per-bottle'].map((name) => `purge.${name}`),
    ]
    expect(lines).toEqual([
      `content/vessels/vessel-a/vessel.yaml:77:9 information Unexpected gap, expected stack length of 4S (not measured) to compute ${waiting.map((id) => `\`${id}\``).join(', ')} of \`vessel-a/4s\` no-uncomputable-value`,
    ])
  })
})

describe('a gap in the data is told at its own line', () => {
  test.each<[string, Changes, number, readonly string[]]>([
    [
      'of the utilisation',
      {joint: {utilisation: notKnown('no drawing', 51)}},
      51,
      ['hub-bolts.torque', 'hub-bolts.preload', 'hub-bolts.passes'],
    ],
    ['of the renewal clearance', {ring: {renewal: notKnown('no drawing', 52)}}, 52, ['lower-ring.renewal']],
    [
      'of a share of the passes',
      {house: {tighteningPasses: [notKnown('not decided', 53), stated(percent(100), '100', '%')]}},
      53,
      ['hub-bolts.passes'],
    ],
    [
      'of the rating',
      {cofferdam: {rating: notKnown('no drawing', 54)}},
      54,
      [
        ...['upper-bound', 'test-pressure', 'hold-time', 'smallest-leak', 'allowed-drop'].map(
          (name) => `cofferdam.${name}`,
        ),
        'cofferdam.pressure-per-kelvin',
        ...['free-gas', 'time', 'per-bottle'].map((name) => `purge.${name}`),
      ],
    ],
    [
      'of the head volume',
      {cofferdam: {headVolume: notKnown('no drawing', 55)}},
      55,
      [
        ...['volume', 'hold-time', 'smallest-leak', 'allowed-drop'].map((name) => `cofferdam.${name}`),
        ...['free-gas', 'time', 'per-bottle'].map((name) => `purge.${name}`),
      ],
    ],
  ])('%s', (_what, changes, line, ids) => {
    const told = computed(changes)
      .said.split('\n')
      .filter((one) => one.includes('`vessel-a/4s`'))
    expect(told.map((one) => /compute (.+) of `vessel/u.exec(one)?.[1])).toEqual([
      ids.map((id) => `\`${id}\``).join(', '),
    ])
    for (const one of told)
      expect(one).toMatch(new RegExp(`^content/designs/design-a\\.yaml:${line}:1 information `, 'u'))
  })
})

describe('sources of the values', () => {
  test('that sources.yaml lacks stop the build, once each', () => {
    const {said: words} = computed({sources: {'ideal-gas': undefined}})
    expect(words.split('\n').filter((one) => one.includes('ideal-gas'))).toEqual([
      expect.stringMatching(
        / error Unexpected source `ideal-gas` of value `cofferdam\.[a-z-]+` that sources\.yaml does not hold, expected an entry of that id no-undefined-reference$/u,
      ),
    ])
  })

  test('that are superseded are a warning at the source, once, with the count of its values', () => {
    const words = computed({sources: {'iso-4014': {status: 'superseded'}}}).said.split('\n')
    expect(words.filter((one) => one.includes('no-superseded-source'))).toEqual([
      'content/sources.yaml:7:5 warning Unexpected superseded source `iso-4014` under 3 values, expected a current one no-superseded-source',
    ])
  })

  test('that are superseded name what replaces them', () => {
    const replaced = {id: 'iso-261', place: {path: 'sources.yaml', line: 7, column: 5}}
    const words = computed({sources: {'iso-4014': {status: 'superseded', supersededBy: replaced}}}).said
    expect(words).toContain('mend: Move the values to `iso-261`, or accept it in writing')
  })
})

describe('content that the check has not proved', () => {
  test('is refused for a pump of a design that is not there', () => {
    expect(() => computeValues(contentWith({content: {designs: new Map()}}), new Map())).toThrow(
      'Unexpected design `design-a`, expected one that the check has proved',
    )
  })

  test('is refused for a pump in a tank that is not there', () => {
    expect(() => computed({vessel: {tanks: []}})).toThrow('Unexpected tank `4p`')
  })
})
