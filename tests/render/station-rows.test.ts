import fc from 'fast-check'
import {expect, test} from 'vitest'
import {stationRows} from '../../src/render/station-rows.ts'

test.each([
  [0, []],
  [1, [1]],
  [6, [6]],
  [7, [4, 3]],
  [8, [4, 4]],
  [9, [5, 4]],
  [13, [5, 5, 3]],
])('%d stations stand in rows of %j', (count, rows) => {
  const stations = Array.from({length: count}, (_, index) => `station ${index}`)
  expect(stationRows(stations).map((row) => row.length)).toEqual(rows)
})

test('no station is lost or moved, and no row is longer than a sheet is wide', () => {
  fc.assert(
    fc.property(fc.array(fc.string(), {maxLength: 60}), (stations) => {
      const rows = stationRows(stations)
      expect(rows.flat()).toEqual(stations)
      for (const row of rows) expect(row.length).toBeLessThanOrEqual(6)
    }),
  )
})
