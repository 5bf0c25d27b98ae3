import type {BoundText} from '../handbook-model/pages.ts'

/** White space folded to single blanks, ends trimmed, as a reader sees it. */
export function plainText(text: string): string {
  return text.replace(/\s+/gu, ' ').trim()
}

/** Words of a bound text without its marks. */
export function wordsOf(text: BoundText): string {
  return text
    .map((inline) =>
      inline.kind === 'strong' || inline.kind === 'emphasis' ? wordsOf(inline.children) : inline.text,
    )
    .join('')
}
