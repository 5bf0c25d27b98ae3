import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {torqueWindow} from '../../../src/calculations/bolted-joints/torque-window.ts'
import {wrenchCovers} from '../../../src/calculations/bolted-joints/wrench-covers.ts'
import {wrenchExtensionSetting} from '../../../src/calculations/bolted-joints/wrench-extension.ts'
import {millimetres, newtonMetres, percent} from '../../../src/quantities/named-units.ts'

describe('torque window of a wrench', () => {
  test('47.6 N·m on a graduation of 1 N·m is set to 48 and gives 46.08 to 49.92 N·m at 4 %', () => {
    const window = torqueWindow({
      torque: newtonMetres(47.6),
      accuracy: percent(4),
      graduation: newtonMetres(1),
    })
    expect(window.setting.si).toBe(48)
    expect(window.least.si).toBeCloseTo(46.08, 12)
    expect(window.most.si).toBeCloseTo(49.92, 12)
  })

  test.each<[number, number, boolean, number]>([
    [47.6, 1, true, 47],
    [48, 1, true, 48],
    [47.5, 1, false, 48],
    [48.5, 1, false, 48],
    [230, 5, false, 230],
    [231.9, 5, true, 230],
    [12.35, 0.1, false, 12.4],
  ])(
    '%d N·m on a graduation of %d N·m, the most allowed: %s, is set to %d N·m',
    (torque, step, isMaximum, setting) => {
      const window = torqueWindow({
        torque: newtonMetres(torque),
        accuracy: percent(4),
        graduation: newtonMetres(step),
        isMaximum,
      })
      expect(window.setting.si).toBeCloseTo(setting, 12)
    },
  )

  test('without a graduation nothing is rounded, and the window is as wide as the class on both sides', () => {
    fc.assert(
      fc.property(
        fc.double({min: 1, max: 1000, noNaN: true}),
        fc.double({min: 0, max: 10, noNaN: true}),
        (torque, accuracy) => {
          const window = torqueWindow({torque: newtonMetres(torque), accuracy: percent(accuracy)})
          expect(window.setting.si).toBe(torque)
          expect((window.most.si - window.least.si) / torque).toBeCloseTo(accuracy / 50, 9)
        },
      ),
    )
  })

  test.each([
    [{torque: newtonMetres(0)}, 'Unexpected torque of 0 N·m'],
    [{accuracy: percent(11)}, 'Unexpected accuracy 0.11, expected 0 to 0.1'],
    [{accuracy: percent(-1)}, 'Unexpected accuracy -0.01, expected 0 to 0.1'],
    [{graduation: newtonMetres(100)}, 'Unexpected graduation of 100 N·m for 30 N·m, expected a finer one'],
  ])('%j is refused', (changed, reason) => {
    expect(() => torqueWindow({torque: newtonMetres(30), accuracy: percent(4), ...changed})).toThrow(reason)
  })
})

describe('a wrench', () => {
  const covers = (torque: number, begin: number, most: number) =>
    wrenchCovers({torque: newtonMetres(torque), begin: newtonMetres(begin), most: newtonMetres(most)})

  test.each<[number, number, number, string]>([
    [300, 5, 200, 'above the range'],
    [200.01, 40, 200, 'above the range'],
    [200, 40, 200, 'within the range'],
    [40, 5, 200, 'within the range'],
    [39.99, 5, 200, 'below the range'],
    [50, 60, 200, 'below the range'],
    [60, 60, 200, 'within the range'],
    [48, 5, 50, 'within the range'],
  ])('for %d N·m with a scale from %d to %d N·m is used %s', (torque, begin, most, reason) => {
    const result = covers(torque, begin, most)
    expect(result.reason).toBe(reason)
    expect(result.covers).toBe(reason === 'within the range')
    expect(result.shareOfMost.si).toBeCloseTo(torque / most, 12)
  })

  test('is used from 20 % of its most, or from the begin of its scale', () => {
    expect(covers(100, 5, 200).leastUsed.si).toBe(40)
    expect(covers(100, 60, 200).leastUsed.si).toBe(60)
  })

  test('a torque of nothing and a scale that does not rise are refused', () => {
    expect(() => covers(0, 5, 200)).toThrow('Unexpected torque of 0 N·m, expected one above zero')
    expect(() => covers(10, 200, 200)).toThrow('Unexpected scale from 200 to 200 N·m')
  })
})

describe('a wrench with an extension in line', () => {
  const setting = (torque: number, wrench: number, extended: number) =>
    wrenchExtensionSetting({
      torque: newtonMetres(torque),
      wrenchLength: millimetres(wrench),
      extendedLength: millimetres(extended),
    }).si

  test('the same pull of the hand turns both', () => {
    fc.assert(
      fc.property(
        fc.double({min: 1, max: 1000, noNaN: true}),
        fc.double({min: 100, max: 1000, noNaN: true}),
        fc.double({min: 0, max: 1000, noNaN: true}),
        (torque, wrench, more) => {
          const pull = setting(torque, wrench, wrench + more) / (wrench / 1000)
          expect((pull * (wrench + more)) / 1000 / torque).toBeCloseTo(1, 9)
        },
      ),
    )
  })

  test.each([
    [
      130,
      650,
      500,
      'Unexpected length of 0.5 m with the extension, expected at least the 0.65 m of the wrench',
    ],
    [130, 0, 500, 'Unexpected length'],
    [0, 500, 650, 'Unexpected torque of 0 N·m'],
  ])('%d N·m with %d and %d mm is refused', (torque, wrench, extended, reason) => {
    expect(() => setting(torque, wrench, extended)).toThrow(reason)
  })
})
