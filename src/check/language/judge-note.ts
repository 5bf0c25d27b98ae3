import {approvedVerbs} from './approved-verbs.ts'
import type {LanguageFault} from './judge-words.ts'
import {sentencesOf, wordsIn} from './words-of-text.ts'

/** A description longer than this is read twice. Source: usual limit of controlled languages, from memory. */
const mostWordsInSentence = 25

/** What is wrong with a note or description: it informs in short sentences and commands nothing. */
export function judgeNote(text: string): readonly LanguageFault[] {
  return sentencesOf(text).flatMap((sentence): readonly LanguageFault[] => {
    const words = wordsIn(sentence)
    return [
      ...(isCommand(sentence)
        ? [
            {
              ruleId: 'no-instruction-in-note' as const,
              words: words[0] ?? '',
              reason: `Unexpected instruction \`${sentence}\` in a note, expected information`,
              note: 'Make it a step: what stands in a note is not ticked and not done',
            },
          ]
        : []),
      ...(words.length > mostWordsInSentence
        ? [
            {
              ruleId: 'no-long-sentence' as const,
              words: sentence,
              reason: `Unexpected sentence of ${words.length} words, expected at most ${mostWordsInSentence}`,
              note: 'Split the sentence',
            },
          ]
        : []),
    ]
  })
}

/** A sentence that begins with a verb of the list and what it is done to, or with `Do not` or `Never`. */
export function isCommand(sentence: string): boolean {
  const [first = '', second = ''] = wordsIn(sentence).map((word) => word.toLowerCase())
  if (/^(?:do not|don['’]t|never) /iu.test(sentence)) return true
  return (
    approvedVerbs.has(first) &&
    /^\p{L}+ /u.test(sentence) &&
    /^(?:the|a|an|each|all|both|every|it|them|its|this|that|these|no|not|one|two|off|out|value)$/u.test(
      second,
    )
  )
}
