import {describe, expect, test} from 'vitest'
import {hours} from '../handbooks/hours-faults.ts'
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

describeNewLines('clearances', [page], {one: wear(...three.slice(0, 2)), two: wear(...three)})
