import {expect, test} from 'vitest'
import {splitAtRenewals} from '../../../src/calculations/wear/split-at-renewals.ts'
import {predictionHalfWidth, straightLine} from '../../../src/calculations/wear/straight-line.ts'
import {diametralMillimetres, hours} from '../../../src/quantities/named-units.ts'

test('three points have a band, two have none', () => {
  const line = straightLine([0, 1, 2], [0, 1.1, 1.9])
  expect(predictionHalfWidth(line, 3, 0.95)).toBeGreaterThan(0)
  expect(() => predictionHalfWidth({...line, count: 2}, 3, 0.95)).toThrow('expected at least 3')
})

test('renewals part the readings in the order of their hours, in whatever order they are told', () => {
  const reading = (at: number) => ({
    hours: hours(at),
    clearance: diametralMillimetres(0.5),
    phase: 'as-found' as const,
  })
  const rings = splitAtRenewals([reading(100), reading(2500), reading(1500)], [hours(2000), hours(1000)])
  expect(rings.map((ring) => ring.map((one) => Math.round(one.hours.si / 3600)))).toEqual([
    [100],
    [1500],
    [2500],
  ])
})
