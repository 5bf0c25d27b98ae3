import {describe, expect, test} from 'vitest'
import {airToVent} from '../../../src/calculations/oil/air-to-vent.ts'
import {circulationTime} from '../../../src/calculations/oil/circulation-time.ts'
import {oilCompression} from '../../../src/calculations/oil/oil-compression.ts'
import {oilExpansion} from '../../../src/calculations/oil/oil-expansion.ts'
import {
  bar,
  count,
  kelvinDifference,
  litres,
  litresPerMinute,
  perKelvin,
} from '../../../src/quantities/named-units.ts'
import {holdEnds, type RangeEnds} from '../range-ends.ts'

const rows: readonly RangeEnds[] = [
  [
    'oil that was filled',
    (l) => airToVent({content: litres(160), filled: litres(l)}),
    [0, 160, 160 * (1 + 1e-13)],
    [-1, 160.01],
  ],
  [
    'changes of the oil',
    (n) => circulationTime({volume: litres(160), flow: litresPerMinute(40), changes: count(n)}),
    [1, 1.5, 10],
    [0, 0.99],
  ],
  [
    'pressure on oil of 1 000 bar',
    (p) => oilCompression({volume: litres(1), bulkModulus: bar(1000), pressureRise: bar(p)}),
    [100, -100],
    [101, -101],
  ],
  [
    'warming of oil that grows by a hundredth each kelvin',
    (k) => oilExpansion({volume: litres(1), expansion: perKelvin(0.01), rise: kelvinDifference(k)}),
    [19.9, -19.9],
    [20, -20, 21, -21],
  ],
]

describe('the ends of a stated range are inside it, and nothing beyond', () => {
  test.each(rows)('%s', (_what, run, accepted, refused) => {
    holdEnds(run, accepted, refused)
  })
})

test('a pump filled to the last drop holds no air', () => {
  expect(airToVent({content: litres(160), filled: litres(160)}).si).toBe(0)
  expect(airToVent({content: litres(160), filled: litres(159)}).si).toBeCloseTo(0.001, 9)
})
