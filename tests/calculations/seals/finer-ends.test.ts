import {expect, test} from 'vitest'
import {elastomerShelfLife} from '../../../src/calculations/seals/elastomer-shelf-life.ts'
import {oRingSectionTolerance} from '../../../src/calculations/seals/o-ring-sections.ts'
import {oRingSqueeze, oRingSqueezeLimits} from '../../../src/calculations/seals/o-ring-squeeze.ts'
import {oRingFill} from '../../../src/calculations/seals/o-ring-stretch.ts'
import {inches, metres, millimetres} from '../../../src/quantities/named-units.ts'

const section = millimetres(5.33)
const groove = {
  section,
  insideDiameter: millimetres(85),
  grooveDiameter: millimetres(86),
  depth: millimetres(5),
  width: millimetres(8),
}

test('each refusal of a gland names what is wrong', () => {
  expect(() => oRingSqueeze({section: millimetres(0), depth: millimetres(1)})).toThrow(
    'Unexpected section or depth of nothing',
  )
  const gland = {section, depth: millimetres(4.5)}
  for (const [one, other] of [
    [0.1, -0.1],
    [-0.1, 0.1],
  ] as const)
    expect(() => oRingSqueezeLimits(gland, {section: millimetres(one), depth: millimetres(other)})).toThrow(
      'Unexpected tolerance below zero',
    )
  expect(() => oRingFill({...groove, depth: millimetres(0)})).toThrow('groove of no depth or width')
})

test('a ring that hangs loose on its groove fills none', () => {
  expect(oRingFill(groove).si).toBeGreaterThan(0.5)
  expect(() => oRingFill({...groove, grooveDiameter: millimetres(84.9)})).toThrow(
    'expected a groove at least as large as the inside diameter',
  )
})

// AS568, tolerances of sections in inches; from memory.
test.each([
  [1.78, 0.003],
  [2.62, 0.003],
  [3.53, 0.004],
  [5.33, 0.005],
  [6.99, 0.006],
])('a section of %d mm may be thicker or thinner by %d in', (mm, tolerance) => {
  expect(oRingSectionTolerance(millimetres(mm))?.si).toBeCloseTo(inches(tolerance).si, 12)
})

test('a year below 1000 is written with four digits', () => {
  expect(elastomerShelfLife('NR', '0990-01-01').validTo).toBe('0995-01-01')
})

test('a ring of just the volume of its groove goes in, a larger one does not', () => {
  // Powers of two leave no rounding: π/4·(1/2)²·π·1 is π·(π/8)·1/2·1.
  const half = metres(0.5)
  const filled = (share: number) =>
    oRingFill({
      section: half,
      insideDiameter: half,
      grooveDiameter: half,
      depth: half,
      width: metres((Math.PI / 8) * share),
    }).si
  expect(filled(1)).toBe(1)
  expect(() => filled(0.999)).toThrow('expected one that goes in')
})
