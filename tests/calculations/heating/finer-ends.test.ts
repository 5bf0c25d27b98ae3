import {expect, test} from 'vitest'
import {bearingHeating} from '../../../src/calculations/heating/bearing-heating.ts'
import {micrometresPerMetreKelvin, millimetres} from '../../../src/quantities/named-units.ts'
import {quantityOf} from '../../../src/quantities/quantity.ts'

const bearing = {
  bore: millimetres(80),
  growth: millimetres(0.096),
  ambient: quantityOf('temperature', 293.15),
  expansion: micrometresPerMetreKelvin(12),
}

test('the highest temperature may be reached, to the last digits of its conversion', () => {
  // 96 µm over 80 mm at 12 µm for each metre and kelvin take 100 K.
  const heated = (highest: number) => () =>
    bearingHeating({...bearing, highest: quantityOf('temperature', highest)})
  expect(heated(393.15 - 1e-10)).not.toThrow()
  expect(heated(393.15 - 1e-6)).toThrow('expected at most')
})

test('a ring of no bore is refused for that', () => {
  const highest = quantityOf('temperature', 393.15)
  expect(() => bearingHeating({...bearing, highest, bore: millimetres(0)})).toThrow(
    'Unexpected bore or expansion of nothing',
  )
})
