import {expect, test} from 'vitest'
import {runOut} from '../../../src/calculations/run-out/run-out.ts'
import {quantityOf} from '../../../src/quantities/quantity.ts'

test('an eccentricity of a ten-billionth of an oval is its rounding and has no direction', () => {
  const stations = Array.from({length: 8}, (_, index) => (Math.PI * index) / 4)
  const dial = (eccentricity: number) =>
    runOut(
      stations.map((angle) =>
        quantityOf('length-difference', Math.cos(2 * angle) + eccentricity * Math.cos(angle)),
      ),
    )
  expect(dial(1e-10)).not.toHaveProperty('phase')
  expect(dial(1e-7).phase?.si).toBeCloseTo(0, 6)
})
