import {describe, expect, test} from 'vitest'
import {checkAndCompute} from '../../src/commands/run-stages.ts'
import {printMessages} from '../../src/messages/print-messages.ts'
import {aboard, calibrations, intervalOf} from '../handbooks/calibration-faults.ts'
import {visibleText} from '../offline/visible-text.ts'
import {type ChangedContent, smallContent, withChangedContent} from './changed-content.ts'
import {describeNewLines, rowsOf, textsOf} from './record-pages-for-tests.ts'

const page = 'records/calibrations.html'
const wrench = '2018-06-01,torque-wrench,TW-1,C 7,,'

/** Rows below the header of the table. */
async function rowsBelow(content: ChangedContent): Promise<readonly string[]> {
  return (await rowsOf(page, content)).slice(1)
}

const wrenchAboard = 'torque wrench 5 N·m to 100 N·m, square drive 1/2 in | TW-1'

describe('the record page of calibrations', () => {
  test('says NOT KNOWN of each measuring tool without a line, and nothing of a spanner', () =>
    withChangedContent(async (content) => {
      aboard('tool: ring-spanner, number: RS-1', 'tool: test-gauge, number: PG 1 to PG 3')(content)
      expect(await rowsOf(page, content)).toEqual([
        'Tool | Number | Calibrated on | Certificate | Valid to',
        'pump store',
        `${wrenchAboard} | NOT KNOWN | no line in the record`,
        'box',
        'test gauge 0 to 6 bar(g) | PG 1 to PG 3 | NOT KNOWN | no line in the record',
      ])
      const text = visibleText((await textsOf(content)).get(page) ?? '')
      expect(text).toContain('No records aboard.')
      expect(text).toContain('it has no revision, no approval and no check code')
    }, smallContent))

  test('tells the youngest calibration, whatever the order of the lines, and the day of its certificate', () =>
    withChangedContent(async (content) => {
      intervalOf('12 months')(content)
      calibrations('2019-01-10,torque-wrench,TW-1,C 8,2021-01-10,new spring', wrench)(content)
      expect(await rowsBelow(content)).toContain(
        `${wrenchAboard} | 2019-01-10 | C 8 | 2021-01-10 day of the certificate new spring`,
      )
      expect(visibleText((await textsOf(content)).get(page) ?? '')).toContain('Records up to 2019-01-10.')
    }, smallContent))

  test('adds the interval of the design with its mark where the certificate names no day', () =>
    withChangedContent(async (content) => {
      intervalOf('12 months')(content)
      calibrations('2018-06-01,torque-wrench,TW-1,,,')(content)
      expect(await rowsBelow(content)).toContain(
        `${wrenchAboard} | 2018-06-01 | NOT KNOWN | 2019-06-01 calibration and 12 months common practice, no source`,
      )
    }, smallContent))

  test('says NOT KNOWN where neither certificate nor design says how long', () =>
    withChangedContent(async (content) => {
      calibrations(wrench)(content)
      expect(await rowsBelow(content)).toContain(
        `${wrenchAboard} | 2018-06-01 | C 7 | NOT KNOWN the certificate names no day and the design no interval`,
      )
    }, smallContent))

  test('parts the numbers of one tool by what their lines say', () =>
    withChangedContent(async (content) => {
      aboard('tool: test-gauge, number: PG 1 to PG 3')(content)
      calibrations(
        '2018-06-01,test-gauge,PG 1,C 9,2020-01-01,',
        '2018-06-01,test-gauge,PG 3,C 9,2020-01-01,',
      )(content)
      expect((await rowsBelow(content)).slice(-2)).toEqual([
        'test gauge 0 to 6 bar(g) | PG 1, PG 3 | 2018-06-01 | C 9 | 2020-01-01 day of the certificate',
        'test gauge 0 to 6 bar(g) | PG 2 | NOT KNOWN | no line in the record',
      ])
    }, smallContent))

  test('is led to from the start page, beside the running hours', () =>
    withChangedContent(async (content) => {
      expect((await textsOf(content)).get('index.html')).toContain(
        'Running hours</b></a></li><li><a href="records/calibrations.html"><b>Calibration of measuring tools</b></a>',
      )
    }, smallContent))
})

describe('a calibration past its last day', () => {
  test('is told for information on the day that is named, and not the day before', () =>
    withChangedContent(async (content) => {
      intervalOf('12 months')(content)
      calibrations(wrench)(content)
      const said = async (day: string): Promise<string> =>
        printMessages((await checkAndCompute(content.folder, day)).files, 'content')
      expect(await said('2019-06-01')).toBe('')
      expect(await said('2019-06-02')).toContain('information Unexpected `torque-wrench` `TW-1`')
    }, smallContent))
})

describeNewLines('calibration', [page], {
  one: calibrations(wrench),
  two: calibrations(wrench, '2019-01-10,torque-wrench,TW-1,C 8,,'),
})
