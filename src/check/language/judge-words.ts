import type {Term} from '../../handbook-model/office-content.ts'
import {onceForEach} from '../../handbook-model/once-for-each.ts'
import type {RuleId} from '../../messages/severities.ts'

/** What is wrong with a sentence, and how to mend it. */
export interface LanguageFault {
  readonly ruleId: RuleId
  /** The words that are wrong, as they stand in the text. */
  readonly words: string
  readonly reason: string
  readonly note: string
}

/** `May` with a capital inside a sentence is the month. */
const hedges = /\bmay\b|^May\b|\b(?:[Mm]ight|[Ss]hould|[Cc]ould|[Ww]ould|[Pp]ossibly|[Pp]erhaps|[Mm]aybe)\b/gu
const contractions =
  /\b\p{L}+n['’]t\b|\b\p{L}+['’](?:re|ve|ll|d|m)\b|\b(?:it|that|there|what|who|let|here|he|she)['’]s\b/giu
const vague =
  /\b(?:as (?:required|needed|necessary|appropriate|applicable)|if (?:required|needed|necessary|possible)|where (?:required|needed|necessary|possible)|when (?:required|needed|necessary)|properly|correctly|carefully|adequate(?:ly)?|sufficient(?:ly)?|suitabl[ey] (?=tool|amount|number)|approximately|reasonabl[ey]|etc|and so on|see (?:the )?manual)\b/giu

/**
 * Words that no text of a procedure or caution may hold: hedges, contractions, vague words, and second names for one thing.
 *
 * Source: plain-language rules of the office, common practice, no source.
 */
export function judgeWords(text: string, terms: readonly Term[]): readonly LanguageFault[] {
  return [
    ...matches(text, hedges).map(
      (words): LanguageFault => ({
        ruleId: 'no-hedge',
        words,
        reason: `Unexpected hedge \`${words}\`, expected a plain statement or instruction`,
        note: 'Say what is so, or what is done and when',
      }),
    ),
    ...matches(text, contractions).map(
      (words): LanguageFault => ({
        ruleId: 'no-contraction',
        words,
        reason: `Unexpected contraction \`${words}\`, expected the words in full`,
        note: 'Write `do not` for `don’t`',
      }),
    ),
    ...matches(text, vague).map(
      (words): LanguageFault => ({
        ruleId: 'no-vague-word',
        words,
        reason: `Unexpected vague words \`${words}\`, expected a condition or a measure`,
        note: 'Say on which condition, by how much or up to which limit',
      }),
    ),
    ...secondTerms(text, terms),
  ]
}

/** Any of the words that are not used: hardly a text holds one, and a list of patterns for each text is slow. */
const anyUnused = onceForEach(
  (terms: readonly Term[]): RegExp => patternOf(terms.flatMap((term) => term.notUsed)),
)

function secondTerms(text: string, terms: readonly Term[]): readonly LanguageFault[] {
  if (!anyUnused(terms).test(text)) return []
  return terms.flatMap((term) =>
    term.notUsed.flatMap((unused) => {
      const found = patternOf([unused]).exec(text)
      return found
        ? [
            {
              ruleId: 'no-second-term' as const,
              words: found[0],
              reason: `Unexpected term \`${found[0]}\`, expected \`${term.term.en}\``,
              note: 'One thing has one word: terms.yaml says which',
            },
          ]
        : []
    }),
  )
}

/** Matches each of some words as a word of its own, also in the plural; nothing where there are none. */
function patternOf(words: readonly string[]): RegExp {
  const alternatives = words.length === 0 ? '(?!)' : words.map(escaped).join('|')
  return new RegExp(`(?<![\\p{L}-])(?:${alternatives})s?(?![\\p{L}-])`, 'iu')
}

function matches(text: string, pattern: RegExp): readonly string[] {
  return [...text.matchAll(pattern)].map(([words]) => words)
}

function escaped(words: string): string {
  return words.replace(/[.*+?^${}()|[\]\\]/gu, '\\$&')
}
