import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {
  elastomerShelfLife,
  heldElastomers,
  storageState,
} from '../../../src/calculations/seals/elastomer-shelf-life.ts'
import {storagePeriods} from '../../published-values/seal-rows.ts'

const materialRows = storagePeriods.flatMap(({materials, ...row}) =>
  materials.map((material) => ({material, ...row})),
)

const oneDay = 86_400_000
const days = fc.integer({min: 0, max: 60_000}).map((day) => textOf(Date.UTC(1970, 0, 1) + day * oneDay))

function textOf(time: number): string {
  return new Date(time).toISOString().slice(0, 10)
}

/** The same day some years later by another way: day by day through the calendar until the year has passed often enough. */
function countedYears(date: string, years: number): string {
  const start = Date.parse(`${date}T00:00:00Z`)
  const [year = 0, month = 0, day = 0] = date.split('-').map(Number)
  const target = (year + years) * 10_000 + month * 100 + day
  let time = start + (years * 365 - 1) * oneDay
  while (numberOf(time + oneDay) <= target) time += oneDay
  return textOf(time)
}

/** A day as one number that rises with the calendar: 20310214. */
function numberOf(time: number): number {
  return Number(textOf(time).replaceAll('-', ''))
}

describe('shelf life of elastomer', () => {
  test('there is a row for each material of the table and no other', () => {
    expect(heldElastomers).toEqual(materialRows.map((row) => row.material))
  })

  test('agrees with a calendar that is walked day by day', () => {
    fc.assert(
      fc.property(days, fc.constantFrom(...materialRows), (cured, row) => {
        const life = elastomerShelfLife(row.material, cured)
        expect(life.validTo).toBe(countedYears(cured, row.first))
        expect(life.validToAfterInspection).toBe(countedYears(cured, row.first + row.extension))
      }),
    )
  })

  test('a later cure date never ends earlier, and the extension comes after the first period', () => {
    fc.assert(
      fc.property(days, days, fc.constantFrom(...heldElastomers), (one, other, material) => {
        const [early = '', late = ''] = [one, other].sort()
        expect(
          elastomerShelfLife(material, early).validTo <= elastomerShelfLife(material, late).validTo,
        ).toBe(true)
        const life = elastomerShelfLife(material, early)
        expect(life.validTo < life.validToAfterInspection).toBe(true)
      }),
    )
  })

  test('a part cured on 29 February ends on the 28th where the year has no 29th', () => {
    expect(elastomerShelfLife('NBR', '2024-02-29').validTo).toBe('2031-02-28')
    expect(elastomerShelfLife('NR', '2024-02-29').validToAfterInspection).toBe('2031-02-28')
    expect(elastomerShelfLife('NBR', '2024-12-31').validTo).toBe(countedYears('2024-12-31', 7))
    expect(elastomerShelfLife('BR', '2098-02-28').validTo).toBe('2103-02-28')
    expect(elastomerShelfLife('FKM', '2000-02-29').validTo).toBe('2010-02-28')
    expect(elastomerShelfLife('FKM', '2020-02-29').validToAfterInspection).toBe('2035-02-28')
  })

  test('the last day of a period belongs to it', () => {
    const state = (day: string) => storageState('NBR', '2024-06-15', day)
    expect(state('2024-06-15')).toBe('first-period')
    expect(state('2031-06-15')).toBe('first-period')
    expect(state('2031-06-16')).toBe('inspect-before-use')
    expect(state('2034-06-15')).toBe('inspect-before-use')
    expect(state('2034-06-16')).toBe('not-for-use')
  })

  test.each([
    '2031-02-30',
    '2100-02-29',
    '2031-13-01',
    '2031-00-10',
    '2031-2-3',
    '2031-02',
    '3Q31',
    '',
    '0000-01-01',
  ])('a cure date of `%s` is refused with what is expected', (date) => {
    expect(() => elastomerShelfLife('NBR', date)).toThrow(
      `Unexpected date \`${date}\`, expected a day like \`2031-02-14\`; of a month or quarter take its first day`,
    )
  })

  test('materials outside the table and days before the cure date are refused', () => {
    expect(() => elastomerShelfLife('PTFE', '2024-06-15')).toThrow(
      'Unexpected material `PTFE`, expected one of AU, BR',
    )
    expect(() => elastomerShelfLife('nbr', '2024-06-15')).toThrow('Unexpected material `nbr`')
    expect(() => storageState('NBR', '2024-06-15', '2024-06-14')).toThrow(
      'Unexpected day 2024-06-14 before the cure date 2024-06-15, expected a later one',
    )
    expect(() => storageState('NBR', '2024-06-15', '2024-06-31')).toThrow('Unexpected date `2024-06-31`')
  })
})
