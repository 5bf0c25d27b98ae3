import {describe, expect, test} from 'vitest'
import {bindText, valuesInText} from '../../src/compile/bind-text.ts'
import {wordsOf} from '../../src/technical-text/plain-text.ts'
import {contentOf, deskOf} from './content-for-tests.ts'
import {part, to, unknownValue} from './data-for-tests.ts'
import {procedure, section, sentence, step} from './procedures-for-tests.ts'

const content = contentOf({list: [procedure('impeller', [section('off', [step('loosen')])])]})

describe('a text bound to a pump', () => {
  test('shows a value with its unit and leads to its explanation on the same pump', () => {
    expect(bindText(sentence('Tighten to {hub-bolts.torque} now.'), deskOf(content, '4s'))).toEqual([
      {kind: 'text', text: 'Tighten to '},
      {
        kind: 'value',
        text: '62 N·m',
        path: 'designs/design-a/torques.html#value--hub-bolts--torque',
        known: true,
      },
      {kind: 'text', text: ' now.'},
    ])
  })

  test('shows a ratio without the unit sign one', () => {
    expect(bindText(sentence('{setting.lift}'), deskOf(content, '4s'))[0]).toMatchObject({text: '0.65'})
  })

  test('says NOT KNOWN - MEASURE AND REPORT for a value that nobody knows', () => {
    const desk = deskOf(content, '4p', [unknownValue('hub-bolts.torque', ['utilisation'])])
    expect(bindText(sentence('{hub-bolts.torque}'), desk)).toEqual([
      {
        kind: 'value',
        text: 'NOT KNOWN - MEASURE AND REPORT',
        path: 'designs/design-a/torques.html#value--hub-bolts--torque',
        known: false,
      },
    ])
  })

  test('links a procedure on the same pump, by its title when the author gave no words', () => {
    const text = bindText(
      [
        {kind: 'procedure', procedure: to('impeller'), label: ''},
        {kind: 'procedure', procedure: to('impeller'), label: 'the impeller work'},
      ],
      deskOf(content, '4s'),
    )
    expect(text).toEqual([
      {kind: 'link', text: 'Procedure impeller', path: 'p/4s/impeller.html'},
      {kind: 'link', text: 'the impeller work', path: 'p/4s/impeller.html'},
    ])
  })

  test('links a word of the trade to its meaning, also inside emphasis', () => {
    const term = {kind: 'term' as const, term: to('hub'), label: ''}
    expect(
      bindText([{kind: 'strong', children: [{kind: 'emphasis', children: [term]}]}], deskOf(content, '4s')),
    ).toEqual([
      {
        kind: 'strong',
        children: [{kind: 'emphasis', children: [{kind: 'link', text: 'hub', path: 'words.html#term--hub'}]}],
      },
    ])
  })

  test('carries the balloon of a part behind its words, and in its plain words', () => {
    const seal = {...part('seal'), balloon: '11'}
    const desk = deskOf(contentOf({parts: new Map([['seal', seal]])}), '4s')
    const text = bindText([{kind: 'part', part: to('seal'), label: 'cargo seal'}], desk)
    expect(text).toEqual([{kind: 'part', text: 'cargo seal', balloon: '11', part: 'seal'}])
    expect(wordsOf([{kind: 'strong', children: text}])).toBe('cargo seal (11)')
  })

  test('names every value it shows, inside emphasis too', () => {
    expect(
      valuesInText([...sentence('{a.b} and {c.d}'), {kind: 'strong', children: sentence('{e.f}')}]),
    ).toEqual(['a.b', 'c.d', 'e.f'])
  })

  test('refuses an id that the check has not proved', () => {
    expect(() => bindText(sentence('{no.such}'), deskOf(content, '4s'))).toThrow(
      'Unexpected gap for value no.such, expected what the check has proved',
    )
  })
})
