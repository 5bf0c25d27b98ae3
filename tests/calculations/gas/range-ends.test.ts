import {describe, expect, test} from 'vitest'
import {annulusVolume} from '../../../src/calculations/gas/annulus-volume.ts'
import {bottleContent} from '../../../src/calculations/gas/bottle-content.ts'
import {fillGas} from '../../../src/calculations/gas/fill-gas.ts'
import {liquidColumn} from '../../../src/calculations/gas/liquid-column.ts'
import {liquidLeakRate} from '../../../src/calculations/gas/liquid-leak-rate.ts'
import {absoluteTemperature} from '../../../src/calculations/gas/molar-gas.ts'
import {molarLeakRate} from '../../../src/calculations/gas/molar-leak-rate.ts'
import {pressureHold} from '../../../src/calculations/gas/pressure-hold.ts'
import {purgeCycles} from '../../../src/calculations/gas/purge-cycles.ts'
import {absoluteFromGauge} from '../../../src/calculations/gas/standard-air.ts'
import {tightnessHoldTime} from '../../../src/calculations/gas/tightness-hold-time.ts'
import {changesToReach, contentAfterChanges} from '../../../src/calculations/gas/well-mixed.ts'
import {quantityOf} from '../../../src/quantities/quantity.ts'
import {holdEnds, type RangeEnds} from '../range-ends.ts'

const absolute = (pa: number) => quantityOf('absolute-pressure', pa)
const gauge = (pa: number) => quantityOf('gauge-pressure', pa)
const kelvin = (k: number) => quantityOf('temperature', k)
const cubic = (m3: number) => quantityOf('volume', m3)
const seconds = (s: number) => quantityOf('time', s)
const share = (one: number) => quantityOf('ratio', one)
const long = (m: number) => quantityOf('length', m)

const bottle = {
  volume: cubic(0.05),
  full: absolute(2e7),
  least: absolute(1e5),
  compressibility: share(1),
  reference: absolute(101_325),
}
const filling = {volume: cubic(0.07), from: absolute(1e5), to: absolute(4e5), reference: absolute(101_325)}
const leak = {volume: cubic(0.0001), running: seconds(3600), elapsed: seconds(86_400)}
const molar = {
  volume: cubic(0.07),
  start: absolute(4e5),
  end: absolute(3.9e5),
  startTemperature: kelvin(293),
  endTemperature: kelvin(293),
  duration: seconds(1800),
}
const hold = {
  start: gauge(3e5),
  end: gauge(2.9e5),
  startTemperature: kelvin(293),
  endTemperature: kelvin(290),
  startBarometer: absolute(101_325),
  endBarometer: absolute(101_325),
}
const cycles = {
  from: share(0.21),
  to: share(0.02),
  supply: share(0),
  low: absolute(1e5),
  high: absolute(3e5),
  reference: absolute(101_325),
}
const timed = {
  volume: cubic(0.07),
  testPressure: gauge(3e5),
  barometer: absolute(101_325),
  temperature: kelvin(293),
  gaugeResolution: quantityOf('pressure-difference', 1000),
  temperatureUncertainty: quantityOf('temperature-difference', 0.5),
  allowedLeak: quantityOf('volume-flow', 3e-7),
  least: seconds(1800),
}

const rows: readonly RangeEnds[] = [
  [
    'inner pipe',
    (m) => annulusVolume({outerDiameter: long(0.16), innerDiameter: long(m), length: long(10)}),
    [0, 0.159],
    [-0.01, 0.16],
  ],
  ['volume of a bottle', (m3) => bottleContent({...bottle, volume: cubic(m3)}), [0.05], [0, -1]],
  ['reference of a bottle', (pa) => bottleContent({...bottle, reference: absolute(pa)}), [0.5, 1e5], [0, -1]],
  ['compressibility', (z) => bottleContent({...bottle, compressibility: share(z)}), [0.9], [0, -1]],
  [
    'least pressure of a bottle',
    (pa) => bottleContent({...bottle, least: absolute(pa)}),
    [0, 0.5],
    [-1, 2e7],
  ],
  [
    'full bottle that ends empty',
    (pa) => bottleContent({...bottle, least: absolute(0), full: absolute(pa)}),
    [0.5],
    [0],
  ],
  ['reference of a filling', (pa) => fillGas({...filling, reference: absolute(pa)}), [0.5], [0, -1]],
  ['volume of a filling', (m3) => fillGas({...filling, volume: cubic(m3)}), [0.07], [0, -1]],
  ['density', (si) => liquidColumn(quantityOf('density', si), long(10)), [0.5, 1000], [0, -1]],
  ['height of a column', (m) => liquidColumn(quantityOf('density', 1000), long(m)), [0, 10], [-0.01]],
  [
    'time since the last purge',
    (s) => liquidLeakRate({...leak, running: seconds(0), elapsed: seconds(s)}),
    [0.5],
    [0, -1],
  ],
  ['running hours', (s) => liquidLeakRate({...leak, running: seconds(s)}), [0, 86_400], [-1, 86_401]],
  ['absolute temperature', (k) => absoluteTemperature(kelvin(k)), [0.5], [0, -1]],
  ['duration of a molar leak', (s) => molarLeakRate({...molar, duration: seconds(s)}), [0.5], [0, -1]],
  ['volume of a molar leak', (m3) => molarLeakRate({...molar, volume: cubic(m3)}), [0.07], [0, -1]],
  [
    'temperature at the start of a hold',
    (k) => pressureHold({...hold, startTemperature: kelvin(k)}),
    [0.5],
    [0, -1],
  ],
  [
    'temperature at the end of a hold',
    (k) => pressureHold({...hold, endTemperature: kelvin(k)}),
    [0.5],
    [0, -1],
  ],
  ['low pressure of purge cycles', (pa) => purgeCycles({...cycles, low: absolute(pa)}), [0.5, 1e5], [0, 3e5]],
  ['reference of purge cycles', (pa) => purgeCycles({...cycles, reference: absolute(pa)}), [0.5], [0, -1]],
  [
    'gauge pressure over 1 bar',
    (pa) => absoluteFromGauge(gauge(pa), absolute(1e5)),
    [-99_999.5, 0],
    [-1e5, -1e5 - 1],
  ],
  ['volume of a hold', (m3) => tightnessHoldTime({...timed, volume: cubic(m3)}), [0.07], [0, -1]],
  [
    'allowed leak',
    (si) => tightnessHoldTime({...timed, allowedLeak: quantityOf('volume-flow', si)}),
    [3e-7],
    [0, -1],
  ],
  ['temperature of a hold', (k) => tightnessHoldTime({...timed, temperature: kelvin(k)}), [0.5], [0, -1]],
  [
    'count of changes',
    (n) => contentAfterChanges({from: share(0.21), supply: share(0), changes: quantityOf('count', n)}),
    [0, 5],
    [-0.1],
  ],
]

describe('the ends of a stated range are inside it, and nothing beyond', () => {
  test.each(rows)('%s', (_what, run, accepted, refused) => {
    holdEnds(run, accepted, refused)
  })
})

test('a hold that takes a hundred cycles is the longest', () => {
  // ln(high/low) of one cycle is a hundredth of what is wanted for exactly a hundred cycles.
  const wanted = Math.log(0.21 / 0.02)
  const high = (count: number) => absolute(1e5 * Math.exp(wanted / count))
  expect(purgeCycles({...cycles, high: high(99.5)}).cycles.si).toBe(100)
  expect(() => purgeCycles({...cycles, high: high(100.5)})).toThrow('at most 100')
})

test('a hold says by how much each kelvin moves the pressure: the absolute pressure over the absolute temperature', () => {
  expect(pressureHold(hold).changePerKelvin.si).toBeCloseTo((3e5 + 101_325) / 293, 6)
})

test('a leak rate needs volume and duration, and one of them alone gives none', () => {
  expect(pressureHold({...hold, volume: cubic(0.07)})).not.toHaveProperty('leakRate')
  expect(pressureHold({...hold, duration: seconds(1800)})).not.toHaveProperty('leakRate')
  expect(pressureHold({...hold, volume: cubic(0.07), duration: seconds(1800)})).toHaveProperty('leakRate')
})

test('a content moves towards the supply from above and from below, and never past it or away', () => {
  const changes = (from: number, to: number, supply: number) => () =>
    changesToReach({from: share(from), to: share(to), supply: share(supply)}).si
  expect(changes(0.21, 0.02, 0)()).toBeCloseTo(Math.log(0.21 / 0.02), 12)
  expect(changes(0.02, 0.2, 0.209)()).toBeCloseTo(Math.log((0.209 - 0.02) / (0.209 - 0.2)), 12)
  expect(changes(0.02, 0.02, 0.209)()).toBe(0)
  for (const never of [
    changes(0.02, 0.01, 0.209),
    changes(0.21, 0.22, 0),
    changes(0.21, 0, 0),
    changes(0.02, 0.21, 0.209),
  ])
    expect(never).toThrow('never quite reached')
})
