import {expect, test} from 'vitest'
import {toldAfter} from '../check/each-rule/rule-case.ts'

test('two papers may disagree for a written reason, which stays as information with both places', async () => {
  const {said, stops} = await toldAfter((content) =>
    content.write(
      'designs/design-s.yaml',
      `${content.read('designs/design-s.yaml')}also-stated:\n  - {value: lower-ring.renewal, says: {value: 1.50 mm diametral, status: as-built, source: demo-data}, reason: older drawing}\n`,
    ),
  )
  expect(stops).toBe(false)
  expect(said).toMatch(
    /design-s\.yaml:\d+:\d+ information Unexpected `1\.50 mm diametral` for `lower-ring\.renewal` .* no-contradicting-source\n {4}mend: Accepted: older drawing\n {4}see: content\/designs\/design-s\.yaml:\d+:\d+\n$/u,
  )
})

test('a second paper that speaks of a value that is none is told with the nearest one', async () => {
  const {said} = await toldAfter((content) =>
    content.write(
      'designs/design-s.yaml',
      `${content.read('designs/design-s.yaml')}also-stated:\n  - {value: lower-ring.renewl, says: {value: 1.50 mm diametral, status: as-built, source: demo-data}}\n`,
    ),
  )
  expect(said).toContain(
    'Unexpected `lower-ring.renewl`, expected the id of a value such as `lower-ring.renewal`',
  )
})
