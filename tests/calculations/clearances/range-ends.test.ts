import {expect, test} from 'vitest'
import {annularGapLeakage} from '../../../src/calculations/clearances/annular-gap-leakage.ts'
import {runningClearance} from '../../../src/calculations/clearances/running-clearance.ts'
import {metres, millimetres, ratio} from '../../../src/quantities/named-units.ts'
import {quantityOf} from '../../../src/quantities/quantity.ts'

test('a gap of up to a twentieth of its diameter is one, a wider gap is none', () => {
  const leak = (mm: number) => () =>
    annularGapLeakage(
      {
        diameter: millimetres(200),
        gap: quantityOf('radial-clearance', mm / 1000),
        length: millimetres(30),
        head: metres(80),
        endLoss: ratio(1.5),
      },
      {kind: 'stated', friction: ratio(0.02)},
    )
  expect(leak(9.9)).not.toThrow()
  expect(leak(9.6)).not.toThrow()
  expect(leak(10.1)).toThrow('at most a twentieth')
})

test('a hub that just goes through its ring has a clearance of nothing, a larger one does not fit', () => {
  const gap = (hub: number) => runningClearance({bores: [millimetres(210)], hubs: [millimetres(hub)]})
  expect(gap(210).smallest.si).toBe(0)
  expect(() => gap(210.01)).toThrow('expected hubs smaller than bores')
})
