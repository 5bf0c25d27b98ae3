import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {
  torqueForWrench,
  type WrenchTorqueInput,
} from '../../../src/calculations/bolted-joints/torque-for-wrench.ts'
import {newtonMetres, percent} from '../../../src/quantities/named-units.ts'

const input: WrenchTorqueInput = {
  torque: newtonMetres(47.6),
  graduation: newtonMetres(1),
  meaning: 'target',
  accuracy: percent(4),
}

const torque = fc.double({min: 1, max: 3000, noNaN: true})
const graduation = fc.constantFrom(0.05, 0.1, 0.2, 0.25, 0.5, 1, 2, 5, 10)

describe('setting of a torque wrench', () => {
  test('47.6 N·m on a scale of whole N·m is 48, and 47 where 47.6 is a maximum', () => {
    expect(torqueForWrench(input).setting.si).toBe(48)
    expect(torqueForWrench({...input, meaning: 'maximum'}).setting.si).toBe(47)
  })

  test('with an error of 4 % gives from 46.08 to 49.92 N·m', () => {
    const {leastApplied, mostApplied, deviation} = torqueForWrench(input)
    expect([leastApplied.si, mostApplied.si]).toEqual([expect.closeTo(46.08, 9), expect.closeTo(49.92, 9)])
    expect(deviation.si).toBeCloseTo(48 / 47.6 - 1, 12)
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
    const result = torqueForWrench({
      ...input,
      torque: newtonMetres(computed),
      graduation: newtonMetres(step),
      meaning,
    })
    expect(result.setting.si).toBeCloseTo(setting, 9)
  })

  test('is a whole step, never above a maximum and less than a step below it', () => {
    fc.assert(
      fc.property(torque, graduation, (computed, step) => {
        fc.pre(computed >= step)
        const {setting} = torqueForWrench({
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
        const {setting} = torqueForWrench({
          ...input,
          torque: newtonMetres(computed),
          graduation: newtonMetres(step),
        })
        expect(Math.abs(setting.si - computed)).toBeLessThanOrEqual(step / 2 + 1e-9 * computed)
      }),
    )
  })

  test('of nothing, without a scale, with a hopeless wrench or below its first step is refused', () => {
    expect(() => torqueForWrench({...input, torque: newtonMetres(0)})).toThrow('Unexpected torque of 0 N·m')
    expect(() => torqueForWrench({...input, graduation: newtonMetres(0)})).toThrow('graduation of 0 N·m')
    for (const accuracy of [percent(-1), percent(51)])
      expect(() => torqueForWrench({...input, accuracy})).toThrow('%, expected from 0 to 50 %')
    expect(() => torqueForWrench({...input, torque: newtonMetres(0.6), meaning: 'maximum'})).toThrow(
      'Unexpected torque of 0.600 N·m for a wrench with steps of 1.00 N·m, expected a wrench with a finer',
    )
  })
})
