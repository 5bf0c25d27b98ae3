import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {coarseSizes, coarseThread} from '../../../src/calculations/bolted-joints/coarse-threads.ts'
import {threadGeometry} from '../../../src/calculations/bolted-joints/thread-geometry.ts'
import {millimetres} from '../../../src/quantities/named-units.ts'
import {coarseThreads, coreAreas, fineThreads} from '../../published-values/iso-metric-threads.ts'

function geometryOf(diameter: number, pitch: number) {
  return threadGeometry({nominalDiameter: millimetres(diameter), pitch: millimetres(pitch)})
}

describe('thread geometry', () => {
  test.each(coarseThreads)('$size agrees with the published diameters and nominal stress area', (row) => {
    const geometry = geometryOf(row.diameter, row.pitch)
    expect(Math.abs(geometry.pitchDiameter.si * 1000 - row.d2)).toBeLessThanOrEqual(0.00051)
    expect(Math.abs(geometry.minorDiameter.si * 1000 - row.d1)).toBeLessThanOrEqual(0.00051)
    expect(Math.abs(geometry.coreDiameter.si * 1000 - row.d3)).toBeLessThanOrEqual(0.00051)
    expect(Number((geometry.stressArea.si * 1e6).toPrecision(3))).toBe(row.nominalArea)
  })

  test.each(fineThreads)(
    '%s agrees with the published fine-thread diameters',
    (_size, diameter, pitch, d2, d3, nutMinor) => {
      const geometry = geometryOf(diameter, pitch)
      expect(Math.abs(geometry.pitchDiameter.si * 1000 - d2)).toBeLessThanOrEqual(0.00051)
      expect(Math.abs(geometry.coreDiameter.si * 1000 - d3)).toBeLessThanOrEqual(0.00051)
      expect(Math.abs(geometry.minorDiameter.si * 1000 - nutMinor)).toBeLessThanOrEqual(0.00051)
    },
  )

  test.each(coreAreas)('%s agrees with the published core area', (size, area) => {
    expect(Math.abs(threadGeometry(coarseThread(size)).coreArea.si * 1e6 - area)).toBeLessThanOrEqual(
      0.011 + area * 1e-5,
    )
  })

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
