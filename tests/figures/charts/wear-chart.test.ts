import {describe, expect, test} from 'vitest'
import {chartWordsEn} from '../../../src/figures/charts/chart-words-en.ts'
import {wearChart} from '../../../src/figures/charts/wear-chart.ts'
import type {WearData, WearPoint} from '../../../src/figures/charts/wear-trend.ts'
import {expectRoomInChart, linesOf, marksOf, textsOf} from './chart-for-tests.ts'

/** A reading as found, with the uncertainty of its instruments. */
function found(day: string, hours: number, clearance: number, more: Partial<WearPoint> = {}): WearPoint {
  return {day, hours, clearance, phase: 'as-found', renewed: false, uncertainty: 0.03, ...more}
}

function renewedAt(day: string, hours: number, clearance: number): WearPoint {
  return found(day, hours, clearance, {phase: 'as-left', renewed: true, leastGap: clearance - 0.04})
}

/** The worked example of the forecast, by hand: Sxy 955 by Sxx 23 547 500, so 0.04056 mm in 1000 h from 0.4792 mm. */
const four = [
  found('2012-01-01', 0, 0.48),
  found('2013-01-01', 2100, 0.56),
  found('2014-01-01', 4300, 0.66),
  found('2015-01-01', 6500, 0.74),
]

function dataOf(readings: readonly WearPoint[], more: Partial<WearData> = {}): WearData {
  return {
    what: 'lower wear ring of head H-1',
    readings,
    renewal: {value: 0.96, outside: 'RENEW', governs: 'the house rule governs'},
    minimumNew: {value: 0.42, outside: 'STOP', governs: ''},
    service: {job: ''},
    ...more,
  }
}

const draw = (data: WearData) => wearChart(data, chartWordsEn)
const said = (data: WearData): string => draw(data).statements.join(' ')

/** Places of the drawing are rounded to a tenth: so far a value may be off. */
function expectNear(
  values: readonly {x: number; y: number}[],
  wanted: readonly (readonly [number, number])[],
): void {
  expect(values.map(({x, y}) => [Math.round(x / 5) * 5, Math.round(y * 200) / 200])).toEqual(
    wanted.map(([x, y]) => [Math.round(x / 5) * 5, Math.round(y * 200) / 200]),
  )
}

describe('a chart of wear', () => {
  test('puts each reading where its hours and its clearance are, by the words at the ticks', () => {
    const {svg} = draw(dataOf([...four, renewedAt('2015-01-01', 6500, 0.5)]))
    expectNear(
      marksOf(svg, 'circle'),
      four.map(({hours, clearance}) => [hours, clearance]),
    )
    expectNear(marksOf(svg, 'square'), [[6500, 0.5]])
  })

  test('draws the line through its readings and on to the end, and the limit right across', () => {
    const {svg} = draw(dataOf(four))
    const [line = []] = linesOf(svg, 'line')
    expect(line[0]?.x).toBeCloseTo(0, 0)
    expect(line[0]?.y).toBeCloseTo(0.4765, 2)
    expect(line.at(-1)?.x).toBeCloseTo(6500, -1)
    const [beyond = []] = linesOf(svg, 'beyond')
    expect(beyond.at(-1)?.x).toBeGreaterThan(11_100)
    const [limit = []] = linesOf(svg, 'limit')
    expect(limit.map(({y}) => y.toFixed(2))).toEqual(['0.96', '0.96'])
    expect(linesOf(svg, 'band')).toHaveLength(2)
  })

  test('says the due hours of the worked example, less the uncertainty, and flags them beyond 1.5 x the span', () => {
    const words = said(dataOf(four))
    expect(words).toContain('Condition due at 11115 h, where the line comes within the 0.03 mm')
    expect(words).toContain('The line itself meets the limit at 11854 h.')
    expect(words).toContain('beyond 1.5 x the observed span, which ends at 9750 h')
    expect(words).toContain('With fewer than five readings the band is drawn and not used')
    const {svg} = draw(dataOf(four))
    expect(textsOf(svg).map(({text}) => text)).toContain('1.5 x the span')
    expect(linesOf(svg, 'mark').map(([foot]) => Math.round((foot?.x ?? 0) / 10) * 10)).toEqual([9750])
    const bare = {value: 0.9, outside: 'RENEW', governs: ''} as const
    const near = draw(dataOf(four, {renewal: bare}))
    expect(near.statements).toContain('Renewal limit 0.90 mm diametral; beyond it: RENEW.')
    expect(textsOf(near.svg).map(({text}) => text)).toContain('renewal limit 0.90 mm')
    expect(linesOf(near.svg, 'mark')).toEqual([])
  })

  test('uses the band from five readings on', () => {
    const five = [...four, found('2016-01-01', 8600, 0.83)]
    const scattered = five.map((one, index) => ({
      ...one,
      clearance: one.clearance + (index % 2 === 0 ? 0.05 : -0.05),
    }))
    expect(said(dataOf(five))).not.toContain('With fewer than five readings')
    expect(said(dataOf(scattered))).toContain('where the upper edge of the band meets the limit')
    expect(said(dataOf(scattered.slice(0, 4)))).not.toContain('where the upper edge of the band')
  })

  test('says not enough readings of two and draws no line', () => {
    const data = dataOf(four.slice(0, 2))
    expect(said(data)).toContain('Not enough readings: 2 of the ring that is fitted, and a line needs three.')
    expect(linesOf(draw(data).svg, 'line')).toEqual([])
    expect(linesOf(draw(data).svg, 'band')).toEqual([])
    expect(marksOf(draw(data).svg, 'circle')).toHaveLength(2)
  })

  test('begins a line of its own at each renewal, and counts no reading of the ring before', () => {
    const second = [found('2016-01-01', 7500, 0.55), found('2017-01-01', 8500, 0.61)]
    const data = dataOf([...four, renewedAt('2015-01-01', 6500, 0.5), ...second])
    const {svg, statements} = draw(data)
    const lines = linesOf(svg, 'line')
    expect(lines).toHaveLength(2)
    expect(lines[1]?.[0]?.x).toBeCloseTo(6500, -1)
    expect(lines[1]?.[0]?.y).toBeCloseTo(0.498, 2)
    expect(linesOf(svg, 'mark').map(([foot]) => Math.round((foot?.x ?? 0) / 10) * 10)).toEqual([6500, 9500])
    expect(textsOf(svg).map(({text}) => text)).toContain('renewed')
    expect(statements.join(' ')).toContain('Ring 2 of 2: the clearance grows by 0.055 mm diametral in 1000 h')
    const alone = dataOf([renewedAt('2015-01-01', 6500, 0.5), ...second])
    expect(said(data)).toContain(said(alone).match(/Condition due at \d+ h/u)?.[0])
  })

  test('counts a reading as left on a ring that stayed once', () => {
    const left = found('2015-01-01', 6500, 0.74, {phase: 'as-left'})
    expect(said(dataOf([...four, left]))).toContain('by the line of 4 readings')
    expect(said(dataOf([...four, left]))).toContain('does not count again')
  })

  test('moves line, label and words with the limit', () => {
    const limit = {value: 0.9, outside: 'RENEW', governs: 'the design governs'} as const
    const {svg, alternative} = draw(dataOf(four, {renewal: limit}))
    expect(linesOf(svg, 'limit')[0]?.[0]?.y).toBeCloseTo(0.9, 2)
    expect(textsOf(svg).map(({text}) => text)).toContain('renewal limit 0.90 mm: the design governs')
    expect(alternative).toContain('Renewal limit 0.90 mm diametral, the design governs; beyond it: RENEW.')
    expect(alternative).toContain('Condition due at 9635 h')
  })

  test('cannot judge without a limit or without instruments, and softens nothing beyond the limit', () => {
    const {renewal: _renewal, ...bare} = dataOf(four)
    expect(said(bare)).toContain('CANNOT JUDGE: the renewal limit is NOT KNOWN.')
    expect(said(bare)).not.toContain('Condition due')
    const {uncertainty: _uncertainty, ...last} = found('2015-01-01', 6500, 0.74)
    expect(said(dataOf([...four.slice(0, 3), last]))).toContain('CANNOT JUDGE when the ring is due')
    expect(said(dataOf([...four.slice(0, 3), last]))).toContain(
      'Last reading 0.74 mm at 6500 h: CANNOT JUDGE',
    )
    const beyond = said(dataOf([...four.slice(0, 3), {...last, clearance: 0.97}]))
    expect(beyond).toContain('Last reading 0.97 mm at 6500 h: RENEW before the next use.')
    expect(beyond).toContain('Next due: before the next use.')
  })

  test('watches a reading inside of the limit by less than the uncertainty', () => {
    const at = (clearance: number): string =>
      said(dataOf([...four.slice(0, 3), found('2015-01-01', 6500, clearance)]))
    expect(at(0.94)).toContain('Last reading 0.94 mm at 6500 h: WATCH.')
    expect(at(0.93)).toContain('Last reading 0.93 mm at 6500 h: WITHIN LIMITS.')
    expect(at(0.96)).toContain('WATCH.')
    expect(at(0.97)).toContain('RENEW')
  })

  test('holds the least gap of a new ring against its minimum', () => {
    const left = (gap: Partial<WearPoint>): string =>
      said(dataOf([{...renewedAt('2015-01-01', 10, 0.6), ...gap}]))
    expect(left({leastGap: 0.5})).toContain('WITHIN LIMITS.')
    expect(left({leastGap: 0.41})).toContain('STOP: ask the office.')
    const {leastGap: _gap, ...unread} = renewedAt('2015-01-01', 10, 0.6)
    expect(said(dataOf([unread]))).toContain('CANNOT JUDGE')
    expect(said(dataOf([{...unread, renewed: false}]))).toContain(
      'Last reading 0.60 mm at 10 h: CANNOT JUDGE',
    )
    expect(said(dataOf([{...renewedAt('2011-01-01', 0, 0.45), renewed: false}]))).toContain('STOP')
  })

  test('tells every point in the alternative of the picture, a tried one by its own shape', () => {
    const tried = found('2016-01-01', 8000, 0.8, {tried: true})
    const {svg, alternative} = draw(dataOf([...four, tried]))
    expect(alternative).toContain('as found 0.48 mm at 0 h on 2012-01-01')
    expect(alternative).toContain('as found 0.80 mm at 8000 h on 2016-01-01, tried, not recorded')
    expectNear(marksOf(svg, 'star'), [[8000, 0.8]])
    expect(marksOf(svg, 'circle')).toHaveLength(4)
    expect(svg).toContain('aria-label="Wear of the lower wear ring of head H-1. Readings:')
    expect(said(dataOf([...four, tried]))).toContain('(tried, not recorded)')
  })

  test('says no readings, and never a line, where there are none', () => {
    const {svg, statements} = draw(dataOf([]))
    expect(statements[0]).toBe('No readings on record.')
    expect(linesOf(svg, 'line')).toEqual([])
    expect(svg).not.toMatch(/NaN|Infinity|undefined/u)
  })

  test.each([
    ['four', four],
    ['none', []],
    ['one', four.slice(0, 1)],
    [
      'two renewals',
      [
        ...four,
        renewedAt('2015-01-01', 6500, 0.5),
        found('2016-01-01', 7100, 0.95),
        renewedAt('2016-01-01', 7100, 0.49),
        found('2017-01-01', 7600, 0.6),
      ],
    ],
    [
      'renewals side by side',
      [renewedAt('2015-01-01', 100, 0.5), renewedAt('2016-01-01', 120, 0.51), found('2017-01-01', 5000, 0.6)],
    ],
    ['at the limit', [...four.slice(0, 3), found('2015-01-01', 6500, 0.95), found('2016-01-01', 7000, 0.97)]],
  ])('has room for its words: %s', (_what, readings) => {
    expectRoomInChart(draw(dataOf(readings)).svg)
  })
})

describe('next due', () => {
  const service = {
    job: 'Ring service',
    hours: 5000,
    every: {count: 60, unit: 'months'},
    calendar: '60 months',
    rate: {perDay: 2, from: '2012-01-01', to: '2015-01-01'},
  } as const
  const last = {day: '2015-01-01', hours: 6500}

  test.each([
    [
      'the condition',
      {...service, rate: {...service.rate, perDay: 5}, last},
      'Next due by condition: 11115 h, 2017-07-12, which comes first',
      dataOf(four),
    ],
    [
      'the calendar',
      {...service, last},
      'Next due by 60 months (Ring service): 2020-01-01, which comes first',
      dataOf(four),
    ],
    [
      'running hours',
      {...service, hours: 1000, last},
      'Next due by 1000 running hours (Ring service): 7500 h, 2016-05-15, which comes first',
      dataOf(four),
    ],
    [
      'the last day of a shorter month',
      {...service, every: {count: 1, unit: 'months'}, last},
      '2015-02-01',
      dataOf(four),
    ],
    [
      'days',
      {...service, every: {count: 30, unit: 'days'}, calendar: '30 d', last},
      'by 30 d (Ring service): 2015-01-31',
      dataOf(four),
    ],
  ] as const)('is by %s', (_what, rule, words, data) => {
    expect(said({...data, service: rule})).toContain(words)
  })

  test('leaves out what no calendar reaches, and what nobody can compare', () => {
    const {rate: _rate, ...slow} = {...service, last}
    expect(said(dataOf(four, {service: slow}))).toContain('Which comes first nobody can tell')
    const level = four.map((one, index) => ({...one, clearance: 0.6 + index * 1e-6}))
    expect(said(dataOf(level, {service: {...service, last}}))).not.toMatch(/by condition|By condition/u)
    expect(said(dataOf(four.slice(0, 1), {service: {...service, last}}))).toContain(
      'By condition nothing can be said, so the ring may be due earlier.',
    )
    expect(said(dataOf(four.slice(0, 1)))).toContain('Next due: NOT KNOWN, no rule speaks.')
  })
})
