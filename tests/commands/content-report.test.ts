import {expect, test} from 'vitest'
import {contentReport, reportText} from '../../src/commands/content-report.ts'
import {checkAndCompute} from '../../src/commands/run-stages.ts'
import {withOldBook} from '../handbooks/idle-faults.ts'
import {type ChangedContent, smallContent, withChangedContent} from './changed-content.ts'

async function reportAfter(
  change: (content: ChangedContent) => void,
): Promise<ReturnType<typeof contentReport>> {
  return withChangedContent(async (changed) => {
    change(changed)
    const {content, values, hashes} = await checkAndCompute(changed.folder)
    if (!content || !values) throw new Error('Unexpected errors in the content, expected none')
    return contentReport(content, values, hashes)
  }, smallContent)
}

const procedure = 'procedures/ring-check.md'

test('a content is counted: steps, their words, and signal words for each hundred steps', async () => {
  const report = await reportAfter(() => undefined)
  expect(report).toMatchObject({procedures: 1, steps: 6})
  expect(report.wordsPerStep.longest).toBe('ring-check#tighten-hub-bolts')
  // Six instructions of 7, 10, 10, 11, 5 and 10 words, counted by hand.
  expect(report.wordsPerStep).toMatchObject({mean: 8.8, most: 11})
  // Sharp edges once for its section (CAUTION), unexpected start three times and oil under pressure once (WARNING).
  expect(report.signalWordsPer100Steps).toEqual({DANGER: 0, WARNING: 66.7, CAUTION: 16.7, NOTICE: 0})
})

test('values on common practice, on memory alone and on a superseded source are listed', async () => {
  const report = await reportAfter((content) => {
    withOldBook('superseded, superseded-by: demo-data')(content)
    content.replace(
      'designs/design-s.yaml',
      /origin: \{status: as-built, source: demo-data[^}]*\}/u,
      (origin) => origin.replace('demo-data', 'old-data'),
    )
  })
  expect(report.commonPractice).toContain('hub-bolts.order')
  expect(report.memoryOnly.map(({source}) => source)).toContain('ideal-gas')
  expect(report.superseded.map(({source}) => source)).toEqual(['old-data'])
  expect(report.superseded[0]?.values.length).toBeGreaterThan(3)
  expect(report.superseded[0]?.pages).toEqual(['vessel-s/1p/ring-check'])
  expect(reportText(report)).toMatch(
    /superseded sources: old-data \(\d+ values\)\npages that stand on old-data: 1\n {4}vessel-s\/1p\/ring-check\n/u,
  )
})

test('failures of parts and exceptions stand in the report', async () => {
  const report = await reportAfter((content) => {
    content.write(
      'failures.yaml',
      'failures:\n  - {id: broken, part: hub-plates, mode: broken, procedures: [ring-check]}\n  - {id: lost, part: hub-plates, mode: lost, reason: found by the tally}\n',
    )
    content.replace(
      procedure,
      'The locking plates are bent',
      'A plate may break. The locking plates are bent',
    )
    content.write(
      'exceptions.yaml',
      `exceptions:\n  - {rule: no-hedge, file: ${procedure}, words: may break, reason: quoted, reviewed-by: approving-superintendent}\n`,
    )
  })
  expect(report.coverage).toEqual([
    {part: 'hub-plates', mode: 'broken', procedures: ['ring-check']},
    {part: 'hub-plates', mode: 'lost', procedures: [], reason: 'found by the tally'},
  ])
  expect(report.exceptions).toEqual([{rule: 'no-hedge', file: procedure, reason: 'quoted'}])
  expect(reportText(report)).toContain(
    'failures of fitted parts: 2, 1 with a procedure, 1 with a written reason\nexceptions from rules of language: 1\n',
  )
})
