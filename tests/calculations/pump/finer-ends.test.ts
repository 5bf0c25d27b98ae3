import {expect, test} from 'vitest'
import {affinity} from '../../../src/calculations/pump/affinity.ts'
import {curveHead} from '../../../src/calculations/pump/curve-head.ts'
import {
  cubicMetresPerHour,
  kilowatts,
  metres,
  millimetres,
  revolutionsPerMinute,
} from '../../../src/quantities/named-units.ts'

test('a curve that begins above shut-off is read from its first point to its last, to their last digits', () => {
  const curve = [
    {flow: cubicMetresPerHour(100), head: metres(120)},
    {flow: cubicMetresPerHour(300), head: metres(80)},
  ]
  const head = (flow: number) => curveHead(curve, cubicMetresPerHour(flow))?.si
  for (const share of [1 - 1e-12, 1, 1 + 1e-12]) {
    expect(head(100 * share)).toBeCloseTo(120, 6)
    expect(head(300 * share)).toBeCloseTo(80, 6)
  }
  expect([head(99.999), head(300.001)]).toEqual([undefined, undefined])
})

test('a change of nothing is refused in the unit of what changes', () => {
  const point = {flow: cubicMetresPerHour(100), head: metres(100), power: kilowatts(50)}
  const speed = {kind: 'speed', from: revolutionsPerMinute(0), to: revolutionsPerMinute(1)} as const
  expect(() => affinity(point, speed)).toThrow('Unexpected speed before of 0 rpm')
  const diameter = {kind: 'diameter', from: millimetres(400), to: millimetres(0)} as const
  expect(() => affinity(point, diameter)).toThrow('Unexpected diameter after of 0 mm')
})
