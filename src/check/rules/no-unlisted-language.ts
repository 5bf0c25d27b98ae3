import type {Office} from '../../handbook-model/office-content.ts'
import type {ContentSources, PlacedMap, PlacedNode} from '../../handbook-model/sources.ts'
import {addMessage, type ContentFiles} from '../../messages/add-message.ts'

/**
 * Every text is written in languages of the office, English always among them.
 *
 * A text in a language that no handbook is built in is never read, and `nl` for `no` would lose a translation.
 *
 * Accepted: `title: {en: hub bolts, no: navbolter}` with `languages: [en, no]` in office.yaml.
 * Rejected: the same with `languages: [en]`.
 */
export function noUnlistedLanguage(office: Office, sources: ContentSources, files: ContentFiles): void {
  if (!office.languages.includes('en'))
    addMessage(
      files,
      office.place,
      'no-missing-key',
      'Unexpected languages without `en`, expected English among them',
      {note: 'Add `en`: every text stands in English'},
    )
  const frontMatters = [...sources.markdown.values()].flatMap(({frontMatter}) => frontMatter ?? [])
  const listed = office.languages.map((one) => `\`${one}\``).join(', ')
  for (const {key} of [...sources.yaml.values(), ...frontMatters].flatMap(textsBelow)) {
    if (office.languages.includes(key.text) || key.text === 'en' || !/^[a-z]{2,3}$/u.test(key.text)) continue
    addMessage(
      files,
      key.place,
      'no-unknown-key',
      `Unexpected language \`${key.text}\`, expected one of ${listed} as in \`languages\` of office.yaml`,
      {note: 'Add the language to `languages`, or take the text out'},
    )
  }
}

/** Every text by language below a node: the maps that have an English text. */
function textsBelow(node: PlacedNode): PlacedMap['entries'] {
  if (node.kind === 'scalar') return []
  if (node.kind === 'list') return node.items.flatMap(textsBelow)
  const isText = node.entries.some(({key, value}) => key.text === 'en' && value.kind === 'scalar')
  return isText ? node.entries : node.entries.flatMap(({value}) => textsBelow(value))
}
