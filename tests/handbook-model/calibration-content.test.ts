import {describe, expect, test} from 'vitest'
import {calibrationInterval, numbersOf, validToOf} from '../../src/handbook-model/calibration-content.ts'
import type {ComputedValue} from '../../src/handbook-model/computed.ts'
import {parseQuantity} from '../../src/quantities/parse-quantity.ts'

/** The interval of a design as it is written. */
function interval(text: string): ComputedValue {
  const parsed = parseQuantity(text, ['time'])
  if (!parsed.ok) throw new Error(parsed.reason)
  const {quantity, figure, unit} = parsed.written
  return {
    id: 'setting.calibration-interval',
    title: 'interval',
    ofDesign: true,
    result: {kind: 'known', quantity, printed: {figure, unit}},
    sources: [],
    rounding: '',
    place: {path: 'designs/design-s.yaml', line: 1, column: 1},
  }
}

describe('numbers of a tool aboard', () => {
  test.each([
    ['TW 1', ['TW 1']],
    ['OM 1 and OM 2', ['OM 1', 'OM 2']],
    ['PG 1, PG 4 and PG 9', ['PG 1', 'PG 4', 'PG 9']],
    ['PP 8 to PP 11', ['PP 8', 'PP 9', 'PP 10', 'PP 11']],
    ['L 09 to L 11', ['L 09', 'L 10', 'L 11']],
    ['PP 8 to PX 11', ['PP 8 to PX 11']],
    ['PP 9 to PP 8', ['PP 9 to PP 8']],
    ['one at each pump', ['one at each pump']],
  ])('%s', (number, numbers) => {
    expect(numbersOf({number})).toEqual(numbers)
  })
})

describe('the last day of a calibration', () => {
  test.each([
    ['2018-05-14', '12 months', '2019-05-14'],
    ['2019-01-31', '1 months', '2019-02-28'],
    ['2019-12-31', '2 months', '2020-02-29'],
    ['2018-11-30', '24 months', '2020-11-30'],
    ['2019-02-27', '3 d', '2019-03-02'],
    ['2019-02-27', '36 h', '2019-02-28'],
  ])('%s and %s', (day, time, last) => {
    expect(validToOf({day}, interval(time))).toEqual({day: last, by: 'interval'})
  })

  test('is that of the certificate where it names one, and nobody knows it where nothing says', () => {
    expect(validToOf({day: '2019-01-01', validTo: '2019-03-01'}, interval('12 months'))).toEqual({
      day: '2019-03-01',
      by: 'certificate',
    })
    expect(validToOf({day: '2019-01-01'}, undefined)).toBeUndefined()
  })
})

test('the interval is the shortest that a pump asks for, in whatever unit', () => {
  const pumpWith = (time: string): ReadonlyMap<string, ComputedValue> =>
    new Map([['setting.calibration-interval', interval(time)]])
  const pumps = [
    pumpWith('12 months'),
    pumpWith('100 d'),
    new Map<string, ComputedValue>(),
    pumpWith('6 months'),
  ]
  expect(calibrationInterval(pumps)?.result).toMatchObject({printed: {figure: '100', unit: 'd'}})
  expect(calibrationInterval([])).toBeUndefined()
})
