import {describe, expect, test} from 'vitest'
import {desksOfVessel, found} from '../../src/compile/desk.ts'
import {pumpRecordPage} from '../../src/compile/pump-record-page.ts'
import type {ChartSection} from '../../src/handbook-model/chart-section.ts'
import {demonstration} from './demonstration.ts'

const {content, values} = await demonstration()
const pages = [...content.vessels.keys()].flatMap((vessel) =>
  desksOfVessel(content, values, vessel).map((desk) => ({
    pump: `${vessel}/${desk.position.id}`,
    desk,
    page: pumpRecordPage(desk),
  })),
)

/** A chart of a pump of the demonstration. */
function chartOf(pump: string, id: string): ChartSection {
  const page = found(
    pages.find((one) => one.pump === pump),
    pump,
  ).page
  return found(
    page.charts.find((one) => one.id === id),
    id,
  )
}

describe('readings of the demonstration', () => {
  test.each([
    [
      'five readings and a day that is due',
      'vessel-a/4s',
      'wear-lower-ring',
      /line of 5 readings.*Next due by condition: \d+ h, 20\d\d-\d\d-\d\d, which comes first/u,
    ],
    [
      'a line of its own behind each of two renewals',
      'vessel-a/5s',
      'wear-lower-ring',
      /Renewed at 1420 h, 3668 h.*Ring 3 of 3/u,
    ],
    [
      'a forecast beyond the span',
      'vessel-a/5s',
      'wear-lower-ring',
      /Flag: that lies beyond 1\.5 x the observed span/u,
    ],
    ['two readings', 'vessel-a/2p', 'wear-lower-ring', /Not enough readings: 2/u],
    ['a ring to be watched', 'vessel-a/9s', 'wear-lower-ring', /Last reading 1\.19 mm at 3888 h: WATCH/u],
    ['no instrument written', 'vessel-b/2s', 'wear-lower-ring', /CANNOT JUDGE when the ring is due/u],
    [
      'three that rise',
      'vessel-b/2p',
      'purge-results',
      /Flag: three results of cargo in a row rise, 20, 40, 60 ml/u,
    ],
    ['no gas seen to flow', 'vessel-c/2s', 'purge-results', /NOT VALID on 2019-03-31/u],
    ['a pump that did not run', 'vessel-a/9s', 'purge-results', /WITHIN LIMITS/u],
    ['a mixture', 'vessel-b/6s', 'purge-results', /STOP: ask the office/u],
    [
      'a hold that only its correction passes',
      'vessel-a/1p',
      'pressure-hold',
      /By the gauge alone it would be beyond the limit.*WITHIN LIMITS/u,
    ],
    ['a hold that fails', 'vessel-b/4s', 'pressure-hold', /Drop after correction 62\.5 mbar: STOP/u],
    ['a loss that the sun hid', 'vessel-c/4p', 'pressure-hold', /hid the loss.*STOP/u],
    [
      'a cofferdam that nobody can judge',
      'vessel-a/7s',
      'pressure-hold',
      /CANNOT JUDGE: allowed drop or hold time is NOT KNOWN/u,
    ],
  ] as const)('tell of %s', (_what, pump, chart, words) => {
    expect(chartOf(pump, chart).statements.join(' ')).toMatch(words)
  })

  test('stand on pages of every pump, each with two rings, purges and a hold where it hangs in a tank', () => {
    expect(pages.length).toBeGreaterThan(55)
    for (const {pump, desk, page} of pages)
      expect(
        page.charts.map(({kind}) => kind),
        pump,
      ).toEqual(desk.tank ? ['wear', 'wear', 'purge', 'hold'] : [])
    const silent = pages.filter(({page}) => page.charts.every(({figure}) => !figure))
    expect(silent.length).toBeGreaterThan(40)
    for (const {page} of silent)
      for (const {statements} of page.charts) expect(statements[0]).toBe('No readings on record.')
  })

  test('come from a source that says that they are invented', () => {
    for (const records of [content.wear, content.purges, content.tightness]) {
      expect(records.size).toBe(3)
      for (const {source} of records.values())
        expect(content.sources.get(source)?.howKnown).toBe('demonstration')
    }
  })
})
