import {rmSync} from 'node:fs'
import {afterAll, beforeAll, describe, expect, test} from 'vitest'
import {checkAndCompute} from '../../src/commands/run-stages.ts'
import type {ComparisonDate} from '../../src/handbook-model/comparison-date.ts'
import {ledgerWith} from '../issues/ledger-for-tests.ts'
import {type ChangedContent, smallContent, withChangedContent} from './changed-content.ts'
import {compileProgram, type Program} from './program-for-tests.ts'

const vessel = 'vessels/vessel-s/vessel.yaml'

async function asOfAfter(
  change: (content: ChangedContent) => void,
  named?: string,
): Promise<ComparisonDate | undefined> {
  return withChangedContent(async (content) => {
    change(content)
    return (await checkAndCompute(content.folder, named)).asOf
  }, smallContent)
}

function issuedOn(date: string): (content: ChangedContent) => void {
  const ledger = JSON.stringify(ledgerWith({}, {vessel: 'vessel-s', date}))
  return (content) => content.write('issues/vessel-s/2031-03.json', ledger)
}

describe('the day that dates are compared with', () => {
  test.each<[string, (content: ChangedContent) => void, string]>([
    ['is the newest measurement', () => undefined, '2019-05-14'],
    [
      'is the day that a pump was installed, when that is newer',
      (content) => content.replace(vessel, 'installed: 2011-02-09', 'installed: 2020-02-29'),
      '2020-02-29',
    ],
    ['is the day of the newest issue, when that is newer', issuedOn('2031-03-14'), '2031-03-14'],
    ['is not the day of an issue that is older', issuedOn('2018-01-01'), '2019-05-14'],
  ])('%s', async (_what, change, day) => {
    expect(await asOfAfter(change)).toEqual({day, origin: 'content'})
  })

  test.each(['2000-01-01', '2040-12-31'])('is %s where the command line says so', async (day) => {
    expect(await asOfAfter(issuedOn('2031-03-14'), day)).toEqual({day, origin: 'option'})
  })

  test('is none where there is no content, and what is named all the same', async () => {
    const emptied = (content: ChangedContent): void => content.remove('')
    expect(await asOfAfter(emptied)).toBeUndefined()
    expect(await asOfAfter(emptied, '2031-02-14')).toEqual({day: '2031-02-14', origin: 'option'})
  })
})

describe('--as-of', () => {
  let program: Program
  beforeAll(() => {
    program = compileProgram()
  }, 60_000)
  afterAll(() => rmSync(program.folder, {recursive: true, force: true}))

  test.each(['check', 'build'])(
    'of %s is told to machines, and the day of the content without it',
    (command) => {
      const words = [command, '--content', smallContent, '--json']
      const asOf = (more: readonly string[]): unknown => {
        const {status, out, err} = program.run([...words, ...more])
        expect({status, err}).toEqual({status: 0, err: ''})
        return JSON.parse(out)
      }
      expect(asOf([])).toMatchObject({asOf: {day: '2019-05-14', origin: 'content'}})
      expect(asOf(['--as-of', '2031-02-14'])).toMatchObject({asOf: {day: '2031-02-14', origin: 'option'}})
    },
  )

  test.each(['2031-02-30', '14.02.2031', 'today', ''])('with %j is used wrongly', (day) => {
    for (const command of ['check', 'build'])
      expect(program.run([command, '--as-of', day])).toEqual({
        status: 2,
        out: '',
        err: `Unexpected day \`${day}\` of --as-of, expected a day like \`2031-02-14\`; see \`sheetanchor --help\`\n`,
      })
  })
})
