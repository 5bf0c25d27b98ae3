import type {Caution, SignalWord} from '../../handbook-model/office-content.ts'
import {addMessage, type ContentFiles} from '../../messages/add-message.ts'
import {approvedVerbs} from '../language/approved-verbs.ts'

/** What of a caution is judged; an urgent revision carries the same. */
type JudgedCaution = Pick<Caution, 'id' | 'word' | 'worstHarm' | 'likelihood' | 'avoid' | 'place'>

/**
 * A caution names hazard, consequence and what to do, begins each line of advice with a verb, and its word fits the harm.
 *
 * Accepted: word WARNING, harm death or serious injury that could happen, avoid "Stand clear of the load".
 * Rejected: avoid "Be careful", or word CAUTION for a harm that kills.
 */
export function noIncompleteCaution(caution: JudgedCaution, files: ContentFiles): void {
  const {place} = caution
  if (caution.avoid.length === 0) {
    addMessage(
      files,
      place,
      'no-incomplete-caution',
      `Unexpected caution \`${caution.id}\` without advice, expected at least one line under \`avoid\``,
      {note: 'Say what the reader does to avoid the harm'},
    )
  }
  for (const line of caution.avoid) {
    const [first = '', second = ''] = line.en.split(/[\s,.]+/u)
    const verb =
      first === 'Do' || first === 'Never' ? second.replace(/^not$/u, line.en.split(/\s+/u)[2] ?? '') : first
    if (!approvedVerbs.has(verb.toLowerCase()) || /^be\b|careful/iu.test(line.en)) {
      addMessage(
        files,
        place,
        'no-incomplete-caution',
        `Unexpected advice \`${line.en}\` of caution \`${caution.id}\`, expected a line that starts with a verb of the list`,
        {note: `Begin with a verb such as ${[...approvedVerbs].slice(0, 8).join(', ')}`},
      )
    }
  }
  const expected = wordFor(caution)
  if (caution.word !== expected) {
    addMessage(
      files,
      place,
      'no-incomplete-caution',
      `Unexpected word ${caution.word} of caution \`${caution.id}\`, expected ${expected} for ${caution.worstHarm} that ${caution.likelihood} happen`,
      {note: 'Change the word, the worst harm or the likelihood'},
    )
  }
}

/** Source: signal word definitions of ISO 3864-2 and ANSI Z535.6; from memory. */
function wordFor(caution: JudgedCaution): SignalWord {
  if (caution.worstHarm === 'damage') return 'NOTICE'
  if (caution.worstHarm === 'minor-or-moderate-injury') return 'CAUTION'
  return caution.likelihood === 'will' ? 'DANGER' : 'WARNING'
}
