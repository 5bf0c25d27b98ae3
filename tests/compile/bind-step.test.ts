import {describe, expect, test} from 'vitest'
import {procedurePage} from '../../src/compile/procedure-page.ts'
import type {BoundPart} from '../../src/handbook-model/pages.ts'
import type {StepPart} from '../../src/handbook-model/procedure.ts'
import {contentOf, deskOf} from './content-for-tests.ts'
import {place, to, unknownValue} from './data-for-tests.ts'
import {
  choice,
  derived,
  equals,
  procedure,
  reading,
  section,
  step,
  valuePlate,
} from './procedures-for-tests.ts'

function bound(
  parts: readonly StepPart[],
  position = '4s',
  replaced: Parameters<typeof deskOf>[2] = [],
): readonly BoundPart[] {
  const made = procedure('impeller', [section('one', [step('a', {parts})])])
  const [first] = procedurePage(made, deskOf(contentOf({list: [made]}), position, replaced)).sections
  const [only] = first?.items ?? []
  return only?.kind === 'step' ? only.parts : []
}

describe('readings', () => {
  test('name stations, unit, phase, limits and an instrument with its step and uncertainty', () => {
    expect(bound([reading('bore-found', {limits: [to('lower-ring-renewal')]})])).toEqual([
      {
        kind: 'reading',
        id: 'impeller--bore-found',
        title: 'reading bore-found',
        phase: 'as-found',
        unit: 'mm',
        stations: ['a 0°', 'a 90°'],
        instrument: 'tool micrometer, reads to 0.01 mm, ± 0.02 mm',
        formula: '',
        limits: [
          expect.objectContaining({
            id: 'lower-ring-renewal',
            limit: 'not above 1.20 mm diametral',
            outside: 'RENEW',
          }),
        ],
      },
    ])
  })

  test('keep their box when the limit is not known, and say so beside it', () => {
    const [one] = bound([reading('bore-found', {limits: [to('lower-ring-renewal')]})], '4s', [
      unknownValue('lower-ring.renewal', ['no drawing']),
    ])
    expect(one).toMatchObject({
      stations: ['a 0°', 'a 90°'],
      limits: [{known: false, limit: 'not above: NOT KNOWN - MEASURE AND REPORT'}],
    })
  })

  test('of a variant that nobody can decide stand under its condition; of a false one they are gone', () => {
    const parts = [
      reading('one-way', {when: equals('backstop', 'fitted')}),
      reading('double', {when: equals('cargo-seal', 'double-lip')}),
    ]
    expect(bound(parts, '4s')).toEqual([
      expect.objectContaining({id: 'impeller--one-way', variant: 'only if backstop of the shaft is fitted'}),
    ])
  })

  test('and what has no place for its condition stands below a line with it', () => {
    const tally = {kind: 'tally', id: 'caps', what: ['caps'], place} as const
    expect(
      bound(
        [
          {...tally, when: equals('backstop', 'fitted')},
          {...tally, id: 'plugs', when: equals('cargo-seal', 'double-lip')},
        ],
        '4s',
      ),
    ).toEqual([
      {
        kind: 'note',
        text: [
          {kind: 'strong', children: [{kind: 'text', text: 'only if backstop of the shaft is fitted:'}]},
        ],
      },
      {kind: 'tally', id: 'impeller--caps', what: ['caps']},
    ])
  })

  test.each([
    {calculation: 'clearance', from: ['bore', 'hub'], formula: 'mean of reading bore − mean of reading hub'},
    {
      calculation: 'smallest-gap',
      from: ['bore', 'hub'],
      formula: 'least reading bore − greatest reading hub',
    },
    {calculation: 'sum', from: ['bore'], formula: 'sum of all places of reading bore'},
    {
      calculation: 'hourly-rate',
      from: ['bore', 'hub'],
      formula: 'reading bore divided by reading hub in hours',
    },
    {
      calculation: 'daily-rate',
      from: ['bore', 'hub'],
      formula: 'reading bore divided by reading hub in days (hours divided by 24)',
    },
  ])(
    'computed by $calculation say the formula in the words of the readings',
    ({calculation, from, formula}) => {
      const parts = [reading('bore'), reading('hub'), derived('gap', calculation, from)]
      expect(bound(parts)[2]).toMatchObject({
        kind: 'reading',
        id: 'impeller--gap',
        formula,
        instrument: '',
        stations: [],
      })
    },
  )

  test('computed by corrected-drop name pressures, temperatures and barometer in the order they were taken', () => {
    const from = ['p1', 'p2', 't1', 't2', 'b1', 'b2']
    const [formula] = bound([
      ...from.map((id) => reading(id)),
      derived('drop', 'corrected-drop', from),
    ]).flatMap((one) => (one.kind === 'reading' && one.formula !== '' ? [one.formula] : []))
    expect(formula).toBe(
      'drop = P1 − P2 · T1 / T2 with P1 = reading p1 + reading b1, P2 = reading p2 + reading b2, both in bar absolute; T1 = mean of reading t1, T2 = mean of reading t2, both in kelvin (°C + 273.15)',
    )
  })
})

describe('isolation', () => {
  test('by role prints the points of this pump with their words', () => {
    expect(bound([{kind: 'isolate', role: 'pressure', place}])).toEqual([
      {
        kind: 'isolate',
        role: 'hydraulic pressure',
        points: [
          {
            id: '4s-pressure',
            role: 'hydraulic pressure',
            tag: 'HP 4S',
            medium: 'hydraulic oil',
            kind: 'valve',
            normal: 'open',
            isolated: 'closed',
            where: 'deck',
            lock: 'hasp',
            proof: 'gauge TP1',
            restoredWith: 'opened slowly',
            noneBecause: '',
            number: '1',
          },
        ],
      },
    ])
  })

  test('of a role that this pump lacks prints the written reason', () => {
    expect(bound([{kind: 'restore', role: 'heating', place}])).toMatchObject([
      {kind: 'restore', role: 'heating', points: [{tag: '', noneBecause: 'no heating coils in this tank'}]},
    ])
  })
})

describe('other parts of a step', () => {
  test('keep their order', () => {
    const parts: readonly StepPart[] = [
      {kind: 'note', text: [{kind: 'text', text: 'A note.'}], place},
      valuePlate('hub-bolts.torque'),
      {kind: 'wait', id: 'settle', least: to('house.stabilise'), missed: 'start again', place},
      {kind: 'repeat', until: 'it is clean', times: 4, place},
      {kind: 'repeat', until: 'it is dry', place},
      {kind: 'second-person', id: 'seen', what: 'numbers read back', place},
      {kind: 'identify', fact: to('backstop'), place},
      {kind: 'tally', id: 'things', what: ['rags', 'tools'], place},
      {kind: 'write-in', id: 'air', what: ['top', 'bottom'], columns: ['oxygen'], place},
    ]
    expect(bound(parts)).toMatchObject([
      {kind: 'note', text: [{text: 'A note.'}]},
      {kind: 'value', line: {figure: '62', unit: 'N·m', condition: 'threads and head with assembly paste'}},
      {kind: 'wait', id: 'impeller--settle', least: {figure: '10', unit: 'min'}, missed: 'start again'},
      {kind: 'repeat', until: 'it is clean', boxes: 4},
      {kind: 'repeat', until: 'it is dry', boxes: 0},
      {kind: 'second-person', id: 'impeller--seen', what: 'numbers read back'},
      {kind: 'identify', fact: 'backstop of the shaft', choices: ['fitted', 'none']},
      {kind: 'tally', id: 'impeller--things', what: ['rags', 'tools']},
      {kind: 'write-in', id: 'impeller--air', what: ['top', 'bottom'], columns: ['oxygen']},
    ])
  })

  test('choices stand by their condition', () => {
    const items = [
      choice('double', equals('cargo-seal', 'double-lip')),
      choice('single', equals('cargo-seal', 'single-lip')),
      choice('one-way', equals('backstop', 'fitted')),
    ]
    const [one] = bound([{kind: 'alternatives', id: 'which', items, place}])
    expect(one).toMatchObject({
      kind: 'alternatives',
      id: 'impeller--which',
      items: [
        {id: 'impeller--single'},
        {id: 'impeller--one-way', variant: 'only if backstop of the shaft is fitted'},
      ],
    })
    expect(one?.kind === 'alternatives' && one.items.length).toBe(2)
  })

  test('a value of a variant that nobody can decide stands under its condition', () => {
    expect(bound([valuePlate('mass.head', equals('backstop', 'fitted'))])).toMatchObject([
      {kind: 'value', variant: 'only if backstop of the shaft is fitted'},
    ])
  })

  test('the tightening order of a joint is drawn from its computed order', () => {
    const [one] = bound([{kind: 'figure', figure: 'tightening-order:hub-bolts', caption: 'Order', place}])
    expect(one).toMatchObject({
      kind: 'figure',
      figure: {caption: 'Order', data: 'hub bolts: 4; order 1 3 2 4', values: [{id: 'hub-bolts.passes'}]},
    })
    expect(one?.kind === 'figure' && one.figure.picture.svg).toMatch(/^<svg /u)
  })

  test('two figures of one page have ids of their own procedure', () => {
    const [one] = bound([{kind: 'figure', figure: 'tightening-order:hub-bolts', caption: 'Order', place}])
    expect(one?.kind === 'figure' && one.figure.id).toBe('impeller--tightening-order-hub-bolts')
  })

  test('the tank plan shows where this pump hangs', () => {
    const [one] = bound([{kind: 'figure', figure: 'tank-plan', caption: 'Where it hangs', place}])
    expect(one).toMatchObject({kind: 'figure', figure: {caption: 'Where it hangs'}})
    expect(one?.kind === 'figure' && one.figure.picture.alternative).toContain('tank 4S is marked')
  })
})
