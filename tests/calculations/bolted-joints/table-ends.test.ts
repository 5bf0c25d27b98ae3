import {describe, expect, test} from 'vitest'
import {hexagonHead} from '../../../src/calculations/bolted-joints/hexagon-heads.ts'
import {propertyClasses, strengthOf} from '../../../src/calculations/bolted-joints/property-classes.ts'
import {millimetres} from '../../../src/quantities/named-units.ts'
import {quantityOf} from '../../../src/quantities/quantity.ts'

describe('a property class', () => {
  test.each([
    ['8.8', 16, 640],
    ['8.8', 16.1, 660],
    ['8.8', 39, 660],
    ['8.8', 0.5, 640],
    ['10.9', 0.5, 940],
    ['10.9', 39, 940],
    ['12.9', 0.5, 1100],
    ['12.9', 39, 1100],
    ['A1-50', 39, 210],
    ['A2-50', 39, 210],
    ['A4-50', 39, 210],
    ['A4-70', 20, 450],
    ['A4-80', 0.5, 600],
  ])('%s at %d mm yields at %d N/mm²', (name, diameter, stress) => {
    expect(strengthOf(name, millimetres(diameter)).yieldStress.si).toBe(stress * 1e6)
  })

  test.each([
    ['8.8', 39.1, 39],
    ['10.9', 39.5, 39],
    ['12.9', 39.5, 39],
    ['A1-50', 39.5, 39],
    ['A2-50', 39.5, 39],
    ['A4-50', 39.5, 39],
    ['A4-70', 20.5, 20],
  ])('%s ends before %d mm, and the message says where', (name, diameter, most) => {
    expect(() => strengthOf(name, millimetres(diameter))).toThrow(`expected at most ${most} mm`)
  })

  test('covers each diameter once', () => {
    for (const name of new Set(propertyClasses.map((row) => row.propertyClass)))
      for (const mm of [0.1, 5, 16, 16.001, 20])
        expect(
          propertyClasses.filter(
            (row) => row.propertyClass === name && mm > row.aboveMillimetres && mm <= row.upToMillimetres,
          ).length,
          `${name} at ${mm} mm`,
        ).toBe(1)
  })

  test('of a diameter that comes from a sum of metres is found as its round figure', () => {
    expect(strengthOf('8.8', quantityOf('length', 0.0160000004)).yieldStress.si).toBe(640e6)
    expect(strengthOf('8.8', quantityOf('length', 0.0159999996)).yieldStress.si).toBe(640e6)
  })
})

// ISO 4014 class A, bearing diameter, from memory, but M14, which printed torque tables imply; ISO 273 medium series, read
// in a public data file.
test.each([
  ['M6', 8.88, 6.6],
  ['M8', 11.63, 9],
  ['M10', 14.63, 11],
  ['M12', 16.63, 13.5],
  ['M14', 19.37, 15.5],
  ['M16', 22.49, 17.5],
  ['M20', 28.19, 22],
  ['M24', 33.61, 26],
  ['M27', 38, 30],
  ['M36', 51.11, 39],
])('%s has a head of %d mm and a hole of %d mm', (size, bearing, hole) => {
  expect(hexagonHead(size).bearingDiameter.si).toBeCloseTo(bearing / 1000, 12)
  expect(hexagonHead(size).holeDiameter.si).toBeCloseTo(hole / 1000, 12)
})

test('a head that the table lacks is refused', () => {
  expect(() => hexagonHead('M7')).toThrow('Unexpected size `M7`, expected one of M6, ')
})
