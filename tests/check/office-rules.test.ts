import {describe, expect, test} from 'vitest'
import {checkAfter, type Texts} from './texts-for-tests.ts'

const vessel = 'vessels/vessel-a/vessel.yaml'

describe('a language', () => {
  const line = (place: string, language: string): string =>
    `${place} Unexpected language \`${language}\`, expected one of \`en\`, \`no\` as in \`languages\` of office.yaml no-unknown-key | Add the language to \`languages\`, or take the text out`

  test('of a text is one of the office, in every file and at every depth', () => {
    const {messages} = checkAfter((texts) => {
      texts.replace('office.yaml', 'languages: [en]', 'languages: [en, no]')
      texts.replace('office.yaml', 'issuer: Example Office', 'issuer: {en: Example Office, no: Kontor}')
      texts.replace(
        'cautions/pinch.yaml',
        'avoid: [Keep hands away.]',
        'avoid: [{en: Keep hands away., nl: x}]',
      )
      texts.replace(vessel, 'name: Vessel A', 'name: {fr: Navire, en: Vessel A}')
    })
    expect(messages).toEqual([line('cautions/pinch.yaml:9:32', 'nl'), line(`${vessel}:2:8`, 'fr')])
  })

  test('of a procedure is one of the office too', () => {
    const {messages} = checkAfter((texts) => {
      texts.write('procedures/a.md', '---\nid: a\nweather: {en: none, de: keins}\n---\n\n# A\n')
    })
    expect(messages).toEqual([line('procedures/a.md:3:21', 'de').replace('`en`, `no`', '`en`')])
  })

  test.each([
    [
      '[no]',
      'office.yaml:1:1 Unexpected languages without `en`, expected English among them no-missing-key | Add `en`: every text stands in English',
    ],
    [
      '[en, english]',
      'office.yaml:3:17 Unexpected language `english`, expected two or three small letters no-bad-id | Write it like `en`',
    ],
  ])('list of `%s` is refused', (languages, told) => {
    expect(
      checkAfter((texts) => texts.replace('office.yaml', 'languages: [en]', `languages: ${languages}`))
        .messages,
    ).toEqual([told])
  })
})

describe('a hull number', () => {
  const carry = (texts: Texts): void => texts.replace(vessel, '"0937241"', '"1234567"')

  test('of a demonstration is one that no ship carries', () => {
    expect(checkAfter(carry).messages).toEqual([
      `${vessel}:3:14 Unexpected hull number \`1234567\` of a demonstration, expected one that begins with \`0\` no-wrong-shape | Invent a number that no ship carries, or write \`demonstration: no\``,
    ])
  })

  test('of an office in service may be any', () => {
    const {messages} = checkAfter((texts) => {
      carry(texts)
      texts.replace('office.yaml', 'demonstration: yes', 'demonstration: no')
    })
    expect(messages).toEqual([])
  })
})

describe('a fact', () => {
  test.each(['and', 'or', 'not', 'in', 'known', 'design', 'vessel'])('cannot be named `%s`', (id) => {
    const {messages} = checkAfter((texts) => {
      texts.replace('office.yaml', 'id: backstop', `id: ${id}`)
      texts.replace(vessel, 'facts: {backstop: fitted}', 'facts: {}')
      texts.replace(vessel, 'facts:\n      backstop: {value: not known, reason: no record}', 'facts: {}')
    })
    expect(messages).toEqual([
      `office.yaml:11:9 Unexpected fact \`${id}\`, expected a name that is no word of conditions no-bad-id | Choose another name`,
    ])
  })
})
