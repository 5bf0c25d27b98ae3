import {describe, expect, test} from 'vitest'
import type {StepPart} from '../../../src/handbook-model/procedure.ts'
import {linesOf, placeIn} from '../messages-for-tests.ts'
import {parsed, workText} from '../procedure-for-tests.ts'

function below(...lines: readonly string[]): string {
  const part = lines.map((line) => (line === '' ? '' : `   ${line}`)).join('\n')
  return workText(`1. :step{#look} Look.\n\n${part}`)
}

function partsOf(text: string): {readonly parts: readonly StepPart[]; readonly lines: readonly string[]} {
  const {procedure, files} = parsed(text)
  const step = procedure?.sections[0]?.items.find((item) => item.id === 'look')
  return {parts: step?.kind === 'step' ? step.parts : [], lines: linesOf(files)}
}

const reading = (more: string): string =>
  `::reading{#gap title="gap" quantity=length unit=mm stations="at 0°, at 90°" instrument=gauge ${more}}`

describe('what a step carries', () => {
  test.each<[string, string, unknown]>([
    [
      'a value with its condition',
      '::value{ref=hub-bolts.torque when="a = b"}',
      {kind: 'value', value: {id: 'hub-bolts.torque'}, when: {text: 'a = b'}},
    ],
    [
      'a reading',
      reading('phase=as-found limits="one two"'),
      {
        kind: 'reading',
        id: 'gap',
        title: 'gap',
        quantity: 'length',
        unit: 'mm',
        stations: ['at 0°', 'at 90°'],
        instrument: {id: 'gauge'},
        phase: 'as-found',
        limits: [{id: 'one'}, {id: 'two'}],
      },
    ],
    [
      'a derived reading',
      '::derived{#gap title=gap unit="mm diametral" calculation=clearance from="bore hub" phase=as-left limits=most}',
      {kind: 'derived', calculation: 'clearance', from: [{id: 'bore'}, {id: 'hub'}], unit: 'mm diametral'},
    ],
    [
      'a timed wait',
      '::wait{#proof least=house.isolation-proof missed="Begin again."}',
      {kind: 'wait', id: 'proof', least: {id: 'house.isolation-proof'}, missed: 'Begin again.'},
    ],
    [
      'repeats with a count',
      '::repeat{until="it is dry" times=4}',
      {kind: 'repeat', until: 'it is dry', times: 4},
    ],
    ['repeats without a count', '::repeat{until="it is dry"}', {kind: 'repeat', until: 'it is dry'}],
    [
      'a second person',
      '::second-person{#seen what="the lock"}',
      {kind: 'second-person', id: 'seen', what: 'the lock'},
    ],
    [
      'a figure',
      '::figure{name="tightening-order:hub-bolts" caption="Order"}',
      {kind: 'figure', figure: 'tightening-order:hub-bolts', caption: 'Order'},
    ],
    ['an isolation', '::isolate{role=purge-supply}', {kind: 'isolate', role: 'purge-supply'}],
    ['a restoration', '::restore{role=heating}', {kind: 'restore', role: 'heating'}],
    ['a fact to find out', '::identify{fact=backstop}', {kind: 'identify', fact: {id: 'backstop'}}],
    ['a tally', '::tally{#caps what="caps, plugs"}', {kind: 'tally', id: 'caps', what: ['caps', 'plugs']}],
    [
      'lines to write into',
      '::write-in{#air what="top, bottom" columns="oxygen, time"}',
      {kind: 'write-in', id: 'air', what: ['top', 'bottom'], columns: ['oxygen', 'time']},
    ],
    [
      'lines to write into without columns',
      '::write-in{#told what="name, time"}',
      {kind: 'write-in', id: 'told', what: ['name', 'time'], columns: []},
    ],
  ])('%s is read', (_what, line, part) => {
    const {parts, lines} = partsOf(below(line))
    expect(lines).toEqual([])
    expect(parts).toHaveLength(1)
    expect(parts[0]).toMatchObject({...Object(part)})
  })

  test('alternatives are read with their conditions', () => {
    const {parts, lines} = partsOf(
      below(':::one-of{#which}', '- :choice{#good} Good.', '- :choice{#bad when="a = b"} Bad.', ':::'),
    )
    expect(lines).toEqual([])
    expect(parts).toMatchObject([
      {
        kind: 'alternatives',
        id: 'which',
        items: [
          {id: 'good', text: [{kind: 'text', text: 'Good.'}]},
          {id: 'bad', when: {text: 'a = b'}, text: [{kind: 'text', text: 'Bad.'}]},
        ],
      },
    ])
  })

  test('what stands under `only` keeps its order and carries the condition, with its own where it has one', () => {
    const {parts, lines} = partsOf(
      below(
        'Always.',
        '',
        '::::only{when="a = b"}',
        'One.',
        '',
        '::value{ref=x when="c = d"}',
        '',
        ':::one-of{#which}',
        '- :choice{#good} Good.',
        '- :choice{#bad} Bad.',
        ':::',
        '',
        '::tally{#caps what=caps}',
        '::::',
      ),
    )
    expect(lines).toEqual([])
    expect(parts.map((part) => [part.kind, 'when' in part ? part.when?.text : undefined])).toEqual([
      ['note', undefined],
      ['note', 'a = b'],
      ['value', '(a = b) and (c = d)'],
      ['alternatives', 'a = b'],
      ['tally', 'a = b'],
    ])
    expect(parts[2]).toMatchObject({
      when: {condition: {kind: 'and', operands: [{value: 'b'}, {value: 'd'}]}},
    })
  })

  test('notes and directives keep their order', () => {
    const {parts} = partsOf(below('One.', '', '::value{ref=a}', '', 'Two.'))
    expect(parts.map((part) => part.kind)).toEqual(['note', 'value', 'note'])
  })
})

describe('a fault below a step is told at its own place', () => {
  test.each<[string, string, string, string]>([
    [
      'a phase outside the list',
      below(reading('phase=before')),
      '::reading',
      'Unexpected phase `before`, expected one of `as-found`, `as-left`, `during` no-wrong-shape',
    ],
    [
      'a reading without its instrument',
      below('::reading{#gap title=gap quantity=length unit=mm stations=a phase=during}'),
      '::reading',
      'Unexpected `reading` without `instrument=…`, expected it in the braces no-missing-key',
    ],
    [
      'an isolation role outside the list',
      below('::isolate{role=presure}'),
      '::isolate',
      'Unexpected isolation role `presure`, expected a role such as `pressure` no-undefined-reference',
    ],
    [
      'a hold point inside a step',
      below('::hold-point{#seen title=Seen signed-by=a second-by=b}'),
      '::hold-point{#seen',
      'Unexpected `hold-point` inside a step, expected it between steps or under a heading no-misplaced-directive',
    ],
    [
      'an isolation under a condition of its own',
      below(':::only{when="a = b"}', '::isolate{role=heating}', ':::'),
      '::isolate',
      'Unexpected `isolate` inside `only`, expected it outside no-misplaced-directive',
    ],
    [
      'words under no condition',
      below(':::only', 'Look.', ':::'),
      ':::only',
      'Unexpected `only` without `when=…`, expected it in the braces no-missing-key',
    ],
    [
      'repeats counted in words',
      below('::repeat{until="it is dry" times=many}'),
      '::repeat',
      'Unexpected `times` of `many`, expected a whole number from 1 to 20 no-wrong-shape',
    ],
    [
      'repeats beyond any sheet',
      below('::repeat{until="it is dry" times=1000000}'),
      '::repeat',
      'Unexpected `times` of `1000000`, expected a whole number from 1 to 20 no-wrong-shape',
    ],
    [
      'no repeat',
      below('::repeat{until="it is dry" times=0}'),
      '::repeat',
      'Unexpected `times` of `0`, expected a whole number from 1 to 20 no-wrong-shape',
    ],
    [
      'a second person who looks at nothing',
      below('::second-person{#seen what=""}'),
      '::second-person',
      'Unexpected `second-person` without `what=…`, expected it in the braces no-missing-key',
    ],
    [
      'a tally of nothing',
      below('::tally{#caps what=", "}'),
      '::tally',
      'Unexpected `tally` of nothing, expected what is counted, with commas between no-missing-key',
    ],
    [
      'lines of nothing to write into',
      below('::write-in{#air what=", "}'),
      '::write-in',
      'Unexpected `write-in` of nothing, expected what is written, with commas between no-missing-key',
    ],
    [
      'more columns than a sheet has room for',
      below('::write-in{#air what="top" columns="a, b, c, d, e, f, g"}'),
      '::write-in',
      'Unexpected 7 columns of `write-in`, expected at most 6 no-wrong-shape',
    ],
    [
      'a box before a choice, which would be lost',
      below(':::one-of{#which}', '- [ ] :choice{#good} Good.', '- :choice{#bad} Bad.', ':::'),
      '- [ ]',
      'Unexpected box `[ ]` of a list item, expected words alone no-markdown-fault',
    ],
    [
      'words in the brackets of a plate',
      below('::value[Torque]{ref=a}'),
      '::value',
      'Unexpected words in the brackets of `value`, expected no brackets no-unknown-directive',
    ],
    [
      'a table',
      below('| a | b |', '|---|---|', '| c | d |'),
      '| a | b |',
      'Unexpected table inside a step, expected a note or a directive no-markdown-fault',
    ],
    [
      'HTML',
      below('<div>loud</div>'),
      '<div>',
      'Unexpected HTML `<div>loud</div>`, expected Markdown no-raw-html',
    ],
    [
      'one choice alone',
      below(':::one-of{#which}', '- :choice{#good} Good.', ':::'),
      ':::one-of',
      'Unexpected `:::one-of` with 1 choices, expected a list of two or more no-markdown-fault',
    ],
    [
      'a choice without a mark',
      below(':::one-of{#which}', '- :choice{#good} Good.', '- Bad.', ':::'),
      '- Bad.',
      'Unexpected alternative without a mark, expected `:choice{#id}` at its start no-unmarked-step',
    ],
    [
      'words beside the choices',
      below(':::one-of{#which}', 'Words.', '', '- :choice{#good} Good.', '- :choice{#bad} Bad.', ':::'),
      'Words.',
      'Unexpected paragraph among choices, expected a bullet list no-markdown-fault',
    ],
    [
      'words below a choice',
      below(':::one-of{#which}', '- :choice{#good} Good.', '', '  Words.', '', '- :choice{#bad} Bad.', ':::'),
      'Words.',
      'Unexpected paragraph below a choice, expected one paragraph no-markdown-fault',
    ],
    [
      'a choice without words',
      below(':::one-of{#which}', '- :choice{#good}', '- :choice{#bad} Bad.', ':::'),
      ':choice{#good}',
      'Unexpected `choice` without words, expected a sentence behind the braces no-markdown-fault',
    ],
    [
      'a leaf written as a container',
      below(':::one-off{#which}', '- :choice{#good} Good.', ':::'),
      ':::one-off',
      'Unexpected directive `:::one-off`, expected a directive such as `one-of` no-unknown-directive',
    ],
  ])('%s', (_what, text, at, message) => {
    expect(partsOf(text).lines).toEqual([`${placeIn(text, at)} ${message}`])
  })
})
