import {describe, expect, test} from 'vitest'
import {checkAfter} from '../texts-for-tests.ts'

const file = 'jobs/service.yaml'
const line = /^interval: .*$/mu
const origin = 'origin: {status: common-practice, source: rules}'

/** Messages about a job with this interval. */
function told(interval: string): readonly string[] {
  return checkAfter((texts) => texts.replace(file, line, `interval: {${origin}, ${interval}reason: wear}`))
    .messages
}

describe('the interval of a job', () => {
  test('yields hours, calendar, events and trigger, each with its origin', () => {
    const {data, messages} = checkAfter((texts) =>
      texts.replace(
        file,
        line,
        `interval: {${origin}, hours: 10000 h, hours-most: 20000 h, calendar: [{every: 12 months, note: with the dock}, {every: 7 days}], events: [at survey], trigger: it leaks, reason: wear}`,
      ),
    )
    expect(messages).toEqual([])
    const known = {kind: 'known', origin: {status: 'common-practice', source: 'rules'}}
    expect(data.jobs.get('service')?.interval).toMatchObject({
      hours: {...known, figure: '10000', unit: 'h'},
      hoursMost: {...known, figure: '20000', unit: 'h'},
      calendar: [
        {every: {...known, figure: '12', unit: 'months'}, note: {en: 'with the dock'}},
        {every: {...known, figure: '7', unit: 'd'}},
      ],
      events: [{en: 'at survey'}],
      trigger: {en: 'it leaks'},
      reason: {en: 'wear'},
    })
  })

  test.each([
    ['hours alone', 'hours: 5000 h, '],
    ['a time of the calendar alone', 'calendar: [{every: 12 months}], '],
    ['an event alone', 'events: [at survey], '],
    ['a trigger alone', 'trigger: it leaks, '],
  ])('is enough with %s', (_what, interval) => {
    expect(told(interval)).toEqual([])
  })

  test.each([
    [
      'nothing but a reason',
      '',
      '4:11 Unexpected interval that says nothing, expected one of `hours:`, `calendar:`, `events:`, `trigger:` no-missing-key | Say how often the job is done, or what it is done on',
    ],
    [
      'hours in days',
      'hours: 200 days, ',
      '4:69 Unexpected interval of 200 d, expected a time above zero in `h` no-wrong-shape | Write it in `h`',
    ],
    [
      'a time of the calendar in hours',
      'calendar: [{every: 24 h}], ',
      '4:81 Unexpected interval of 24 h, expected a time above zero in `d` or `months` no-wrong-shape | Write it in `d` or `months`',
    ],
    [
      'no hours at all',
      'hours: 0 h, ',
      '4:69 Unexpected interval of 0 h, expected a time above zero in `h` no-wrong-shape | Write it in `h`',
    ],
    [
      'a range that runs backwards',
      'hours: 5000 h, hours-most: 5000 h, ',
      '4:89 Unexpected `hours-most`, expected it above `hours` no-wrong-shape | Write the least hours as `hours:` and the most as `hours-most:`',
    ],
    [
      'hours that nobody knows',
      'hours: {value: not known, reason: no log}, ',
      '4:77 Unexpected `not known` in an interval, expected a time in `h` no-wrong-shape | Leave the line out and write into `reason:` what nobody knows',
    ],
  ])('is refused with %s', (_what, interval, message) => {
    expect(told(interval)).toEqual([`${file}:${message}`])
  })

  test('is refused as one text, at the text', () => {
    const {messages} = checkAfter((texts) => texts.replace(file, line, 'interval: 60 months'))
    expect(messages).toEqual([
      `${file}:4:11 Unexpected text \`60 months\`, expected a map no-wrong-shape | Write a map here`,
    ])
  })
})
