import {expect, test} from 'vitest'
import {flowFromUllage} from '../../../src/calculations/pump/flow-from-ullage.ts'
import {cubicMetres, hours} from '../../../src/quantities/named-units.ts'

test('half a cubic metre less is a flow too, an equal volume is none', () => {
  const flow = (end: number) =>
    flowFromUllage({startVolume: cubicMetres(10), endVolume: cubicMetres(end), duration: hours(1)})
  expect(flow(9.5).si).toBeCloseTo(0.5 / 3600, 12)
  expect(() => flow(10)).toThrow('as large as at the start')
})
