import {expect, test} from 'vitest'
import {entryLimit} from '../../../src/calculations/entry/entry-limit.ts'
import {gasBuildUp} from '../../../src/calculations/entry/gas-build-up.ts'
import {cubicMetres, minutes, ratio} from '../../../src/quantities/named-units.ts'
import {quantityOf} from '../../../src/quantities/quantity.ts'

test('a limit is at most the whole', () => {
  expect(entryLimit({limit: ratio(1), share: ratio(0.5)}).si).toBe(0.5)
  expect(() => entryLimit({limit: ratio(1.001), share: ratio(0.5)})).toThrow('above 100 %')
})

test('a source as large as the air flow fills the space, a larger one is refused', () => {
  const steady = (source: number) =>
    gasBuildUp({
      volume: cubicMetres(100),
      flow: quantityOf('volume-flow', 0.25),
      mixing: ratio(1),
      source: quantityOf('volume-flow', source),
      from: ratio(0),
      supply: ratio(0),
      time: minutes(10),
    }).steady.si
  expect(steady(0.25)).toBe(1)
  expect(() => steady(0.26)).toThrow('as large as the air flow')
})
