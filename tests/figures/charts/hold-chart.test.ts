import {describe, expect, test} from 'vitest'
import {chartWordsEn} from '../../../src/figures/charts/chart-words-en.ts'
import {holdChart} from '../../../src/figures/charts/hold-chart.ts'
import {type HoldData, type HoldPoint, judgeHold} from '../../../src/figures/charts/hold-results.ts'
import {expectRoomInChart, linesOf, marksOf, textsOf} from './chart-for-tests.ts'

function at(minute: number, gauge: number, temperature = 20, barometer = 1000): HoldPoint {
  return {minute, gauge, temperature, barometer}
}

function dataOf(readings: readonly HoldPoint[], more: Partial<HoldData> = {}): HoldData {
  return {
    what: 'cofferdam of pump 1P',
    test: '2018-05-02, hold 1',
    readings,
    holdTime: 40,
    allowedDrop: 17,
    volume: 46,
    outside: 'STOP',
    ...more,
  }
}

const draw = (data: HoldData) => holdChart(data, chartWordsEn)
const said = (readings: readonly HoldPoint[], more: Partial<HoldData> = {}): string =>
  draw(dataOf(readings, more)).statements.join(' ')

/** By hand: 4.0 bar(a) at 293.15 K that nothing leaves is 3.9591 bar(a) at 290.15 K, 2.9591 bar(g) at 1000 mbar(a). */
const cooled = [at(0, 3), at(45, 2.95, 17)]

describe('the verdict on a pressure hold', () => {
  test.each([
    ['at the allowed drop', [at(0, 3), at(45, 2.983)], 'WATCH'],
    ['one hundredth of a millibar inside', [at(0, 3), at(45, 2.983_01)], 'WITHIN LIMITS'],
    ['one hundredth of a millibar beyond', [at(0, 3), at(45, 2.982_99)], 'STOP'],
    ['cooled gas', cooled, 'WITHIN LIMITS'],
    ['a gauge that stands while the gas warms', [at(0, 3), at(45, 3, 22)], 'STOP'],
    ['a gauge that stands while the barometer falls', [at(0, 3), at(45, 3, 20, 980)], 'STOP'],
    ['a gauge that falls as the barometer rises', [at(0, 3), at(45, 2.98, 20, 1015)], 'WITHIN LIMITS'],
    ['shorter than the hold time', [at(0, 3), at(39, 3)], 'CANNOT JUDGE'],
    ['shorter and beyond the limit', [at(0, 3), at(39, 2.9)], 'STOP'],
    ['one reading', [at(0, 3)], 'CANNOT JUDGE'],
    ['none', [], 'CANNOT JUDGE'],
  ] as const)('%s', (_what, readings, wanted) => {
    expect(judgeHold(dataOf(readings)).verdict).toBe(wanted)
  })

  test('cannot judge without allowed drop or hold time', () => {
    const {allowedDrop: _drop, ...noDrop} = dataOf(cooled)
    expect(judgeHold(noDrop).verdict).toBe('CANNOT JUDGE')
    const {holdTime: _time, ...noTime} = dataOf(cooled)
    expect(judgeHold(noTime).verdict).toBe('CANNOT JUDGE')
    expect(draw(noTime).statements.join(' ')).toContain(
      'CANNOT JUDGE: allowed drop or hold time is NOT KNOWN.',
    )
  })
})

describe('a chart of a pressure hold', () => {
  test('draws the pressures as measured and as they would be at the start', () => {
    const {svg} = draw(dataOf(cooled))
    const near = (shape: 'circle' | 'square') =>
      marksOf(svg, shape).map(({x, y}) => [Math.round(x), y.toFixed(3)])
    expect(near('circle')).toEqual([
      [0, '4.000'],
      [45, '3.950'],
    ])
    expect(near('square')).toEqual([
      [0, '4.000'],
      [45, '3.991'],
    ])
  })

  test('draws the allowed drop down to the hold time and level behind it', () => {
    const [limit = []] = linesOf(draw(dataOf(cooled)).svg, 'limit')
    expect(limit.slice(0, 2).map(({x, y}) => [Math.round(x), y.toFixed(3)])).toEqual([
      [0, '4.000'],
      [40, '3.983'],
    ])
    expect(limit[2]?.y.toFixed(3)).toBe('3.983')
    expect(linesOf(draw(dataOf(cooled)).svg, 'mark')[0]?.[0]?.x).toBeCloseTo(40, 0)
    const [other = []] = linesOf(draw(dataOf(cooled, {allowedDrop: 30})).svg, 'limit')
    expect(other[1]?.y.toFixed(3)).toBe('3.970')
    expect(textsOf(draw(dataOf(cooled, {allowedDrop: 30})).svg).map(({text}) => text)).toContain(
      'allowed drop 30 mbar',
    )
  })

  test('tells what the gauge says, what is left, the leak and the verdict', () => {
    const words = said(cooled)
    expect(words).toContain(
      'The gauge alone fell by 50.0 mbar, while the gas changed by −3.0 K and the barometer by 0.0 mbar.',
    )
    expect(words).toContain('Corrected for both with absolute pressures, 9.2 mbar are lost in 45 min.')
    expect(words).toContain('That is a leak of 9.2 ml of free gas a minute.')
    expect(words).toContain('By the gauge alone it would be beyond the limit')
    expect(words).toContain('Drop after correction 9.2 mbar: WITHIN LIMITS.')
    expect(said([at(0, 3), at(45, 3, 22)])).toContain('temperature and barometer hid the loss')
    expect(said([at(0, 3), at(45, 3.002)])).toContain('The gauge alone rose by 2.0 mbar')
    expect(said([at(0, 3), at(45, 3.002)])).toContain(
      'nothing is lost in 45 min: the pressure rose by 2.0 mbar.',
    )
    expect(said([at(0, 3), at(39, 3)])).toContain('shorter than the hold time')
    expect(said([at(0, 3)])).toContain('CANNOT JUDGE: one reading is not enough')
    const {volume: _volume, ...noVolume} = dataOf(cooled)
    expect(draw(noVolume).statements.join(' ')).toContain('The leak is NOT KNOWN')
  })

  test('tells every reading in the alternative of the picture', () => {
    expect(draw(dataOf(cooled)).alternative).toContain(
      'minute 45: measured 3.950 bar(a), corrected 3.991 bar(a)',
    )
    const tried = cooled.map((one) => ({...one, tried: true}))
    expect(draw(dataOf(tried)).alternative).toContain('corrected 3.991 bar(a), tried, not recorded')
    expect(marksOf(draw(dataOf(tried)).svg, 'star')).toHaveLength(2)
  })

  test.each([
    ['cooled', cooled],
    ['none', []],
    ['one', [at(0, 3)]],
    ['tight', [at(0, 3), at(45, 3)]],
    ['a large loss', [at(0, 3), at(20, 2.5), at(60, 1.5)]],
    ['long', [at(0, 3), at(600, 2.99)]],
  ])('has room for its words: %s', (_what, readings) => {
    const {svg} = draw(dataOf(readings))
    expect(svg).not.toMatch(/NaN|Infinity|undefined/u)
    expectRoomInChart(svg)
  })
})
