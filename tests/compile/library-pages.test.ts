import {describe, expect, test} from 'vitest'
import {cautionsPage, partsPage, sourcesPage, toolsPage, wordsPage} from '../../src/compile/library-pages.ts'
import {proceduresShowing} from '../../src/compile/used-in.ts'
import {designValuesPages, positionValuesPage} from '../../src/compile/values-pages.ts'
import type {ComputedValue} from '../../src/handbook-model/computed.ts'
import type {PageLink} from '../../src/handbook-model/pages.ts'
import type {Procedure} from '../../src/handbook-model/procedure.ts'
import {contentOf, deskOf} from './content-for-tests.ts'
import {knownValue, place, to} from './data-for-tests.ts'
import {
  derived,
  equals,
  procedure,
  reading,
  section,
  sentence,
  step,
  uses,
  usesWhen,
  valuePlate,
} from './procedures-for-tests.ts'

function desksOf(list: readonly Procedure[], only4s: readonly ComputedValue[] = []) {
  const content = contentOf({list})
  return [deskOf(content, '4p'), deskOf(content, '4s', only4s)]
}

const words = (links: readonly PageLink[]): readonly string[] =>
  links.map(({text, path, fragment = ''}) => `${text} -> ${path}#${fragment}`)

describe('the cautions page', () => {
  const list = [
    procedure('wear', [
      section('enter', [step('climb', {actions: ['enter']})], {cautions: uses('gas')}),
      section('open', [
        step('quiet'),
        step('double', {when: equals('cargo-seal', 'double-lip'), cautions: uses('oil')}),
        step('single', {when: equals('cargo-seal', 'single-lip'), cautions: uses('oil')}),
        step('both', {cautions: [usesWhen('dirt', equals('cargo-seal', 'single-lip'))]}),
      ]),
    ]),
    procedure('spring', [
      section('gone', [step('off', {when: equals('design', 'design-b')})], {cautions: uses('spare')}),
    ]),
    procedure('test', [section('fill', [step('press', {cautions: uses('gas')})])]),
  ]
  const page = cautionsPage(desksOf(list))

  test('holds each caution that stands on a pump of the vessel once, and none of a section of which nothing stands', () => {
    expect(page.cautions.map((one) => `${one.caution.number} ${one.caution.id}`)).toEqual([
      '1 gas',
      '2 oil',
      '3 dirt',
    ])
  })

  test('names every section and step that uses it by number, with the count of pumps, linked on the first of them', () => {
    const used = page.cautions.map(({usedIn}) => usedIn.map((one) => [one.procedure, ...words(one.places)]))
    expect(used).toEqual([
      [
        ['Procedure wear', 'section part enter -> p/4p/wear.html#wear--enter'],
        ['Procedure test', 'step 1 -> p/4p/test.html#test--press'],
      ],
      [
        [
          'Procedure wear',
          'step 3 (1 of 2 pumps) -> p/4p/wear.html#wear--double',
          'step 3 (1 of 2 pumps) -> p/4s/wear.html#wear--single',
        ],
      ],
      [['Procedure wear', 'step 4 (1 of 2 pumps) -> p/4s/wear.html#wear--both']],
    ])
  })

  test('names the source of each caution and explains the four signal words', () => {
    expect(page.cautions[0]?.source).toEqual({
      text: 'source standard',
      path: 'sources.html',
      fragment: 'source--standard',
    })
    expect(page.words.map((one) => one.word)).toEqual(['DANGER', 'WARNING', 'CAUTION', 'NOTICE'])
  })
})

describe('tools and parts pages', () => {
  const list = [
    procedure('wear', [section('one', [step('a')])], {
      tools: [{tool: to('micrometer')}],
      parts: [{part: to('ring'), quantity: 1, unit: 'piece'}],
    }),
    procedure('test', [section('one', [step('a')])], {tools: [{tool: to('micrometer')}]}),
  ]

  test('hold what the procedures use, with every procedure that uses it', () => {
    const [only, ...others] = toolsPage(desksOf(list)).tools
    expect(only).toMatchObject({id: 'tool--micrometer', instrument: 'reads to 0.01 mm, ± 0.02 mm'})
    expect(words(only?.usedIn ?? [])).toEqual([
      'Procedure wear -> p/4p/wear.html#',
      'Procedure test -> p/4p/test.html#',
    ])
    expect(others).toEqual([])
    expect(
      partsPage(desksOf(list)).parts.map((one) => [one.id, one.class, one.balloon, one.usedIn.length]),
    ).toEqual([['part--ring', 'spare part', '4', 1]])
  })
})

test('a tool of a variant is linked on the first pump that has it, and left out where none has', () => {
  const tools = (value: string) => [{tool: to('micrometer'), when: equals('cargo-seal', value)}]
  const listed = (value: string) =>
    toolsPage(desksOf([procedure('wear', [section('one', [step('a')])], {tools: tools(value)})])).tools.map(
      ({usedIn}) => words(usedIn),
    )
  expect(listed('single-lip')).toEqual([['Procedure wear -> p/4s/wear.html#']])
  expect(listed('no-lip')).toEqual([])
})

describe('values of a pump', () => {
  const list = [
    procedure(
      'wear',
      [
        section('one', [
          step('a', {instruction: sentence('To {hub-bolts.torque}.')}),
          step('b', {parts: [valuePlate('hub-bolts.torque')]}),
          step('c', {when: equals('cargo-seal', 'double-lip'), instruction: sentence('{mass.head}')}),
          step('d', {
            parts: [
              reading('bore'),
              reading('hub'),
              derived('gap', 'clearance', ['bore', 'hub'], {limits: [to('lower-ring-renewal')]}),
            ],
          }),
        ]),
      ],
      {before: [sentence('Gear of {setting.lift} lies ready.')]},
    ),
    procedure('test', [
      section('one', [
        step('e', {parts: [{kind: 'wait', id: 'w', least: to('house.stabilise'), missed: 'again', place}]}),
      ]),
    ]),
  ]
  const usedIn = (position: 0 | 1, id: string): readonly string[] => {
    const [first, second] = desksOf(list)
    const desk = position === 0 ? first : second
    return words(desk ? proceduresShowing(id, desk) : [])
  }

  test('name every step that shows them, linked on the same pump', () => {
    expect(usedIn(1, 'hub-bolts.torque')).toEqual([
      'Procedure wear · step 1 -> p/4s/wear.html#wear--a',
      'Procedure wear · step 2 -> p/4s/wear.html#wear--b',
    ])
    expect(usedIn(1, 'house.stabilise')).toEqual(['Procedure test · step 1 -> p/4s/test.html#test--e'])
  })

  test('name the step whose reading is held against them', () => {
    expect(usedIn(1, 'lower-ring.renewal')).toEqual(['Procedure wear · step 3 -> p/4s/wear.html#wear--d'])
  })

  test('name a procedure that shows them before its first step', () => {
    expect(usedIn(1, 'setting.lift')).toEqual(['Procedure wear -> p/4s/wear.html#'])
  })

  test('name no step of another variant', () => {
    expect(usedIn(0, 'mass.head')).toEqual(['Procedure wear · step 3 -> p/4p/wear.html#wear--c'])
    expect(usedIn(1, 'mass.head')).toEqual([])
  })

  test('of one pump are linked, those of a design name their procedures', () => {
    const [, desk] = desksOf(list)
    const ofPump = desk && positionValuesPage(desk).values.find((one) => one.line.id === 'house.stabilise')
    expect(words(ofPump?.usedIn ?? [])).toEqual(['Procedure test · step 1 -> p/4s/test.html#test--e'])
    expect(ofPump?.namedIn).toEqual([])
    const ofDesign = desk && designValuesPages(desk).flatMap((page) => page.values)
    const torque = ofDesign?.find((one) => one.line.id === 'hub-bolts.torque')
    expect(torque?.usedIn).toEqual([])
    expect(torque?.namedIn).toEqual(['Procedure wear'])
  })

  test('carry formula, inputs, intermediate results, rounding and sources with their status', () => {
    const traced = {
      symbol: 'd',
      title: 'diameter',
      printed: '12 mm',
      origin: 'published, table 1',
      source: 'standard',
      place,
    }
    const torque = knownValue('hub-bolts.torque', '62', 'N·m', {
      sources: [{source: 'old', where: 'table 3'}],
      rounding: 'to a whole N·m',
      calculation: {
        name: 'tightening-torque',
        words: 'how',
        formula: ['MA = F·r'],
        symbols: [{symbol: 'r', meaning: 'lever'}],
        inputs: [traced, {...traced, symbol: 'FM', origin: 'explained at hub-bolts.passes'}],
        steps: [{...traced, symbol: 'F'}],
      },
    })
    const [, desk] = desksOf(list, [torque])
    const page = desk && designValuesPages(desk).find(({head}) => head.path.endsWith('torques.html'))
    const explained = page?.values.find((one) => one.line.id === 'hub-bolts.torque')
    expect(explained).toMatchObject({
      words: 'how',
      formula: ['MA = F·r'],
      symbols: [{symbol: 'r', meaning: 'lever'}],
      rounding: 'to a whole N·m',
      missing: [],
    })
    expect(explained?.inputs).toEqual([
      {
        symbol: 'd',
        title: 'diameter',
        printed: '12 mm',
        origin: 'published, table 1',
        source: 1,
        writtenAt: '',
      },
      expect.objectContaining({
        symbol: 'FM',
        origin: 'explained at',
        way: {
          text: 'hub-bolts.passes',
          path: 'designs/design-a/passes.html',
          fragment: 'value--hub-bolts--passes',
        },
      }),
    ])
    expect(explained?.steps[0]?.symbol).toBe('F')
    expect(explained?.sources).toEqual([{number: 2, where: 'table 3'}])
    expect(page?.sources.find((one) => one.number === 2)).toEqual({
      number: 2,
      link: {text: 'source old', path: 'sources.html', fragment: 'source--old'},
      status: '2001, superseded, from memory, to be read',
    })
  })
})

describe('the sources page', () => {
  const list = [procedure('wear', [section('one', [step('a', {cautions: uses('gas')})])])]

  test('names every value and caution that stands on a source', () => {
    const standard = sourcesPage(desksOf(list)).sources.find((one) => one.id === 'source--standard')
    expect(words(standard?.usedIn ?? [])).toEqual([
      'value hub-bolts.torque -> designs/design-a/torques.html#value--hub-bolts--torque',
      'title of gas -> cautions.html#caution--gas',
    ])
  })

  test('names a value that stands on it on another pump than the first', () => {
    const measured = knownValue('cofferdam.stack-length', '12.1', 'm', {
      ofDesign: false,
      sources: [{source: 'old'}],
    })
    const old = sourcesPage(desksOf(list, [measured])).sources.find((one) => one.id === 'source--old')
    expect(words(old?.usedIn ?? [])).toEqual([
      'value cofferdam.stack-length -> p/4s/values.html#value--cofferdam--stack-length',
    ])
  })

  test('counts them by the page that explains them where they are more than forty', () => {
    const usedIn = (count: number): readonly string[] => {
      const many = Array.from({length: count}, (_, index) =>
        knownValue(`setting.s${index}`, '1', 'm', {ofDesign: index > 0, sources: [{source: 'old'}]}),
      )
      const page = sourcesPage(desksOf(list, many)).sources.find((one) => one.id === 'source--old')
      return words(page?.usedIn ?? [])
    }
    expect(usedIn(40)).toHaveLength(40)
    expect(usedIn(41)).toEqual([
      'Values of pump 4S: 1 value -> p/4s/values.html#',
      'Settings of Design A: 40 values -> designs/design-a/settings.html#',
    ])
  })

  test('says what took the place of a superseded source, and how each is known', () => {
    const page = sourcesPage(desksOf(list))
    expect(page.sources.find((one) => one.id === 'source--old')).toMatchObject({
      status: 'superseded by source standard',
      howKnown: 'from memory, to be read',
    })
    expect(page.sources.map((one) => one.id)).toEqual([
      'source--drawing',
      'source--practice',
      'source--standard',
      'source--old',
    ])
  })
})

describe('the words page', () => {
  test('has one word for each thing and the words not used for it', () => {
    expect(wordsPage(desksOf([])).terms).toEqual([
      {id: 'term--hub', term: 'hub', meaning: 'what holds the impeller', notUsed: ['boss']},
    ])
  })
})
