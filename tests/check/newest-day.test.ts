import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {newestDay} from '../../src/check/newest-day.ts'
import {isDay, laterDay} from '../../src/handbook-model/comparison-date.ts'
import {sourcesFromTexts} from '../../src/read/read-sources.ts'

function newestOf(texts: Readonly<Record<string, string>>): string | undefined {
  return newestDay(sourcesFromTexts(new Map(Object.entries(texts)), new Map()))
}

describe('a day', () => {
  test.each(['2031-02-14', '2012-02-29', '2000-02-29', '2031-12-31', '1900-01-01', '2199-12-31'])(
    'is %s',
    (day) => {
      expect(isDay(day)).toBe(true)
    },
  )

  test.each([
    '2031-02-30',
    '2011-02-29',
    '1900-02-29',
    '2031-13-01',
    '2031-00-10',
    '2031-01-00',
    '2031-2-14',
    '14.02.2031',
    '0211-02-14',
    '1899-12-31',
    '2200-01-01',
    '9999-01-01',
    '2031-02-14T00:00',
    ' 2031-02-14',
    '20310214',
    'today',
    '',
  ])('is not %j', (text) => {
    expect(isDay(text)).toBe(false)
  })

  test('is later by the calendar, and any day is later than none', () => {
    expect(laterDay('2031-02-14', '2030-12-31')).toBe('2031-02-14')
    expect(laterDay('2030-12-31', '2031-02-14')).toBe('2031-02-14')
    expect(laterDay(undefined, '2031-02-14')).toBe('2031-02-14')
    expect(laterDay('2031-02-14', undefined)).toBe('2031-02-14')
    expect(laterDay(undefined, undefined)).toBeUndefined()
  })
})

describe('the newest day of the content', () => {
  test('is found on files, below lists, maps and origins, and in front matter', () => {
    const texts: Record<string, string> = {'vessels/a/vessel.yaml': 'built: 2011-06-30\n'}
    expect(newestOf(texts)).toBe('2011-06-30')
    texts['designs/a.yaml'] = 'origin: {status: measured, source: x, date: 2012-01-01}\n'
    expect(newestOf(texts)).toBe('2012-01-01')
    texts['vessels/b/vessel.yaml'] = 'positions:\n  - {id: 1p}\n  - {id: 1s, installed: 2013-05-06}\n'
    expect(newestOf(texts)).toBe('2013-05-06')
    texts['vessels/c/vessel.yaml'] = 'spares-aboard:\n  - {part: ring, cured: 2014-01-02}\n'
    expect(newestOf(texts)).toBe('2014-01-02')
    texts['procedures/a.md'] = '---\nid: a\nchanges:\n  - {date: 2014-07-08}\n---\n# A\n'
    expect(newestOf(texts)).toBe('2014-07-08')
  })

  test('is no id, no title, no day that something falls due, and no day that does not exist', () => {
    expect(
      newestOf({
        'office.yaml': 'id: 2040-01-01\ntitle: 2041-01-01\ncalibration-due: 2042-01-01\ndate: 2043-02-30\n',
        'vessels/a/vessel.yaml': 'built: 2011-06-30\n',
      }),
    ).toBe('2011-06-30')
  })

  test('is none where the content holds none', () => {
    expect(newestOf({})).toBeUndefined()
    expect(newestOf({'office.yaml': 'issuer: x\n'})).toBeUndefined()
  })

  test('does not depend on where and in what order days stand', () => {
    const day = fc
      .date({min: new Date('1950-01-01'), max: new Date('2090-12-31'), noInvalidDate: true})
      .map((one) => one.toISOString().slice(0, 10))
    const days = fc.array(day, {minLength: 1, maxLength: 8})
    fc.assert(
      fc.property(days, (all) => {
        const lines = all.map(
          (one, index) => `  - ${index % 2 === 0 ? `date: ${one}` : `{deep: {built: ${one}}}`}\n`,
        )
        expect(newestOf({'a.yaml': `list:\n${lines.join('')}`})).toBe(all.toSorted().at(-1))
      }),
    )
  })
})
