import {describe, expect, test} from 'vitest'
import {intervalText, markOfOrigin, regularText, triggerText} from '../../src/compile/interval-text.ts'
import {contentOf} from './content-for-tests.ts'
import {english, interval, writtenTime} from './data-for-tests.ts'

const leak = {trigger: english('it leaks')}
const months = {calendar: [{every: writtenTime('60 months')}]}

describe('an interval in words', () => {
  test.each([
    ['hours', {hours: writtenTime('8000 h')}, '8\u00a0000 running hours'],
    [
      'a range of hours',
      {hours: writtenTime('10000 h'), hoursMost: writtenTime('20000 h')},
      '10\u00a0000 to 20\u00a0000 running hours',
    ],
    [
      'hours and the calendar',
      {hours: writtenTime('500 h'), ...months},
      '500 running hours or 60 months, whichever is first',
    ],
    [
      'a time with what it is for',
      {calendar: [{every: writtenTime('60 months'), note: english('with the dock')}]},
      '60 months, with the dock',
    ],
    [
      'times that have a word',
      {calendar: ['1 d', '7 d', '1 month', '14 d'].map((one) => ({every: writtenTime(one)}))},
      'daily; weekly; monthly; 14 days',
    ],
    [
      'times and events',
      {...months, events: [english('at survey'), english('after a docking')]},
      '60 months; at survey; after a docking',
    ],
    ['what brings a time forward', {...months, ...leak}, '60 months; sooner when it leaks'],
    [
      'what brings hours forward',
      {hours: writtenTime('500 h'), ...leak},
      '500 running hours; sooner when it leaks',
    ],
    [
      'what stands beside an event',
      {events: [english('at survey')], ...leak},
      'at survey; also when it leaks',
    ],
    ['a condition alone', leak, 'only when it leaks'],
  ])('says %s', (_what, more, words) => {
    expect(intervalText(interval(more))).toBe(words)
  })

  test('is told in two parts where a table has a column for each', () => {
    const both = interval({...months, ...leak})
    expect([regularText(both), triggerText(both)]).toEqual(['60 months', 'sooner when it leaks'])
    expect(regularText(interval(leak))).toBe('')
    expect(triggerText(interval(months))).toBe('')
  })

  test('is marked as an estimate and by what its source is known by', () => {
    const content = contentOf({})
    const marks = (['practice', 'standard'] as const).flatMap((source) =>
      (['common-practice', 'assumed'] as const).map((status) => markOfOrigin({status, source}, content)),
    )
    expect(marks).toEqual([
      'common practice, no source',
      'estimate, common practice, no source',
      '',
      'estimate',
    ])
  })
})
