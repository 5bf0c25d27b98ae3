import {expect, test} from 'vitest'
import {wearForecast} from '../../../src/calculations/wear/wear-forecast.ts'
import {quantityOf} from '../../../src/quantities/quantity.ts'

test('a limit that is reached at the very end of the trusted span is not beyond it', () => {
  const clearance = (metres: number) => quantityOf('diametral-clearance', metres)
  // One metre a second from nothing: a limit of 3 m is reached at 3 s, half a span of 2 s beyond it.
  const reached = (limit: number) =>
    wearForecast({
      readings: [0, 1, 2].map((at) => ({hours: quantityOf('time', at), clearance: clearance(at)})),
      limit: clearance(limit),
      instrumentUncertainty: clearance(0),
    }).limitReached?.beyondSpan
  expect([2.999, 3, 3.001].map(reached)).toEqual([false, false, true])
})
