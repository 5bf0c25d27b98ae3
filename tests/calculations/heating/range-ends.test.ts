import {expect, test} from 'vitest'
import {bearingGrowth} from '../../../src/calculations/heating/bearing-heating.ts'
import {degreesCelsius, micrometresPerMetreKelvin, millimetres} from '../../../src/quantities/named-units.ts'

test('a bearing at the temperature of the room has not grown, a colder one is refused', () => {
  const growth = (celsius: number) =>
    bearingGrowth({
      bore: millimetres(80),
      ambient: degreesCelsius(20),
      expansion: micrometresPerMetreKelvin(12),
      temperature: degreesCelsius(celsius),
    }).si
  expect(growth(20)).toBe(0)
  expect(growth(20.5)).toBeCloseTo(0.08 * 12e-6 * 0.5, 12)
  expect(() => growth(19.9)).toThrow('colder than')
})
