import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {coarseSizes, coarseThread} from '../../../src/calculations/bolted-joints/coarse-threads.ts'
import {threadGeometry} from '../../../src/calculations/bolted-joints/thread-geometry.ts'
import {millimetres} from '../../../src/quantities/named-units.ts'
import {coarseThreads} from '../../published-values/iso-metric-threads.ts'

function geometryOf(diameter: number, pitch: number) {
  return threadGeometry({nominalDiameter: millimetres(diameter), pitch: millimetres(pitch)})
}

describe('thread geometry', () => {
  test('the coarse series of the library is the published one', () => {
    expect(coarseSizes).toEqual(coarseThreads.map((row) => row.size))
    for (const row of coarseThreads) {
      const thread = coarseThread(row.size)
      expect(thread.nominalDiameter.si * 1000).toBeCloseTo(row.diameter, 9)
      expect(thread.pitch.si * 1000).toBeCloseTo(row.pitch, 9)
    }
  })

  test('the stress area lies between core area and full circle, and scales with the square of the size', () => {
    fc.assert(
      fc.property(
        fc.double({min: 5, max: 60, noNaN: true}),
        fc.double({min: 0.05, max: 0.2, noNaN: true}),
        (diameter, share) => {
          const geometry = geometryOf(diameter, diameter * share)
          const twice = geometryOf(diameter * 2, diameter * share * 2)
          expect(geometry.stressArea.si).toBeGreaterThan(geometry.coreArea.si)
          expect(geometry.stressArea.si).toBeLessThan((Math.PI / 4) * (diameter / 1000) ** 2)
          expect(twice.stressArea.si / geometry.stressArea.si).toBeCloseTo(4, 9)
        },
      ),
    )
  })

  test.each([
    [10, 9],
    [10, 0],
  ])('a thread of %d mm refuses a pitch of %d mm', (diameter, pitch) => {
    expect(() => geometryOf(diameter, pitch)).toThrow('Unexpected pitch that leaves no core')
  })

  test('a size beyond the table is refused by name', () => {
    expect(() => coarseThread('M11')).toThrow('Unexpected size `M11`, expected one of M6')
  })
})
