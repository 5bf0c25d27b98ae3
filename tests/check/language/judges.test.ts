import {describe, expect, test} from 'vitest'
import {judgeNote} from '../../../src/check/language/judge-note.ts'
import {judgeStep} from '../../../src/check/language/judge-step.ts'
import {judgeWords} from '../../../src/check/language/judge-words.ts'
import {sentencesOf, wordsIn, wordsOfText} from '../../../src/check/language/words-of-text.ts'
import type {Term} from '../../../src/handbook-model/office-content.ts'
import {place, to} from '../../compile/data-for-tests.ts'
import {badNotes, badSteps, goodNotes, goodSteps} from './sentences.ts'

const term = (word: string, notUsed: readonly string[]): Term => ({
  id: word,
  term: {en: word},
  meaning: {en: word},
  notUsed,
  place,
})
const terms = [term('hub', ['boss']), term('wear ring', ['neck ring', 'mouth ring'])]

const faultsOf = (text: string, isMeasured = false): readonly string[] =>
  [...judgeStep(text, isMeasured), ...judgeWords(text, terms)].map(({ruleId}) => ruleId)

describe('forty bad steps', () => {
  test('are forty, and different', () => {
    expect(badSteps.length).toBe(40)
    expect(new Set(badSteps.map(({text}) => text)).size).toBe(40)
  })

  test.each(badSteps)('$text breaks $rule alone', ({text, rule}) => {
    expect(faultsOf(text)).toEqual([rule])
  })
})

describe('forty good steps', () => {
  test('are forty, and different', () => {
    expect(new Set(goodSteps).size).toBe(40)
  })

  test.each(goodSteps)('%s', (text) => {
    expect(faultsOf(text)).toEqual([])
  })
})

describe('a note', () => {
  test.each(badNotes)('that commands is refused: %s', (text) => {
    expect(judgeNote(text).map(({ruleId}) => ruleId)).toContain('no-instruction-in-note')
  })

  test.each(goodNotes)('that informs is accepted: %s', (text) => {
    expect(judgeNote(text)).toEqual([])
  })

  test('of twenty-five words in a sentence is accepted, of one more refused', () => {
    const long = (count: number): string => {
      const text = ['The', ...Array.from({length: count - 1}, () => 'pump')].join(' ')
      return `${text}.`
    }
    expect(judgeNote(long(25))).toEqual([])
    expect(judgeNote(long(26)).map(({reason}) => reason)).toEqual([
      'Unexpected sentence of 26 words, expected at most 25',
    ])
  })
})

describe('the words of a fault', () => {
  test.each([
    ["Don't touch the sleeve.", "Unexpected contraction `Don't`, expected the words in full"],
    ['Take the boss off.', 'Unexpected term `boss`, expected `hub`'],
    [
      'Close the valve if it leaks.',
      'Unexpected condition `if …` behind the command, expected it before the verb',
    ],
    ['Operate the lever.', 'Unexpected `Operate` at the start of a step, expected a verb of the list'],
    [
      'Close the valve. Vent the hose.',
      'Unexpected second sentence `Vent the hose.` in a step, expected one instruction',
    ],
    ['Turn the hub, which may move.', 'Unexpected hedge `may`, expected a plain statement or instruction'],
    ['Clean it as required.', 'Unexpected vague words `as required`, expected a condition or a measure'],
  ])('%s is told as: %s', (text, reason) => {
    expect([...judgeStep(text, false), ...judgeWords(text, terms)].map((one) => one.reason)).toEqual([reason])
  })
})

test('"make sure" stands where a reading, value or choice says by what it is known', () => {
  expect(faultsOf('Make sure that the gauge shows zero.', true)).toEqual([])
  expect(faultsOf('Make sure that the gauge shows zero.')).toEqual(['no-vague-word'])
})

test('a step of twenty words is accepted, of twenty-one refused', () => {
  const long = (count: number): string =>
    `${['Close', 'the', ...Array.from({length: count - 2}, () => 'valve')].join(' ')}.`
  expect(faultsOf(long(20))).toEqual([])
  expect(faultsOf(long(21))).toEqual(['no-long-step'])
})

describe('words and sentences', () => {
  test('count what is joined by a hyphen and a value once', () => {
    const text = wordsOfText([
      {kind: 'text', text: 'Close the shut-off '},
      {kind: 'strong', children: [{kind: 'text', text: 'valve'}]},
      {kind: 'text', text: ' of '},
      {kind: 'value', value: to('tank.volume')},
      {kind: 'procedure', procedure: to('isolation'), label: ''},
    ])
    expect(wordsIn(text)).toEqual(['Close', 'the', 'shut-off', 'valve', 'of', 'VALUETITLE'])
  })

  test('end a sentence at its full stop', () => {
    expect(sentencesOf('The pump stands. It is cold.')).toEqual(['The pump stands.', 'It is cold.'])
  })
})
