import {describe, expect, test} from 'vitest'
import {checkAfter, type Texts} from './texts-for-tests.ts'

const vessel = 'vessels/vessel-a/vessel.yaml'
const design = 'designs/design-a.yaml'

describe('content without a fault', () => {
  const {data, messages} = checkAfter(() => undefined)

  test('gives no message and everything by id', () => {
    expect(messages).toEqual([])
    expect(data.office?.demonstration).toBe(true)
    expect([...data.vessels.keys()]).toEqual(['vessel-a'])
    expect([...data.designs.keys()]).toEqual(['design-a'])
    expect([...data.cautions.keys()]).toEqual(['pinch'])
    expect([...data.jobs.keys()]).toEqual(['service'])
    expect([...data.tools.keys()]).toEqual(['gauge', 'wrench'])
    expect([...data.parts.keys()]).toEqual(['ring'])
    expect([...data.terms.keys()]).toEqual(['cofferdam'])
    expect([...data.sources.keys()]).toEqual(['drawing', 'rules'])
  })
})

describe('identity', () => {
  test.each<[string, (texts: Texts) => void, string]>([
    [
      'two positions of one id',
      (texts) => texts.replace(vessel, '  - id: 1s\n', '  - id: 1p\n'),
      `${vessel}:35:5 Unexpected second \`1p\`, expected each id once no-duplicate-id | Rename one of the two | see ${vessel}:24:5`,
    ],
    [
      'two positions of one tag',
      (texts) => texts.replace(vessel, '    tag: 1S\n', '    tag: 1P\n'),
      `${vessel}:35:5 Unexpected second tag \`1P\`, expected each tag once no-duplicate-id | Read the plates again: the tag is the largest thing on every sheet | see ${vessel}:24:5`,
    ],
    [
      'two pumps of one serial number',
      (texts) => texts.replace(vessel, 'serial: A-2', 'serial: A-1'),
      `${vessel}:35:5 Unexpected pump \`A-1\` at \`1S\` of \`vessel-a\`, expected another serial than that of the pump at \`1P\` of \`vessel-a\` no-second-serial | Read both nameplates again | see ${vessel}:24:5`,
    ],
    [
      'one head fitted in two pumps',
      (texts) => texts.replace(vessel, 'head: H-2', 'head: H-1'),
      `${vessel}:44:24 Unexpected head \`H-1\` at \`1S\` of \`vessel-a\`, expected another serial than that of the head at \`1P\` of \`vessel-a\` no-second-serial | Read both nameplates again | see ${vessel}:33:24`,
    ],
    [
      'a joint and a ring of one id, for both become value ids',
      (texts) => texts.replace(design, '  - id: lower-ring\n', '  - id: hub-bolts\n'),
      `${design}:25:5 Unexpected second \`hub-bolts\`, expected each id once no-duplicate-id | Rename one of the two | see ${design}:12:5`,
    ],
    [
      'two ratings of one id',
      (texts) =>
        texts.replace(design, 'ratings:\n', 'ratings:\n  - {id: flow, title: flow, value: 1 m³/h}\n'),
      `${design}:10:5 Unexpected second \`flow\`, expected each id once no-duplicate-id | Rename one of the two | see ${design}:9:5`,
    ],
    [
      'a file whose name is not its id',
      (texts) => {
        texts.write('cautions/fall.yaml', texts.read('cautions/pinch.yaml').replace('id: pinch', 'id: drop'))
      },
      'cautions/fall.yaml:1:1 Unexpected id `drop` in this file, expected the file to be `cautions/drop.yaml` no-bad-id | Make the id and the name of the file equal',
    ],
    [
      'a vessel in the folder of another',
      (texts) => texts.replace(vessel, 'id: vessel-a', 'id: vessel-b'),
      `${vessel}:1:1 Unexpected id \`vessel-b\` in this file, expected the file to be \`vessels/vessel-b/vessel.yaml\` no-bad-id | Make the id and the name of the file equal`,
    ],
  ])('%s', (_what, spoil, line) => {
    expect(checkAfter(spoil).messages).toEqual([line])
  })

  test('a serial number is looked for in the whole fleet', () => {
    const {messages} = checkAfter((texts) => {
      const other = texts.read(vessel).replace('id: vessel-a', 'id: vessel-b')
      texts.write(
        'vessels/vessel-b/vessel.yaml',
        other.replaceAll(/(serial: |head: |motor: )/gu, '$1X').replace('XA-2', 'A-2'),
      )
    })
    expect(messages).toEqual([
      `vessels/vessel-b/vessel.yaml:35:5 Unexpected pump \`A-2\` at \`1S\` of \`vessel-b\`, expected another serial than that of the pump at \`1S\` of \`vessel-a\` no-second-serial | Read both nameplates again | see ${vessel}:35:5`,
    ])
  })
})

describe('references', () => {
  test.each<[string, (texts: Texts) => void, string]>([
    [
      'a position in a tank that is not there',
      (texts) => texts.replace(vessel, 'tank: 1s', 'tank: 2s'),
      `${vessel}:37:11 Unexpected \`2s\`, expected the id of a tank of this vessel such as \`1s\` no-undefined-reference | Write the id of a tank of this vessel that exists, or add it`,
    ],
    [
      'a position of a design that is not there',
      (texts) =>
        texts.replace(vessel, /design: design-a\n {4}serial: A-2/u, 'design: desing-a\n    serial: A-2'),
      `${vessel}:38:13 Unexpected \`desing-a\`, expected the id of a design such as \`design-a\` no-undefined-reference | Write the id of a design that exists, or add it`,
    ],
    [
      'a thread without its row',
      (texts) => texts.replace(design, 'thread: M12', 'thread: M13'),
      `${design}:14:13 Unexpected \`M13\`, expected the id of a row of tables/threads.csv such as \`M10\` no-undefined-reference | Write the id of a row of tables/threads.csv that exists, or add it`,
    ],
    [
      'a property class without its row',
      (texts) => texts.replace(design, 'class: A4-80', 'class: A4-90'),
      `${design}:15:12 Unexpected \`A4-90\`, expected the id of a row of tables/property-classes.csv such as \`A4-80\` no-undefined-reference | Write the id of a row of tables/property-classes.csv that exists, or add it`,
    ],
    [
      'a lubrication state without its row',
      (texts) => texts.replace(design, 'lubrication: paste', 'lubrication: pasta'),
      `${design}:21:18 Unexpected \`pasta\`, expected the id of a row of tables/friction.csv such as \`paste\` no-undefined-reference | Write the id of a row of tables/friction.csv that exists, or add it`,
    ],
    [
      'a cargo without its row',
      (texts) => texts.replace(vessel, '[gas-oil]', '[gas-oli]'),
      `${vessel}:15:11 Unexpected \`gas-oli\`, expected the id of a row of tables/cargoes.csv such as \`gas-oil\` no-undefined-reference | Write the id of a row of tables/cargoes.csv that exists, or add it`,
    ],
    [
      'a tool aboard that is no tool',
      (texts) => texts.replace(vessel, 'tool: wrench', 'tool: wrensh'),
      `${vessel}:50:12 Unexpected \`wrensh\`, expected the id of a tool such as \`wrench\` no-undefined-reference | Write the id of a tool that exists, or add it`,
    ],
    [
      'a spare aboard that is no part',
      (texts) => texts.replace(vessel, 'part: ring', 'part: rings'),
      `${vessel}:52:12 Unexpected \`rings\`, expected the id of a part such as \`ring\` no-undefined-reference | Write the id of a part that exists, or add it`,
    ],
    [
      'a caution of a source that is not there',
      (texts) => texts.replace('cautions/pinch.yaml', 'source: rules', 'source: rulse'),
      'cautions/pinch.yaml:12:9 Unexpected `rulse`, expected the id of a source such as `rules` no-undefined-reference | Write the id of a source that exists, or add it',
    ],
    [
      'an origin of a source that is not there, told once and not at each value below it',
      (texts) => texts.replace(design, 'source: drawing', 'source: drawnig'),
      `${design}:7:36 Unexpected \`drawnig\`, expected the id of a source such as \`drawing\` no-undefined-reference | Write the id of a source that exists, or add it`,
    ],
    [
      'a value with a source of its own that is not there',
      (texts) =>
        texts.replace(design, 'value: 186 kg', 'value: {value: 186 kg, status: measured, source: scale}'),
      `${design}:41:83 Unexpected \`scale\`, expected one of \`drawing\`, \`rules\` no-undefined-reference | Write the id of a source that exists, or add it`,
    ],
    [
      'a table of a source that is not there',
      (texts) => texts.replace('tables/threads.csv', 'source: rules', 'source: rule'),
      'tables/threads.csv:2:1 Unexpected `rule`, expected the id of a source such as `rules` no-undefined-reference | Write the id of a source that exists, or add it',
    ],
    [
      'a row of a source that is not there',
      (texts) => texts.replace('tables/friction.csv', '0.12,rules', '0.12,rule'),
      'tables/friction.csv:8:30 Unexpected `rule`, expected the id of a source such as `rules` no-undefined-reference | Write the id of a source that exists, or add it',
    ],
    [
      'a source superseded by one that is not there',
      (texts) =>
        texts.replace('sources.yaml', 'status: current', 'status: superseded, superseded-by: rules-2'),
      'sources.yaml:2:109 Unexpected `rules-2`, expected the id of a source such as `rules` no-undefined-reference | Write the id of a source that exists, or add it',
    ],
  ])('%s', (_what, spoil, line) => {
    expect(checkAfter(spoil).messages).toEqual([line])
  })
})

describe('one mistake is one message', () => {
  test.each<[string, (texts: Texts) => void, string]>([
    [
      'a design that does not fit is not also told where pumps refer to it',
      (texts) => texts.replace(design, '214 mm', 'NaN'),
      `${design}:27:23 Unexpected \`NaN\`, expected a number such as \`3.5\` with one of the units \`m\`, \`mm\`, \`µm\`, \`cm\`, \`in\` no-bad-quantity`,
    ],
    [
      'a list of sources that does not fit is not also told where values refer to it',
      (texts) => texts.replace('sources.yaml', 'kind: practice', 'kind: practise'),
      'sources.yaml:2:64 Unexpected `practise`, expected a word such as `practice` no-wrong-shape',
    ],
    [
      'a table that does not fit is not also told where joints refer to it',
      (texts) => texts.replace('tables/threads.csv', '# unit pitch: mm\n', ''),
      'tables/threads.csv:6:1 Unexpected table without a line `# unit pitch: …`, expected the unit of the column no-missing-key',
    ],
    [
      'a missing table is not also told where joints refer to it',
      (texts) => texts.remove('tables/threads.csv'),
      'tables:1:1 Unexpected content without `tables/threads.csv`, expected the table no-missing-content',
    ],
    [
      'a missing list of tools is not also told where tools aboard refer to it',
      (texts) => texts.remove('tools.yaml'),
      '.:1:1 Unexpected content without `tools.yaml`, expected the file no-missing-content',
    ],
    [
      'a file that is no YAML is not also told as missing',
      (texts) => texts.write('office.yaml', 'a:\n\t- b\n'),
      'office.yaml:2:1 Unexpected tab as indentation, expected blanks no-yaml-fault',
    ],
    [
      'no content at all is not also told file by file',
      (texts) => {
        for (const path of listed()) texts.remove(path)
      },
      '.:1:1 Unexpected empty content folder, expected at least `office.yaml` and a vessel no-missing-content',
    ],
  ])('%s', (_what, spoil, line) => {
    expect(checkAfter(spoil).lines).toEqual([line])
  })

  test('several mistakes are all told in one run', () => {
    const {lines} = checkAfter((texts) => {
      texts.replace('office.yaml', 'contact:', 'contakt:')
      texts.replace(vessel, 'tank: 1s', 'tank: 2s')
      texts.replace('cautions/pinch.yaml', 'word: WARNING', 'word: WARNIGN')
      texts.replace('tables/cargoes.csv', ',840,', ',0,')
    })
    expect(lines).toEqual([
      'cautions/pinch.yaml:3:7 Unexpected `WARNIGN`, expected a word such as `WARNING` no-wrong-shape',
      'office.yaml:1:1 Unexpected map without `contact`, expected `contact:` with a list no-missing-key',
      'office.yaml:2:1 Unexpected key `contakt`, expected a key such as `contact` no-unknown-key',
      'tables/cargoes.csv:7:17 Unexpected density of `0`, expected more than zero no-impossible-value',
      `${vessel}:37:11 Unexpected \`2s\`, expected the id of a tank of this vessel such as \`1s\` no-undefined-reference`,
    ])
  })
})

function listed(): readonly string[] {
  const {files} = checkAfter(() => undefined)
  return [...files.keys()]
}

describe('files at places that the content model does not know', () => {
  test.each([
    'notes.yaml',
    'cautions/old/pinch.yaml',
    'tables/tread.csv',
    'vessels/vessel-a/spares.csv',
    'issues/a.yaml',
    'issues/a.json',
    'issues/vessel-a/old/2031-03.json',
    'issues/vessel-a/texts/short.txt',
    'approvals/one.yaml',
    'vessels/vessel-a/history/a.yaml',
  ])('`%s` would silently be left out', (path) => {
    const text = path.endsWith('.csv') ? 'a\nb\n' : 'id: a\n'
    expect(checkAfter((texts) => texts.write(path, text)).messages).toEqual([
      `${path}:1:1 Unexpected file \`${path}\`, expected one of the places that the content model knows no-stray-file | Move the file to its folder or out of the content`,
    ])
  })
})

test('a file that is missing hides only what refers into it', () => {
  const {lines} = checkAfter((texts) => {
    texts.remove('tools.yaml')
    texts.replace(vessel, '{part: ring, quantity: 2', '{part: rin, quantity: 2')
  })
  expect(lines).toEqual([
    '.:1:1 Unexpected content without `tools.yaml`, expected the file no-missing-content',
    `${vessel}:52:12 Unexpected \`rin\`, expected the id of a part such as \`ring\` no-undefined-reference`,
  ])
})

test('ledgers and the texts of issued pages have their places', () => {
  const {messages} = checkAfter((texts) => {
    texts.write('issues/vessel-a/2031-03.json', '{}')
    texts.write(`issues/vessel-a/texts/${'ab'.repeat(32)}.txt`, 'identity')
  })
  expect(messages).toEqual([])
})

describe('a vessel', () => {
  test('without a pump has no handbook', () => {
    const {messages} = checkAfter((texts) => {
      texts.replace(vessel, /^positions:\n[\s\S]*(?=^tools-aboard)/mu, 'positions: []\n')
    })
    expect(messages).toEqual([
      `${vessel}:1:1 Unexpected vessel \`vessel-a\` without a pump, expected at least one entry under \`positions\` no-empty-vessel | List the pump positions of the vessel`,
    ])
  })

  test('is needed', () => {
    expect(checkAfter((texts) => texts.remove(vessel)).messages).toEqual([
      'vessels:1:1 Unexpected content without a vessel, expected `vessels/<id>/vessel.yaml` no-missing-content | Write the file of at least one vessel',
    ])
  })
})
