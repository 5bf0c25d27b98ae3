import {describe, expect, test} from 'vitest'
import {jobPage} from '../../src/compile/job-page.ts'
import type {JobPage} from '../../src/handbook-model/pages.ts'
import type {Procedure} from '../../src/handbook-model/procedure.ts'
import {contentOf, deskOf} from './content-for-tests.ts'
import {job, place, to} from './data-for-tests.ts'
import {equals, procedure, section, step, uses} from './procedures-for-tests.ts'

function jobOf(procedures: readonly Procedure[], position = '4s'): JobPage {
  const service = job(
    'service',
    procedures.map((one) => one.id),
  )
  const content = contentOf({list: procedures, jobs: new Map([['service', service]])})
  return jobPage(service, deskOf(content, position))
}

const nothing = [section('one', [step('a')])]

describe('a job on a pump', () => {
  test('lists its procedures in its own order and sums their hours as an estimate', () => {
    const page = jobOf([
      procedure('wear', nothing, {hours: 0.1}),
      procedure('isolation', nothing, {hours: 0.2}),
      procedure('hand-back', nothing, {hours: 3}),
    ])
    expect(page.procedures.map((one) => `${one.link.path} ${one.hours}`)).toEqual([
      'p/4s/wear.html 0.1 h (est)',
      'p/4s/isolation.html 0.2 h (est)',
      'p/4s/hand-back.html 3 h (est)',
    ])
    expect(page.hours).toBe('3.3 h (est)')
    expect(page.head).toMatchObject({id: 'vessel-a/4s/job-service', path: 'p/4s/job-service.html'})
  })

  test('lists each tool once with the procedures that need it, its numbers and where it lies', () => {
    const page = jobOf([
      procedure('wear', nothing, {tools: [{tool: to('wrench')}, {tool: to('detector')}]}),
      procedure('isolation', nothing, {tools: [{tool: to('detector')}]}),
    ])
    expect(page.tools.map((one) => `${one.id} | ${one.aboard} | ${one.usedIn}`)).toEqual([
      'wrench | TW 1 (drawer 2) | Procedure wear',
      'detector | PD 1 to PD 6 (control room) | Procedure wear, Procedure isolation',
    ])
  })

  test('sums parts over its procedures and holds them against what is aboard', () => {
    const page = jobOf([
      procedure('wear', nothing, {
        parts: [
          {part: to('ring'), quantity: 1, unit: 'piece'},
          {part: to('grease'), quantity: 0.1, unit: 'kg'},
          {part: to('washer'), quantity: 8, unit: 'pieces'},
        ],
      }),
      procedure('test', nothing, {
        parts: [
          {part: to('ring'), quantity: 1, unit: 'piece'},
          {part: to('grease'), quantity: 0.005, unit: 'kg'},
        ],
      }),
    ])
    expect(page.parts.map((one) => `${one.id} | ${one.quantity} | ${one.aboard} | ${one.usedIn}`)).toEqual([
      'ring | 2 pieces | 2 aboard (box 3) | Procedure wear, Procedure test',
      'grease | 0.105 kg | NOT KNOWN: not on the list of what is aboard | Procedure wear, Procedure test',
      'washer | 8 pieces | none aboard: bring from shore | Procedure wear',
    ])
  })

  test('says below how many pieces a part is ordered, aboard or not', () => {
    const parts = ['ring', 'washer'].map((part) => ({part: to(part), quantity: 1, unit: 'piece'}))
    const list = [procedure('wear', nothing, {parts})]
    const desk = deskOf(contentOf({list}), '4s')
    const sparesAboard = desk.vessel.sparesAboard.map((one) => ({...one, least: 3}))
    const page = jobPage(job('service', ['wear']), {...desk, vessel: {...desk.vessel, sparesAboard}})
    expect(page.parts.map((one) => one.aboard)).toEqual([
      '2 aboard (box 3), order below 3',
      'none aboard: bring from shore, order below 3',
    ])
  })

  test('counts what this pump needs and nothing of another variant; an open condition stands before the note', () => {
    const page = jobOf([
      procedure('wear', nothing, {
        tools: [
          {tool: to('wrench'), when: equals('cargo-seal', 'double-lip')},
          {tool: to('detector'), note: {en: 'on each person'}, when: equals('backstop', 'fitted')},
        ],
        parts: [
          {part: to('grease'), quantity: 7, unit: 'kg', when: equals('cargo-seal', 'double-lip')},
          {part: to('ring'), quantity: 1, unit: 'piece', when: equals('cargo-seal', 'single-lip')},
          {part: to('ring'), quantity: 2, unit: 'pieces'},
        ],
      }),
    ])
    expect(page.tools.map(({id, note}) => `${id} | ${note}`)).toEqual([
      'detector | only if backstop of the shaft is fitted; on each person',
    ])
    expect(page.parts.map(({id, quantity}) => `${id} | ${quantity}`)).toEqual(['ring | 3 pieces'])
  })

  test('never adds two units of one part', () => {
    const page = jobOf([
      procedure('wear', nothing, {parts: [{part: to('grease'), quantity: 0.1, unit: 'kg'}]}),
      procedure('test', nothing, {parts: [{part: to('grease'), quantity: 2, unit: 'tubes'}]}),
    ])
    expect(page.parts.map((one) => one.quantity)).toEqual(['0.1 kg', '2 tubes'])
  })

  test('says NOT KNOWN for a tool that the list aboard lacks, never a count', () => {
    expect(jobOf([procedure('wear', nothing, {tools: [{tool: to('hoist')}]})]).tools[0]?.aboard).toBe(
      'NOT KNOWN: not on the list of what is aboard',
    )
  })

  test('lists the isolation points that its procedures isolate on this pump, once each', () => {
    const isolate = [section('one', [step('a', {parts: [{kind: 'isolate', role: 'pressure', place}]})])]
    expect(
      jobOf([procedure('wear', isolate), procedure('isolation', isolate)]).isolation.map((one) => one.tag),
    ).toEqual(['HP 4S'])
    expect(jobOf([procedure('wear', nothing)]).isolation).toEqual([])
  })

  test('lists the cautions of the steps that stand on this pump, and no others', () => {
    const single = equals('cargo-seal', 'single-lip')
    const list = [
      procedure('wear', [
        section(
          'one',
          [step('a', {cautions: uses('oil'), when: single}), step('b', {cautions: uses('dirt')})],
          {cautions: uses('gas')},
        ),
        section('two', [step('c', {cautions: uses('spare')})], {when: single}),
      ]),
    ]
    expect(jobOf(list, '4s').cautions.map((one) => `${one.number} ${one.word}`)).toEqual([
      '1 DANGER',
      '2 WARNING',
      '3 NOTICE',
      '4 CAUTION',
    ])
    expect(jobOf(list, '4p').cautions.map((one) => one.title)).toEqual(['title of gas', 'title of dirt'])
  })

  test('isolates nothing for a step of another variant', () => {
    const other = [
      section('one', [
        step('a', {
          when: equals('cargo-seal', 'double-lip'),
          parts: [{kind: 'isolate', role: 'pressure', place}],
        }),
      ]),
    ]
    expect(jobOf([procedure('wear', other)], '4s').isolation).toEqual([])
  })
})
