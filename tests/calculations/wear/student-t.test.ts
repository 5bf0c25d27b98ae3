import {compiled, stdtri} from 'cephes'
import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {studentTQuantile} from '../../../src/calculations/wear/student-t.ts'

await compiled

/** Probability of a t up to the given one, by summing the density in small steps from the middle. */
function probabilityBySteps(t: number, degreesOfFreedom: number): number {
  const density = (x: number) => (1 + x ** 2 / degreesOfFreedom) ** (-(degreesOfFreedom + 1) / 2)
  const integral = (until: number) => {
    const steps = 20_000
    const angle = Math.atan(until / Math.sqrt(degreesOfFreedom))
    let sum = 0
    for (let step = 0; step < steps; step += 1) {
      const middle = ((step + 0.5) / steps) * angle
      const x = Math.sqrt(degreesOfFreedom) * Math.tan(middle)
      sum += (density(x) * Math.sqrt(degreesOfFreedom)) / Math.cos(middle) ** 2
    }
    return (sum * angle) / steps
  }
  return 0.5 + integral(t) / (2 * integral(1e12))
}

describe("quantile of Student's t", () => {
  test('agrees with an independent library to eleven digits', () => {
    fc.assert(
      fc.property(
        fc.integer({min: 1, max: 200}),
        fc.double({min: 0.001, max: 0.999, noNaN: true}).filter((one) => Math.abs(one - 0.5) > 0.01),
        (degrees, probability) => {
          expect(studentTQuantile(probability, degrees) / stdtri(degrees, probability)).toBeCloseTo(1, 10)
        },
      ),
    )
  })

  test.each([1, 2, 3, 4, 7, 30])(
    'has the area below the density it promises, %d degrees of freedom',
    (degrees) => {
      expect(probabilityBySteps(studentTQuantile(0.975, degrees), degrees)).toBeCloseTo(0.975, 6)
    },
  )

  test('is odd about the middle, rises with the probability and falls towards the normal 1.95996', () => {
    expect(studentTQuantile(0.5, 7)).toBe(0)
    expect(studentTQuantile(0.1, 7)).toBeCloseTo(-studentTQuantile(0.9, 7), 12)
    expect(studentTQuantile(0.99, 7)).toBeGreaterThan(studentTQuantile(0.975, 7))
    expect(studentTQuantile(0.975, 6)).toBeGreaterThan(studentTQuantile(0.975, 7))
    expect(studentTQuantile(0.975, 10_000)).toBeCloseTo(1.9602, 3)
  })

  test.each([
    [0, 5, 'Unexpected probability 0, expected one above 0 and below 1'],
    [1, 5, 'Unexpected probability 1'],
    [Number.NaN, 5, 'Unexpected probability NaN'],
    [0.9, 0, 'Unexpected 0 degrees of freedom, expected a whole number from 1 to 10000'],
    [0.9, 2.5, 'Unexpected 2.5 degrees of freedom'],
    [0.9, 10_001, 'Unexpected 10001 degrees of freedom'],
  ])('a probability of %d with %d degrees of freedom is refused', (probability, degrees, reason) => {
    expect(() => studentTQuantile(probability, degrees)).toThrow(reason)
  })
})
