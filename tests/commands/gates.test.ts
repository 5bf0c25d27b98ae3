import {describe, expect, test} from 'vitest'
import {type ChangedContent, errorsAfter} from './changed-content.ts'

describe('a gate stops the build and names the line', () => {
  test('the untouched demonstration has no error', async () => {
    expect(await errorsAfter(() => undefined)).toMatchObject({exitStatus: 0, errors: []})
  })

  test.each<[string, (content: ChangedContent) => void, RegExp]>([
    [
      'a caution reference removed',
      (content) =>
        content.replace('procedures/pump-unit-removal.md', '::caution{ref=suspended-load section}\n', ''),
      /^procedures\/pump-unit-removal\.md:\d+:\d+ error Unexpected step `[a-z-]+` with action `lift` and no caution of hazard class H07, expected `hanging-pump` or `suspended-load` before it no-uncautioned-hazard$/u,
    ],
    [
      'a lubrication state removed',
      (content) => content.replace('designs/design-a.yaml', /^ +lubrication: assembly-paste\n/mu, ''),
      /^designs\/design-a\.yaml:\d+:\d+ error Unexpected joint `[a-z-]+` without a lubrication state, expected `lubrication:` with the id of a row of tables\/friction\.csv no-dry-torque$/u,
    ],
    [
      'a wear-ring limit removed',
      (content) => content.replace('designs/design-a.yaml', /^ +renewal: 1\.20 mm diametral\n/mu, ''),
      /^designs\/design-a\.yaml:\d+:\d+ error Unexpected map without `renewal`, expected `renewal:` with a value with its unit no-missing-key$/u,
    ],
    [
      'a restore step reference removed',
      (content) => content.replace('procedures/restoration.md', '   ::restore{role=pressure}\n', ''),
      /^procedures\/isolation\.md:\d+:\d+ error Unexpected isolation of `pressure` in step `[a-z-]+` that job `wear-ring-service` never restores, expected `::restore\{role=pressure\}` in a later step no-unrestored-isolation$/u,
    ],
    [
      'raw HTML',
      (content) =>
        content.replace('procedures/isolation.md', '## State before', '<b>stop</b>\n\n## State before'),
      /^procedures\/isolation\.md:\d+:\d+ error Unexpected (HTML|HTML `<b>`), expected (a paragraph|Markdown) no-raw-html$/u,
    ],
    [
      'a procedure that refers to itself',
      (content) =>
        content.replace(
          'procedures/isolation.md',
          '## State before\n',
          '## State before\n\n- See :procedure[isolation]{ref=isolation}.\n',
        ),
      /^procedures\/isolation\.md:\d+:\d+ error Unexpected reference of procedure `isolation` to itself, expected another procedure no-reference-loop$/u,
    ],
    [
      'an unknown key',
      (content) => content.replace('office.yaml', /^contact:/mu, 'contakt:'),
      /^office\.yaml:\d+:1 error Unexpected key `contakt`, expected a key such as `contact` no-unknown-key$/u,
    ],
    [
      'a YAML alias',
      (content) => content.replace('office.yaml', /^contact:/mu, 'bomb: &a [x]\nmore: [*a, *a]\ncontact:'),
      /^office\.yaml:\d+:\d+ error Unexpected anchor or alias, expected every value written out no-yaml-alias$/u,
    ],
    [
      'a value with a wrong unit',
      (content) => content.replace('designs/design-a.yaml', 'renewal: 1.20 mm diametral', 'renewal: 3 bars'),
      /^designs\/design-a\.yaml:\d+:\d+ error Unexpected unit `bars`, expected a number such as `3\.5` with one of the units `mm radial`, `mm diametral` no-bad-quantity$/u,
    ],
    [
      'a damaged ledger',
      (content) => content.write('issues/vessel-a/2031-03.json', '{"version": 1,'),
      /^issues\/vessel-a\/2031-03\.json:1:1 error Unexpected text that is not JSON, expected a ledger no-damaged-ledger$/u,
    ],
    [
      'a file that is not UTF-8',
      (content) => content.write('office.yaml', new Uint8Array([0x61, 0x3a, 0x20, 0xe9, 0x0a])),
      /^office\.yaml:1:4 error Unexpected byte that is not UTF-8, expected a UTF-8 text file no-foreign-encoding$/u,
    ],
  ])('%s', async (_what, spoil, line) => {
    const {exitStatus, errors, said} = await errorsAfter(spoil)
    expect(exitStatus).toBe(1)
    expect(
      errors.filter((one) => line.test(one)),
      said.slice(0, 1500),
    ).not.toEqual([])
    expect(said).toContain('    mend: ')
  })
})
