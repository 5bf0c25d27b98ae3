import {describe, expect, test} from 'vitest'
import {type ChangedContent, errorsAfter} from '../commands/changed-content.ts'

describe('one mistake in a file that many others refer to is one message', () => {
  test.each<[string, (content: ChangedContent) => void, RegExp]>([
    [
      'a value of the design',
      (content) => content.replace('designs/design-a.yaml', 'renewal: 1.20 mm diametral', 'renewal: NaN'),
      /^designs\/design-a\.yaml:\d+:\d+ error Unexpected `NaN`, .* no-bad-quantity$/u,
    ],
    [
      'a tab in the office file',
      (content) => content.replace('office.yaml', 'contact:\n  -', 'contact:\n\t-'),
      /^office\.yaml:3:1 error Unexpected tab as indentation, expected blanks no-yaml-fault$/u,
    ],
    [
      'a caution id that climbs out of its folder',
      (content) => content.replace('cautions/suspended-load.yaml', /^id: .*/mu, 'id: ../suspended-load'),
      /^cautions\/suspended-load\.yaml:1:5 error Unexpected id `\.\.\/suspended-load`, .* no-bad-id$/u,
    ],
    [
      'the list of tools removed',
      (content) => content.remove('tools.yaml'),
      /^\.:1:1 error Unexpected content without `tools\.yaml`, expected the file no-missing-content$/u,
    ],
    [
      'the front matter of a procedure that jobs and other procedures name',
      (content) => content.replace('procedures/isolation.md', 'activity: isolation', 'activity: isolaton'),
      /^procedures\/isolation\.md:\d+:\d+ error Unexpected `isolaton`, expected a word such as `isolation` no-wrong-shape$/u,
    ],
    [
      'the front matter of a procedure left out',
      (content) => content.replace('procedures/restoration.md', /^---[\s\S]*?\n---\n/u, ''),
      /^procedures\/restoration\.md:1:1 error Unexpected start of the procedure, .* no-markdown-fault$/u,
    ],
    [
      'a job that does not fit',
      (content) => content.replace('jobs/wear-ring-service.yaml', /^procedures:/mu, 'procedure:'),
      /^jobs\/wear-ring-service\.yaml:\d+:1 error Unexpected (key `procedure`|map without `procedures`), /u,
    ],
    [
      'a source that is not there',
      (content) =>
        content.replace(
          'designs/design-a.yaml',
          'source: demo-data, where: sheet 1}',
          'source: x, where: y}',
        ),
      /^designs\/design-a\.yaml:\d+:\d+ error Unexpected `x`, expected the id of a source.* no-undefined-reference$/u,
    ],
  ])('%s', async (_what, spoil, line) => {
    const {exitStatus, errors} = await errorsAfter(spoil)
    expect(exitStatus).toBe(1)
    expect(errors.filter((one) => !line.test(one))).toEqual([])
    expect(errors.length).toBeGreaterThan(0)
  })
})
