import {expect, test} from 'vitest'
import {airToVent} from '../../../src/calculations/oil/air-to-vent.ts'
import {litres} from '../../../src/quantities/named-units.ts'

test('a filling may be above the content by the last digits of either, in small pumps and large ones', () => {
  for (const content of [10, 1_000_000]) {
    const air = (over: number) => () =>
      airToVent({content: litres(content), filled: litres(content * (1 + over))})
    expect(air(5e-13)).not.toThrow()
    expect(air(1e-11)).toThrow('Unexpected filled volume above the content')
  }
})
