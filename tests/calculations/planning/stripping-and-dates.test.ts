import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {dateOfDay, dayNumber} from '../../../src/calculations/planning/calendar-day.ts'
import {orderByDate} from '../../../src/calculations/planning/order-by-date.ts'
import {strippingCeiling} from '../../../src/calculations/planning/stripping-ceiling.ts'
import {hours, seconds} from '../../../src/quantities/named-units.ts'

const days = (count: number) => seconds(count * 86_400)

describe('stripping ceiling', () => {
  test('never rises with a later day', () => {
    const day = fc.integer({min: dayNumber('1950-01-01'), max: dayNumber('2050-01-01')})
    fc.assert(
      fc.property(
        day,
        day,
        fc.constantFrom('X' as const, 'Y' as const, 'Z' as const),
        (one, other, category) => {
          const earlier = strippingCeiling({built: dateOfDay(Math.min(one, other)), category})
          const later = strippingCeiling({built: dateOfDay(Math.max(one, other)), category})
          expect(later.ceiling.si).toBeLessThanOrEqual(earlier.ceiling.si)
        },
      ),
    )
  })

  test.each(['2007', '2007-02-29', '2007-13-01', '07-01-2007', '', '1850-01-01'])(
    'a ship built on `%s` is refused',
    (built) => {
      expect(() => strippingCeiling({built, category: 'X'})).toThrow(
        `Unexpected date \`${built}\`, expected a day such as \`2031-02-14\``,
      )
    },
  )
})

describe('the last day to order', () => {
  test.each([
    ['2031-03-01', 1, '2031-02-28'],
    ['2032-03-01', 1, '2032-02-29'],
    ['2031-01-15', 45, '2030-12-01'],
    ['2031-02-14', 0, '2031-02-14'],
    ['2031-12-31', 365, '2030-12-31'],
  ])('for a need on %s with a lead time of %d days is %s', (neededOn, lead, expected) => {
    expect(orderByDate({neededOn, leadTime: days(lead)})).toBe(expected)
  })

  test('counts a begun day whole', () => {
    expect(orderByDate({neededOn: '2031-02-14', leadTime: hours(25)})).toBe('2031-02-12')
    expect(orderByDate({neededOn: '2031-02-14', leadTime: hours(24)})).toBe('2031-02-13')
  })

  test('is the lead time before the need, counted day by day through the months', () => {
    const lengths = (year: number) => [
      31,
      year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0) ? 29 : 28,
      31,
      30,
      31,
      30,
      31,
      31,
      30,
      31,
      30,
      31,
    ]
    const dayBefore = (year: number, month: number, day: number): readonly [number, number, number] => {
      if (day > 1) return [year, month, day - 1]
      if (month > 1) return [year, month - 1, lengths(year)[month - 2] ?? 0]
      return [year - 1, 12, 31]
    }
    fc.assert(
      fc.property(
        fc.integer({min: 1995, max: 2060}),
        fc.integer({min: 1, max: 12}),
        fc.integer({min: 1, max: 28}),
        fc.integer({min: 0, max: 900}),
        (year, month, day, lead) => {
          let place: readonly [number, number, number] = [year, month, day]
          for (let step = 0; step < lead; step += 1) place = dayBefore(...place)
          const written = ([y, m, d]: readonly [number, number, number]) =>
            `${y}-${String(m).padStart(2, '0')}-${String(d).padStart(2, '0')}`
          expect(orderByDate({neededOn: written([year, month, day]), leadTime: days(lead)})).toBe(
            written(place),
          )
        },
      ),
    )
  })

  test('a day that does not exist and a negative lead time are refused', () => {
    expect(() => orderByDate({neededOn: '2031-02-30', leadTime: days(1)})).toThrow(
      'Unexpected date `2031-02-30`',
    )
    expect(() => orderByDate({neededOn: '2031-02-14', leadTime: days(-1)})).toThrow(
      'Unexpected lead time of −1 d, expected zero or more',
    )
  })
})
