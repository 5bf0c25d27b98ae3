import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {
  judgeReading,
  type ReadingLimit,
  type ReadingToJudge,
  type Verdict,
} from '../../../src/calculations/verdicts/judge-reading.ts'
import {
  bar,
  barGauge,
  degreesCelsius,
  diametralMillimetres,
  kelvinDifference,
  litres,
} from '../../../src/quantities/named-units.ts'

type Clearance = 'diametral-clearance'

const renewal: ReadingLimit<Clearance> = {
  side: 'not-above',
  value: diametralMillimetres(0.96),
  outside: 'RENEW',
  holdsUncertainty: false,
}
const least: ReadingLimit<Clearance> = {
  side: 'not-below',
  value: diametralMillimetres(0.4),
  outside: 'STOP',
  holdsUncertainty: false,
}

function judge(reading: number, changed: Partial<ReadingToJudge<Clearance>> = {}) {
  return judgeReading<Clearance>({
    reading: diametralMillimetres(reading),
    uncertainty: diametralMillimetres(0.03),
    limits: [renewal],
    gasFlow: undefined,
    ...changed,
  })
}

describe('a reading with a limit not to be exceeded, 0.96 mm with 0.03 mm uncertainty', () => {
  test.each<[number, Verdict]>([
    [0.97, 'RENEW'],
    [0.96, 'WATCH'],
    [0.95, 'WATCH'],
    [0.94, 'WATCH'],
    [0.93, 'WITHIN LIMITS'],
    [0.92, 'WITHIN LIMITS'],
  ])('of %d mm is %s', (reading, verdict) => {
    expect(judge(reading).verdict).toBe(verdict)
  })

  test('tells the limit that decided and the room left, negative beyond it', () => {
    expect(judge(0.97).decidedBy).toBe(renewal)
    expect(judge(0.97).room?.kind).toBe('diametral-clearance')
    expect((judge(0.97).room?.si ?? 0) * 1000).toBeCloseTo(-0.01, 9)
    expect((judge(0.93).room?.si ?? 0) * 1000).toBeCloseTo(0.03, 9)
  })

  test('takes the action that the limit states', () => {
    expect(judge(0.97, {limits: [{...renewal, outside: 'STOP'}]}).verdict).toBe('STOP')
  })
})

describe('a reading with a limit not to be fallen below, 0.40 mm with 0.03 mm uncertainty', () => {
  test.each<[number, Verdict]>([
    [0.39, 'STOP'],
    [0.4, 'WATCH'],
    [0.41, 'WATCH'],
    [0.42, 'WATCH'],
    [0.43, 'WITHIN LIMITS'],
    [0.44, 'WITHIN LIMITS'],
  ])('of %d mm is %s', (reading, verdict) => {
    expect(judge(reading, {limits: [least]}).verdict).toBe(verdict)
  })
})

describe('a reading with two limits', () => {
  test.each<[number, Verdict]>([
    [0.39, 'STOP'],
    [0.4, 'WATCH'],
    [0.41, 'WATCH'],
    [0.43, 'WITHIN LIMITS'],
    [0.7, 'WITHIN LIMITS'],
    [0.93, 'WITHIN LIMITS'],
    [0.95, 'WATCH'],
    [0.96, 'WATCH'],
    [0.97, 'RENEW'],
  ])('of %d mm is %s, in either order of the limits', (reading, verdict) => {
    expect(judge(reading, {limits: [least, renewal]}).verdict).toBe(verdict)
    expect(judge(reading, {limits: [renewal, least]}).verdict).toBe(verdict)
  })

  test('takes the worse of both where they contradict each other', () => {
    const narrow = [
      {...renewal, value: diametralMillimetres(0.5)},
      {...least, value: diametralMillimetres(0.6)},
    ]
    expect(judge(0.55, {limits: narrow}).verdict).toBe('STOP')
    expect(judge(0.55, {limits: [...narrow].reverse()}).verdict).toBe('STOP')
  })

  test('names the limit that decided', () => {
    expect(judge(0.95, {limits: [least, renewal]}).decidedBy).toBe(renewal)
    expect(judge(0.41, {limits: [least, renewal]}).decidedBy).toBe(least)
  })
})

describe('a limit on a change, which holds the uncertainty already', () => {
  const change = {...renewal, value: diametralMillimetres(0.05), holdsUncertainty: true}

  test.each<[number, Verdict]>([
    [0.06, 'RENEW'],
    [0.05, 'WATCH'],
    [0.04, 'WITHIN LIMITS'],
  ])('has no band below it: %d mm is %s', (reading, verdict) => {
    expect(judge(reading, {limits: [change]}).verdict).toBe(verdict)
    expect(judge(reading, {limits: [change], uncertainty: undefined}).verdict).toBe(verdict)
  })
})

describe('what is missing', () => {
  const unknown = {...least, value: undefined}

  test('a reading without uncertainty, limit or figure cannot be judged', () => {
    expect(judge(0.5, {uncertainty: undefined}).verdict).toBe('CANNOT JUDGE')
    expect(judge(0.96, {uncertainty: undefined}).verdict).toBe('CANNOT JUDGE')
    expect(judge(0.5, {limits: [unknown]}).verdict).toBe('CANNOT JUDGE')
    expect(judge(0.5, {limits: []}).verdict).toBe('CANNOT JUDGE')
    expect(judge(0.5, {reading: undefined}).verdict).toBe('CANNOT JUDGE')
  })

  test('one unknown limit of two makes a good reading unjudged, also one to be watched', () => {
    expect(judge(0.5, {limits: [renewal, unknown]}).verdict).toBe('CANNOT JUDGE')
    expect(judge(0.95, {limits: [renewal, unknown]})).toMatchObject({
      verdict: 'CANNOT JUDGE',
      decidedBy: unknown,
    })
  })

  test('never softens a reading that is beyond a known limit', () => {
    expect(judge(0.97, {uncertainty: undefined}).verdict).toBe('RENEW')
    expect(judge(0.97, {limits: [unknown, renewal]}).verdict).toBe('RENEW')
    expect(judge(0.97, {uncertainty: diametralMillimetres(5)}).verdict).toBe('RENEW')
  })
})

describe('a purged volume', () => {
  const purged = (volume: number, gasFlow: 'confirmed' | 'not confirmed' | undefined) =>
    judgeReading<'volume'>({
      reading: litres(volume),
      uncertainty: litres(0.05),
      limits: [{side: 'not-above', value: litres(0.5), outside: 'STOP', holdsUncertainty: false}],
      gasFlow,
    }).verdict

  test('of zero counts only when gas was seen to flow', () => {
    expect(purged(0, 'not confirmed')).toBe('NOT VALID')
    expect(purged(0, 'confirmed')).toBe('WITHIN LIMITS')
  })

  test('of more than zero is judged with or without it, and other readings of zero are judged too', () => {
    expect(purged(0.51, 'not confirmed')).toBe('STOP')
    expect(purged(0.1, 'not confirmed')).toBe('WITHIN LIMITS')
    expect(purged(0, undefined)).toBe('WITHIN LIMITS')
  })
})

describe('any reading', () => {
  const tenths = fc.integer({min: 0, max: 200}).map((one) => one / 100)
  const order: readonly Verdict[] = ['WITHIN LIMITS', 'WATCH', 'RENEW']

  test('agrees with the rule counted in whole hundredths', () => {
    fc.assert(
      fc.property(tenths, tenths, tenths, (reading, limit, uncertainty) => {
        const [read, most, about] = [reading, limit, uncertainty].map((one) => Math.round(one * 100))
        const room = (most ?? 0) - (read ?? 0)
        const expected = room < 0 ? 'RENEW' : room === 0 || room < (about ?? 0) ? 'WATCH' : 'WITHIN LIMITS'
        const {verdict} = judge(reading, {
          uncertainty: diametralMillimetres(uncertainty),
          limits: [{...renewal, value: diametralMillimetres(limit)}],
        })
        expect(verdict).toBe(expected)
      }),
    )
  })

  test('gets no better as it rises towards a limit not to be exceeded', () => {
    fc.assert(
      fc.property(tenths, tenths, (one, other) => {
        const lower = order.indexOf(judge(Math.min(one, other)).verdict)
        expect(order.indexOf(judge(Math.max(one, other)).verdict)).toBeGreaterThanOrEqual(lower)
      }),
    )
  })

  test('of pressure or temperature takes its uncertainty as a difference', () => {
    const pressure = judgeReading<'gauge-pressure'>({
      reading: barGauge(2.98),
      uncertainty: bar(0.02),
      limits: [{side: 'not-below', value: barGauge(2.97), outside: 'STOP', holdsUncertainty: false}],
      gasFlow: undefined,
    })
    expect(pressure.verdict).toBe('WATCH')
    expect(pressure.room?.kind).toBe('pressure-difference')
    const temperature = judgeReading<'temperature'>({
      reading: degreesCelsius(59),
      uncertainty: kelvinDifference(1),
      limits: [{side: 'not-above', value: degreesCelsius(60), outside: 'STOP', holdsUncertainty: false}],
      gasFlow: undefined,
    })
    expect(temperature.verdict).toBe('WITHIN LIMITS')
  })

  test('with a negative uncertainty is refused', () => {
    expect(() => judge(0.5, {uncertainty: diametralMillimetres(-0.01)})).toThrow(
      /^Unexpected uncertainty of .* in SI, expected zero or more$/u,
    )
  })
})
