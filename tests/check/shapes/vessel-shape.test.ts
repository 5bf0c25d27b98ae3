import {describe, expect, test} from 'vitest'
import {checkAfter, type Texts} from '../texts-for-tests.ts'

const path = 'vessels/vessel-a/vessel.yaml'
const read = (spoil: (texts: Texts) => void = () => undefined) => {
  const {data, messages} = checkAfter(spoil)
  return {messages, vessel: data.vessels.get('vessel-a')}
}
const replacing = (old: string | RegExp, words: string) => read((texts) => texts.replace(path, old, words))

describe('a vessel file', () => {
  test('yields tanks, positions and hydraulics in the words of the model', () => {
    const {vessel} = read()
    expect(vessel).toMatchObject({
      hullNumber: '0937241',
      built: '2011-06-30',
      hydraulics: {systemPressure: {figure: '240', unit: 'bar(g)', origin: {source: 'drawing'}}},
      toolsAboard: [{tool: {id: 'wrench'}, number: 'T1'}],
      sparesAboard: [{part: {id: 'ring'}, quantity: 2}],
      cargoes: [{id: 'gas-oil'}],
    })
    expect(vessel?.tanks[0]).toMatchObject({
      tag: '1P',
      vacuumValveSetting: {figure: '−0.035', unit: 'bar(g)'},
      pressureValveSetting: {figure: '0.2'},
      plan: {fromFrame: 146, toFrame: 157, fromSide: -0.62, toSide: 0},
    })
    expect(vessel?.positions[0]).toMatchObject({
      id: '1p',
      tag: '1P',
      critical: false,
      stackLength: {figure: '9.2', unit: 'm'},
      components: [
        {kind: 'head', serial: 'H-1'},
        {kind: 'motor', serial: 'M-1'},
      ],
      facts: [{fact: {id: 'backstop'}, value: 'fitted'}],
    })
  })

  test('keeps what is not known as not known, with its reason', () => {
    expect(read().vessel?.positions[1]).toMatchObject({
      stackLength: {kind: 'not-known', reason: 'never measured'},
      facts: [{fact: {id: 'backstop'}, value: undefined, reason: 'no record'}],
    })
  })

  test('fills the isolation pattern with the tag of each position; a role of its own takes the place of the pattern', () => {
    const [first, second] = read().vessel?.positions ?? []
    expect(first?.isolation).toMatchObject([
      {role: 'pressure', points: [{id: '1p-pressure', tag: 'HP 1P', where: {en: 'deck at 1P'}}]},
      {role: 'heating', points: [], noneBecause: {en: 'no coils'}},
    ])
    expect(second?.isolation).toMatchObject([
      {role: 'pressure', points: [], noneBecause: {en: 'pump is blinded'}},
      {role: 'heating', points: []},
    ])
  })

  test('fills every word of a point and of a reason', () => {
    const {vessel} = read((texts) => {
      texts.replace(
        path,
        'medium: oil, kind: valve, normal: open, isolated: closed',
        'medium: "oil {tag}", kind: valve, normal: "open {tag}", isolated: "closed {tag}"',
      )
      texts.replace(
        path,
        'lock: lock, proof: gauge, restored-with: opened',
        'lock: "lock {tag}", proof: "gauge {tag}", restored-with: "opened {tag}"',
      )
      texts.replace(path, 'heating: {none: no coils}', 'heating: {none: "no coils at {tag}"}')
    })
    expect(JSON.stringify(vessel?.positions)).not.toContain('{tag}')
    expect(vessel?.positions[0]?.isolation).toMatchObject([
      {points: [{medium: {en: 'oil 1P'}, lock: {en: 'lock 1P'}, restoredWith: {en: 'opened 1P'}}]},
      {noneBecause: {en: 'no coils at 1P'}},
    ])
  })

  test('takes blanks around a serial number for none', () => {
    expect(replacing('{head: H-2}', '{head: " H-2  b "}').vessel?.positions[1]?.components).toMatchObject([
      {kind: 'head', serial: 'H-2 b'},
    ])
  })

  test('fills every language of the pattern, and makes an id of a tag with a blank', () => {
    const {vessel, messages} = read((texts) => {
      texts.replace('office.yaml', 'languages: [en]', 'languages: [en, no]')
      texts.replace(path, 'where: "deck at {tag}"', 'where: {en: "deck at {tag}", no: "dekk ved {tag}"}')
      texts.replace(path, '    tag: 1P\n', '    tag: SLOP P\n')
    })
    expect(messages).toEqual([])
    expect(vessel?.positions[0]?.isolation[0]?.points[0]).toMatchObject({
      id: 'slop-p-pressure',
      where: {en: 'deck at SLOP P', no: 'dekk ved SLOP P'},
    })
  })
})

describe('a vessel file is refused with', () => {
  const idNote = 'no-bad-id | Write it like `hub-bolts`'
  test.each<[string, string | RegExp, string, string]>([
    [
      'a position named CON',
      '  - id: 1s\n',
      '  - id: CON\n',
      `35:9 Unexpected id \`CON\`, expected a name that no operating system keeps for a device ${idNote}`,
    ],
    [
      'a position with a slash',
      '  - id: 1s\n',
      '  - id: a/b\n',
      `35:9 Unexpected id \`a/b\`, expected at most 40 small letters, digits and hyphens ${idNote}`,
    ],
    [
      'an isolation point with a slash',
      'id: "{tag}-pressure"',
      'id: "{tag}/pressure"',
      '21:12 Unexpected id `1/pressure`, expected at most 40 small letters, digits and hyphens no-bad-id | Write it like `{tag}-pressure`',
    ],
    [
      'a mistyped isolation role',
      '  heating:',
      '  heatin:',
      '22:3 Unexpected isolation role `heatin`, expected a role such as `heating` no-unknown-key | The roles are pressure, return, pilot, discharge, stripping, purge-supply, purge-outlet, heating, tank-cleaning, cofferdam-relief, cofferdam-vent, temporary-plugs, transport-bolts',
    ],
    [
      'an isolation role that is a bare word',
      'heating: {none: no coils}',
      'heating: none',
      '22:3 Unexpected text, expected a list of isolation points or `{none: reason}` no-wrong-shape | List the points, or say why there is none',
    ],
    [
      'an isolation role without a reason',
      'heating: {none: no coils}',
      'heating: {none: ""}',
      '22:19 Unexpected blank, expected a text no-wrong-shape | Write the text, or take the key out where it may be left out',
    ],
    [
      'an isolation point of another kind',
      'kind: valve',
      'kind: vlave',
      '21:66 Unexpected `vlave`, expected a word such as `valve` no-wrong-shape | Write one of valve, blind, fuse, relief-valve, plug, transport-bolt',
    ],
    [
      'an unknown component',
      '{head: H-2}',
      '{haed: H-2}',
      '44:18 Unexpected component `haed`, expected one of `head`, `motor`, `sleeve`, `stack` with a serial number no-unknown-key | Write the serial number from the nameplate behind the component',
    ],
    [
      'a component without a serial number',
      '{head: H-2}',
      '{head: ""}',
      '44:18 Unexpected component `head`, expected one of `head`, `motor`, `sleeve`, `stack` with a serial number no-unknown-key | Write the serial number from the nameplate behind the component',
    ],
    [
      'a component whose serial number is a blank',
      '{head: H-2}',
      '{head: " "}',
      '44:18 Unexpected component `head`, expected one of `head`, `motor`, `sleeve`, `stack` with a serial number no-unknown-key | Write the serial number from the nameplate behind the component',
    ],
    [
      'a key beside the reason of a fact, which would be lost',
      '{value: not known, reason: no record}',
      '{value: not known, reason: no record, date: 2011-02-09}',
      '46:55 Unexpected key `date`, expected one of `value`, `reason` no-unknown-key | The keys here are value, reason',
    ],
    [
      'an isolation point whose id the tag makes too long',
      'id: "{tag}-pressure"',
      `id: "{tag}-${'p'.repeat(38)}"`,
      `24:5 Unexpected id \`1p-${'p'.repeat(38)}\`, expected at most 40 small letters, digits and hyphens no-bad-id | Shorten the id of the isolation point or the tag`,
    ],
    [
      'two isolation points of one id on one pump',
      'heating: {none: no coils}',
      'heating:\n    - {id: "{tag}-pressure", tag: "HI {tag}", medium: steam, kind: valve, normal: open, isolated: closed, where: deck, lock: lock, proof: gauge, restored-with: opened}',
      '23:7 Unexpected second `1p-pressure`, expected each id once no-duplicate-id | Rename one of the two | see vessels/vessel-a/vessel.yaml:21:7',
    ],
    [
      'a fact not known without a reason',
      '{value: not known, reason: no record}',
      'not known',
      '46:7 Unexpected fact `backstop` that is not known without a reason, expected `{value: not known, reason: …}` no-missing-key | Say why nobody knows it',
    ],
    [
      'a fact that is known and not known at once',
      '{value: not known, reason: no record}',
      '{value: fitted, reason: no record}',
      '46:7 Unexpected map for fact `backstop`, expected a value or `{value: not known, reason: …}` no-wrong-shape | Write `backstop:` and the value',
    ],
    [
      'a hull number of another length',
      '"0937241"',
      '"093724"',
      '3:14 Unexpected hull number `093724`, expected seven digits no-wrong-shape | The last digit is the last digit of 7a + 6b + 5c + 4d + 3e + 2f',
    ],
    [
      'a hull number whose last digit does not check',
      '"0937241"',
      '"0937242"',
      '3:14 Unexpected last digit of hull number `0937242`, expected `1` no-wrong-shape | The last digit is the last digit of 7a + 6b + 5c + 4d + 3e + 2f',
    ],
    [
      'a hull number with two digits changed round',
      '"0937241"',
      '"0973241"',
      '3:14 Unexpected last digit of hull number `0973241`, expected `5` no-wrong-shape | The last digit is the last digit of 7a + 6b + 5c + 4d + 3e + 2f',
    ],
    [
      'a system pressure in bars',
      '240 bar(g)',
      '240 bars',
      '10:20 Unexpected unit `bars`, expected a number such as `3.5` with one of the units `Pa(g)`, `bar(g)`, `mbar(g)`, `psi(g)` no-bad-quantity | Write a number, a blank and the unit; write `not known` with a reason where nobody knows',
    ],
    [
      'a mistyped key at its own line, the missing one at its position',
      'serial: A-2',
      'serail: A-2',
      '39:5 Unexpected key `serail`, expected a key such as `serial` no-unknown-key | The keys here are id, tag, tank, kept-at, design, serial, role, critical, installed, stack-length, stack-sections, stack-supports, components, facts, materials, isolation, differences',
    ],
  ])('%s', (_what, old, words, line) => {
    const {messages} = replacing(old, words)
    expect(messages.filter((one) => !one.includes('Unexpected map without `serial`'))).toEqual([
      `${path}:${line}`,
    ])
  })
})
