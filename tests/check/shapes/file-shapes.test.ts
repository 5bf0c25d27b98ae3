import {describe, expect, test} from 'vitest'
import {checkAfter} from '../texts-for-tests.ts'

const design = 'designs/design-a.yaml'
const one = 'no-wrong-shape | Write one of'

describe('a design', () => {
  test('yields joints, rings, cofferdam and limits in the words of the model', () => {
    expect(checkAfter(() => undefined).data.designs.get('design-a')).toMatchObject({
      joints: [
        {
          id: 'hub-bolts',
          thread: {id: 'M12'},
          propertyClass: {id: 'A4-80'},
          lubrication: {id: 'paste'},
          count: 8,
        },
      ],
      rings: [{id: 'lower-ring', newClearance: {figure: '0.55'}, minimumNew: {figure: '0.50'}}],
      cofferdam: {outerPipeBore: {figure: '150', unit: 'mm'}, allowedLeak: {unit: 'ml/min'}},
      limits: [{value: {id: 'lower-ring.renewal'}, side: 'not-above', outside: 'RENEW'}],
      masses: [{id: 'head', value: {quantity: {kind: 'mass', si: 186}}}],
    })
  })

  test('hands a joint without a lubrication state on, for the torque to refuse at its place', () => {
    const {data, messages} = checkAfter((texts) => texts.replace(design, '    lubrication: paste\n', ''))
    expect(messages).toEqual([])
    const [joint] = data.designs.get('design-a')?.joints ?? []
    expect(joint).not.toHaveProperty('lubrication')
    expect(joint?.place).toMatchObject({path: design, line: 12, column: 5})
  })

  test('refuses a ring without its renewal clearance at the ring', () => {
    expect(checkAfter((texts) => texts.replace(design, /^ {4}renewal: .*\n/mu, '')).messages).toEqual([
      `${design}:25:5 Unexpected map without \`renewal\`, expected \`renewal:\` with a value with its unit no-missing-key | Add \`renewal:\``,
    ])
  })

  test('refuses a ring clearance below zero', () => {
    expect(
      checkAfter((texts) => texts.replace(design, '1.20 mm diametral', '-0.3 mm diametral')).lines,
    ).toEqual([
      `${design}:31:14 Unexpected negative value \`-0.3 mm diametral\`, expected zero or more no-bad-quantity`,
    ])
  })
})

describe('an instrument', () => {
  test.each([
    ['1 rpm', '5 rpm', 'rotational-speed'],
    ['0.1 mm/s', '0.4 mm/s', 'speed'],
  ])('that reads to %s within %s is taken as one of %s', (graduation, uncertainty, kind) => {
    const {data, messages} = checkAfter((texts) => {
      texts.replace('tools.yaml', 'graduation: 0.05 bar(g)', `graduation: ${graduation}`)
      texts.replace('tools.yaml', 'uncertainty: 0.02 bar', `uncertainty: ${uncertainty}`)
    })
    expect(messages).toEqual([])
    expect(data.tools.get('gauge')?.instrument).toMatchObject({
      graduation: {quantity: {kind}},
      uncertainty: {quantity: {kind}},
    })
  })
})

describe('a file is refused with', () => {
  test.each([
    [
      'a caution id that climbs out of its folder',
      'cautions/pinch.yaml',
      'id: pinch',
      'id: ../pinch',
      '1:5 Unexpected id `../pinch`, expected at most 40 small letters, digits and hyphens no-bad-id | Write it like `hub-bolts`',
    ],
    [
      'a signal word that is none',
      'cautions/pinch.yaml',
      'word: WARNING',
      'word: warning',
      `3:7 Unexpected \`warning\`, expected one of \`DANGER\`, \`WARNING\`, \`CAUTION\`, \`NOTICE\` ${one} DANGER, WARNING, CAUTION, NOTICE`,
    ],
    [
      'advice that is no list',
      'cautions/pinch.yaml',
      'avoid: [Keep hands away.]',
      'avoid: Keep hands away.',
      '9:8 Unexpected text `Keep hands away.`, expected a list no-wrong-shape | Write a list here',
    ],
    [
      'a pattern of tightening that is none',
      design,
      'pattern: crosswise',
      'pattern: crosswize',
      `23:14 Unexpected \`crosswize\`, expected a word such as \`crosswise\` ${one} crosswise, single`,
    ],
    [
      'a count of no bolts',
      design,
      'count: 8',
      'count: 0',
      '18:12 Unexpected `0`, expected a whole number from 1 to 64 no-wrong-shape | Write the number in digits, without a unit',
    ],
    [
      'a length where a mass is wanted',
      design,
      '186 kg',
      '186 mm',
      '41:41 Unexpected unit `mm`, expected a number such as `3.5` with one of the units `kg`, `t`, `lb` no-bad-quantity | Write a number, a blank and the unit; write `not known` with a reason where nobody knows',
    ],
    [
      'a reading limit on no side',
      design,
      'side: not-above',
      'side: above',
      `44:44 Unexpected \`above\`, expected one of \`not-above\`, \`not-below\` ${one} not-above, not-below`,
    ],
    [
      'a lip that looks into a space that its seal does not touch',
      design,
      'masses:',
      'seals:\n  - {id: seal, title: seal, part: ring, running-diameter: 90 mm, seat-depth: 20 mm, between: cargo-cofferdam, lips: [{id: lip, title: lip, faces: oil}]}\nmasses:',
      '41:118 Unexpected lip `lip` that faces `oil` in a seal between cargo and cofferdam, expected `cargo` or `cofferdam` no-wrong-shape | Turn the lip, or state which spaces the seal parts',
    ],
    [
      'a house pressure of another kind',
      'office.yaml',
      'tightness-test-pressure: 3 bar(g)',
      'tightness-test-pressure: 3 bar',
      '21:28 Unexpected unit `bar`, expected a number such as `3.5` with one of the units `Pa(g)`, `bar(g)`, `mbar(g)`, `psi(g)` no-bad-quantity | Write a number, a blank and the unit; write `not known` with a reason where nobody knows',
    ],
    [
      'a demonstration that is neither yes nor no',
      'office.yaml',
      'demonstration: yes',
      'demonstration: true',
      '4:16 Unexpected `true`, expected `yes` or `no` no-wrong-shape | Write `yes` or `no`',
    ],
    [
      'a right that nobody has',
      'office.yaml',
      'may: [write]',
      'may: [sign]',
      `8:45 Unexpected \`sign\`, expected one of \`write\`, \`review\`, \`approve\`, \`publish\` ${one} write, review, approve, publish`,
    ],
    [
      'an instrument without its uncertainty',
      'tools.yaml',
      ', uncertainty: 0.02 bar',
      '',
      '4:56 Unexpected map without `uncertainty`, expected `uncertainty:` with a value with its unit no-missing-key | Add `uncertainty:`',
    ],
    [
      'a part of no class',
      'parts.yaml',
      'class: spare',
      'class: spares',
      `2:36 Unexpected \`spares\`, expected a word such as \`spare\` ${one} spare, consumable, insurance-spare`,
    ],
    [
      'a job that names no list of procedures',
      'jobs/service.yaml',
      'procedures: [rings]\n',
      '',
      '1:1 Unexpected map without `procedures`, expected `procedures:` with a list no-missing-key | Add `procedures:`',
    ],
    [
      'a term without its meaning',
      'terms.yaml',
      'meaning: gap, ',
      '',
      '2:5 Unexpected map without `meaning`, expected `meaning:` with text no-missing-key | Add `meaning:`',
    ],
  ])('%s', (_what, path, old, words, line) => {
    expect(checkAfter((texts) => texts.replace(path, old, words)).messages).toEqual([`${path}:${line}`])
  })
})
