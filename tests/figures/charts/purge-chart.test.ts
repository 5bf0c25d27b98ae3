import {describe, expect, test} from 'vitest'
import {dayNumber} from '../../../src/calculations/planning/calendar-day.ts'
import {chartWordsEn} from '../../../src/figures/charts/chart-words-en.ts'
import {purgeChart} from '../../../src/figures/charts/purge-chart.ts'
import {judgePurges, type PurgeData, type PurgePoint} from '../../../src/figures/charts/purge-results.ts'
import {expectRoomInChart, marksOf, textsOf} from './chart-for-tests.ts'

/** A purge of cargo with gas, measured to 10 ml. */
function purge(day: string, hours: number, volume: number, more: Partial<PurgePoint> = {}): PurgePoint {
  return {day, hours, gas: true, volume, fluid: volume === 0 ? 'none' : 'cargo', uncertainty: 10, ...more}
}

const cargo = {watch: 1, renew: 10, stop: 50}
const oil = {watch: 10, renew: 50, stop: 200}
const cargoByDay = {watch: 10, renew: 50, stop: 250}
const oilByDay = {watch: 20, renew: 100, stop: 500}

function dataOf(results: readonly PurgePoint[], more: Partial<PurgeData> = {}): PurgeData {
  return {
    what: 'cofferdam of pump 4S',
    results,
    large: 2000,
    hourly: {oil, cargo},
    daily: {oil: oilByDay, cargo: cargoByDay},
    ...more,
  }
}

const draw = (data: PurgeData) => purgeChart(data, chartWordsEn)
const said = (results: readonly PurgePoint[], more: Partial<PurgeData> = {}): string =>
  draw(dataOf(results, more)).statements.join(' ')

/** Verdict on the last of these purges. */
const verdict = (results: readonly PurgePoint[], more: Partial<PurgeData> = {}) =>
  judgePurges(dataOf(results, more)).at(-1)?.verdict

const dry = purge('2019-03-01', 10, 0)

describe('the verdict on a purge', () => {
  test.each([
    ['dry', purge('2019-03-08', 40, 0), 'WITHIN LIMITS'],
    ['dry after half an hour', purge('2019-03-08', 0.5, 0), 'WITHIN LIMITS'],
    ['below the watch figures', purge('2019-03-08', 40, 39), 'WITHIN LIMITS'],
    ['at the watch figure of the hours', purge('2019-03-08', 40, 40), 'WATCH'],
    ['at the watch figure of the days', purge('2019-03-08', 90, 70), 'WATCH'],
    ['at the limit of the days', purge('2019-03-08', 90, 350), 'WATCH'],
    ['beyond the limit of the days', purge('2019-03-08', 90, 351), 'RENEW'],
    ['beyond the limit of the hours', purge('2019-03-08', 20, 201), 'RENEW'],
    ['beyond the limit of stopping', purge('2019-03-08', 20, 1001), 'STOP'],
    ['more than a worn seal gives', purge('2019-03-08', 500, 2001), 'STOP'],
    ['oil below its own watch figure', purge('2019-03-08', 20, 100, {fluid: 'oil'}), 'WITHIN LIMITS'],
    ['water as if it were cargo', purge('2019-03-08', 40, 40, {fluid: 'water'}), 'WATCH'],
    ['a mixture, whatever its volume', purge('2019-03-08', 40, 1, {fluid: 'mixture'}), 'STOP'],
    ['nothing without gas', purge('2019-03-08', 40, 0, {gas: false}), 'NOT VALID'],
    ['little without gas', purge('2019-03-08', 40, 5, {gas: false}), 'NOT VALID'],
    ['much without gas', purge('2019-03-08', 20, 1001, {gas: false}), 'STOP'],
    ['without running hours, by days', purge('2019-03-08', 0, 69), 'WITHIN LIMITS'],
    ['without running hours, watched by days', purge('2019-03-08', 0, 70), 'WATCH'],
  ])('%s', (_what, result, wanted) => {
    expect(verdict([dry, result])).toBe(wanted)
  })

  test('cannot judge without a limit, an instrument, hours or an earlier day', () => {
    const result = purge('2019-03-08', 40, 20)
    expect(verdict([dry, result], {hourly: {oil, cargo: {}}})).toBe('CANNOT JUDGE')
    const {large: _large, ...noLarge} = dataOf([dry, result])
    expect(judgePurges(noLarge).at(-1)?.verdict).toBe('CANNOT JUDGE')
    const {uncertainty: _uncertainty, ...unread} = result
    expect(verdict([dry, unread])).toBe('CANNOT JUDGE')
    expect(verdict([purge('2019-03-08', 0, 20)])).toBe('CANNOT JUDGE')
    expect(verdict([{...unread, volume: 2001}])).toBe('STOP')
  })
})

describe('a chart of purges', () => {
  const rising = [
    dry,
    purge('2019-03-08', 100, 20),
    purge('2019-03-15', 100, 30),
    purge('2019-03-22', 100, 45),
  ]

  test('puts each result where its day and its volume are, by shape', () => {
    const {svg} = draw(dataOf([...rising, purge('2019-03-29', 100, 60, {fluid: 'oil'})]))
    const dated = svg.replace(/>(\d{4}-\d{2}-\d{2})</gu, (_all, day: string) => `>${dayNumber(day)}<`)
    const near = (shape: 'triangle' | 'circle' | 'dot') =>
      marksOf(dated, shape).map(({x, y}) => [Math.round(x), Math.round(y)])
    expect(near('triangle')).toEqual(rising.slice(1).map(({day, volume}) => [dayNumber(day), volume]))
    expect(near('circle')).toEqual([[dayNumber('2019-03-01'), 0]])
    expect(near('dot')).toEqual([[dayNumber('2019-03-29'), 60]])
  })

  test('flags three results in a row that rise, and watches the pump', () => {
    expect(said(rising)).toContain(
      'Flag: three results of cargo in a row rise, 20, 30, 45 ml up to 2019-03-22.',
    )
    expect(verdict(rising)).toBe('WATCH')
    expect(textsOf(draw(dataOf(rising)).svg).map(({text}) => text)).toContain('three in a row rise')
    expect(said(rising.slice(0, 3))).not.toContain('Flag')
    expect(verdict(rising.slice(0, 3))).toBe('WITHIN LIMITS')
    expect(said(rising.slice(1, 3))).not.toContain('Flag')
    const level = [...rising.slice(0, 3), purge('2019-03-22', 100, 30)]
    expect(said(level)).not.toContain('Flag')
    const between = [...rising.slice(0, 3), purge('2019-03-20', 10, 0), purge('2019-03-22', 100, 45)]
    expect(said(between)).not.toContain('Flag')
    const blocked = [
      ...rising.slice(0, 3),
      purge('2019-03-20', 10, 0, {gas: false}),
      purge('2019-03-22', 100, 45),
    ]
    expect(said(blocked)).toContain('Flag: three results')
  })

  test('crosses out what does not count and says why', () => {
    const blocked = [...rising, purge('2019-03-29', 50, 0, {gas: false})]
    expect(marksOf(draw(dataOf(blocked)).svg, 'cross')).toHaveLength(1)
    expect(marksOf(draw(dataOf(rising)).svg, 'cross')).toHaveLength(0)
    expect(said(blocked)).toContain('NOT VALID on 2019-03-29: dry without gas that was seen to flow')
    expect(said(blocked)).toContain('Last result 2019-03-29: dry: NOT VALID: repeat.')
    expect(draw(dataOf(blocked)).alternative).toContain('2019-03-29 dry, NOT VALID: repeat')
  })

  test('tells both rates of the last result, and by what it was judged', () => {
    expect(said(rising.slice(0, 3))).toContain(
      'Last result 2019-03-15: 30 ml of cargo, 0.3 ml for each running hour, 4.3 ml for each day: WITHIN LIMITS.',
    )
    expect(said([dry, purge('2019-03-08', 0, 20)])).toContain('judged by days alone')
    expect(said([purge('2019-03-08', 100, 20)])).toContain('judged by running hours alone')
    expect(said([purge('2019-03-08', 0, 20)])).toContain('CANNOT JUDGE the rate')
  })

  test('shows how much would be accepted, by the stricter of hours and days', () => {
    expect(judgePurges(dataOf(rising)).map(({accepted}) => accepted)).toEqual([10, 70, 70, 70])
    expect(judgePurges(dataOf([dry, purge('2019-03-08', 40, 20)])).at(-1)?.accepted).toBe(40)
    expect(draw(dataOf(rising)).svg).toContain('accepted up to here')
    const bare = {...dataOf(rising), hourly: {oil, cargo: {}}, daily: {oil, cargo: {}}}
    expect(draw(bare).svg).not.toContain('accepted up to here')
  })

  test('tells the limits, and what is not known of them', () => {
    expect(said(rising)).toContain(
      'Cargo: for each running hour watched from 1 ml, RENEW above 10 ml, STOP above 50 ml; for each day watched from 10 ml',
    )
    expect(said(rising)).toContain('Above 2000 ml between two purges: STOP.')
    expect(said(rising, {hourly: {oil, cargo: {watch: 1}}})).toContain('watched from 1 ml, limits NOT KNOWN')
  })

  test('marks a purge that is tried by its own shape', () => {
    const tried = [...rising, purge('2019-03-29', 50, 60, {tried: true})]
    const {svg, alternative} = draw(dataOf(tried))
    expect(marksOf(svg, 'star')).toHaveLength(1)
    expect(alternative).toContain('60 ml of cargo, WATCH, tried, not recorded')
  })

  test.each([
    ['none', []],
    ['one', [dry]],
    ['four', rising],
    ['years', [purge('2011-03-01', 10, 5), purge('2019-03-01', 10, 500, {fluid: 'mixture'})]],
    ['a large one', [dry, purge('2019-03-08', 500, 2400, {gas: false})]],
    [
      'all kinds',
      (['oil', 'cargo', 'water', 'mixture'] as const).map((fluid, index) =>
        purge(`2019-03-0${index + 1}`, 5, 20 + index, {fluid}),
      ),
    ],
  ])('has room for its words: %s', (_what, results) => {
    const {svg} = draw(dataOf(results))
    expect(svg).not.toMatch(/NaN|Infinity|undefined/u)
    expectRoomInChart(svg)
    expect(textsOf(svg).length).toBeGreaterThan(6)
  })
})
