import {expect, test} from 'vitest'
import {judgeReading, type ReadingLimit} from '../../../src/calculations/verdicts/judge-reading.ts'
import {bar, barGauge} from '../../../src/quantities/named-units.ts'

test('a reading as far from a limit as the instrument is uncertain is within it, on both sides of nothing', () => {
  const verdict = (side: ReadingLimit<'gauge-pressure'>['side'], limit: number, reading: number) =>
    judgeReading<'gauge-pressure'>({
      reading: barGauge(reading),
      uncertainty: bar(0.1),
      limits: [{side, value: barGauge(limit), outside: 'STOP', holdsUncertainty: false}],
      gasFlow: undefined,
    }).verdict
  const nearly = 0.1 * (1 - 1e-12)
  expect(verdict('not-above', 0, -nearly)).toBe('WITHIN LIMITS')
  expect(verdict('not-below', -nearly, 0)).toBe('WITHIN LIMITS')
  expect(verdict('not-above', 0, -0.0999)).toBe('WATCH')
  expect(verdict('not-below', -0.0999, 0)).toBe('WATCH')
})
