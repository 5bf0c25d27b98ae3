import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {torqueForWrench} from '../../../src/calculations/bolted-joints/torque-for-wrench.ts'
import {convertQuantity} from '../../../src/quantities/convert-quantity.ts'
import {newtonMetres} from '../../../src/quantities/named-units.ts'

const input = {
  torque: newtonMetres(47.6),
  graduation: newtonMetres(1),
  meaning: 'target' as const,
}

const torque = fc.double({min: 1, max: 3000, noNaN: true})
const graduation = fc.constantFrom(0.05, 0.1, 0.2, 0.25, 0.5, 1, 2, 5, 10)

describe('setting of a torque wrench', () => {
  test('47.6 N·m on a scale of whole N·m is 48, and 47 where 47.6 is a maximum', () => {
    expect(torqueForWrench(input).si).toBe(48)
    expect(torqueForWrench({...input, meaning: 'maximum'}).si).toBe(47)
  })

  test.each([
    [57.5, 5, 'target', 60],
    [52.5, 5, 'target', 50],
    [57.5, 5, 'maximum', 55],
    [12.35, 0.1, 'target', 12.4],
    [12.25, 0.1, 'target', 12.2],
    [60, 0.2, 'maximum', 60],
    [0.3, 0.1, 'maximum', 0.3],
  ] as const)('%d N·m on steps of %d as a %s is set to %d', (computed, step, meaning, setting) => {
    const set = torqueForWrench({
      ...input,
      torque: newtonMetres(computed),
      graduation: newtonMetres(step),
      meaning,
    })
    expect(set.si).toBeCloseTo(setting, 9)
  })

  test('on a scale in lbf·ft is a whole step of that scale', () => {
    const poundFoot = convertQuantity('1 lbf·ft', 'N·m').value
    const set = torqueForWrench({...input, graduation: newtonMetres(poundFoot)})
    expect(set.si / poundFoot).toBeCloseTo(35, 9)
  })

  test('is a whole step, never above a maximum and less than a step below it', () => {
    fc.assert(
      fc.property(torque, graduation, (computed, step) => {
        fc.pre(computed >= step)
        const setting = torqueForWrench({
          ...input,
          torque: newtonMetres(computed),
          graduation: newtonMetres(step),
          meaning: 'maximum',
        })
        const steps = setting.si / step
        expect(Math.abs(steps - Math.round(steps))).toBeLessThan(1e-9)
        expect(setting.si).toBeLessThanOrEqual(computed * (1 + 1e-11))
        expect(computed - setting.si).toBeLessThan(step * (1 + 1e-9))
      }),
    )
  })

  test('of a target lies at most half a step away', () => {
    fc.assert(
      fc.property(torque, graduation, (computed, step) => {
        fc.pre(computed > step / 2 + 1e-9)
        const setting = torqueForWrench({
          ...input,
          torque: newtonMetres(computed),
          graduation: newtonMetres(step),
        })
        expect(Math.abs(setting.si - computed)).toBeLessThanOrEqual(step / 2 + 1e-9 * computed)
      }),
    )
  })

  test('of nothing, without a scale or below its first step is refused', () => {
    expect(() => torqueForWrench({...input, torque: newtonMetres(0)})).toThrow('Unexpected torque of 0 N·m')
    expect(() => torqueForWrench({...input, graduation: newtonMetres(0)})).toThrow('graduation of 0 N·m')
    expect(() => torqueForWrench({...input, torque: newtonMetres(0.6), meaning: 'maximum'})).toThrow(
      'Unexpected graduation of 1 N·m for 0.6 N·m, expected a finer one',
    )
  })
})
