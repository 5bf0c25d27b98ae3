import {describe, expect, test} from 'vitest'
import {hours, hoursPath} from '../handbooks/hours-faults.ts'
import {visibleText} from '../offline/visible-text.ts'
import {smallContent, withChangedContent} from './changed-content.ts'
import {describeNewLines, rowsOf, textsOf} from './record-pages-for-tests.ts'

const page = 'records/hours.html'

const motor = '2018-01-01,motor,M-1,1p,4120,meter,,'

describe('the record page of running hours', () => {
  test('says NOT KNOWN of every component where nobody keeps a record', () =>
    withChangedContent(async (content) => {
      expect(await rowsOf(page, content)).toEqual([
        'Component | Hours | Read on | Counted by | Since the reading before',
        '1P',
        ...['head H-1', 'motor M-1', 'sleeve C-1', 'stack T-1'].map(
          (one) => `${one} | NOT KNOWN | no reading`,
        ),
      ])
      const text = visibleText((await textsOf(content)).get(page) ?? '')
      expect(text).toContain('No records aboard.')
      expect(text).toContain('it has no revision, no approval and no check code')
    }, smallContent))

  test('says NOT KNOWN of a pump whose components nobody has listed', () =>
    withChangedContent(async (content) => {
      content.replace('vessels/vessel-s/vessel.yaml', /components: .*/u, 'components: {}')
      expect((await rowsOf(page, content)).slice(1)).toEqual([
        '1P',
        'no serial numbers listed | NOT KNOWN | no reading',
      ])
    }, smallContent))

  test('tells the last reading, its day, how it was counted and what ran since the one before', () =>
    withChangedContent(async (content) => {
      hours('2018-03-02,motor,M-1,1p,4233.5,log,,read by two', motor)(content)
      expect(await rowsOf(page, content)).toContain(
        'motor M-1 | 4233.5 h | 2018-03-02 | log | 113.5 h in 60 days; read by two',
      )
      expect(visibleText((await textsOf(content)).get(page) ?? '')).toContain('Records up to 2018-03-02.')
    }, smallContent))

  test('says a first reading, and never hours since one that is not there', () =>
    withChangedContent(async (content) => {
      hours(motor)(content)
      expect(await rowsOf(page, content)).toContain('motor M-1 | 4120 h | 2018-01-01 | meter | first reading')
    }, smallContent))

  test('tells the least that it can be behind an exchanged counter, and not what that counter shows', () =>
    withChangedContent(async (content) => {
      hours(motor, '2018-01-31,motor,M-1,1p,60,meter,10,')(content)
      expect(await rowsOf(page, content)).toContain(
        'motor M-1 | NOT KNOWN, at least 4170 h | 2018-01-31 | meter | NOT KNOWN; counter exchanged before 2018-01-31: the new one began at 10 h and shows 60 h',
      )
    }, smallContent))

  test('lists what is fitted in no pump any more apart', () =>
    withChangedContent(async (content) => {
      hours(motor)(content)
      content.replace(hoursPath, 'day,component', '# removed: motor M-0\nday,component')
      content.replace(hoursPath, motor, '2018-01-01,motor,M-0,1p,900,estimate,,landed')
      const rows = await rowsOf(page, content)
      expect(rows).toContain('motor M-1 | NOT KNOWN | no reading')
      expect(rows.at(-1)).toBe(
        'motor M-0 | 900 h | 2018-01-01 | estimate | first reading; in pump 1P when read on 2018-01-01; landed',
      )
    }, smallContent))
})

describeNewLines('running hours', [page, 'records/pump-1p.html'], {
  one: hours(motor),
  two: hours(motor, '2018-01-31,motor,M-1,1p,4140,meter,,'),
})
