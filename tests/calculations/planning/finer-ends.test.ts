import {expect, test} from 'vitest'
import {dateOfDay, dayNumber} from '../../../src/calculations/planning/calendar-day.ts'
import {orderByDate} from '../../../src/calculations/planning/order-by-date.ts'
import {poissonAtMost, sparesForService} from '../../../src/calculations/planning/spares-for-service.ts'
import {count, ratio} from '../../../src/quantities/named-units.ts'
import {quantityOf} from '../../../src/quantities/quantity.ts'

test('the calendar begins in 1900 and ends in 2199', () => {
  // 300 years of 365 days and 73 leap days: every fourth year but 1900, 2100.
  expect(dayNumber('2199-12-31') - dayNumber('1900-01-01') + 1).toBe(300 * 365 + 75 - 2)
  expect(dateOfDay(dayNumber('2199-12-31'))).toBe('2199-12-31')
  for (const date of ['1899-12-31', '2200-01-01', '2200-06-30'])
    expect(() => dayNumber(date)).toThrow(`Unexpected date \`${date}\``)
})

test('a lead time as long as the calendar leads from its last day to its first', () => {
  const whole = dayNumber('2199-12-31') - dayNumber('1900-01-01')
  expect(orderByDate({neededOn: '2199-12-31', leadTime: quantityOf('time', whole * 86_400)})).toBe(
    '1900-01-01',
  )
})

test('a lead time of a week with a stray thirteenth digit is a week', () => {
  const order = (share: number) =>
    orderByDate({neededOn: '2031-02-14', leadTime: quantityOf('time', 7 * 86_400 * share)})
  expect([order(1), order(1 + 1e-13), order(1 + 1e-10)]).toEqual(['2031-02-07', '2031-02-07', '2031-02-06'])
})

test('a stock that serves exactly as asked is enough', () => {
  const serviceLevel = ratio(poissonAtMost(2, 1))
  expect(sparesForService({expectedUse: count(1), serviceLevel}).stock.si).toBe(2)
})

test('a use of 500 pieces is planned, more is refused', () => {
  const spares = (use: number) => sparesForService({expectedUse: count(use), serviceLevel: ratio(0.5)})
  // The median of a Poisson number with a whole mean is that mean.
  expect(spares(500).stock.si).toBe(500)
  expect(() => spares(500.1)).toThrow('expected 0 to 500')
})
