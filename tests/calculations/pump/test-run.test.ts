import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {type AffinityChange, affinity, type PumpPoint} from '../../../src/calculations/pump/affinity.ts'
import {type CurvePoint, curveHead} from '../../../src/calculations/pump/curve-head.ts'
import {flowFromUllage} from '../../../src/calculations/pump/flow-from-ullage.ts'
import {type TestRunInput, testRun, testRunBands} from '../../../src/calculations/pump/test-run.ts'
import {
  cubicMetres,
  cubicMetresPerHour,
  kilowatts,
  metres,
  millimetres,
  minutes,
  revolutionsPerMinute,
} from '../../../src/quantities/named-units.ts'

const point: PumpPoint = {flow: cubicMetresPerHour(500), head: metres(120), power: kilowatts(181.6)}
const speeds = (from: number, to: number): AffinityChange => ({
  kind: 'speed',
  from: revolutionsPerMinute(from),
  to: revolutionsPerMinute(to),
})
const speed = fc.double({min: 300, max: 3600, noNaN: true})

describe('affinity laws', () => {
  test('by way of a third speed come to the same, and back to the start', () => {
    fc.assert(
      fc.property(speed, speed, speed, (one, two, three) => {
        const there = affinity(affinity(point, speeds(one, two)), speeds(two, three))
        const direct = affinity(point, speeds(one, three))
        expect(there.power.si / direct.power.si).toBeCloseTo(1, 9)
        expect(affinity(direct, speeds(three, one)).head.si).toBeCloseTo(point.head.si, 6)
      }),
    )
  })

  test('keep the efficiency: power goes with flow times head', () => {
    fc.assert(
      fc.property(speed, speed, (from, to) => {
        const scaled = affinity(point, speeds(from, to))
        const share = (one: PumpPoint) => (one.flow.si * one.head.si) / one.power.si
        expect(share(scaled) / share(point)).toBeCloseTo(1, 9)
      }),
    )
  })

  test('hold for the diameter as for the speed, within 75 to 133 %', () => {
    const diameters = (from: number, to: number): AffinityChange => ({
      kind: 'diameter',
      from: millimetres(from),
      to: millimetres(to),
    })
    const {flow, head, power} = affinity(point, speeds(400, 380))
    expect(affinity(point, diameters(400, 380))).toMatchObject({flow, head, power})
    expect(affinity(point, diameters(400, 300)).ratio.si).toBeCloseTo(0.75, 12)
    expect(() => affinity(point, diameters(400, 299))).toThrow(
      'Unexpected diameter of 74.8 % of the one before, expected 75 to 133 %',
    )
    expect(() => affinity(point, diameters(299, 400))).toThrow('Unexpected diameter of 133.8 %')
  })

  test('without a speed, or for a point below nothing, are refused', () => {
    expect(() => affinity(point, speeds(0, 1))).toThrow('Unexpected speed before of 0 rpm')
    expect(() => affinity(point, speeds(1, 0))).toThrow('Unexpected speed after of 0 rpm')
    const change = speeds(1, 1)
    expect(() => affinity({...point, flow: cubicMetresPerHour(-1)}, change)).toThrow('flow of −1 m³/h')
    expect(() => affinity({...point, head: metres(-1)}, change)).toThrow('head of −1 m')
    expect(() => affinity({...point, power: kilowatts(-1)}, change)).toThrow('power of −1 kW')
  })
})

const curveOf = (...points: readonly (readonly [number, number])[]): readonly CurvePoint[] =>
  points.map(([flow, head]) => ({flow: cubicMetresPerHour(flow), head: metres(head)}))
const curve = curveOf([0, 148], [150, 143], [300, 120])

describe('curve of the new pump', () => {
  test('passes through its points and is not read beyond them', () => {
    for (const one of curve) expect(curveHead(curve, one.flow)?.si).toBeCloseTo(one.head.si, 9)
    expect(curveHead(curve, cubicMetresPerHour(300.1))).toBeUndefined()
    expect(curveHead(curve.slice(1), cubicMetresPerHour(149.9))).toBeUndefined()
  })

  test('through shut-off and one more point is the parabola of the two', () => {
    fc.assert(
      fc.property(fc.double({min: 0, max: 300, noNaN: true}), (flow) => {
        const head = curveHead(curveOf([0, 148], [300, 120]), cubicMetresPerHour(flow))
        expect(head?.si).toBeCloseTo(148 - 28 * (flow / 300) ** 2, 9)
      }),
    )
  })

  test('with one point, turning back or without head is refused', () => {
    const flow = cubicMetresPerHour(0)
    expect(() => curveHead(curveOf([0, 148]), flow)).toThrow('Unexpected curve of 1 points, expected two')
    expect(() => curveHead(curveOf([0, 148], [0, 140]), flow)).toThrow('expected rising flows')
    expect(() => curveHead(curveOf([0, 148], [300, 0]), flow)).toThrow('head of the curve of 0 m')
    expect(() => curveHead(curveOf([-1, 148], [300, 120]), flow)).toThrow('flow of the curve of −1 m³/h')
  })
})

describe('test run', () => {
  const input: TestRunInput = {
    head: metres(148),
    speed: revolutionsPerMinute(2400),
    flow: cubicMetresPerHour(0),
    curveSpeed: revolutionsPerMinute(2400),
    curve,
  }
  const shareOf = (one: TestRunInput): number | undefined => {
    const result = testRun(one)
    return result.canBeJudged ? result.share.si : undefined
  }

  test('of a new pump at shut-off is 100 % of the curve, at any speed', () => {
    fc.assert(
      fc.property(speed, (rpm) => {
        const head = affinity({...point, head: metres(148)}, speeds(2400, rpm)).head
        expect(shareOf({...input, head, speed: revolutionsPerMinute(rpm)})).toBeCloseTo(1, 9)
      }),
    )
  })

  test('of a new pump at any point of its curve and any speed is 100 %, and of a worn one its share', () => {
    fc.assert(
      fc.property(
        speed,
        fc.double({min: 0, max: 299, noNaN: true}),
        fc.double({min: 0.5, max: 1, noNaN: true}),
        (rpm, flow, worn) => {
          const head = curveHead(curve, cubicMetresPerHour(flow)) ?? metres(0)
          const run = affinity({...point, flow: cubicMetresPerHour(flow), head}, speeds(2400, rpm))
          const read = {...input, flow: run.flow, speed: revolutionsPerMinute(rpm)}
          expect(shareOf({...read, head: metres(run.head.si * worn)})).toBeCloseTo(worn, 9)
        },
      ),
    )
  })

  test('at a speed that brings the flow to the end of the curve is still on the curve', () => {
    fc.assert(
      fc.property(speed, (rpm) => {
        const end = {...point, flow: cubicMetresPerHour(300), head: metres(120)}
        const {flow, head} = affinity(end, speeds(2400, rpm))
        expect(shareOf({...input, flow, head, speed: revolutionsPerMinute(rpm)})).toBeCloseTo(1, 8)
      }),
    )
  })

  test('shows scaled head, scaled flow and head of the curve', () => {
    const result = testRun({
      ...input,
      head: metres(93),
      flow: cubicMetresPerHour(150),
      speed: revolutionsPerMinute(2000),
    })
    expect(result).toMatchObject({canBeJudged: true})
    if (!result.canBeJudged) return
    expect(result.scaledFlow.si * 3600).toBeCloseTo(180, 9)
    expect(result.scaledHead.si).toBeCloseTo(93 * 1.44, 9)
    const expected = 143 - (23 * (180 ** 2 - 150 ** 2)) / (300 ** 2 - 150 ** 2)
    expect(result.curveHead.si).toBeCloseTo(expected, 9)
    expect(result.share.si).toBeCloseTo((93 * 1.44) / expected, 9)
  })

  test('cannot be judged without a flow unless at shut-off, without a speed, or beyond the curve', () => {
    const {flow: _flow, ...withoutFlow} = input
    const {speed: _speed, ...withoutSpeed} = input
    expect(testRun(withoutFlow)).toEqual({
      canBeJudged: false,
      reason: 'the flow is not known and the pump was not run at shut-off',
    })
    expect(testRun(withoutSpeed)).toEqual({canBeJudged: false, reason: 'the speed was not measured'})
    expect(testRun({...input, flow: cubicMetresPerHour(301)})).toEqual({
      canBeJudged: false,
      reason: 'the flow lies beyond the curve',
    })
    expect(testRun({...input, curve: curve.slice(1)})).toMatchObject({canBeJudged: false})
  })

  test('is watched below 95 % and opened below 90 % (common practice, no source)', () => {
    expect([testRunBands.watchBelow.si, testRunBands.actBelow.si]).toEqual([0.95, 0.9])
  })

  test('without head or speed, or with a flow backwards, is refused', () => {
    expect(() => testRun({...input, head: metres(0)})).toThrow('Unexpected measured head of 0 m')
    expect(() => testRun({...input, speed: revolutionsPerMinute(0)})).toThrow('measured speed of 0 rpm')
    expect(() => testRun({...input, curveSpeed: revolutionsPerMinute(0)})).toThrow('speed of the curve of 0')
    expect(() => testRun({...input, flow: cubicMetresPerHour(-1)})).toThrow('measured flow of −1 m³/h')
  })
})

describe('flow from ullage and time', () => {
  const input = {startVolume: cubicMetres(410), endVolume: cubicMetres(285), duration: minutes(25)}

  test('125 m³ in 25 min is 300 m³/h, as a tank that sinks minute by minute shows', () => {
    let volume = 410
    const flow = flowFromUllage(input).si
    for (let minute = 0; minute < 25; minute++) volume -= flow * 60
    expect(volume).toBeCloseTo(285, 9)
    expect(flow * 3600).toBeCloseTo(300, 9)
  })

  test('from a tank that does not sink, or in no time, is refused', () => {
    expect(() => flowFromUllage({...input, endVolume: cubicMetres(410)})).toThrow(
      'Unexpected volume at the end as large as at the start, expected a smaller one',
    )
    expect(() => flowFromUllage({...input, duration: minutes(0)})).toThrow('Unexpected duration of 0 min')
  })
})
