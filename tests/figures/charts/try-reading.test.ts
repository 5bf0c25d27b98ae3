import {describe, expect, test} from 'vitest'
import {chartWordsEn} from '../../../src/figures/charts/chart-words-en.ts'
import {drawChart} from '../../../src/figures/charts/draw-chart.ts'
import type {HoldData} from '../../../src/figures/charts/hold-results.ts'
import type {PurgeData} from '../../../src/figures/charts/purge-results.ts'
import {tryClearance, tryHold, tryPurge} from '../../../src/figures/charts/try-reading.ts'
import type {WearData} from '../../../src/figures/charts/wear-trend.ts'

const data: WearData = {
  what: 'lower wear ring of head H-1',
  readings: [
    {day: '2018-01-01', hours: 1000, clearance: 0.7, phase: 'as-found', renewed: false, uncertainty: 0.02},
  ],
  service: {job: ''},
}

const good = {
  day: '2019-01-01',
  hours: '1500',
  clearance: '0.75',
  uncertainty: '0.02',
  phase: 'found',
  gap: '',
}

const tryIt = (entries: Readonly<Record<string, string>>) =>
  tryClearance(data, new Map(Object.entries({...good, ...entries})), chartWordsEn)

describe('a clearance that is tried', () => {
  test('stands behind the readings, marked as tried, and changes no reading', () => {
    const before = JSON.stringify(data)
    const tried = tryIt({})
    expect(tried.ok && tried.data.readings).toEqual([
      ...data.readings,
      {
        day: '2019-01-01',
        hours: 1500,
        clearance: 0.75,
        phase: 'as-found',
        renewed: false,
        uncertainty: 0.02,
        tried: true,
      },
    ])
    expect(JSON.stringify(data)).toBe(before)
  })

  test('begins a new ring where it was renewed, and has no uncertainty where none is written', () => {
    const tried = tryIt({phase: 'renewed', gap: '0.70', uncertainty: ''})
    expect(tried.ok && tried.data.readings.at(-1)).toEqual({
      day: '2019-01-01',
      hours: 1500,
      clearance: 0.75,
      leastGap: 0.7,
      phase: 'as-left',
      renewed: true,
      tried: true,
    })
  })

  test.each([
    [{day: ''}, 'Day: nothing is written. Write the day of the reading, such as 2031-02-14.'],
    [{day: '2019-02-29'}, 'Day: “2019-02-29” is no day. Write one such as 2031-02-14.'],
    [{day: '2017-12-31'}, 'Day: the last reading is of 2018-01-01. Try a day from then on.'],
    [{hours: ''}, 'Running hours: nothing is written. Write a number such as 0.85.'],
    [{hours: '999.9'}, 'Running hours: the last reading stands at 1000 h, and hours never fall.'],
    [
      {clearance: 'wide'},
      'Clearance: “wide” is no number of zero or more. Write digits alone, such as 0.85.',
    ],
    [
      {clearance: '-0.1'},
      'Clearance: “-0.1” is no number of zero or more. Write digits alone, such as 0.85.',
    ],
    [{clearance: '0,75'}, 'Clearance: “0,75” has a comma. Write a decimal point, such as 0.85.'],
    [{clearance: '0'}, 'Clearance: a ring without a clearance does not turn. Read the stations again.'],
    [{gap: '0.76'}, 'Least gap: it is above the clearance, which is the mean of the gaps. Read both again.'],
    [
      {uncertainty: '1e3'},
      'Uncertainty of the instruments: “1e3” is no number of zero or more. Write digits alone, such as 0.85.',
    ],
  ])('is refused in plain words: %j', (entries, refusal) => {
    expect(tryIt(entries)).toEqual({ok: false, refusal})
  })

  test('is drawn from nothing but the data of its own chart', () => {
    expect(drawChart('wear', {}, undefined, chartWordsEn)).toEqual({
      ok: false,
      refusal: 'The data of this chart cannot be read.',
    })
    expect(drawChart('other', data, undefined, chartWordsEn).ok).toBe(false)
    expect(drawChart('wear', data, undefined, chartWordsEn).ok).toBe(true)
  })
})

describe('a purge that is tried', () => {
  const purged: PurgeData = {
    what: 'cofferdam of pump 4S',
    results: [{day: '2018-01-01', hours: 10, gas: true, volume: 0, fluid: 'none'}],
    hourly: {oil: {}, cargo: {}},
    daily: {oil: {}, cargo: {}},
  }
  const one = {day: '2018-01-08', hours: '40', gas: 'yes', volume: '20', fluid: 'cargo', uncertainty: '10'}
  const tryOne = (entries: Readonly<Record<string, string>>) =>
    tryPurge(purged, new Map(Object.entries({...one, ...entries})), chartWordsEn)

  test('stands behind the others, marked as tried', () => {
    const tried = tryOne({gas: 'no'})
    expect(tried.ok && tried.data.results).toEqual([
      ...purged.results,
      {day: '2018-01-08', hours: 40, gas: false, volume: 20, fluid: 'cargo', uncertainty: 10, tried: true},
    ])
    expect(drawChart('purge', purged, new Map(Object.entries(one)), chartWordsEn).ok).toBe(true)
  })

  test('may have run no hours', () => {
    expect(tryOne({hours: '0'}).ok).toBe(true)
  })

  test.each([
    [{volume: ''}, 'Volume: nothing is written. Write a number such as 0.85.'],
    [{fluid: 'none'}, 'Volume: a dry purge has none. Write 0, or name the liquid.'],
    [{volume: '0'}, 'Volume: a liquid has more than 0. Write it, or name the purge dry.'],
    [{day: '2017-12-31'}, 'Day: the last reading is of 2018-01-01. Try a day from then on.'],
    [
      {hours: 'none'},
      'Running hours since the purge before: “none” is no number of zero or more. Write digits alone, such as 0.85.',
    ],
  ])('is refused in plain words: %j', (entries, refusal) => {
    expect(tryOne(entries)).toEqual({ok: false, refusal})
  })
})

describe('a pressure hold that is tried', () => {
  const held: HoldData = {what: 'cofferdam of pump 1P', test: '2018-05-02', readings: [], outside: 'STOP'}
  const two = {
    'minute-1': '0',
    'gauge-1': '2.90',
    'temperature-1': '-2.5',
    'barometer-1': '1012',
    'minute-3': '45',
    'gauge-3': '2.88',
    'temperature-3': '−3',
    'barometer-3': '1013.5',
  }
  const tryOne = (entries: Readonly<Record<string, string>>) =>
    tryHold(held, new Map(Object.entries({...two, ...entries})), chartWordsEn)

  test('stands in place of the one on record, with or without a reading between', () => {
    const tried = tryOne({})
    expect(tried.ok && tried.data.readings).toEqual([
      {minute: 0, gauge: 2.9, temperature: -2.5, barometer: 1012, tried: true},
      {minute: 45, gauge: 2.88, temperature: -3, barometer: 1013.5, tried: true},
    ])
    const between = {'minute-2': '20', 'gauge-2': '2.89', 'temperature-2': '0', 'barometer-2': '1012'}
    const three = tryOne(between)
    expect(three.ok && three.data.readings).toHaveLength(3)
    expect(three.ok && three.data.test).toBe('')
    expect(drawChart('hold', held, new Map(Object.entries(two)), chartWordsEn).ok).toBe(true)
  })

  test.each([
    [{'gauge-3': ''}, 'Gauge pressure, end: nothing is written. Write a number such as 0.85.'],
    [{'gauge-2': '2.89'}, 'Minute, between: nothing is written. Write a number such as 0.85.'],
    [
      {'minute-3': '0'},
      'Minutes: each reading stands at a later minute than the one before. Read them again.',
    ],
    [{'barometer-1': '1.012'}, 'Barometer: write it in mbar(a), such as 1013.'],
    [{'temperature-1': '-274'}, 'Temperature: write it in °C, such as 18.5.'],
    [
      {'gauge-1': '-1'},
      'Gauge pressure, start: “-1” is no number of zero or more. Write digits alone, such as 0.85.',
    ],
  ])('is refused in plain words: %j', (entries, refusal) => {
    expect(tryOne(entries)).toEqual({ok: false, refusal})
  })
})
