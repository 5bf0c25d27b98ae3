import {describe, expect, test} from 'vitest'
import type {Procedure} from '../../../src/handbook-model/procedure.ts'
import {linesOf, placeIn} from '../messages-for-tests.ts'
import {nameplate, parsed, procedureText, soundProcedure, workText} from '../procedure-for-tests.ts'

/** The product without places, so that it can be read beside its text. */
function plain(procedure: Procedure): unknown {
  return JSON.parse(JSON.stringify(procedure, (key, value) => (key === 'place' ? undefined : value)))
}

describe('a procedure without a fault', () => {
  test('is read field by field from its front matter', () => {
    const procedure = soundProcedure(
      workText('1. :step{#look} Look.', {
        front: {
          activity: 'overhaul',
          maintenance: 'condition-based',
          scope: 'design',
          competence: 'heavy-maintenance',
          people: '3',
          hours: '2.5',
          permits: '[permit to work]',
          tools: '[{tool: spanner, note: for the bolts}, {tool: gauge}]',
          parts: '[{part: ring, quantity: 2, unit: pieces}]',
          records: '[wear list]',
          'retired-ids': '[old-step]',
        },
      }),
    )
    expect(procedure).toMatchObject({
      id: 'sample',
      title: 'Sample',
      activity: 'overhaul',
      maintenance: 'condition-based',
      scope: 'design',
      performedBy: {en: 'second engineer'},
      supervisedBy: {en: 'chief engineer'},
      competence: 'heavy-maintenance',
      people: 3,
      hours: 2.5,
      permits: [{en: 'permit to work'}],
      tools: [{tool: {id: 'spanner'}, note: {en: 'for the bolts'}}, {tool: {id: 'gauge'}}],
      parts: [{part: {id: 'ring'}, quantity: 2, unit: 'pieces'}],
      records: [{en: 'wear list'}],
      retiredIds: ['old-step'],
    })
  })

  test('is read into purpose, states, sections, cautions, steps and hold points', () => {
    const text = procedureText(
      `## Take it off

::section{#off when="backstop = fitted"}

::caution{ref=suspended-load section}

Two people work here.

${nameplate}

::caution{ref=sharp-edges when="known backstop"}
::caution{ref=heavy-part}

1. :step{#loosen action="rotate-by-hand open-cargo"} Loosen the :value{ref=bolts.count} bolts **slowly**, see :procedure[isolation]{ref=isolation} and :term[ring]{ref=ring}.

   The hub lets go with a knock.

2. :step{#lift when="backstop ≠ none"} Lift it.

::hold-point{#seen title="Seen" signed-by="second engineer" second-by="chief engineer"}

Nobody goes on before.
`,
      {before: '## State before\n\n- The tank is *empty*.\n- The pump is cold.'},
    )
    expect(plain(soundProcedure(text))).toMatchObject({
      purpose: [[{kind: 'text', text: 'This procedure serves tests.'}]],
      before: [
        [
          {kind: 'text', text: 'The tank is '},
          {kind: 'emphasis', children: [{kind: 'text', text: 'empty'}]},
          {kind: 'text', text: '.'},
        ],
        [{kind: 'text', text: 'The pump is cold.'}],
      ],
      after: [[{kind: 'text', text: 'The pump is ready.'}]],
      sections: [
        {
          id: 'off',
          title: 'Take it off',
          when: {text: 'backstop = fitted'},
          cautions: [{caution: {id: 'suspended-load'}}],
          intro: [[{kind: 'text', text: 'Two people work here.'}]],
          items: [
            {kind: 'hold-point', id: 'nameplate', signedBy: 'second engineer', secondBy: 'pumpman'},
            {
              kind: 'step',
              id: 'loosen',
              actions: ['rotate-by-hand', 'open-cargo'],
              cautions: [
                {caution: {id: 'sharp-edges'}, when: {text: 'known backstop'}},
                {caution: {id: 'heavy-part'}},
              ],
              instruction: [
                {kind: 'text', text: 'Loosen the '},
                {kind: 'value', value: {id: 'bolts.count'}},
                {kind: 'text', text: ' bolts '},
                {kind: 'strong', children: [{kind: 'text', text: 'slowly'}]},
                {kind: 'text', text: ', see '},
                {kind: 'procedure', procedure: {id: 'isolation'}, label: 'isolation'},
                {kind: 'text', text: ' and '},
                {kind: 'term', term: {id: 'ring'}, label: 'ring'},
                {kind: 'text', text: '.'},
              ],
              parts: [{kind: 'note', text: [{kind: 'text', text: 'The hub lets go with a knock.'}]}],
            },
            {kind: 'step', id: 'lift', actions: [], when: {text: 'backstop ≠ none'}, cautions: [], parts: []},
            {
              kind: 'hold-point',
              id: 'seen',
              title: 'Seen',
              text: [[{kind: 'text', text: 'Nobody goes on before.'}]],
            },
          ],
        },
      ],
    })
  })
})

describe('front matter', () => {
  test.each<[string, string, string, string]>([
    ['an unknown activity', 'activity', 'dance', 'activity: dance'],
    ['a scope outside the list', 'scope', 'fleet', 'scope: fleet'],
  ])('%s is refused at its place with the words it knows', (_what, key, value, line) => {
    const text = workText('1. :step{#look} Look.', {front: {[key]: value}})
    const {procedure, files} = parsed(text)
    expect(procedure).toBeUndefined()
    const [told, ...more] = linesOf(files)
    expect(more).toEqual([])
    expect(
      told?.startsWith(
        `${placeIn(text, line).replace(/\d+$/u, String(key.length + 3))} Unexpected \`${value}\`, expected `,
      ),
    ).toBe(true)
    expect(told?.endsWith(' no-wrong-shape')).toBe(true)
  })

  test('an unknown key is refused with the nearest one', () => {
    const text = workText('1. :step{#look} Look.', {front: {peple: '2'}})
    expect(linesOf(parsed(text).files)).toEqual([
      `${placeIn(text, 'peple')} Unexpected key \`peple\`, expected a key such as \`people\` no-unknown-key`,
    ])
  })

  test('a missing key, a text without front matter and an empty file are refused', () => {
    const without = workText('1. :step{#look} Look.', {front: {competence: ''}})
    expect(linesOf(parsed(without).files)).toEqual([
      'procedures/sample.md:2:1 Unexpected map without `competence`, expected `competence:` with text no-missing-key',
    ])
    const start =
      'procedures/sample.md:1:1 Unexpected start of the procedure, expected front matter between `---` lines no-markdown-fault'
    expect(linesOf(parsed('# Sample\n').files)).toEqual([start])
    expect(linesOf(parsed('').files)).toEqual([start])
  })

  test('an id that is not the name of the file is refused', () => {
    const {files} = parsed(workText('1. :step{#look} Look.', {id: 'other'}))
    expect(linesOf(files)).toEqual([
      'procedures/sample.md:2:1 Unexpected id `other` in this file, expected the file to be `procedures/other.md` no-bad-id',
    ])
  })
})

describe('ids of a procedure', () => {
  test.each<[string, string]>([
    ['two steps', '1. :step{#look} Look.\n\n2. :step{#look .again} Look.'],
    ['a step and its section', '1. :step{#work .again} Look.'],
    ['a step and the hold point', '1. :step{#nameplate .again} Look.'],
    ['a step and its reading', '1. :step{#look} Look.\n\n   ::second-person{#look what="seen" .again}'],
    [
      'a choice and its step',
      '1. :step{#look} Look.\n\n   :::one-of{#which}\n   - :choice{#good} Good.\n   - :choice{#look .again} Bad.\n   :::',
    ],
  ])('%s under one id are refused with the place of the first', (_what, body) => {
    const marked = workText(body)
    const again = placeIn(marked, ' .again')
    const text = workText(body.replace(' .again', ''))
    const told = linesOf(parsed(text).files)
    expect(told).toHaveLength(1)
    expect(told[0]).toMatch(
      /^procedures\/sample\.md:\d+:\d+ Unexpected second `[a-z]+` in this procedure, expected each id once no-duplicate-id see procedures\/sample\.md:\d+:\d+$/u,
    )
    const line = (place: string | undefined): number => Number(place?.split(':')[1])
    expect(line(told[0])).toBe(line(again))
    expect(line(told[0]?.split(' see ')[1])).toBeLessThanOrEqual(line(again))
  })

  test('two sections without an id are told once each', () => {
    const text = procedureText(
      `## One\n\n${nameplate}\n\n1. :step{#look} Look.\n\n## Two\n\n2. :step{#see} See.`,
    )
    expect(linesOf(parsed(text).files)).toEqual(
      ['One', 'Two'].map(
        (title) =>
          `${placeIn(text, `## ${title}`)} Unexpected heading \`${title}\` without an id, expected \`::section{#id}\` below it no-missing-key`,
      ),
    )
  })

  test('a retired id is refused where it is used again', () => {
    const text = workText('1. :step{#look} Look.', {front: {'retired-ids': '[look, gone]'}})
    expect(linesOf(parsed(text).files)).toEqual([
      `${placeIn(text, ':step{#look}')} Unexpected id \`look\` that is retired, expected a new id no-retired-id`,
    ])
  })

  test.each(['Look', 'a/b', 'con', 'x'.repeat(41)])('the id `%s` is refused', (id) => {
    const [told, ...more] = linesOf(parsed(workText(`1. :step{id="${id}"} Look.`)).files)
    expect(more).toEqual([])
    expect(told).toMatch(/^procedures\/sample\.md:\d+:4 Unexpected id `.+`, expected .+ no-bad-id$/u)
  })
})
