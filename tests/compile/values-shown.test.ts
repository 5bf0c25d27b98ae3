import {describe, expect, test} from 'vitest'
import {procedurePage} from '../../src/compile/procedure-page.ts'
import type {ProcedurePage} from '../../src/handbook-model/pages.ts'
import type {Procedure, Section} from '../../src/handbook-model/procedure.ts'
import {contentOf, deskOf} from './content-for-tests.ts'
import {place, to} from './data-for-tests.ts'
import {
  derived,
  equals,
  hold,
  procedure,
  reading,
  section,
  sentence,
  step,
  valuePlate,
} from './procedures-for-tests.ts'

function pageOf(sections: readonly Section[], position = '4s', more: Partial<Procedure> = {}): ProcedurePage {
  const made = procedure('impeller', sections, more)
  return procedurePage(made, deskOf(contentOf({list: [made]}), position))
}

describe('values used', () => {
  const idsOf = (page: ProcedurePage): readonly string[] => page.valuesUsed.map((one) => one.id)

  test('are those of plates, sentences, notes, choices, waits, holds and introductions, each once, in order', () => {
    const page = pageOf([
      section(
        'one',
        [
          step('a', {
            instruction: sentence('Turn to {hub-bolts.torque}.'),
            parts: [
              valuePlate('hub-bolts.torque'),
              {kind: 'note', text: sentence('It weighs {mass.head}.'), place},
              {kind: 'wait', id: 'settle', least: to('house.stabilise'), missed: 'start again', place},
              {
                kind: 'alternatives',
                id: 'which',
                items: [{id: 'x', text: sentence('{rating.flow}'), place}],
                place,
              },
            ],
          }),
          hold('tight', {text: [sentence('{hub-bolts.count}')]}),
        ],
        {intro: [sentence('Needs {setting.lift}.')]},
      ),
    ])
    expect(idsOf(page)).toEqual([
      'setting.lift',
      'hub-bolts.torque',
      'mass.head',
      'house.stabilise',
      'rating.flow',
      'hub-bolts.count',
    ])
  })

  test('include those of purpose and of the states before and after', () => {
    const page = pageOf([section('one', [step('a')])], '4s', {
      purpose: [sentence('{mass.head}')],
      before: [sentence('{setting.lift}')],
      after: [sentence('{rating.flow}')],
    })
    expect(idsOf(page)).toEqual(['mass.head', 'setting.lift', 'rating.flow'])
  })

  test('leave out what belongs to another variant', () => {
    const other = equals('cargo-seal', 'double-lip')
    const page = pageOf([
      section('one', [
        step('a', {when: other, instruction: sentence('{hub-bolts.torque}')}),
        step('b', {
          parts: [
            valuePlate('mass.head', other),
            {
              kind: 'alternatives',
              id: 'which',
              items: [{id: 'x', when: other, text: sentence('{rating.flow}'), place}],
              place,
            },
          ],
        }),
        hold('c', {when: other, text: [sentence('{hub-bolts.count}')]}),
      ]),
      section('two', [step('d', {instruction: sentence('{setting.lift}')})], {when: other}),
    ])
    expect(idsOf(page)).toEqual([])
  })

  test('do not need to exist where their step does not stand', () => {
    const sections = [
      section('one', [
        step('a', {when: equals('design', 'design-b'), instruction: sentence('{spring.preload}')}),
        step('b'),
      ]),
    ]
    expect(pageOf(sections).sections[0]?.items.map((one) => one.id)).toEqual(['impeller--b'])
  })

  test('are also the limits that readings are held against and the order behind a figure', () => {
    const found = derived('gap', 'clearance', ['bore', 'hub'], {limits: [to('lower-ring-renewal')]})
    const figure = {kind: 'figure' as const, figure: 'tightening-order:hub-bolts', caption: 'Order', place}
    const page = pageOf([
      section('one', [
        step('a', {
          parts: [reading('bore', {limits: [to('lower-ring-minimum')]}), reading('hub'), found, figure],
        }),
      ]),
    ])
    expect(idsOf(page)).toEqual([
      'lower-ring.minimum-new',
      'lower-ring.renewal',
      'hub-bolts.order',
      'hub-bolts.passes',
    ])
  })
})
