import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {type PhasedWearReading, splitAtRenewals} from '../../../src/calculations/wear/split-at-renewals.ts'
import {diametralMillimetres, hours} from '../../../src/quantities/named-units.ts'

function reading(at: number, clearance: number, phase: PhasedWearReading['phase'] = 'as-found') {
  return {hours: hours(at), clearance: diametralMillimetres(clearance), phase}
}

function shown(rings: ReturnType<typeof splitAtRenewals>): readonly (readonly number[])[] {
  return rings.map((ring) => ring.map((one) => Number((one.clearance.si * 1000).toFixed(2))))
}

describe('readings split at renewals', () => {
  test('what was left at a renewal is the first of the new ring, what was found there the last of the old one', () => {
    const readings = [
      reading(0, 0.48, 'as-left'),
      reading(4000, 0.6),
      reading(8000, 0.96),
      reading(8000, 0.47, 'as-left'),
      reading(12_000, 0.59),
    ]
    expect(shown(splitAtRenewals(readings, [hours(8000)]))).toEqual([
      [0.48, 0.6, 0.96],
      [0.47, 0.59],
    ])
  })

  test('without a renewal all readings are of one ring, in the order of the hours, found before left', () => {
    const readings = [reading(4000, 0.61, 'as-left'), reading(4000, 0.6), reading(0, 0.48, 'as-left')]
    expect(shown(splitAtRenewals(readings, []))).toEqual([[0.48, 0.6, 0.61]])
  })

  test('a ring that nobody read has no readings', () => {
    expect(shown(splitAtRenewals([reading(9000, 0.5)], [hours(5000), hours(2000)]))).toEqual([[], [], [0.5]])
  })

  test('each reading belongs to exactly one ring, and no reading of a ring lies beyond its renewals', () => {
    const times = fc.integer({min: 0, max: 20})
    const someReadings = fc.array(fc.tuple(times, fc.constantFrom('as-found' as const, 'as-left' as const)), {
      maxLength: 20,
    })
    fc.assert(
      fc.property(someReadings, fc.uniqueArray(times, {maxLength: 4}), (all, renewals) => {
        const readings = all.map(([at, phase]) => reading(at, 0.5, phase))
        const rings = splitAtRenewals(readings, renewals.map(hours))
        expect(rings.flat()).toHaveLength(readings.length)
        const ends = [...renewals].sort((one, other) => one - other)
        rings.forEach((ring, index) => {
          for (const one of ring) {
            expect(one.hours.si / 3600).toBeGreaterThanOrEqual(ends[index - 1] ?? 0)
            expect(one.hours.si / 3600).toBeLessThanOrEqual(ends[index] ?? 20)
          }
        })
      }),
    )
  })
})
