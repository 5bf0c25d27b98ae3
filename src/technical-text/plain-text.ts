import type {BoundText} from '../handbook-model/pages.ts'

/** White space folded to single blanks, ends trimmed, as a reader sees it. */
export function plainText(text: string): string {
  return text.replace(/\s+/gu, ' ').trim()
}

/** Words of a bound text without its marks; the balloon of a part stands behind it: `lower wear ring (4)`. */
export function wordsOf(text: BoundText): string {
  return text
    .map((inline) => {
      if (inline.kind === 'strong' || inline.kind === 'emphasis') return wordsOf(inline.children)
      return inline.kind === 'part' ? `${inline.text} (${inline.balloon})` : inline.text
    })
    .join('')
}
