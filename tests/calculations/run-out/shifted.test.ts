import fc from 'fast-check'
import {expect, test} from 'vitest'
import {runOut} from '../../../src/calculations/run-out/run-out.ts'
import {quantityOf} from '../../../src/quantities/quantity.ts'

function dial(values: readonly number[]): ReturnType<typeof runOut> {
  return runOut(values.map((value) => quantityOf('length-difference', value)))
}

const stations = fc.array(fc.integer({min: -500, max: 500}), {minLength: 3, maxLength: 12})

test('a dial that is set to another zero shows the same run-out', () => {
  fc.assert(
    fc.property(stations, fc.integer({min: -900, max: 900}), (values, zero) => {
      const [found, shifted] = [dial(values), dial(values.map((value) => value + zero))]
      expect(shifted.eccentricity.si).toBeCloseTo(found.eccentricity.si, 6)
      expect(shifted.residualRange.si).toBeCloseTo(found.residualRange.si, 6)
      expect(shifted.mean.si).toBeCloseTo(found.mean.si + zero, 6)
    }),
  )
})

test('a shaft that runs true has no phase, however far its zero is off', () => {
  for (const zero of [0, 1, -7, 1000]) expect(dial([zero, zero, zero, zero])).not.toHaveProperty('phase')
  expect(dial([0.1, 0.3, 0.2])).toHaveProperty('phase')
})

test('a peak at the first station has the phase zero, and none is below zero', () => {
  expect(dial([1, 0, -1, 0]).phase?.si).toBe(0)
  expect(dial([0, -1, 0, 1]).phase?.si).toBeCloseTo(1.5 * Math.PI, 9)
})
