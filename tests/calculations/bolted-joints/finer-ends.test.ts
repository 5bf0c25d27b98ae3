import {describe, expect, test} from 'vitest'
import {nominalStressArea} from '../../../src/calculations/bolted-joints/bolt-strength.ts'
import {lubricantSwap} from '../../../src/calculations/bolted-joints/lubricant-swap.ts'
import {strengthOf} from '../../../src/calculations/bolted-joints/property-classes.ts'
import {threadGeometry} from '../../../src/calculations/bolted-joints/thread-geometry.ts'
import {tighteningPasses} from '../../../src/calculations/bolted-joints/tightening-passes.ts'
import {tighteningTorqueNoteOf} from '../../../src/calculations/bolted-joints/tightening-torque.ts'
import {torqueWindow} from '../../../src/calculations/bolted-joints/torque-window.ts'
import {
  metres,
  millimetres,
  newtonMetres,
  newtonsPerSquareMillimetre,
  ratio,
} from '../../../src/quantities/named-units.ts'
import {quantityOf} from '../../../src/quantities/quantity.ts'

describe('the last digits of a converted figure', () => {
  test('make no other lubrication of the same one', () => {
    const friction = (one: number) => ({threadFriction: ratio(one), headFriction: ratio(one)})
    const outcome = (set: number) =>
      lubricantSwap({
        thread: {nominalDiameter: millimetres(12), pitch: millimetres(1.75)},
        bearingDiameter: millimetres(16.63),
        holeDiameter: millimetres(13.5),
        yieldStress: newtonsPerSquareMillimetre(600),
        utilisation: ratio(0.7),
        edition: '2003',
        setFor: friction(set),
        appliedTo: friction(0.12),
      }).outcome
    expect(outcome(0.12 * (1 + 1e-12))).toBe('within')
    expect(outcome(0.12 * (1 + 1e-6))).toBe('above utilisation')
  })

  test('leave the last pass the whole torque', () => {
    const passes = (last: number) => tighteningPasses(newtonMetres(100), [ratio(0.5), ratio(last)])
    for (const last of [1 - 1e-12, 1 + 1e-12]) expect(() => passes(last)).not.toThrow()
    for (const last of [0.999, 1.001]) expect(() => passes(last)).toThrow('Unexpected last pass')
  })

  // A diameter is taken to a thousandth of a millimetre, rounded and not cut off: 8.8 is stronger above 16 mm.
  test('are rounded off a diameter, and half a thousandth and more is none of them', () => {
    const yieldAt = (mm: number) => strengthOf('8.8', quantityOf('length', mm / 1000)).yieldStress.si / 1e6
    expect([16.0004, 16.000495, 16.0006].map(yieldAt)).toEqual([640, 640, 660])
  })
})

// Stress area π/4·(d − 13/24·√3·P)², turned round for the diameter.
test('a nominal stress area is rounded at half of its third digit', () => {
  const pitch = 1.75
  const nominal = (area: number) =>
    nominalStressArea({
      nominalDiameter: millimetres(Math.sqrt((4 * area) / Math.PI) + ((13 * Math.sqrt(3)) / 24) * pitch),
      pitch: millimetres(pitch),
    }).si * 1e6
  expect(nominal(84.25 * (1 - 5e-7))).toBeCloseTo(84.2, 9)
  expect(nominal(84.25 * (1 + 5e-7))).toBeCloseTo(84.3, 9)
})

test('a bolt of no diameter has no strength', () => {
  for (const name of ['8.8', 'A4-80'])
    expect(() => strengthOf(name, millimetres(0))).toThrow(`Unexpected class ${name} at 0 mm`)
})

// Found by search: in these binary numbers 3.1 less 17/12 times the height of the triangle is zero.
test('a pitch that leaves a core of exactly nothing is refused', () => {
  const thread = {nominalDiameter: metres(3.1), pitch: metres(2.526756472218127)}
  expect(() => threadGeometry(thread)).toThrow('leaves no core')
  expect(threadGeometry({...thread, pitch: metres(2.5267)}).coreDiameter.si).toBeGreaterThan(0)
})

test('an accuracy beyond a tenth is refused, however little', () => {
  const least = (accuracy: number) =>
    torqueWindow({torque: newtonMetres(50), accuracy: ratio(accuracy)}).least
  expect(least(0.1).si).toBeCloseTo(45, 9)
  expect(() => least(0.1005)).toThrow('expected 0 to 0.1 of the setting')
})

// The torsion counts plastically from the edition of 2003 on (factor 3/2), elastically before (factor 2).
test.each([
  ['2003', '[3/2·(d2/d0)', '2003 and later', 'unknown'],
  ['1986', '[2·(d2/d0)', '1986', 'superseded'],
] as const)(
  'the note of %s has the factor and the source of its edition',
  (edition, factor, named, status) => {
    const {formula, sources} = tighteningTorqueNoteOf(edition)
    expect(formula.filter((line) => line.includes(factor)).length).toBe(1)
    expect(sources.map((one) => [one.edition, one.status])).toEqual([[named, status]])
  },
)
