import {expect, test} from 'vitest'
import {sparesForService} from '../../../src/calculations/planning/spares-for-service.ts'
import {count, ratio} from '../../../src/quantities/named-units.ts'

// e^-1.6 times (1 + 1.6 + 1.6²/2 + 1.6³/6), by hand: 0.20190 x 4.56267 = 0.92119.
test('one spare less serves as the sum of the Poisson terms up to it says', () => {
  const {stock, servedWithOneLess} = sparesForService({expectedUse: count(1.6), serviceLevel: ratio(0.95)})
  expect(stock.si).toBe(4)
  expect(servedWithOneLess?.si).toBeCloseTo(0.92119, 5)
})
