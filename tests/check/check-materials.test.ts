import {describe, expect, test} from 'vitest'
import {checkAfter, type Texts} from './texts-for-tests.ts'

const vessel = 'vessels/vessel-a/vessel.yaml'
const design = 'designs/design-a.yaml'
const materials = 'tables/materials.csv'
const suitability = 'tables/suitability.csv'
const head = '# title: T\n# source: rules\n# edition: one\n# status: assumed\n'
const rowMend = 'Write the id of a row of tables/materials.csv that exists, or add it'

/** Materials of a design, of both its pumps and in the cargo of the list, then spoiled. */
function checked(spoil: (texts: Texts) => void = () => undefined): ReturnType<typeof checkAfter> {
  return checkAfter((texts) => {
    texts.write(materials, `${head}id,title\nsteel,stainless steel\nfkm,FKM\n`)
    texts.write(
      suitability,
      `${head}material,cargo,word,note\nsteel,gas-oil,suitable,no attack\nfkm,gas-oil,limited,below 40 °C\n`,
    )
    texts.replace(
      design,
      'masses:\n',
      'wetted:\n  - {id: casing, title: casing, material: steel}\n  - {id: rings, title: O-rings}\nmasses:\n',
    )
    texts.replace(
      vessel,
      'components: {head: H-1, motor: M-1}\n',
      'components: {head: H-1, motor: M-1}\n    materials: {rings: fkm}\n',
    )
    texts.replace(
      vessel,
      'components: {head: H-2}\n',
      'components: {head: H-2}\n    materials:\n      rings: {value: not known, reason: no bag}\n',
    )
    spoil(texts)
  })
}

describe('materials that cargo touches', () => {
  test('are read from tables, design and pumps', () => {
    const {data, messages} = checked()
    expect(messages).toEqual([])
    expect(data.tables.materials.rows.map((row) => `${row.id}: ${row.title}`)).toEqual([
      'steel: stainless steel',
      'fkm: FKM',
    ])
    expect(data.tables.suitability).toMatchObject({
      origin: {status: 'assumed', source: 'rules', where: 'one'},
      rows: [
        {material: {id: 'steel'}, cargo: {id: 'gas-oil'}, word: 'suitable', note: 'no attack'},
        {material: {id: 'fkm'}, word: 'limited', note: 'below 40 °C'},
      ],
    })
    expect(data.designs.get('design-a')?.wetted.map((one) => one.material?.id)).toEqual(['steel', undefined])
    expect(data.vessels.get('vessel-a')?.positions.map((one) => one.materials)).toMatchObject([
      [{parts: {id: 'rings'}, material: {id: 'fkm'}}],
      [{parts: {id: 'rings'}, material: undefined, reason: 'no bag'}],
    ])
  })

  test('need neither tables nor words of the design', () => {
    const {data, messages} = checkAfter(() => undefined)
    expect(messages).toEqual([])
    expect(data.tables.suitability.rows).toEqual([])
    expect(data.designs.get('design-a')?.wetted).toEqual([])
  })

  test.each<[string, (texts: Texts) => void, RegExp]>([
    [
      'a row of a material that there is not',
      (texts) => texts.replace(suitability, 'fkm,gas-oil', 'fmk,gas-oil'),
      new RegExp(
        `^${suitability}:7:1 Unexpected \`fmk\`, expected the id of a row of tables/materials.csv such as \`fkm\` no-undefined-reference \\| ${rowMend}$`,
        'u',
      ),
    ],
    [
      'a row of a cargo that there is not',
      (texts) => texts.replace(suitability, 'fkm,gas-oil', 'fkm,gas-oli'),
      /^tables\/suitability.csv:7:5 Unexpected `gas-oli`, expected the id of a row of tables\/cargoes.csv such as `gas-oil` no-undefined-reference/u,
    ],
    [
      'a word that says nothing of a material',
      (texts) => texts.replace(suitability, 'limited', 'limitted'),
      /^tables\/suitability.csv:7:13 Unexpected `limitted`, expected a word such as `limited` no-wrong-shape \| Write one of suitable, limited, not-suitable, unknown$/u,
    ],
    [
      'a second word for one material in one cargo',
      (texts) => texts.replace(suitability, 'fkm,gas-oil,limited', 'steel,gas-oil,limited'),
      /^tables\/suitability.csv:7:1 Unexpected second row `steel gas-oil`, expected each row once no-duplicate-id/u,
    ],
    [
      'a material of the design that there is not',
      (texts) => texts.replace(design, 'material: steel}', 'material: stel}'),
      /^designs\/design-a.yaml:\d+:\d+ Unexpected `stel`, expected the id of a row of tables\/materials.csv such as `steel` no-undefined-reference/u,
    ],
    [
      'a material of a pump that there is not',
      (texts) => texts.replace(vessel, 'rings: fkm', 'rings: fkmm'),
      /^vessels\/vessel-a\/vessel.yaml:34:24 Unexpected `fkmm`, expected the id of a row of tables\/materials.csv such as `fkm` no-undefined-reference/u,
    ],
    [
      'a material of parts that the design states itself',
      (texts) => texts.replace(vessel, '{rings: fkm}', '{rings: fkm, casing: steel}'),
      /^vessels\/vessel-a\/vessel.yaml:34:29 Unexpected `casing`, expected one of `rings` no-undefined-reference \| Write the id of a group of open materials of `design-a` that exists, or add it$/u,
    ],
    [
      'a pump that says nothing of what was fitted',
      (texts) => texts.replace(vessel, '    materials: {rings: fkm}\n', ''),
      /^vessels\/vessel-a\/vessel.yaml:24:5 Unexpected pump `1p` without the material of `rings`, expected it under `materials:` no-missing-key \| Write `rings:` and the material as fitted, or `\{value: not known, reason: …\}`$/u,
    ],
    [
      'a material that nobody knows without a reason',
      (texts) => texts.replace(vessel, '{value: not known, reason: no bag}', 'not known'),
      /Unexpected material of `rings` that is not known without a reason, expected `\{value: not known, reason: …\}` no-missing-key/u,
    ],
    [
      'two groups of wetted parts of one id',
      (texts) => texts.replace(design, '{id: casing,', '{id: rings,'),
      /Unexpected second `rings`, expected each id once no-duplicate-id/u,
    ],
  ])('are refused with %s', (_what, spoil, message) => {
    const {messages} = checked(spoil)
    expect(messages).toEqual([expect.stringMatching(message)])
  })
})
