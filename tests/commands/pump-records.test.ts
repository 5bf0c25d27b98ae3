import {describe, expect, test} from 'vitest'
import {holds} from '../handbooks/hold-record-faults.ts'
import {hours} from '../handbooks/hours-faults.ts'
import {purgeLines, purges} from '../handbooks/purge-faults.ts'
import {wear, wearLine} from '../handbooks/wear-faults.ts'
import {visibleText} from '../offline/visible-text.ts'
import {type ChangedContent, smallContent, withChangedContent} from './changed-content.ts'
import {describeNewLines, rowsOf, textsOf} from './record-pages-for-tests.ts'

const page = 'records/pump-1p.html'

/** Words of the record page of the one pump. */
async function wordsOf(content: ChangedContent): Promise<string> {
  return visibleText((await textsOf(content)).get(page) ?? '')
}

const three = [
  wearLine('2012-01-01', 0, 'as-left', '0.62', '0.58,'),
  wearLine('2014-01-01', 1000, 'as-found', '0.75'),
  wearLine('2016-01-01', 2000, 'as-found', '0.90'),
]

describe('the record page of a pump', () => {
  test('says no readings on record and still offers to try one', () =>
    withChangedContent(async (content) => {
      const text = (await textsOf(content)).get(page) ?? ''
      expect(visibleText(text)).toContain('No readings on record.')
      expect(visibleText(text)).toContain('it has no revision, no approval and no check code')
      expect(visibleText(text)).not.toContain('Try a reading')
      expect(text).toContain('<template><form')
      expect(text).not.toContain('class="chart"')
      expect(text).toContain('src="../assets/charts.js"')
    }, smallContent))

  test('draws the clearances, and lists them as numbers with what they were measured with', () =>
    withChangedContent(async (content) => {
      wear(...three)(content)
      expect((await textsOf(content)).get(page)).toContain('<svg class="chart"')
      expect(await rowsOf(page, content)).toContain(
        '2014-01-01 | 1P | 1000 h | as found | 0.75 mm diametral | not written | inside micrometer, outside micrometer',
      )
      expect(await wordsOf(content)).toContain('Records up to 2016-01-01.')
    }, smallContent))

  test('takes limit, uncertainty of both instruments and interval from the content', () =>
    withChangedContent(async (content) => {
      wear(...three)(content)
      const words = await wordsOf(content)
      expect(words).toContain('Renewal limit 1.20 mm diametral, the design governs; beyond it: RENEW.')
      expect(words).toContain('where the line comes within the 0.02 mm of the instruments of the limit')
      expect(words).toContain('Minimum of a new ring: 0.52 mm at the least gap.')
      expect(words).toContain('by 60 months (Ring service): 2021-01-01')
      content.replace('designs/design-s.yaml', 'renewal: 1.20 mm', 'renewal: 1.10 mm')
      expect(await wordsOf(content)).toContain('Renewal limit 1.10 mm diametral')
    }, smallContent))

  test('says the rule that wins, with days by the hours that the head runs', () =>
    withChangedContent(async (content) => {
      wear(...three)(content)
      expect(await wordsOf(content)).toContain('Which comes first nobody can tell')
      hours('2012-01-01,head,H-1,1p,0,meter,,', '2016-01-01,head,H-1,1p,2000,meter,,')(content)
      const words = await wordsOf(content)
      expect(words).toContain('Next due by condition: 4')
      expect(words).toContain('2021-01-01')
      expect(words).toContain('Days stand on 1.37 running hours a day, as from 2012-01-01 to 2016-01-01.')
    }, smallContent))

  test('cannot judge where nobody wrote with what a clearance was measured', () =>
    withChangedContent(async (content) => {
      wear(...three.map((line) => line.replace('inside-micrometer and outside-micrometer', '')))(content)
      expect(await wordsOf(content)).toContain('CANNOT JUDGE when the ring is due')
    }, smallContent))

  test('is led to from the start page and from the page of the pump, which shows nothing of it', () =>
    withChangedContent(async (content) => {
      wear(...three)(content)
      const texts = await textsOf(content)
      expect(texts.get('index.html')).toContain('<a href="records/pump-1p.html">1P</a>')
      expect(texts.get('p/1p/index.html')).toContain('href="../../records/pump-1p.html"')
      expect(visibleText(texts.get('p/1p/index.html') ?? '')).not.toMatch(/0\.75|2016-01-01/u)
    }, smallContent))
})

describe('purges on the record page of a pump', () => {
  /** Figures that the small design does not state. */
  const figures = ['oil-rate', 'cargo-rate', 'oil-day', 'cargo-day'].flatMap((kind) =>
    (['watch 1', 'renew 10', 'stop 50'] as const).map((one) => {
      const [name = '', value = ''] = one.split(' ')
      return `  - {id: ${kind}-${name}, title: ${kind} ${name}, value: ${value} ml/${kind.endsWith('day') ? 'd' : 'h'}}`
    }),
  )

  test('are listed with their verdicts, and judged by the figures of the design', () =>
    withChangedContent(async (content) => {
      purges('2018-01-01,1p,12.5,yes,0,none,,', '2018-01-08,1p,40,yes,20,cargo,cylinder,warm')(content)
      expect(await wordsOf(content)).toContain('limits NOT KNOWN')
      expect(await rowsOf(page, content)).toContain(
        '2018-01-08 | 40 h | yes | 20 ml | cargo | CANNOT JUDGE | measuring cylinder | warm',
      )
      content.replace(
        'designs/design-s.yaml',
        'settings:\n',
        ['settings:', ...figures, '  - {id: purge-large-volume, title: large volume, value: 2 l}', ''].join(
          '\n',
        ),
      )
      expect(await rowsOf(page, content)).toContain(
        '2018-01-08 | 40 h | yes | 20 ml | cargo | WATCH | measuring cylinder | warm',
      )
      const words = await wordsOf(content)
      expect(words).toContain(
        'Last result 2018-01-08: 20 ml of cargo, 0.5 ml for each running hour, 2.9 ml for each day',
      )
      expect(words).toContain('Above 2000 ml between two purges: STOP.')
      expect(words).toContain('Records up to 2018-01-08.')
    }, smallContent))

  test('that are not there leave the form alone', () =>
    withChangedContent(async (content) => {
      expect((await textsOf(content)).get(page)).toContain('data-chart="purge"')
    }, smallContent))
})

describe('the last pressure hold on the record page of a pump', () => {
  test('is that of the last day, judged by the allowed drop and the hold time of the pump', () =>
    withChangedContent(async (content) => {
      holds(
        '2018-01-01,1p,1,0,2.90,20.0,1012,',
        '2018-01-01,1p,1,90,2.50,20.0,1012,',
        '2019-01-01,1p,1,90,2.90,20.0,1012,tight',
        '2019-01-01,1p,1,0,2.90,20.0,1012,',
      )(content)
      const words = await wordsOf(content)
      expect(words).toContain('Last hold: 2019-01-01, hold 1.')
      expect(words).toContain('Allowed drop 17 mbar over the hold time of 39 min')
      expect(words).toContain('Drop after correction 0.0 mbar: WITHIN LIMITS.')
      expect(await rowsOf(page, content)).toContain(
        'minute 90 | 2.90 bar(g) | 20.0 °C | 1012 mbar(a) | tight',
      )
      expect(await rowsOf(page, content)).not.toContain('minute 90 | 2.50 bar(g) | 20.0 °C | 1012 mbar(a)')
    }, smallContent))

  test('cannot be judged where the design does not know what leak it allows', () =>
    withChangedContent(async (content) => {
      holds('2018-01-01,1p,1,0,2.90,20.0,1012,', '2018-01-01,1p,1,90,2.90,20.0,1012,')(content)
      content.replace(
        'designs/design-s.yaml',
        'allowed-leak: 20 ml/min',
        'allowed-leak: {value: not known, reason: lost}',
      )
      expect(await wordsOf(content)).toContain('Drop after correction 0.0 mbar: CANNOT JUDGE')
    }, smallContent))
})

describeNewLines('pressure holds', [page], {
  one: holds('2018-01-01,1p,1,0,2.90,20.0,1012,'),
  two: holds('2018-01-01,1p,1,0,2.90,20.0,1012,', '2018-01-01,1p,1,90,2.90,20.0,1012,'),
})

describeNewLines('purges', [page], {
  one: purgeLines('2018-01-01,1p,12.5,no,0,none,,'),
  two: purgeLines('2018-01-01,1p,12.5,no,0,none,,', '2018-01-08,1p,0,yes,0,none,,'),
})

describeNewLines('clearances', [page], {one: wear(...three.slice(0, 2)), two: wear(...three)})
