import {describe, expect, test} from 'vitest'
import {procedurePage} from '../../src/compile/procedure-page.ts'
import type {BoundHold, BoundStep, ProcedurePage} from '../../src/handbook-model/pages.ts'
import type {Procedure, Section} from '../../src/handbook-model/procedure.ts'
import {contentOf, deskOf} from './content-for-tests.ts'
import {to} from './data-for-tests.ts'
import {
  equals,
  hold,
  procedure,
  reading,
  section,
  sentence,
  step,
  uses,
  usesWhen,
} from './procedures-for-tests.ts'

function pageOf(sections: readonly Section[], position = '4s', more: Partial<Procedure> = {}): ProcedurePage {
  const made = procedure('impeller', sections, more)
  return procedurePage(made, deskOf(contentOf({list: [made]}), position))
}

function stepsOf(page: ProcedurePage): readonly BoundStep[] {
  return page.sections.flatMap((one) => one.items.flatMap((item) => (item.kind === 'step' ? [item] : [])))
}

function holdsOf(page: ProcedurePage): readonly BoundHold[] {
  return page.sections.flatMap((one) => one.items.flatMap((item) => (item.kind === 'hold' ? [item] : [])))
}

describe('steps of a procedure on a pump', () => {
  const sections = [
    section('one', [
      hold('nameplate'),
      step('always'),
      step('double', {when: equals('cargo-seal', 'double-lip')}),
      step('single', {when: equals('cargo-seal', 'single-lip')}),
    ]),
    section('two', [step('last')]),
  ]

  test('are numbered through the page, counting only those that stand on this pump', () => {
    expect(stepsOf(pageOf(sections, '4s')).map((one) => `${one.number} ${one.id}`)).toEqual([
      '1 impeller--always',
      '2 impeller--single',
      '3 impeller--last',
    ])
    expect(stepsOf(pageOf(sections, '4p')).map((one) => one.id)).toEqual([
      'impeller--always',
      'impeller--double',
      'impeller--last',
    ])
  })

  test('come in every variant of a fact that nobody knows, each under its condition', () => {
    const variants = [
      section('one', [
        step('one-way', {when: equals('backstop', 'fitted')}),
        step('both-ways', {when: equals('backstop', 'none')}),
      ]),
    ]
    expect(stepsOf(pageOf(variants, '4s')).map((one) => one.variant)).toEqual([
      'only if backstop of the shaft is fitted',
      'only if backstop of the shaft is none',
    ])
    expect(stepsOf(pageOf(variants, '4p')).map((one) => [one.id, one.variant])).toEqual([
      ['impeller--one-way', undefined],
    ])
  })

  test('of a section that nobody can decide carry its condition, before their own', () => {
    const open = section(
      'one',
      [step('plain'), step('own', {when: equals('backstop', 'none')}), hold('tight')],
      {when: equals('backstop', 'fitted')},
    )
    const page = pageOf([open], '4s')
    expect(stepsOf(page).map((one) => one.variant)).toEqual([
      'only if backstop of the shaft is fitted',
      'only if backstop of the shaft is fitted, only if backstop of the shaft is none',
    ])
    expect(holdsOf(page).map((one) => one.variant)).toEqual(['only if backstop of the shaft is fitted'])
  })

  test('of a section that does not stand are gone, and so is the section', () => {
    const page = pageOf(
      [
        section('gone', [step('never')], {when: equals('cargo-seal', 'double-lip')}),
        section('kept', [step('first')]),
      ],
      '4s',
    )
    expect(page.sections.map((one) => one.id)).toEqual(['impeller--kept'])
    expect(stepsOf(page).map((one) => one.number)).toEqual([1])
  })
})

describe('hold points', () => {
  test('the nameplate asks for the serial of the head that hangs there', () => {
    const [first] = holdsOf(pageOf([section('one', [hold('nameplate')])], '4s'))
    expect(first?.text).toEqual([
      [
        {
          kind: 'text',
          text: 'Read the nameplate: ________ = H-4s? If not: STOP. This sheet is not for this pump.',
        },
      ],
    ])
  })

  test('have both signatures, and the values in their text', () => {
    const [one] = holdsOf(
      pageOf([section('one', [hold('tight', {text: [sentence('All at {hub-bolts.torque}.')]})])]),
    )
    expect(one).toMatchObject({
      id: 'impeller--tight',
      title: 'Hold tight',
      signedBy: 'second engineer',
      secondBy: 'chief engineer',
    })
    expect(one?.text[0]?.[1]).toMatchObject({kind: 'value', text: '62 N·m'})
  })
})

describe('cautions of a procedure on a pump', () => {
  const page = pageOf([
    section('one', [step('quiet'), step('lift', {actions: ['lift'], cautions: uses('dirt', 'oil')})], {
      cautions: uses('gas'),
    }),
    section('two', [
      step('open', {actions: ['open-hydraulic'], cautions: uses('oil')}),
      step('calm', {actions: ['lift']}),
    ]),
  ])

  test('of a section stand once at its start and are recalled at each step with an action', () => {
    expect(page.sections.map((one) => one.cautions.map((caution) => caution.id))).toEqual([['gas'], []])
    expect(
      stepsOf(page).map((one) =>
        one.recalls.map((recall) => `${recall.number} ${recall.word} ${recall.title}`),
      ),
    ).toEqual([[], ['1 DANGER title of gas'], [], []])
  })

  test('are numbered by first use and keep their number', () => {
    expect(
      stepsOf(page).map((one) => one.cautions.map((caution) => `${caution.number} ${caution.id}`)),
    ).toEqual([[], ['2 oil', '3 dirt'], ['2 oil'], []])
    expect(page.cautionsUsed.map((one) => `${one.number} ${one.link.fragment}`)).toEqual([
      '1 caution--gas',
      '2 caution--oil',
      '3 caution--dirt',
    ])
  })

  test('that do not stand on this pump are neither shown nor listed', () => {
    const gone = pageOf(
      [
        section('one', [
          step('a', {cautions: [usesWhen('gas', equals('cargo-seal', 'double-lip'))]}),
          step('b', {when: equals('cargo-seal', 'double-lip'), cautions: uses('oil')}),
        ]),
      ],
      '4s',
    )
    expect(gone.cautionsUsed).toEqual([])
  })
})

describe('head of a procedure on a pump', () => {
  const page = pageOf([section('one', [step('a', {cautions: uses('oil')})])], '4s', {
    tools: [{tool: to('wrench'), note: {en: 'calibrated'}}],
    parts: [{part: to('ring'), quantity: 1, unit: 'piece'}],
    people: 1,
  })

  test('names vessel, position and procedure in id and path, and the pump itself', () => {
    expect(page.head).toMatchObject({
      id: 'vessel-a/4s/impeller',
      shownAs: '4S · procedure impeller',
      path: 'p/4s/impeller.html',
      language: 'en',
    })
    const {plan, ...position} = page.head.position ?? {}
    expect(plan?.alternative).toContain('tank 4S is marked')
    expect(position).toEqual({
      id: '4s',
      tag: '4S',
      tankTag: '4S',
      keptAt: '',
      serial: 'P-4s',
      design: 'Design A',
      variant: 'A2',
      stackLength: '12 m',
      tankVolume: '900 m³',
      critical: true,
    })
  })

  test('says who, how many and how long, marked as an estimate', () => {
    expect(page).toMatchObject({
      performedBy: 'second engineer',
      supervisedBy: 'chief engineer',
      people: '1 person',
      hours: '3 h (est)',
      permits: ['entry permit'],
      records: ['clearances'],
    })
  })

  test('lists tools and parts with size, quantity and the way to their entry', () => {
    expect(page.tools).toEqual([
      {
        id: 'wrench',
        title: 'tool wrench',
        size: 'size of wrench',
        note: 'calibrated',
        link: {text: 'tool wrench', path: 'tools.html', fragment: 'tool--wrench'},
      },
    ])
    expect(page.parts).toEqual([
      {
        id: 'ring',
        title: 'part ring',
        size: 'size of ring',
        quantity: '1 piece',
        note: '',
        balloon: '4',
        link: {text: 'part ring', path: 'parts.html', fragment: 'part--ring'},
      },
    ])
  })

  test('lists every source file it was made from, each once, so that an approval covers all of them', () => {
    const measured = step('measure', {
      parts: [reading('bore')],
      instruction: sentence('To {lower-ring.renewal}.'),
    })
    const made = pageOf([section('one', [step('a', {cautions: uses('oil')}), measured])], '4s', {
      parts: [
        {part: to('ring'), quantity: 1, unit: 'piece'},
        {part: to('washer'), quantity: 1, unit: 'piece'},
      ],
      before: [[{kind: 'term', term: to('hub'), label: ''}]],
    })
    expect([...made.head.madeFrom].sort()).toEqual([
      'cautions/oil.yaml',
      'designs/design-a.yaml',
      'office.yaml',
      'parts.yaml',
      'procedures/impeller.md',
      'sources.yaml',
      'terms.yaml',
      'tools.yaml',
      'vessels/vessel-a/vessel.yaml',
    ])
  })
})
