import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {
  leastClearanceRows,
  leastRunningClearance,
  leastRunningClearanceNoteOf,
} from '../../../src/calculations/clearances/least-running-clearance.ts'
import {millimetres} from '../../../src/quantities/named-units.ts'
import {leastClearanceTable, textbookClearances} from '../../published-values/least-clearances.ts'

function converted(diameter: number, galling = false): number {
  return leastOf(diameter, 'inch converted', galling)
}

function ownMetric(diameter: number): number {
  return leastOf(diameter, 'own metric', false)
}

function leastOf(diameter: number, table: 'inch converted' | 'own metric', galling: boolean): number {
  const {clearance} = leastRunningClearance({runningDiameter: millimetres(diameter), table, galling})
  expect(clearance.kind).toBe('diametral-clearance')
  return clearance.si * 1000
}

describe('least running clearance', () => {
  test('the library holds the published steps, one after the other', () => {
    expect(leastClearanceRows.map((row) => Number((row.from.si * 1000).toFixed(6)))).toEqual(
      leastClearanceTable.map(([from]) => from),
    )
    leastClearanceRows.forEach((row, index) => {
      const next = leastClearanceRows[index + 1]
      expect(row.below.si).toBe(next ? next.from.si : 0.65)
    })
  })

  test.each<[number, number, number]>([
    [49.99, 0.25, 0.25],
    [50, 0.28, 0.28],
    [64.99, 0.28, 0.28],
    [64.995, 0.28, 0.28],
    [65, 0.3, 0.3],
    [124.99, 0.41, 0.4],
    [125, 0.43, 0.43],
    [199.99, 0.48, 0.48],
    [200, 0.51, 0.5],
    [649.99, 0.94, 0.93],
  ])(
    'at %d mm it is %d mm converted and %d mm metric: a step holds its lower end',
    (diameter, one, other) => {
      expect(converted(diameter)).toBeCloseTo(one, 9)
      expect(ownMetric(diameter)).toBeCloseTo(other, 9)
    },
  )

  test('the two metric forms never differ by more than a hundredth of a millimetre', () => {
    for (const {clearances} of leastClearanceRows) {
      const apart = clearances['inch converted'].si - clearances['own metric'].si
      expect(Math.abs(apart) * 1000).toBeLessThanOrEqual(0.0100001)
    }
  })

  test('below 4.5 in the textbook is one to two mils larger', () => {
    const [, , cold] = textbookClearances[0] ?? [0, 0, 0]
    const millimetresOfBook = cold * 25.4
    expect(millimetresOfBook - converted(3.6 * 25.4)).toBeCloseTo(2 * 0.0254, 2)
    expect(millimetresOfBook - converted(4.2 * 25.4)).toBeCloseTo(0.0254, 2)
    expect(millimetresOfBook - converted(4.7 * 25.4)).toBeCloseTo(0, 2)
  })

  test('galling pairs get 0.125 mm more', () => {
    expect(converted(200, true) - converted(200)).toBeCloseTo(0.125, 9)
  })

  test('never falls as the diameter rises', () => {
    const diameter = fc.double({min: 1, max: 649.9, noNaN: true})
    fc.assert(
      fc.property(diameter, diameter, (one, other) => {
        expect(converted(Math.min(one, other))).toBeLessThanOrEqual(converted(Math.max(one, other)))
        expect(ownMetric(Math.min(one, other))).toBeLessThanOrEqual(ownMetric(Math.max(one, other)))
      }),
    )
  })

  test.each([0, -50, 650, 700])('a diameter of %d mm is refused', (diameter) => {
    expect(() => converted(diameter)).toThrow(
      `Unexpected running diameter of ${diameter} mm, expected one above 0 and below 650 mm`,
    )
  })

  test('the source named is that of the form that was asked', () => {
    expect(leastRunningClearanceNoteOf('inch converted').sources[0]).toMatchObject({howKnown: 'reprint'})
    expect(leastRunningClearanceNoteOf('own metric').sources[0]).toMatchObject({howKnown: 'memory'})
  })
})
