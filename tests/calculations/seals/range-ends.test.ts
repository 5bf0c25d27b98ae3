import {describe, expect, test} from 'vitest'
import {elastomerShelfLife, storageState} from '../../../src/calculations/seals/elastomer-shelf-life.ts'
import {oRingSqueeze} from '../../../src/calculations/seals/o-ring-squeeze.ts'
import {oRingFill, oRingStretch} from '../../../src/calculations/seals/o-ring-stretch.ts'
import {sealSeat} from '../../../src/calculations/seals/seal-seat.ts'
import {metresPerSecond, millimetres} from '../../../src/quantities/named-units.ts'
import {holdEnds, type RangeEnds} from '../range-ends.ts'

const ring = {
  section: millimetres(3.53),
  insideDiameter: millimetres(85.32),
  grooveDiameter: millimetres(86.2),
}
const rows: readonly RangeEnds[] = [
  [
    'section in a gland',
    (mm) => oRingSqueeze({section: millimetres(mm), depth: millimetres(0.4)}),
    [0.5],
    [0, -1, 0.4],
  ],
  [
    'depth of a gland',
    (mm) => oRingSqueeze({section: millimetres(3.53), depth: millimetres(mm)}),
    [0.5],
    [0, -1, 3.53],
  ],
  ['section of a stretched ring', (mm) => oRingStretch({...ring, section: millimetres(mm)}), [0.5], [0, -1]],
  [
    'inside diameter',
    (mm) => oRingStretch({...ring, insideDiameter: millimetres(mm)}),
    [0.5, 86.2],
    [0, -1, 86.3],
  ],
  [
    'depth of a groove',
    (mm) => oRingFill({...ring, depth: millimetres(mm), width: millimetres(50)}),
    [0.5],
    [0, -1],
  ],
  [
    'width of a groove',
    (mm) => oRingFill({...ring, depth: millimetres(50), width: millimetres(mm)}),
    [0.5],
    [0, -1],
  ],
  ['speed of a lip', (si) => sealSeat('elastomer', metresPerSecond(si)), [0, 0.5], [-0.1]],
]

describe('the ends of a stated range are inside it, and nothing beyond', () => {
  test.each(rows)('%s', (_what, run, accepted, refused) => {
    holdEnds(run, accepted, refused)
  })
})

describe('days of the calendar', () => {
  const isDay = (day: string): boolean => {
    try {
      elastomerShelfLife('NBR', day)
      return true
    } catch {
      return false
    }
  }

  test.each([
    ['2031-01-31', '2031-01-32'],
    ['2031-02-28', '2031-02-29'],
    ['2032-02-29', '2032-02-30'],
    ['2031-03-31', '2031-03-32'],
    ['2031-04-30', '2031-04-31'],
    ['2031-06-30', '2031-06-31'],
    ['2031-09-30', '2031-09-31'],
    ['2031-11-30', '2031-11-31'],
    ['2031-12-31', '2031-13-01'],
    ['2000-02-29', '2100-02-29'],
    ['0001-01-01', '0000-01-01'],
    ['2031-01-01', '2031-01-00'],
    ['2031-01-01', '2031-00-01'],
  ])('%s is one and %s is none', (day, none) => {
    expect([isDay(day), isDay(none)]).toEqual([true, false])
  })
})

test('the last day of a storage period belongs to it', () => {
  const {validTo, validToAfterInspection} = elastomerShelfLife('NBR', '2024-02-29')
  const next = (day: string): string =>
    new Date(Date.parse(`${day}T00:00:00Z`) + 86_400_000).toISOString().slice(0, 10)
  const state = (day: string): string => storageState('NBR', '2024-02-29', day)
  expect([validTo, next(validTo), validToAfterInspection, next(validToAfterInspection)].map(state)).toEqual([
    'first-period',
    'inspect-before-use',
    'inspect-before-use',
    'not-for-use',
  ])
  expect(state('2024-02-29')).toBe('first-period')
  expect(() => state('2024-02-28')).toThrow('before the cure date')
})
